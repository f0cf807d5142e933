import type { PartForm, SectionPart } from "#section/part";
import { prisms } from "#section/part-form";
import { materials } from "#standard/material";
import { partMasses } from "#standard/part-mass";
import type { Unit } from "#unit/unit";
import { type Part, partGroup, placedPart } from "./part.ts";
import type { PlacedSection } from "./section-place.ts";
import type { FanSprings } from "./spring-load.ts";
import { fallToTrap, type SectionTrap } from "./trap.ts";

const origin = { x: 0, y: 0, z: 0 };
/** m: wall of a drain pipe, schedule 40; from memory. */
const pipeWall = 0.0036;
/** mm from the rail's face to a trap beside it. */
const besideRail = 30;

/**
 * What only the running unit tells: traps with their real depth beside the rail, and restraints against the fans' thrust
 * where springs would give way to it. Undefined where there is neither.
 */
export function fittedParts(
  unit: Unit,
  sections: readonly PlacedSection[],
  lugs: Part | undefined,
  traps: readonly SectionTrap[],
  springs: readonly FanSprings[],
): Part | undefined {
  const parts = [
    ...trapParts(unit, sections, lugs?.children ?? [], traps),
    ...springs.filter(({ needsRestraint }) => needsRestraint).flatMap(({ fan }) => restraintsOf(sections, fan)),
  ];
  return parts.length === 0 ? undefined : partGroup("fitted", "fitted on site", undefined, parts);
}

/** Traps beside the rail on the service side; one that would stand in a lug's or another's place stands outside of it. */
function trapParts(
  unit: Unit,
  sections: readonly PlacedSection[],
  lugs: readonly Part[],
  traps: readonly SectionTrap[],
): readonly Part[] {
  const placed: Part[] = [];
  for (const trap of traps) {
    let lane = 0;
    let part = trapPart(unit, sections, trap, lane);
    while (part !== undefined && [...lugs, ...placed].some((other) => isInTheWay(other, part!))) {
      lane += 1;
      part = trapPart(unit, sections, trap, lane);
    }
    if (part !== undefined) placed.push(part);
  }
  return placed;
}

function isInTheWay(other: Part, { place, size }: Part): boolean {
  const isApart = (axis: "x" | "y") =>
    place[axis] >= other.place[axis] + other.size[axis] || other.place[axis] >= place[axis] + size[axis];
  return !isApart("x") && !isApart("y");
}

/** A trap under the drain of the section's main pan, so many trap widths away from the rail. */
function trapPart(unit: Unit, sections: readonly PlacedSection[], trap: SectionTrap, lane: number): Part | undefined {
  const section = sections.find((each) => each.section.name === trap.section);
  const pan = section?.part.children.find(({ kind, name }) => kind === "pan" && name !== "down-comer");
  if (pan === undefined) return undefined;
  const pipe = 1000 * trap.pipeOutside;
  const panel = 1000 * unit.casing.panelThickness;
  const length = 5 * pipe;
  const height = 1000 * trap.depth;
  const end = pan.place.x + pan.size.x;
  const away = besideRail + lane * (pipe + besideRail);
  const box = {
    x: end - length,
    y: unit.frame.hand === "right" ? -panel - away - pipe : 1000 * unit.frame.width + panel + away,
    z: -panel - 1000 * fallToTrap - height,
    length,
    width: pipe,
    height,
  };
  const run = (2 * trap.depth + 5 * trap.pipeOutside) * Math.PI * trap.pipeOutside * pipeWall;
  const part: SectionPart = {
    key: `trap of ${trap.section}`,
    name: `condensate trap, ${trap.pipe}`,
    kind: "trap",
    material: "steel",
    box,
    form: trapForm(trap, pipe, height),
    mass: run * materials.steel.density,
    massSource: "from-memory pipe of schedule 40 by length",
    bought: `condensate trap, ${trap.pipe}`,
  };
  return placedPart(part, "fitted", trap.section, origin);
}

/** Down from the pan, along, and up to the outlet, which lies `drop` under the inlet's top; pairs along the airflow and up. */
function trapForm(trap: SectionTrap, pipe: number, height: number): PartForm {
  const leg = pipe / (5 * pipe);
  const low = pipe / height;
  const outlet = (1000 * trap.seal) / height;
  const top = outlet + low;
  return prisms("y", () => [
    [0, 0, 3 * leg, 0, 3 * leg, outlet, 1, outlet, 1, top, 2 * leg, top, 2 * leg, low, leg, low, leg, 1, 0, 1],
  ]);
}

/** Two sprung rods level with the air's thrust, one on each side of the fan, from its base to the cabinet. */
function restraintsOf(sections: readonly PlacedSection[], fan: string): readonly Part[] {
  for (const { section, part } of sections) {
    const found = part.children.find(({ name, children }) => name === fan && children.some(isSprung));
    const sprung = found?.children.find(isSprung);
    if (sprung === undefined) continue;
    const { place, size } = sprung;
    const [long, thick] = [Math.min(300, size.x / 3), 40];
    return [place.y, place.y + size.y - thick].map((y, index) => {
      const box = { x: place.x + size.x - long, y, z: place.z + size.z / 2, length: long, width: thick, height: thick };
      const rod: SectionPart = {
        key: `thrust restraint ${index + 1} of ${found!.key}`,
        name: "thrust restraint",
        kind: "restraint",
        material: "steel",
        box,
        mass: partMasses.thrustRestraint,
        massSource: partMasses.source,
        shares: true,
        bought: "thrust restraint",
      };
      return placedPart(rod, "fitted", section.name, origin);
    });
  }
  return [];
}

function isSprung({ key }: Part): boolean {
  return key.endsWith("/sprung");
}
