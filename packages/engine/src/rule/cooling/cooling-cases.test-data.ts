import type { RuleCase } from "../rule-case.test-data.ts";

/** Cases of the family. */
export const coolingCases: readonly RuleCase[] = [
  { rule: "cooling face velocity", patch: [], is: "met", limit: 2.54 },
  { rule: "cooling face velocity", patch: [["design: 14000 cfm", "design: 20000 cfm"]], is: "missed" },
  { rule: "carry-over at the largest flow", patch: [], is: "met", limit: 2.794 },
  {
    rule: "carry-over at the largest flow",
    patch: [
      ["design: 14000 cfm", "design: 20000 cfm"],
      ["fins: 10 per in", "fins: 12 per in"],
    ],
    is: "missed",
    limit: 2.54,
  },
  {
    rule: "carry-over with the fins' coat",
    patch: [["fins: 10 per in", "fins: 12 per in, fin material: epoxy-coated aluminium"]],
    is: "met",
    limit: 2.286,
  },
  {
    rule: "carry-over with the fins' coat",
    patch: [
      ["design: 14000 cfm", "design: 18000 cfm"],
      ["fins: 10 per in", "fins: 12 per in, fin material: epoxy-coated aluminium"],
    ],
    is: "missed",
  },
  { rule: "carry-over with the fins' coat", patch: [], is: "not asked" },
];
