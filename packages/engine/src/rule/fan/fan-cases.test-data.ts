import type { RuleCase } from "../rule-case.test-data.ts";

/** Cases of the family. */
export const fanCases: readonly RuleCase[] = [
  { rule: "fan pressure below its peak", patch: [], is: "met", limit: 0.9 },
  { rule: "fan pressure below its peak", patch: [["diameter: 22.25 in", "diameter: 27 in"]], is: "missed" },
  { rule: "fan stable", patch: [], is: "met" },
  { rule: "fan stable", patch: [["diameter: 22.25 in", "diameter: 33 in"]], is: "missed" },
  { rule: "motor load", patch: [], is: "met" },
  { rule: "motor load", patch: [["motor power: 25 hp", "motor power: 10 hp"]], is: "missed" },
  { rule: "motor never overloads on the curve", patch: [], is: "met" },
  { rule: "motor never overloads on the curve", patch: [["motor power: 25 hp", "motor power: 10 hp"]], is: "missed" },
  { rule: "wheel speed", patch: [], is: "met" },
  {
    rule: "wheel speed",
    patch: [
      ["class: II", "class: I"],
      ["pressure: 2 in.wg", "pressure: 5 in.wg"],
    ],
    is: "missed",
  },
];
