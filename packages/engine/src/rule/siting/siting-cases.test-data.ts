import type { RuleCase } from "../rule-case.test-data.ts";

/** Cases of the family. */
export const sitingCases: readonly RuleCase[] = [
  { rule: "intake to exhaust", patch: [], is: "met" },
  { rule: "intake to exhaust", patch: [["exhaust: 40 ft", "exhaust: 12 ft"]], is: "missed" },
  { rule: "intake to cooling tower", patch: [], is: "met" },
  { rule: "intake to cooling tower", patch: [["cooling tower: 60 ft", "cooling tower: 20 ft"]], is: "missed" },
  { rule: "intake to traffic", patch: [], is: "met" },
  { rule: "intake to traffic", patch: [["traffic: 80 ft", "traffic: 20 ft"]], is: "missed" },
  { rule: "intake to lot line or hazard", patch: [], is: "met" },
  { rule: "intake to lot line or hazard", patch: [["lot line: 30 ft", "lot line: 8 ft"]], is: "missed" },
  { rule: "intake above surface", patch: [], is: "met" },
  { rule: "intake above surface", patch: [["surface below: 4 ft", "surface below: 0.5 ft"]], is: "missed" },
  { rule: "intake above grade", patch: [], is: "met" },
  { rule: "intake above grade", patch: [["grade: 30 ft", "grade: 6 ft"]], is: "missed" },
  { rule: "intake to exhaust", patch: [["exhaust: 40 ft, ", ""]], is: "cannot tell" },
];
