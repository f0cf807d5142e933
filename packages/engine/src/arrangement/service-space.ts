import { voltageToGround, workingSpaceDepth } from "#component/electrical-working-space";
import { coilPullAllowance, electricalWorkingSpace, serviceClearance } from "#standard/electrical-working-space";
import type { Unit } from "#unit/unit";
import type { DoorSwing } from "./door-swing.ts";
import type { Part, Point } from "./part.ts";
import type { PlacedSection } from "./section-place.ts";

/** What is told with the electrical working space wherever it is shown. */
export const workingSpaceCaution =
  "Working space after a published table, for a grounded surface opposite; the code in force, the authority having jurisdiction and a licensed electrician decide. Nobody works on live parts without need.";

/** Room that is kept clear so that the unit can be served. Millimetres, in the unit's own axes. */
export interface ServiceSpace {
  readonly key: string;
  readonly section: string;
  /** Key of the part that it serves. */
  readonly part: string;
  readonly use: "coil pull" | "access" | "electrical working space";
  readonly name: string;
  readonly side: "right" | "left";
  readonly place: Point;
  readonly size: Point;
  /** Bibliography key and place. */
  readonly source: string;
}

/** All room outside the unit that service asks for. */
export function serviceSpaces(
  unit: Unit,
  placed: readonly PlacedSection[],
  swings: readonly DoorSwing[],
  voltage: number,
): readonly ServiceSpace[] {
  return [
    ...coilPulls(unit, placed),
    ...accessSpaces(unit, placed, swings),
    ...farPipeSpaces(unit, placed),
    ...electricalSpaces(unit, placed, voltage),
  ];
}

const sourceOf = ({ source, certainty }: { readonly source: string; readonly certainty: string }) =>
  `${source}, ${certainty}`;

/** Beside the wall: from its outer face `depth` mm outwards. */
function beside(
  unit: Unit,
  side: "right" | "left",
  depth: number,
  part: { readonly x: number; readonly z: number; readonly length: number; readonly height: number },
): Pick<ServiceSpace, "side" | "place" | "size"> {
  const panel = 1000 * unit.casing.panelThickness;
  const y = side === "right" ? -panel - depth : 1000 * unit.frame.width + panel;
  return { side, place: { x: part.x, y, z: part.z }, size: { x: part.length, y: depth, z: part.height } };
}

/**
 * Coils with their tube sheets and headers, drawn out through the service side: as long as what comes out, from the wall, and
 * room for the hands behind it.
 */
function coilPulls(unit: Unit, placed: readonly PlacedSection[]): readonly ServiceSpace[] {
  return placed.flatMap(({ section, part }) => {
    const pulled = part.children.filter((child) => child.pulled);
    const first = pulled[0];
    if (first === undefined) return [];
    const low = Math.min(...pulled.map(({ place }) => place.z));
    const high = Math.max(...pulled.map(({ place, size }) => place.z + size.z));
    const from = Math.min(...pulled.map(({ place }) => place.x));
    const to = Math.max(...pulled.map(({ place, size }) => place.x + size.x));
    const length = Math.max(...pulled.map(({ size }) => size.y)) + 1000 * coilPullAllowance.length;
    return [
      {
        key: `${section.name}/coil pull`,
        section: section.name,
        part: first.key,
        use: "coil pull" as const,
        name: `${section.name}, pull`,
        ...beside(unit, unit.frame.hand, length, { x: from, z: low, length: to - from, height: high - low }),
        source: `${coilPullAllowance.source} its own length and a foot`,
      },
    ];
  });
}

/** Before every door and hatch of the service side: level room as deep as the code asks, or as the leaf and a person need. */
function accessSpaces(
  unit: Unit,
  placed: readonly PlacedSection[],
  swings: readonly DoorSwing[],
): readonly ServiceSpace[] {
  return placed.flatMap(({ section, part, openings }) =>
    openings.flatMap(({ wall, from, to }) => {
      if (wall.kind === "collar" || (wall.face !== "right" && wall.face !== "left")) return [];
      const key = `${part.key}/${wall.key}`;
      const swing = swings.find((each) => each.part === key);
      const leaf = swing?.opens === "outward" ? swing.radius + 1000 * serviceClearance.beside : 0;
      const level = 1000 * serviceClearance.level;
      const length = Math.max(to - from, level);
      const at = { x: (from + to - length) / 2, z: 0, length, height: wall.box.z + wall.box.height };
      return [
        {
          key: `${key}/access`,
          section: section.name,
          part: key,
          use: "access" as const,
          name: `${section.name}, before the ${wall.name}`,
          ...beside(unit, wall.face, Math.max(level, leaf), at),
          source: sourceOf(serviceClearance),
        },
      ];
    }),
  );
}

/** Before pipes that go through the wall across from the service side: a person has to join, vent and drain them there. */
function farPipeSpaces(unit: Unit, placed: readonly PlacedSection[]): readonly ServiceSpace[] {
  const side = unit.frame.hand === "right" ? "left" : "right";
  return placed.flatMap(({ section, part }) => {
    const pipes = part.children.filter(
      ({ kind, place, size }) =>
        kind === "pipe" && (side === "right" ? place.y < 0 : place.y + size.y > 1000 * unit.frame.width),
    );
    const first = pipes[0];
    if (first === undefined) return [];
    const from = Math.min(...pipes.map(({ place }) => place.x));
    const to = Math.max(...pipes.map(({ place, size }) => place.x + size.x));
    const top = Math.max(...pipes.map(({ place, size }) => place.z + size.z));
    const level = 1000 * serviceClearance.level;
    const length = Math.max(to - from, level);
    return [
      {
        key: `${section.name}/far connections/access`,
        section: section.name,
        part: first.key,
        use: "access" as const,
        name: `${section.name}, before its connections on the ${side}`,
        ...beside(unit, side, level, { x: (from + to - length) / 2, z: 0, length, height: top }),
        source: sourceOf(serviceClearance),
      },
    ];
  });
}

/** Before every disconnect, from what a person stands on: the bottom of the rail. */
function electricalSpaces(unit: Unit, placed: readonly PlacedSection[], voltage: number): readonly ServiceSpace[] {
  const { panelThickness, railHeight } = unit.casing;
  const depth = 1000 * workingSpaceDepth(voltageToGround(voltage), 2);
  return placed.flatMap(({ section, part }) =>
    part.children
      .filter((child) => child.key === `${part.key}/disconnect`)
      .map((box: Part) => {
        const length = Math.max(box.size.x, 1000 * electricalWorkingSpace.width);
        const foot = -1000 * (panelThickness + railHeight);
        const height = Math.max(1000 * electricalWorkingSpace.height, box.place.z + box.size.z - foot);
        const at = { x: box.place.x + (box.size.x - length) / 2, z: foot, length, height };
        const space = beside(unit, unit.frame.hand, depth, at);
        // The depth counts from the front of the box.
        const y = space.side === "right" ? space.place.y - box.size.y : space.place.y + box.size.y;
        return {
          key: `${box.key}/working space`,
          section: section.name,
          part: box.key,
          use: "electrical working space" as const,
          name: `${section.name}, electrical working space at ${Math.round(voltage)} V`,
          ...space,
          place: { ...space.place, y },
          source: sourceOf(electricalWorkingSpace),
        };
      }),
  );
}
