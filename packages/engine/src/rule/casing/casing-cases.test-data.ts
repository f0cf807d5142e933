import type { RuleCase } from "../rule-case.test-data.ts";

/** Cases of the family. */
export const casingCases: readonly RuleCase[] = [
  { rule: "casing leakage class", patch: [], is: "met" },
  { rule: "casing leakage class", patch: [["leakage class: 1.2", "leakage class: 6"]], is: "missed" },
  { rule: "casing leakage share", patch: [], is: "met" },
  { rule: "casing leakage share", patch: [["leakage class: 1.2", "leakage class: 12"]], is: "missed" },
  { rule: "casing leakage by EN 1886", patch: [], is: "met" },
  { rule: "casing leakage by EN 1886", patch: [["leakage class: 1.2", "leakage class: 3"]], is: "missed" },
  { rule: "wall deflection", patch: [], is: "met" },
  {
    rule: "wall deflection",
    patch: [
      [
        "panel thickness: 3 in",
        "panel thickness: 1 in, panel core: mineral wool, panel width: 72 in, outer gauge: 22, inner gauge: 22",
      ],
    ],
    is: "missed",
  },
  { rule: "walls at shut-off pressure", patch: [], is: "met" },
  {
    rule: "walls at shut-off pressure",
    patch: [
      [
        "panel thickness: 3 in",
        "panel thickness: 1 in, panel core: mineral wool, panel width: 72 in, outer gauge: 22, inner gauge: 22",
      ],
    ],
    is: "missed",
  },
  {
    rule: "no sweating outside",
    patch: [
      ["dew point day: { dry bulb: 83 °F, dew point: 77 °F }", "dew point day: { dry bulb: 83 °F, dew point: 50 °F }"],
      ["wet bulb day: { dry bulb: 87 °F, wet bulb: 79 °F }", "wet bulb day: { dry bulb: 87 °F, wet bulb: 62 °F }"],
      ["dry bulb day: { dry bulb: 94 °F, wet bulb: 76 °F }", "dry bulb day: { dry bulb: 94 °F, wet bulb: 64 °F }"],
    ],
    is: "met",
  },
  {
    rule: "no sweating outside",
    patch: [["panel thickness: 3 in", "panel thickness: 3 in, frame: steel tube"]],
    is: "missed",
  },
  { rule: "no sweating inside", patch: [], is: "met" },
  {
    rule: "no sweating inside",
    patch: [
      ["winter: { dry bulb: 5 °F, relative humidity: 70 % }", "winter: { dry bulb: -30 °F, relative humidity: 70 % }"],
      ["winter supply: 60 °F", "winter supply: 60 °F, winter minimum dew point: 50 °F"],
      [
        "- { kind: access, name: fan access, length: 30 in }",
        "- { kind: steam humidifier, dispersion: typical tube panel 6 in }",
      ],
      ["panel thickness: 3 in", "panel thickness: 3 in, frame: steel tube"],
    ],
    is: "missed",
  },
  { rule: "casing insulation", patch: [], is: "met" },
  { rule: "casing insulation", patch: [["panel thickness: 3 in", "panel thickness: 1 in"]], is: "missed" },
  { rule: "casing supports", patch: [], is: "met" },
  { rule: "casing supports", patch: [["support spacing: 60 in", "support spacing: 96 in"]], is: "missed" },
  { rule: "rail stress", patch: [], is: "met" },
  {
    rule: "rail stress",
    patch: [
      ["rail height: 12 in", "rail height: 2 in, rail thickness: 0.1 in"],
      ["support spacing: 60 in", "support spacing: 240 in"],
    ],
    is: "missed",
  },
  { rule: "wet-zone materials", patch: [], is: "met" },
  { rule: "wet-zone materials", patch: [["corrosion class: C3", "corrosion class: C5"]], is: "missed" },
];
