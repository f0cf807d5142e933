import type { RuleCase } from "../rule-case.test-data.ts";

/** Cases of the family. */
export const louverCases: readonly RuleCase[] = [
  { rule: "louver below its onset of penetration", patch: [], is: "met" },
  {
    rule: "louver below its onset of penetration",
    patch: [
      [
        "louver: typical drainable 6 in, exposure: behind a hood",
        "louver: typical drainable 6 in, height: 40 in, exposure: behind a hood",
      ],
    ],
    is: "missed",
  },
  { rule: "louver margin to its onset", patch: [], is: "met" },
  {
    rule: "louver margin to its onset",
    patch: [
      [
        "louver: typical drainable 6 in, exposure: behind a hood",
        "louver: typical drainable 6 in, height: 40 in, exposure: behind a hood",
      ],
    ],
    is: "missed",
  },
  {
    rule: "louver face velocity",
    patch: [["louver: typical drainable 6 in, exposure: behind a hood", "louver: typical drainable 6 in"]],
    is: "met",
  },
  {
    rule: "louver face velocity",
    patch: [
      ["louver: typical drainable 6 in, exposure: behind a hood", "louver: typical drainable 6 in, height: 40 in"],
    ],
    is: "missed",
  },
  { rule: "louver pressure loss", patch: [], is: "met" },
  {
    rule: "louver pressure loss",
    patch: [
      [
        "louver: typical drainable 6 in, exposure: behind a hood",
        "louver: typical drainable 6 in, height: 40 in, exposure: behind a hood",
      ],
    ],
    is: "missed",
  },
  { rule: "drain behind the louver", patch: [], is: "met" },
  {
    rule: "drain behind the louver",
    patch: [
      [
        "louver: typical drainable 6 in, exposure: behind a hood",
        "louver: typical drainable 6 in, exposure: behind a hood, drain pan: no",
      ],
    ],
    is: "missed",
  },
  {
    rule: "wind-driven rain class",
    patch: [
      ["louver: typical drainable 6 in, exposure: behind a hood", "louver: typical wind-driven-rain vertical 5 in"],
    ],
    is: "met",
  },
  {
    rule: "wind-driven rain class",
    patch: [["louver: typical drainable 6 in, exposure: behind a hood", "louver: typical drainable 6 in"]],
    is: "missed",
  },
];
