import type { Frame } from "../contract.ts";
import { boxOf, type SectionParts } from "../part.ts";
import { againstWall, lightPart } from "../service-parts.ts";

/** What of an access its parts follow from. */
interface AccessSize {
  readonly length: number;
  readonly doorWidth: number;
  readonly doorHeight: number;
  readonly swing: "outward" | "inward";
  readonly hinges: "upstream" | "downstream";
  readonly window: boolean;
  readonly light: boolean;
}

/** The door in the service side and the light. */
export function accessParts(design: AccessSize, frame: Frame): SectionParts {
  const z = Math.min(0.08 * frame.height, frame.height - design.doorHeight);
  const x = (design.length - design.doorWidth) / 2;
  const box = boxOf(x, againstWall(frame, frame.hand, 0), z, design.doorWidth, 0, design.doorHeight);
  return {
    inside: design.light ? [lightPart(frame, 0, design.length)] : [],
    walls: [
      {
        key: "door",
        name: "access door",
        kind: "door",
        face: frame.hand,
        box,
        opens: design.swing,
        hinges: design.hinges,
        window: design.window,
      },
    ],
  };
}
