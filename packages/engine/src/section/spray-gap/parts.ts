import type { Frame } from "../contract.ts";
import { boxOf, type SectionParts } from "../part.ts";
import { againstWall } from "../service-parts.ts";

/** The hatch through which the coil face is washed. */
export function sprayGapParts(
  design: { readonly length: number; readonly hatchWidth: number; readonly hatchHeight: number },
  frame: Frame,
): SectionParts {
  const { hatchWidth, hatchHeight } = design;
  const y = againstWall(frame, frame.hand, 0);
  const box = boxOf((design.length - hatchWidth) / 2, y, (frame.height - hatchHeight) / 2, hatchWidth, 0, hatchHeight);
  return { inside: [], walls: [{ key: "hatch", name: "spray hatch", kind: "hatch", face: frame.hand, box }] };
}
