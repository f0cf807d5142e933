import { partMasses } from "#standard/part-mass";
import type { Frame } from "../contract.ts";
import { boxOf, type SectionPart, type SectionParts, type WallPart, weighedPart } from "../part.ts";
import { againstWall, lightPart, serviceDoor } from "../service-parts.ts";
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
  const behind = design.housed ? undefined : doorBehind(frame, design);
  const walls = [door, behind].filter((each) => each !== undefined);
  const light = door === undefined ? [] : [lightPart(frame, 0, design.upstreamSpace)];
  return {
    inside: [...fans, ...light, ...lubricationLines(design, frame)],
    walls: [...walls, ...outletCollar(design, frame), disconnect(design, frame)],
  };
}

/** A door to the motors, in the pressure behind the wheels: it opens inwards, against that pressure. */
function doorBehind(frame: Frame, design: FanDesign): WallPart | undefined {
  const door = serviceDoor(frame, design.length - 0.6, design.length, true, "door behind");
  return door === undefined ? undefined : { ...door, opens: "inward" };
}

/** Extended lines from every bearing of a housed fan to fittings on the door side, so that nobody reaches past belts. */
function lubricationLines(design: FanDesign, frame: Frame): readonly SectionPart[] {
  const { reach, diameter, wheel } = design;
  if (reach === undefined || design.drive !== "belt") return [];
  const wall = frame.hand === "right" ? 0 : frame.width;
  const shaft = design.baseHeight + reach.below * diameter;
  const half = (wheel.housingWidth * diameter) / 2 + 0.035 * diameter;
  const ends = Array.from({ length: design.count }, (_, index) => fanMiddle(design, frame, index)).flatMap((middle) => [
    middle - half,
    middle + half,
  ]);
  return ends.map((end, index) => {
    const [from, to] = [Math.min(end, wall), Math.max(end, wall)];
    const box = boxOf(design.shaftPlace + 0.01 * index, from, shaft + 0.05 * diameter, 0.008, to - from, 0.008);
    const mass = partMasses.lubricationLine * (to - from);
    const key = `lubrication line ${index + 1}`;
    return weighedPart(key, "extended lubrication line", "pipe", "copper", box, mass, partMasses.source, {
      shares: true,
    });
  });
}

/** m: a disconnect's box, and its middle above the floor. */
const disconnectSize = { length: 0.2, height: 0.3, at: 1.3 };

/** The lockable disconnect on the outside of the service side, clear of the doors, in sight of the motors. */
function disconnect(design: FanDesign, frame: Frame): WallPart {
  const { length, height, at } = disconnectSize;
  // Between the door before the fans and, behind plenum wheels, the one after them.
  const x = Math.min(design.upstreamSpace + 0.15, design.length - length);
  const z = Math.max(0, Math.min(at, frame.height - height) - height / 2);
  return {
    key: "disconnect",
    name: "motor disconnect",
    kind: "fixture",
    face: frame.hand,
    box: boxOf(Math.max(0, x), againstWall(frame, frame.hand, 0), z, length, 0, height),
    bought: `lockable disconnect, ${design.count === 1 ? "one motor" : `${design.count} motors`}`,
  };
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
