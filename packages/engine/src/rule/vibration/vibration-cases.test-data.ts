import type { RuleCase } from "../rule-case.test-data.ts";

/** Cases of the family. */
export const vibrationCases: readonly RuleCase[] = [
  { rule: "springs do not amplify", patch: [], is: "met" },
  { rule: "springs do not amplify", patch: [["minimum: 9500 cfm", "minimum: 900 cfm"]], is: "missed" },
  { rule: "springs isolate at design", patch: [], is: "met" },
  {
    rule: "springs isolate at design",
    patch: [
      ["motor power: 25 hp", "motor power: 25 hp, springs: typical spring 0.75 in"],
      ["design: 14000 cfm, minimum: 9500 cfm", "design: 3500 cfm"],
      ["pressure: 2 in.wg", "pressure: 0.3 in.wg"],
    ],
    is: "missed",
  },
  { rule: "spring deflection", patch: [], is: "met" },
  {
    rule: "spring deflection",
    patch: [["motor power: 25 hp", "motor power: 25 hp, springs: typical spring 0.75 in, floor: 40 ft"]],
    is: "missed",
  },
];
