import type { RuleCase } from "../rule-case.test-data.ts";

/** Cases of the family. */
export const panCases: readonly RuleCase[] = [
  { rule: "pan reach behind the coil", patch: [], is: "met" },
  { rule: "pan reach behind the coil", patch: [["pan reach: 44 in", "pan reach: 20 in"]], is: "missed" },
  { rule: "pan reach half the coil's height", patch: [], is: "met" },
  { rule: "pan reach half the coil's height", patch: [["pan reach: 44 in", "pan reach: 10 in"]], is: "missed" },
  { rule: "intermediate pans", patch: [], is: "met" },
  { rule: "intermediate pans", patch: [["pan reach: 44 in", "intermediate pans: no, pan reach: 44 in"]], is: "missed" },
  { rule: "pan within an arm's reach", patch: [], is: "met", limit: 0.6096 },
  {
    rule: "pan within an arm's reach",
    patch: [
      ["{ kind: access, name: coil access, length: 30 in }", "{ kind: spray gap }"],
      [
        "{ kind: access, name: fan access, length: 30 in }",
        "{ kind: moisture eliminator, eliminator: typical two-bend 6 in }",
      ],
    ],
    is: "missed",
  },
  { rule: "coil height over a pan", patch: [], is: "met" },
  { rule: "coil height over a pan", patch: [["stacked: 2", "stacked: 1"]], is: "missed" },
];
