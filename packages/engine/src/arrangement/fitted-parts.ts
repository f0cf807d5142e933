import type { PartForm, SectionPart } from "#section/part";
import { prisms } from "#section/part-form";
import { materials } from "#standard/material";
import { partMasses } from "#standard/part-mass";
import type { Unit } from "#unit/unit";
import type { Arrangement } from "./arrange.ts";
import { type Part, partGroup, placedPart } from "./part.ts";
import type { FanSprings } from "./spring-load.ts";
import { fallToTrap, type SectionTrap } from "./trap.ts";

const origin = { x: 0, y: 0, z: 0 };
/** m: wall of a drain pipe, schedule 40; from memory. */
const pipeWall = 0.0036;
/** mm from the rail's face to a trap beside it. */
const besideRail = 30;

/**
 * The arrangement with what only the running unit tells: traps with their real depth beside the rail, and restraints against
 * the fans' thrust where springs would give way to it.
 */
export function withFittedParts(
  unit: Unit,
  arrangement: Arrangement,
  traps: readonly SectionTrap[],
  springs: readonly FanSprings[],
): Arrangement {
  const parts = [
    ...traps.flatMap((trap) => trapPart(unit, arrangement, trap)),
    ...springs.filter(({ needsRestraint }) => needsRestraint).flatMap(({ fan }) => restraintsOf(arrangement, fan)),
  ];
  if (parts.length === 0) return arrangement;
  const { whole } = arrangement;
  const fitted = partGroup("fitted", "fitted on site", undefined, parts);
  return { ...arrangement, whole: partGroup(whole.key, whole.name, undefined, [...whole.children, fitted]) };
}

/** A trap beside the rail on the service side, under the drain of the section's main pan. */
function trapPart(unit: Unit, arrangement: Arrangement, trap: SectionTrap): readonly Part[] {
  const section = arrangement.sections.find((each) => each.section.name === trap.section);
  const pan = section?.part.children.find(({ kind, name }) => kind === "pan" && name !== "down-comer");
  if (pan === undefined) return [];
  const pipe = 1000 * trap.pipeOutside;
  const panel = 1000 * unit.casing.panelThickness;
  const length = 5 * pipe;
  const height = 1000 * trap.depth;
  const end = pan.place.x + pan.size.x;
  const box = {
    x: end - length,
    y: unit.frame.hand === "right" ? -panel - besideRail - pipe : 1000 * unit.frame.width + panel + besideRail,
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
  };
  return [placedPart(part, "fitted", trap.section, origin)];
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
function restraintsOf(arrangement: Arrangement, fan: string): readonly Part[] {
  for (const { section, part } of arrangement.sections) {
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
      };
      return placedPart(rod, "fitted", section.name, origin);
    });
  }
  return [];
}

function isSprung({ key }: Part): boolean {
  return key.endsWith("/sprung");
}
