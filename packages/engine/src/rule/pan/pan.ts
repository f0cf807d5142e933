import { type ArmReach, armReaches } from "#arrangement/arm-reach";
import { inBothUnits } from "#section/both-units";
import type { ChilledWaterCoilDesign } from "#section/chilled-water-coil/design";
import { type Machine, type Mend, machineRule, type Rule } from "../contract.ts";
import { inches } from "../inch-pound-limits.ts";

const reach: readonly Mend[] = [{ at: "section", field: "panReach", way: "more" }];
const stack: readonly Mend[] = [{ at: "section", field: "stacked", way: "more" }];
const common = {
  of: ["chilled-water coil"],
  quantity: "length",
  severity: "damage",
  protects: "the floor behind the coil from carried water",
} as const;

/** The pan of the section that lies farthest from an arm; undefined where it has none. */
function farthestReach({ weighing: { arrangement }, unit, index }: Machine): ArmReach | undefined {
  const reaches = armReaches(arrangement, unit.sections[index]!.name);
  return reaches.reduce<ArmReach | undefined>(
    (worst, each) => (worst === undefined || !(each.distance <= worst.distance) ? each : worst),
    undefined,
  );
}

/** Pans under and between coils. */
export const panRules: readonly Rule[] = [
  machineRule<ChilledWaterCoilDesign>({
    ...common,
    id: "pan reach behind the coil",
    isChosen: true,
    covers: ["CLG-10"],
    measures: "reach of the main pan behind the fins",
    sense: "at least",
    limit: ({ duty }) => (duty.outsideAirShare > 0.7 ? inches(30) : inches(24)),
    limitWords: "30 in for all or nearly all outside air, else 24 in",
    source: "hospital-master-specification drain pans",
    certainty: "read",
    contested:
      "18 in (a research agency), 24 and 30 in for all outside air (a hospital), half the coil's height (62.1)",
    remedy: "a longer pan, under the next section where it must",
    mends: reach,
    value: ({ design }) => design.panReach,
  }),
  machineRule<ChilledWaterCoilDesign>({
    ...common,
    id: "pan reach half the coil's height",
    covers: ["CLG-09"],
    measures: "reach of the main pan behind the fins",
    sense: "at least",
    limit: ({ design }) => design.block.coil.bank.finnedHeight / 2,
    limitWords: "half the finned height of one coil",
    source: "ashrae-62-1 5.10 or proof of carry-over below 0.0044 oz/ft²·h, from memory",
    certainty: "from memory",
    remedy: "a longer pan, or a test of carry-over",
    mends: reach,
    value: ({ design }) => design.panReach,
  }),
  machineRule<ChilledWaterCoilDesign>({
    ...common,
    id: "intermediate pans",
    covers: ["CLG-14", "CLG-15"],
    protects: "lower coils from the water of upper ones",
    measures: "a pan under every upper coil",
    quantity: "flag",
    sense: "at least",
    limit: 1,
    source: "va-hvac-manual every bank more than one coil high",
    certainty: "read",
    remedy: "a pan below each upper coil, with a down-comer",
    mends: [{ at: "section", field: "intermediatePans", way: "other" }],
    value: ({ design }) => (design.block.stacked < 2 ? undefined : design.intermediatePans ? 1 : 0),
  }),
  machineRule<ChilledWaterCoilDesign>({
    ...common,
    id: "coil height over a pan",
    covers: ["CLG-14"],
    protects: "the lower fins from a thick film of water",
    measures: "finned height over one pan",
    sense: "at most",
    limit: inches(50),
    source: "ventilation-trade-texts coils seldom above 50 in",
    certainty: "read",
    contested: "24 in between pans (Army), every coil of a bank (VA), about 48 to 50 in (trade); see the film loading",
    remedy: "more coils one above the other",
    mends: stack,
    value: ({ design }) => design.block.coil.bank.finnedHeight,
  }),
  machineRule({
    id: "pan within an arm's reach",
    covers: ["CLG-11"],
    protects: "who breathes the air from slime that nobody wipes off",
    measures: "from where a person stands, or a hatch, to the farthest point of the pan",
    quantity: "length",
    sense: "at most",
    limit: inches(24),
    limitWords: "the arm of a small adult, from the shoulder",
    source: "from-memory about 24 in; owners ask that pans are cleaned with the coil in its place",
    certainty: "from memory",
    severity: "nuisance",
    remedy: "an access, or a hatch, beside the pan; a lance where an arm does not reach",
    mends: [],
    of: "every section",
    missing: "the unit has neither door nor hatch",
    value: (at) => farthestReach(at)?.distance,
    detail: (at) => {
      const reach = farthestReach(at);
      if (reach === undefined || Number.isNaN(reach.distance)) return undefined;
      const how = reach.stands ? "standing behind the door of" : "through the hatch of";
      return `${reach.pan}, ${inBothUnits(reach.distance, "length")} ${how} ${reach.from}`;
    },
  }),
];
