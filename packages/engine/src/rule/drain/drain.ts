import type { SectionTrap } from "#arrangement/trap";
import { type Machine, type Mend, machineRule, type Rule } from "../contract.ts";
import { inches } from "../inch-pound-limits.ts";
import { firstOfKinds } from "../neighbour.ts";

const rail: readonly Mend[] = [{ at: "casing", field: "railHeight", way: "more" }];

/** The trap of the section's pans, where it has any. */
function trapOf({ weighing, unit, index }: Machine): SectionTrap | undefined {
  return weighing.traps.find(({ section }) => section === unit.sections[index]?.name);
}

const common = { of: "every section", severity: "damage", protects: "the unit from a pan that floods" } as const;
const millimetres = (metres: number) => `${Math.round(1000 * metres)} mm`;

/** Condensate: the trap at the deepest running suction, the rail that it needs, its seal, the line. */
export const drainRules: readonly Rule[] = [
  machineRule({
    ...common,
    id: "rail for the condensate trap",
    covers: ["CLG-25", "CLG-26", "CLG-27", "CLG-34"],
    measures: "height of the base rail",
    quantity: "length",
    sense: "at least",
    limit: (at) => trapOf(at)?.railNeeded ?? Number.NaN,
    limitWords: "depth of the trap at the deepest suction or highest pressure while the fan runs, fall and room",
    source: "condensate-trap-texts H = suction + 1 in, J = H/2; blow-through H = pressure + ½ in",
    certainty: "read",
    remedy: "a higher rail",
    mends: rail,
    value: (at) => trapOf(at)?.rail,
    detail: (at) => {
      const trap = trapOf(at);
      if (trap === undefined) return undefined;
      return `at ${Math.round(trap.pressure)} Pa: drop ${millimetres(trap.drop)}, seal ${millimetres(trap.seal)}, depth ${millimetres(trap.depth)}`;
    },
  }),
  machineRule({
    id: "least rail height",
    isChosen: true,
    covers: ["CLG-27"],
    protects: "traps, forks and hands under the unit",
    measures: "height of the base rail",
    quantity: "length",
    sense: "at least",
    limit: inches(6),
    source: "hospital-master-specification base rail 6 in",
    certainty: "read",
    severity: "nuisance",
    remedy: "a higher rail",
    mends: rail,
    of: "unit",
    value: ({ unit }) => unit.casing.railHeight,
  }),
  machineRule({
    ...common,
    id: "trap keeps its seal at shut-off",
    covers: ["CLG-25", "CLG-29"],
    protects: "the trap from being drawn dry when a damper stays shut",
    measures: "the fan's shut-off pressure over what draws the seal out",
    quantity: "share",
    sense: "at most",
    limit: 1,
    source: "derived-here water column of the seal against the fan at no flow",
    certainty: "derived here",
    isGuide: true,
    remedy: "a deeper seal, or a damper switch before the fan starts",
    mends: rail,
    value: (at) => {
      const trap = trapOf(at);
      if (trap === undefined || trap.pressure >= 0 || !isBehindDamper(at)) return undefined;
      return at.weighing.running.shutOff.pressure / trap.sealLoss;
    },
  }),
];

/** Only behind a damper that may stay shut does a pan feel the fan's shut-off suction. */
function isBehindDamper({ unit, index }: Machine): boolean {
  const damper = firstOfKinds(unit, ["shut-off damper", "mixing box"]);
  return damper >= 0 && index > damper;
}
