import { firstIce, rowConductance, rowHeatCapacity } from "#component/coil/time-to-freeze";
import type { CoilBlock } from "#section/coil/block";
import type { LiquidCoilFigures } from "#section/coil/liquid";
import type { SectionRating } from "#section/contract";
import type { HotWaterCoilDesign } from "#section/hot-water-coil/design";
import { conditionRule, type Machine, machineRule, type RatedSection, type Rule } from "../contract.ts";
import { fahrenheit } from "../inch-pound-limits.ts";
import { heatingKinds, liquidCoilKinds } from "../neighbour.ts";

type Blocked = { readonly block: CoilBlock };
type Liquid = LiquidCoilFigures;

/** Mends that warm what the wet coils meet. */
const warmer = [
  { at: { kind: "steam coil with face and bypass" }, field: "mixingEffectiveness", way: "more" },
  { at: { kind: "mixing box" }, field: "mixingEffectiveness", way: "more" },
] as const;

/** True where this is the first section that heats. */
function isFirstHeating({ unit, index }: RatedSection): boolean {
  for (let place = 0; place < index; place++) {
    if ((heatingKinds as readonly string[]).includes(unit.sections[place]!.kind)) return false;
  }
  return true;
}

/** A coil of water meets air colder than its liquid freezes. */
function liquidOf(at: Machine<Blocked>) {
  const utilities = at.ratings[0]?.condition.utilities;
  return at.unit.sections[at.index]?.kind === "hot-water coil" ? utilities?.heatingWater : utilities?.chilledWater;
}

