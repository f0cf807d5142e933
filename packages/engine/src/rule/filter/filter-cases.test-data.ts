import type { RuleCase } from "../rule-case.test-data.ts";

/** Cases of the family. */
export const filterCases: readonly RuleCase[] = [
  { rule: "filter panel velocity", patch: [], is: "met" },
  { rule: "filter panel velocity", patch: [["design: 14000 cfm", "design: 32000 cfm"]], is: "missed" },
  { rule: "angled rack section velocity", patch: [["length: 44 in }", "rack: angled, length: 44 in }"]], is: "met" },
  {
    rule: "angled rack section velocity",
    patch: [
      ["length: 44 in }", "rack: angled, length: 44 in }"],
      ["design: 14000 cfm", "design: 22000 cfm"],
    ],
    is: "missed",
  },
  {
    rule: "clean filter resistance",
    patch: [["medium: typical MERV 14 rigid 12 in", "medium: typical MERV 14 V-bank 12 in"]],
    is: "met",
  },
  { rule: "clean filter resistance", patch: [], is: "missed" },
  { rule: "filter before wet surfaces", patch: [], is: "met" },
  {
    rule: "filter before wet surfaces",
    patch: [
      [
        "- { kind: filter bank, name: filters, medium: typical MERV 14 rigid 12 in, prefilter: typical MERV 8 pleated 2 in, length: 44 in }\n",
        "- { kind: spray gap, name: gap }\n",
      ],
    ],
    is: "missed",
  },
  { rule: "laboratory filter efficiency", patch: [], is: "met" },
  {
    rule: "laboratory filter efficiency",
    patch: [
      [
        "medium: typical MERV 14 rigid 12 in, prefilter: typical MERV 8 pleated 2 in",
        "medium: typical MERV 8 pleated 2 in",
      ],
    ],
    is: "missed",
  },
  { rule: "filter medium area", patch: [], is: "met" },
  {
    rule: "filter medium area",
    patch: [["medium: typical MERV 14 rigid 12 in", "medium: typical MERV 8 pleated 2 in"]],
    is: "missed",
  },
  { rule: "filter bypass", patch: [["length: 44 in }", "crack width: 0.02 mm, length: 44 in }"]], is: "met" },
  { rule: "filter bypass", patch: [["length: 44 in }", "crack width: 2 mm, length: 44 in }"]], is: "missed" },
  {
    rule: "filter behind a wet coil",
    patch: [
      [
        "- { kind: discharge",
        "- { kind: filter bank, name: final filters, medium: typical MERV 14 rigid 12 in, length: 44 in }\n    - { kind: discharge",
      ],
      ["design: 14000 cfm", "design: 12000 cfm"],
    ],
    is: "met",
  },
  {
    rule: "filter behind a wet coil",
    patch: [
      [
        "- { kind: discharge",
        "- { kind: filter bank, name: final filters, medium: typical MERV 14 rigid 12 in, length: 44 in }\n    - { kind: discharge",
      ],
      ["design: 14000 cfm", "design: 18000 cfm"],
    ],
    is: "missed",
  },
];
