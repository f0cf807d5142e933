import type { RuleCase } from "../rule-case.test-data.ts";

/** Cases of the family. */
export const energyCases: readonly RuleCase[] = [
  { rule: "fan power limit", patch: [], is: "met" },
  {
    rule: "fan power limit",
    patch: [
      ["pressure: 2 in.wg", "pressure: 9 in.wg"],
      ["motor power: 25 hp", "motor power: 75 hp"],
    ],
    is: "missed",
  },
  { rule: "fan energy index", patch: [], is: "met" },
  {
    rule: "fan energy index",
    patch: [["diameter: 22.25 in", "diameter: 33 in"]],
    is: "missed",
  },
  { rule: "pressure within the unit", patch: [], is: "met" },
  { rule: "pressure within the unit", patch: [["design: 14000 cfm", "design: 22000 cfm"]], is: "missed" },
  { rule: "unit size cap", patch: [], is: "met" },
  { rule: "unit size cap", patch: [["design: 14000 cfm", "design: 26000 cfm"]], is: "missed" },
];
