import type { Patch, RuleCase } from "../rule-case.test-data.ts";

const throttled: Patch = [
  [
    "kind: steam coil with face and bypass, name: preheat coil, rows: 1",
    "kind: steam coil, name: preheat coil, rows: 2",
  ],
  ["condensate return pressure: 0 psig", "condensate return pressure: 9 psig"],
];

/** Cases of the family. */
export const steamCases: readonly RuleCase[] = [
  { rule: "steam stall in frost", patch: [], is: "met" },
  { rule: "steam stall in frost", patch: throttled, is: "missed" },
  { rule: "stall temperature", patch: [], is: "met" },
  { rule: "stall temperature", patch: throttled, is: "missed" },
  { rule: "steam pressure in cold air", patch: [], is: "met", limit: 34473.785 },
  { rule: "steam pressure in cold air", patch: throttled, is: "missed" },
];
