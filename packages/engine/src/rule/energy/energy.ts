import type { FanDesign } from "#section/fan/design";
import type { FanSectionRating } from "#section/fan/rate";
import { conditionRule, machineRule, type Rule } from "../contract.ts";
import { inchesOfWater } from "../inch-pound-limits.ts";
import { fanPowerVerdict } from "./fan-power-limit.ts";

/** Energy limits of fans and of the unit's pressure. */
export const energyRules: readonly Rule[] = [
  machineRule({
    id: "fan power limit",
    covers: ["FAN-18"],
    protects: "the energy code's approval",
    measures: "shaft power of the supply fans with filters half loaded",
    quantity: "shaftPower",
    sense: "at most",
    limit: (at) => limitOf(at)?.shaftLimit ?? Number.NaN,
    limitWords:
      "0.0013 hp a cfm where the flow varies, else 0.00094, and credits for filters, recovery and laboratory exhaust",
    source:
      "ashrae-90-1 fan power limitation of the editions up to 2022 as state codes print it; it counts exhaust fans too",
    certainty: "read",
    severity: "shortfall",
    remedy: "less pressure in unit and ducts, or a better fan",
    mends: [
      { at: "casing", field: "width", way: "more" },
      { at: "casing", field: "height", way: "more" },
      { at: { kind: "fan" }, field: "diameter", way: "other" },
    ],
    of: "unit",
    value: (at) => limitOf(at)?.shaftPower,
    detail: () => "what is left is what the exhaust fans may take",
  }),
  conditionRule<FanDesign, FanSectionRating>({
    id: "fan energy index",
    covers: ["FAN-19"],
    protects: "the energy code's approval",
    measures: "fan energy index at design airflow",
    quantity: "factor",
    sense: "at least",
    limit: 1,
    source: "ashrae-90-1 2019, quoted; amca-208",
    certainty: "second-hand",
    severity: "shortfall",
    remedy: "a larger or better wheel",
    mends: [{ at: "section", field: "diameter", way: "more" }],
    of: ["fan"],
    value: ({ rating, design, record }) => {
      const isDesign = rating.supply.dryAirFlow > 0.98 * rating.condition.externalStatic.designDryAirFlow;
      return isDesign && design.motorPower >= 745 && record.energyIndex > 0 ? record.energyIndex : undefined;
    },
  }),
  conditionRule({
    id: "pressure within the unit",
    covers: ["CLG-06", "DUT-12"],
    protects: "energy over the life of the laboratory",
    measures: "pressure that the unit itself takes, filters half loaded",
    quantity: "pressureDifference",
    sense: "at most",
    limit: inchesOfWater(2.7),
    source: "labs21-low-pressure-drop tiers of 2.5 to 2.7, 1.5 to 1.7 and 0.75 to 1.0 in.wg, from memory",
    certainty: "from memory",
    severity: "nuisance",
    remedy: "larger faces, fewer rows, better filters",
    mends: [
      { at: "casing", field: "height", way: "more" },
      { at: "casing", field: "width", way: "more" },
    ],
    of: "unit",
    value: ({ unit, rating }) => {
      if (rating.condition.filterLoading !== 0.5) return undefined;
      let sum = 0;
      for (let place = 0; place < unit.sections.length; place++) {
        if (unit.sections[place]!.behaviour.role !== "fan") sum += rating.sections[place]!.totalPressureLoss;
      }
      return sum;
    },
  }),
  machineRule({
    id: "unit size cap",
    covers: ["DUT-10"],
    protects: "a building from one large unit that fails",
    measures: "design airflow",
    quantity: "airflow",
    sense: "at most",
    limit: 25_000 * 0.000471947,
    source: "gsa-p100 air-handling units of at most 25,000 cfm",
    certainty: "read",
    byDefault: false,
    severity: "nuisance",
    remedy: "two units",
    mends: [{ at: "duty", field: "supplyAirflow.design", way: "less" }],
    of: "unit",
    value: ({ duty }) => duty.supplyAirflow.design,
  }),
];

function limitOf({ unit, duty, ratings }: Parameters<Extract<Rule, { scope: "machine" }>["value"]>[0]) {
  const half = ratings.find(({ solved, condition }) => solved && condition.key === "wet-bulb-day-0.5");
  const rating = half ?? ratings.find(({ solved, condition }) => solved && condition.flow.mode !== "fan stopped");
  const { minimum, design } = duty.supplyAirflow;
  return rating && fanPowerVerdict(unit, rating, minimum !== undefined && minimum < design);
}
