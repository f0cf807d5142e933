import type { Frame } from "../contract.ts";
import { boxOf, type SectionParts } from "../part.ts";
import { lightPart, serviceDoor } from "../service-parts.ts";
import type { FanDesign } from "./design.ts";
import { housedFan } from "./housed-parts.ts";
import { fanMiddle } from "./pieces.ts";
import { plenumFans } from "./plenum-parts.ts";

/** The fans with all that turns, drives and carries them, a door before them and a light. */
export function fanParts(design: FanDesign, frame: Frame): SectionParts {
  const fans = design.housed
    ? Array.from({ length: design.count }, (_, index) => housedFan(design, frame, index))
    : plenumFans(design, frame);
  const door = serviceDoor(frame, 0, design.upstreamSpace, true);
  const behind = design.housed
    ? undefined
    : serviceDoor(frame, design.length - 0.6, design.length, true, "door behind");
  const walls = [door, behind].filter((each) => each !== undefined);
  const light = door === undefined ? [] : [lightPart(frame, 0, design.upstreamSpace)];
  return { inside: [...fans, ...light], walls: [...walls, ...outletCollar(design, frame)] };
}

/** Where a housed fan blows through a wall of the cabinet. */
function outletCollar(design: FanDesign, frame: Frame): SectionParts["walls"] {
  const { reach, scroll, diameter, wheel } = design;
  if (reach === undefined || scroll === undefined) return [];
  const width = wheel.outletWidth * diameter;
  const height = wheel.outletHeight * diameter;
  return Array.from({ length: design.count }, (_, index) => {
    const y = fanMiddle(design, frame, index) - width / 2;
    const shaft = design.baseHeight + reach.below * diameter;
    const key = `outlet ${index + 1}`;
    if (design.discharge === "forward") {
      const z = shaft + scroll.outletBottom * diameter;
      return {
        key,
        name: "fan outlet",
        kind: "collar",
        air: "supply",
        face: "exit",
        box: boxOf(design.length, y, z, 0, width, height),
      };
    }
    const isUp = design.discharge === "up";
    // Turned by a right angle, the outlet stands before the shaft (up) or behind it (down).
    const x = design.shaftPlace + (isUp ? -scroll.top : scroll.outletBottom) * diameter;
    const box = boxOf(x, y, isUp ? frame.height : 0, height, width, 0);
    return { key, name: "fan outlet", kind: "collar", air: "supply", face: isUp ? "top" : "bottom", box };
  });
}
