import type { RuleCase } from "../rule-case.test-data.ts";

/** Cases of the family. */
export const supplyCases: readonly RuleCase[] = [
  { rule: "supply temperature held", patch: [], is: "met" },
  { rule: "supply temperature held", patch: [["winter supply: 60 °F", "winter supply: 110 °F"]], is: "missed" },
];
