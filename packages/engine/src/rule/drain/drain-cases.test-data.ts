import type { RuleCase } from "../rule-case.test-data.ts";

/** Cases of the family. */
export const drainCases: readonly RuleCase[] = [
  { rule: "rail for the condensate trap", patch: [], is: "met" },
  { rule: "rail for the condensate trap", patch: [["rail height: 12 in", "rail height: 6 in"]], is: "missed" },
  { rule: "least rail height", patch: [], is: "met" },
  { rule: "least rail height", patch: [["rail height: 12 in", "rail height: 4 in"]], is: "missed" },
  { rule: "trap keeps its seal at shut-off", patch: [["pressure: 2 in.wg", "pressure: 0.1 in.wg"]], is: "met" },
  { rule: "trap keeps its seal at shut-off", patch: [], is: "missed" },
];
