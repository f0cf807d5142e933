import type { Frame } from "../contract.ts";
import { boxOf, type SectionParts, type WallPart } from "../part.ts";
import { lightPart, serviceDoor } from "../service-parts.ts";
import type { DischargePlenumDesign } from "./design.ts";

/** The openings with their collars, a door and a light. */
export function dischargePlenumParts(design: DischargePlenumDesign, frame: Frame): SectionParts {
  const { outlets, outletWidth, outletHeight, length, direction } = design;
  const cell = frame.width / outlets;
  const collars = Array.from({ length: outlets }, (_, index): WallPart => {
    const y = (index + 0.5) * cell - outletWidth / 2;
    const key = `outlet ${index + 1}`;
    const name = "supply outlet";
    if (direction === "horizontal") {
      const z = (frame.height - outletHeight) / 2;
      return {
        key,
        name,
        kind: "collar",
        air: "supply",
        face: "exit",
        box: boxOf(length, y, z, 0, outletWidth, outletHeight),
      };
    }
    const face = direction === "up" ? "top" : "bottom";
    const z = direction === "up" ? frame.height : 0;
    const x = (length - outletHeight) / 2;
    return { key, name, kind: "collar", air: "supply", face, box: boxOf(x, y, z, outletHeight, outletWidth, 0) };
  });
  const door = serviceDoor(frame, 0, length);
  return {
    inside: door === undefined || direction === "up" ? [] : [lightPart(frame, 0, length)],
    walls: door === undefined ? collars : [...collars, door],
  };
}