/** Frost at coils of water, at the freezestat, and how much time a stop leaves. */
export const freezeRules: readonly Rule[] = [
  conditionRule<unknown, SectionRating>({
    id: "coldest filament at the freezestat",
    covers: ["DMP-09", "DMP-10", "STM-15", "STM-16"],
    protects: "the building from a unit that trips on a sound winter day",
    measures: "coldest air behind the first heating coil",
    quantity: "temperature",
    span: 10,
    sense: "at least",
    limit: fahrenheit(38),
    source:
      "freezestat-guides set at 35 to 38 °F, an element of a foot for each square foot of face; filament derived-here",
    certainty: "derived here",
    severity: "shortfall",
    remedy: "better mixing, or a warmer set point",
    mends: warmer,
    of: heatingKinds,
    value: (at) => {
      const isWinter = at.rating.condition.season === "heating" && at.rating.condition.outdoor.dryBulb < 5;
      return isWinter && isFirstHeating(at) ? at.record.leaving.coldestFilament : undefined;
    },
  }),
  conditionRule<unknown, SectionRating>({
    id: "coldest air at the cooling coil",
    covers: ["STM-21"],
    protects: "chilled water in tubes that nobody drained",
    measures: "coldest air that enters the coil in winter",
    quantity: "temperature",
    span: 10,
    sense: "at least",
    limit: fahrenheit(40),
    source: "from-memory 40 °F, or glycol, or drained for the winter",
    certainty: "from memory",
    severity: "damage",
    remedy: "a warmer preheat, glycol, or tubes drained and blown out for the winter",
    mends: [...warmer, { at: "duty", field: "utilities.chilledWater.glycol", way: "other" }],
    of: ["chilled-water coil"],
    value: ({ rating, record }) =>
      rating.condition.season === "heating" &&
      rating.condition.outdoor.dryBulb < 5 &&
      rating.condition.utilities.chilledWater?.liquid.substance === "water"
        ? record.entering.coldestFilament
        : undefined,
  }),
  conditionRule<Blocked, Liquid>({
    id: "tube wall above freezing",
    covers: ["STM-21", "STM-22", "STM-23"],
    protects: "tubes from bursting while the fan runs",
    measures: "coldest tube wall above the liquid's freezing point",
    quantity: "temperatureDifference",
    span: 5,
    sense: "at least",
    limit: 0,
    source: "derived-here coldest wall of the first row against the freezing point",
    certainty: "derived here",
    severity: "damage",
    remedy: "warmer air before the coil, glycol, a running pump, or drained tubes",
    mends: warmer,
    of: liquidCoilKinds,
    value: ({ record }) => record.freezeMargin,
  }),
  conditionRule<Blocked, Liquid>({
    id: "tube wall above freezing in a stop",
    covers: ["DMP-05", "STM-14"],
    protects: "tubes from bursting while the fan stands in winter",
    measures: "coldest tube wall above the liquid's freezing point",
    quantity: "temperatureDifference",
    span: 5,
    sense: "at least",
    when: "stopped",
    limit: 0,
    source: "derived-here stopped unit in wind and stack draught, dampers closed and left open",
    certainty: "derived here",
    severity: "damage",
    remedy: "a damper that shuts, the pump kept running, glycol, or the heating valve open on failure",
    mends: [
      { at: { kind: "mixing box" }, field: "control", way: "other" },
      { at: "duty", field: "utilities.chilledWater.pumpRunsWhenStopped", way: "other" },
      { at: "duty", field: "utilities.chilledWater.glycol", way: "other" },
    ],
    of: liquidCoilKinds,
    value: ({ record }) => record.freezeMargin,
  }),
  machineRule<Blocked>({
    id: "time to freeze in a stop",
    covers: ["STM-14", "STM-21"],
    protects: "tubes: somebody or something has to act in this time",
    measures: "time to the first ice with the fan stopped, the dampers left open and the liquid standing",
    quantity: "time",
    sense: "at least",
    limit: 600,
    source: "from-memory ten minutes for an alarm to be answered; the time itself derived-here",
    certainty: "from memory",
    severity: "damage",
    remedy: "a damper that shuts by spring, the pump kept running, or glycol",
    mends: [{ at: "duty", field: "utilities.chilledWater.pumpRunsWhenStopped", way: "other" }],
    of: liquidCoilKinds,
    value: (at) => {
      const supply = liquidOf(at);
      const place = at.conditions.findIndex(({ key }) => key === "fan-stopped-dampers-left-open");
      const rating = at.ratings[place];
      if (supply === undefined || rating === undefined) return undefined;
      const record = rating.sections[at.index] as Liquid;
      const air = record.entering.coldestFilament;
      if (!(rating.solved && air < record.freezePoint)) return undefined;
      const surface = Math.max(0.5, record.airCoefficient * record.surfaceEfficiency);
      const start = Math.max(5, record.freezePoint);
      const { coil, stacked } = at.design.block;
      // J/K of air that each coil meets in a second.
      const airCapacity = (1006 * record.entering.dryAirFlow) / stacked;
      const conductance = rowConductance(coil, airCapacity, surface);
      return firstIce(rowHeatCapacity(coil, supply.liquid, 1), conductance, start, air, record.freezePoint);
    },
  }),
  machineRule<HotWaterCoilDesign>({
    id: "pumped hot-water coil",
    covers: ["STM-19"],
    protects: "tubes from slow water in cold air",
    measures: "a pump that keeps the flow, or glycol, where air below 40 °F enters",
    quantity: "flag",
    sense: "at least",
    limit: 1,
    source: "steam-coil-guide hot water not below 40 °F entering air without a pump",
    certainty: "read",
    severity: "damage",
    remedy: "a coil pump with a blending valve, or glycol",
    mends: [
      { at: "section", field: "control", way: "other" },
      { at: "duty", field: "utilities.heatingWater.glycol", way: "other" },
    ],
    of: ["hot-water coil"],
    value: ({ design, duty }) => {
      if (duty.winter.dryBulb >= fahrenheit(40)) return undefined;
      return design.control === "pumped loop" || duty.utilities.heatingWater?.glycol !== "none" ? 1 : 0;
    },
  }),
];
