import type { RuleCase } from "../rule-case.test-data.ts";

/** Cases of the family. */
export const freezeCases: readonly RuleCase[] = [
  { rule: "coldest filament at the freezestat", patch: [], is: "met" },
  {
    rule: "coldest filament at the freezestat",
    patch: [
      [
        "kind: steam coil with face and bypass, name: preheat coil, rows: 1, fins: 8 per in",
        "kind: steam coil with face and bypass, name: preheat coil, rows: 1, fins: 8 per in, mixing effectiveness: 0 %",
      ],
    ],
    is: "missed",
  },
  { rule: "coldest air at the cooling coil", patch: [], is: "met" },
  {
    rule: "coldest air at the cooling coil",
    patch: [
      [
        "kind: steam coil with face and bypass, name: preheat coil, rows: 1, fins: 8 per in",
        "kind: steam coil with face and bypass, name: preheat coil, rows: 1, fins: 8 per in, mixing effectiveness: 0 %",
      ],
    ],
    is: "missed",
  },
  { rule: "tube wall above freezing", patch: [], is: "met" },
  {
    rule: "tube wall above freezing",
    patch: [
      [
        "- { kind: steam coil with face and bypass, name: preheat coil, rows: 1, fins: 8 per in }\n",
        "- { kind: spray gap, name: gap }\n",
      ],
    ],
    is: "missed",
  },
  { rule: "tube wall above freezing in a stop", patch: [], is: "met" },
  {
    rule: "tube wall above freezing in a stop",
    patch: [
      [
        "condensate return pressure: 0 psig, valve fails: open",
        "condensate return pressure: 0 psig, valve fails: closed",
      ],
    ],
    is: "missed",
  },
  {
    rule: "time to freeze in a stop",
    patch: [
      [
        "condensate return pressure: 0 psig, valve fails: open",
        "condensate return pressure: 0 psig, valve fails: closed",
      ],
      ["winter: { dry bulb: 5 °F", "winter: { dry bulb: 31.5 °F"],
    ],
    is: "met",
  },
  {
    rule: "time to freeze in a stop",
    patch: [
      [
        "condensate return pressure: 0 psig, valve fails: open",
        "condensate return pressure: 0 psig, valve fails: closed",
      ],
    ],
    is: "missed",
  },
  {
    rule: "pumped hot-water coil",
    patch: [
      ["  utilities:\n", "  utilities:\n    heating water: { supply: 160 °F, drop: 30 F° }\n"],
      [
        "kind: steam coil with face and bypass, name: preheat coil, rows: 1, fins: 8 per in",
        "kind: hot-water coil, name: preheat coil, rows: 3, fins: 8 per in, control: pumped loop",
      ],
    ],
    is: "met",
  },
  {
    rule: "pumped hot-water coil",
    patch: [
      ["  utilities:\n", "  utilities:\n    heating water: { supply: 160 °F, drop: 30 F° }\n"],
      [
        "kind: steam coil with face and bypass, name: preheat coil, rows: 1, fins: 8 per in",
        "kind: hot-water coil, name: preheat coil, rows: 3, fins: 8 per in",
      ],
    ],
    is: "missed",
  },
];
