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
];
