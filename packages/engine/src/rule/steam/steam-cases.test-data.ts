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
  { rule: "steam coil rows", patch: [], is: "met" },
  {
    rule: "steam coil rows",
    patch: [
      [
        "kind: steam coil with face and bypass, name: preheat coil, rows: 1, fins: 8 per in",
        "kind: steam coil with face and bypass, name: preheat coil, rows: 3, fins: 8 per in",
      ],
    ],
    is: "missed",
  },
  { rule: "steam coil fins", patch: [], is: "met" },
  {
    rule: "steam coil fins",
    patch: [
      [
        "kind: steam coil with face and bypass, name: preheat coil, rows: 1, fins: 8 per in",
        "kind: steam coil with face and bypass, name: preheat coil, rows: 1, fins: 9 per in",
      ],
    ],
    is: "missed",
  },
  { rule: "heating face velocity", patch: [], is: "met" },
  { rule: "heating face velocity", patch: [["design: 14000 cfm", "design: 32000 cfm"]], is: "missed" },
  { rule: "drop leg to the steam trap", patch: [], is: "met" },
  {
    rule: "drop leg to the steam trap",
    patch: [
      [
        "kind: steam coil with face and bypass, name: preheat coil, rows: 1, fins: 8 per in",
        "kind: steam coil with face and bypass, name: preheat coil, rows: 1, fins: 8 per in, drop leg: 8 in",
      ],
    ],
    is: "missed",
  },
  { rule: "vacuum breaker", patch: [], is: "met" },
  {
    rule: "vacuum breaker",
    patch: [
      [
        "kind: steam coil with face and bypass, name: preheat coil, rows: 1, fins: 8 per in",
        "kind: steam coil with face and bypass, name: preheat coil, rows: 1, fins: 8 per in, vacuum breaker: no",
      ],
    ],
    is: "missed",
  },
  { rule: "float and thermostatic trap", patch: [], is: "met" },
  {
    rule: "float and thermostatic trap",
    patch: [
      [
        "kind: steam coil with face and bypass, name: preheat coil, rows: 1, fins: 8 per in",
        "kind: steam coil with face and bypass, name: preheat coil, rows: 1, fins: 8 per in, trap: inverted bucket",
      ],
    ],
    is: "missed",
  },
];
