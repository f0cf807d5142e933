import type { RuleCase } from "../rule-case.test-data.ts";

/** Cases of the family. */
export const soundCases: readonly RuleCase[] = [
  { rule: "sound at the intake", patch: [], is: "met" },
  { rule: "sound at the intake", patch: [["intake: 110 dB", "intake: 40 dB"]], is: "missed" },
  { rule: "sound at the discharge", patch: [], is: "met" },
  { rule: "sound at the discharge", patch: [["discharge: 115 dB", "discharge: 40 dB"]], is: "missed" },
  { rule: "sound at the casing", patch: [], is: "met" },
  { rule: "sound at the casing", patch: [["casing: 110 dB", "casing: 40 dB"]], is: "missed" },
];
