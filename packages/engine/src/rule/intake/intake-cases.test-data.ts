import type { RuleCase } from "../rule-case.test-data.ts";

/** Cases of the family. */
export const intakeCases: readonly RuleCase[] = [
  { rule: "intake hood velocity", patch: [], is: "met", limit: 2.54 },
  { rule: "intake hood velocity", patch: [["projection: 66 in", "projection: 40 in"]], is: "missed" },
  { rule: "hood velocity in snow", patch: [], is: "met", limit: 1.524 },
  { rule: "hood velocity in snow", patch: [["snow: light", "snow: drifting"]], is: "missed", limit: 1.016 },
  { rule: "hood velocity in snow", patch: [["snow: light", "snow: none"]], is: "not asked" },
  { rule: "hood open downward", patch: [], is: "met" },
  { rule: "hood open downward", patch: [["projection: 66 in", "projection: 66 in, opening: vertical"]], is: "missed" },
  { rule: "bird screen mesh", patch: [], is: "met", value: 0.0127 },
  {
    rule: "bird screen mesh",
    patch: [["projection: 66 in", "projection: 66 in, screen: typical insect screen 1/8 in"]],
    is: "missed",
  },
  { rule: "screen counted partly clogged", patch: [], is: "met" },
  {
    rule: "screen counted partly clogged",
    patch: [["projection: 66 in", "projection: 66 in, clogged share: 0 %"]],
    is: "missed",
  },
];
