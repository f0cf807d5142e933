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
  { rule: "eliminator need", patch: [], is: "met" },
  { rule: "eliminator need", patch: [["design: 14000 cfm", "design: 18000 cfm"]], is: "missed" },
  { rule: "even flow on the cooling coil", patch: [], is: "met" },
  {
    rule: "even flow on the cooling coil",
    patch: [
      [
        "- { kind: access, name: coil access, length: 30 in }",
        "- { kind: shut-off damper, name: second damper, damper: typical airfoil opposed class 1A, width: 40 in, height: 40 in }",
      ],
    ],
    is: "missed",
  },
  {
    rule: "cleanable coil",
    patch: [
      [
        "kind: chilled-water coil, name: cooling coil, stacked: 2, rows: 8, fins: 10 per in",
        "kind: chilled-water coil, name: cooling coil, stacked: 2, rows: 4, fins: 8 per in",
      ],
    ],
    is: "met",
  },
  {
    rule: "cleanable coil",
    patch: [
      [
        "kind: chilled-water coil, name: cooling coil, stacked: 2, rows: 8, fins: 10 per in",
        "kind: chilled-water coil, name: cooling coil, stacked: 2, rows: 12, fins: 14 per in",
      ],
    ],
    is: "missed",
  },
  { rule: "cooling coil rows", patch: [], is: "met" },
  {
    rule: "cooling coil rows",
    patch: [
      [
        "kind: chilled-water coil, name: cooling coil, stacked: 2, rows: 8, fins: 10 per in",
        "kind: chilled-water coil, name: cooling coil, stacked: 2, rows: 10, fins: 10 per in",
      ],
    ],
    is: "missed",
  },
  { rule: "cooling coil fins", patch: [], is: "met" },
  {
    rule: "cooling coil fins",
    patch: [
      [
        "kind: chilled-water coil, name: cooling coil, stacked: 2, rows: 8, fins: 10 per in",
        "kind: chilled-water coil, name: cooling coil, stacked: 2, rows: 8, fins: 14 per in",
      ],
    ],
    is: "missed",
  },
  { rule: "water velocity in the tubes", patch: [], is: "met" },
  {
    rule: "water velocity in the tubes",
    patch: [
      [
        "kind: chilled-water coil, name: cooling coil, stacked: 2, rows: 8, fins: 10 per in",
        "kind: chilled-water coil, name: cooling coil, stacked: 2, rows: 8, fins: 10 per in, circuits: 8",
      ],
    ],
    is: "missed",
  },
  { rule: "water pressure drop", patch: [], is: "met" },
  {
    rule: "water pressure drop",
    patch: [
      [
        "kind: chilled-water coil, name: cooling coil, stacked: 2, rows: 8, fins: 10 per in",
        "kind: chilled-water coil, name: cooling coil, stacked: 2, rows: 8, fins: 10 per in, circuits: 8",
      ],
    ],
    is: "missed",
  },
  {
    rule: "turbulent water at small load",
    patch: [["winter: { dry bulb: 5 °F", "winter: { dry bulb: 5 °F"]],
    is: "met",
  },
  {
    rule: "turbulent water at small load",
    patch: [
      [
        "kind: chilled-water coil, name: cooling coil, stacked: 2, rows: 8, fins: 10 per in",
        "kind: chilled-water coil, name: cooling coil, stacked: 2, rows: 8, fins: 10 per in, circuits: 92",
      ],
      ["minimum: 9500 cfm", "minimum: 5000 cfm"],
    ],
    is: "missed",
  },
];
