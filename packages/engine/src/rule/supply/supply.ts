import { conditionRule, type Rule } from "../contract.ts";

/** What the laboratories asked for, at every condition. */
export const supplyRules: readonly Rule[] = [
  conditionRule({
    id: "supply temperature held",
    covers: ["DUT-01", "DUT-02"],
    protects: "the laboratories' temperature",
    measures: "supply air beyond its set point",
    quantity: "temperatureDifference",
    sense: "at most",
    limit: 0.1,
    source: "definition of the duty; the tolerance is common practice of a controller",
    certainty: "common practice",
    severity: "shortfall",
    remedy: "more coil, colder or warmer water, more steam",
    mends: [
      { at: { kind: "chilled-water coil" }, field: "rows", way: "more" },
      { at: { kind: "chilled-water coil" }, field: "fins", way: "more" },
      { at: { kind: "steam coil with face and bypass" }, field: "rows", way: "more" },
      { at: { kind: "steam coil" }, field: "rows", way: "more" },
      { at: { kind: "hot-water coil" }, field: "rows", way: "more" },
    ],
    of: "unit",
    value: ({ rating }) => {
      const { season, setPoints } = rating.condition;
      if (setPoints.supply === undefined) return undefined;
      const beyond = rating.supply.dryBulb - setPoints.supply;
      return Math.max(0, season === "cooling" ? beyond : -beyond);
    },
  }),
  conditionRule({
    id: "supply dew point held",
    covers: ["DUT-01", "DUT-03"],
    protects: "the laboratories from damp",
    measures: "moisture of the supply beyond what its highest dew point allows",
    quantity: "share",
    sense: "at most",
    limit: 0.005,
    source: "definition of the duty; half a hundredth of tolerance",
    certainty: "common practice",
    severity: "shortfall",
    remedy: "more cooling coil, colder water, a lower leaving temperature",
    mends: [
      { at: "duty", field: "setPoints.coilLeaving", way: "less" },
      { at: { kind: "chilled-water coil" }, field: "rows", way: "more" },
    ],
    of: "unit",
    value: ({ rating }) => {
      const most = rating.condition.setPoints.supplyMaximumHumidityRatio;
      return most === undefined ? undefined : Math.max(0, rating.supply.humidityRatio / most - 1);
    },
  }),
  conditionRule({
    id: "winter dew point held",
    covers: ["DUT-01"],
    protects: "the laboratories from dry air",
    measures: "moisture that the supply lacks of what its lowest dew point asks",
    quantity: "share",
    sense: "at most",
    limit: 0.005,
    source: "definition of the duty; half a hundredth of tolerance",
    certainty: "common practice",
    severity: "shortfall",
    remedy: "a larger humidifier, or warmer air before it",
    mends: [{ at: "duty", field: "setPoints.winterMinimumDewPoint", way: "less" }],
    of: "unit",
    value: ({ rating }) => {
      const least = rating.condition.setPoints.supplyMinimumHumidityRatio;
      return least === undefined ? undefined : Math.max(0, 1 - rating.supply.humidityRatio / least);
    },
  }),
  conditionRule({
    id: "airflow held",
    covers: ["DUT-08", "FLT-04", "FLT-05", "CLG-23"],
    protects: "the laboratories' airflow at every filter state",
    measures: "airflow that the supply lacks of what the duty asks on that day",
    quantity: "share",
    sense: "at most",
    limit: 0.005,
    source: "gsa-p100 fans selected at the change-out pressure of filters",
    certainty: "read",
    severity: "shortfall",
    remedy: "more fan speed or motor, less pressure",
    mends: [{ at: { kind: "fan" }, field: "motorPower", way: "more" }],
    of: "unit",
    value: ({ rating }) => {
      const { flow, externalStatic } = rating.condition;
      return flow.mode === "speed held"
        ? Math.max(0, 1 - rating.supply.dryAirFlow / externalStatic.designDryAirFlow)
        : undefined;
    },
  }),
];
