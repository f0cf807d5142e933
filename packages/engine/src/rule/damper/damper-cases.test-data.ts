import type { RuleCase } from "../rule-case.test-data.ts";

/** Cases of the family. */
export const damperCases: readonly RuleCase[] = [
  { rule: "damper leakage at real pressure", patch: [], is: "met" },
  {
    rule: "damper leakage at real pressure",
    patch: [
      ["damper: typical airfoil opposed class 1A, width: 72", "damper: typical airfoil opposed class 1, width: 72"],
    ],
    is: "missed",
  },
  {
    rule: "outside-air share",
    patch: [
      [
        "kind: shut-off damper, name: intake damper, damper: typical airfoil opposed class 1A, width: 72 in, height: 60 in",
        "kind: mixing box, name: mixing box, outside air: { damper: typical airfoil opposed class 1A, width: 72 in, height: 60 in, blade angle: 90 deg }, return air: { damper: typical airfoil opposed class 1A, width: 30 in, height: 16 in, blade angle: 10 deg }, control: hand set, length: 54 in",
      ],
      [
        "outside air share: 100 %",
        "outside air share: 80 %\n  return air:\n    summer: { dry bulb: 75 °F, relative humidity: 50 % }\n    winter: { dry bulb: 71 °F, relative humidity: 30 % }",
      ],
    ],
    is: "met",
  },
  {
    rule: "outside-air share",
    patch: [
      [
        "kind: shut-off damper, name: intake damper, damper: typical airfoil opposed class 1A, width: 72 in, height: 60 in",
        "kind: mixing box, name: mixing box, outside air: { damper: typical airfoil opposed class 1A, width: 72 in, height: 60 in, blade angle: 25 deg }, return air: { damper: typical airfoil opposed class 1A, width: 30 in, height: 16 in, blade angle: 90 deg }, control: hand set, length: 54 in",
      ],
      [
        "outside air share: 100 %",
        "outside air share: 80 %\n  return air:\n    summer: { dry bulb: 75 °F, relative humidity: 50 % }\n    winter: { dry bulb: 71 °F, relative humidity: 30 % }",
      ],
    ],
    is: "missed",
  },
  {
    rule: "no backflow to the building",
    patch: [
      [
        "kind: shut-off damper, name: intake damper, damper: typical airfoil opposed class 1A, width: 72 in, height: 60 in",
        "kind: mixing box, name: mixing box, outside air: { damper: typical airfoil opposed class 1A, width: 72 in, height: 60 in, blade angle: 90 deg }, return air: { damper: typical airfoil opposed class 1A, width: 30 in, height: 16 in, blade angle: 52 deg }, control: hand set, length: 54 in",
      ],
      [
        "outside air share: 100 %",
        "outside air share: 80 %\n  return air:\n    summer: { dry bulb: 75 °F, relative humidity: 50 % }\n    winter: { dry bulb: 71 °F, relative humidity: 30 % }",
      ],
    ],
    is: "met",
  },
  {
    rule: "no backflow to the building",
    patch: [
      [
        "kind: shut-off damper, name: intake damper, damper: typical airfoil opposed class 1A, width: 72 in, height: 60 in",
        "kind: mixing box, name: mixing box, outside air: { damper: typical airfoil opposed class 1A, width: 72 in, height: 60 in, blade angle: 90 deg }, return air: { damper: typical airfoil opposed class 1A, width: 30 in, height: 16 in, blade angle: 60 deg }, control: hand set, length: 54 in",
      ],
      [
        "outside air share: 100 %",
        "outside air share: 80 %\n  return air:\n    summer: { dry bulb: 75 °F, relative humidity: 50 % }\n    winter: { dry bulb: 71 °F, relative humidity: 30 % }\n    static pressure: -1 in.wg",
      ],
    ],
    is: "missed",
  },
  {
    rule: "outside damper velocity",
    patch: [
      [
        "kind: shut-off damper, name: intake damper, damper: typical airfoil opposed class 1A, width: 72 in, height: 60 in",
        "kind: mixing box, name: mixing box, outside air: { damper: typical airfoil opposed class 1A, width: 72 in, height: 60 in, blade angle: 90 deg }, return air: { damper: typical airfoil opposed class 1A, width: 30 in, height: 16 in, blade angle: 52 deg }, control: hand set, length: 54 in",
      ],
      [
        "outside air share: 100 %",
        "outside air share: 80 %\n  return air:\n    summer: { dry bulb: 75 °F, relative humidity: 50 % }\n    winter: { dry bulb: 71 °F, relative humidity: 30 % }",
      ],
    ],
    is: "met",
  },
  {
    rule: "outside damper velocity",
    patch: [
      [
        "kind: shut-off damper, name: intake damper, damper: typical airfoil opposed class 1A, width: 72 in, height: 60 in",
        "kind: mixing box, name: mixing box, outside air: { damper: typical airfoil opposed class 1A, width: 40 in, height: 30 in, blade angle: 90 deg }, return air: { damper: typical airfoil opposed class 1A, width: 30 in, height: 16 in, blade angle: 52 deg }, control: hand set, length: 54 in",
      ],
      [
        "outside air share: 100 %",
        "outside air share: 80 %\n  return air:\n    summer: { dry bulb: 75 °F, relative humidity: 50 % }\n    winter: { dry bulb: 71 °F, relative humidity: 30 % }",
      ],
    ],
    is: "missed",
  },
  {
    rule: "opposed or facing blades",
    patch: [
      [
        "kind: shut-off damper, name: intake damper, damper: typical airfoil opposed class 1A, width: 72 in, height: 60 in",
        "kind: mixing box, name: mixing box, outside air: { damper: typical airfoil opposed class 1A, width: 72 in, height: 60 in, blade angle: 90 deg }, return air: { damper: typical airfoil opposed class 1A, width: 30 in, height: 16 in, blade angle: 52 deg }, control: hand set, length: 54 in",
      ],
      [
        "outside air share: 100 %",
        "outside air share: 80 %\n  return air:\n    summer: { dry bulb: 75 °F, relative humidity: 50 % }\n    winter: { dry bulb: 71 °F, relative humidity: 30 % }",
      ],
    ],
    is: "met",
  },
  {
    rule: "opposed or facing blades",
    patch: [
      [
        "kind: shut-off damper, name: intake damper, damper: typical airfoil opposed class 1A, width: 72 in, height: 60 in",
        "kind: mixing box, name: mixing box, outside air: { damper: typical airfoil opposed class 1A, width: 72 in, height: 60 in, blade angle: 90 deg }, return air: { damper: typical airfoil parallel class 1A, width: 30 in, height: 16 in, blade angle: 52 deg }, control: hand set, length: 54 in",
      ],
      [
        "outside air share: 100 %",
        "outside air share: 80 %\n  return air:\n    summer: { dry bulb: 75 °F, relative humidity: 50 % }\n    winter: { dry bulb: 71 °F, relative humidity: 30 % }",
      ],
    ],
    is: "missed",
  },
  { rule: "outside air shut off in a winter stop", patch: [], is: "met" },
  {
    rule: "outside air shut off in a winter stop",
    patch: [
      [
        "kind: shut-off damper, name: intake damper, damper: typical airfoil opposed class 1A, width: 72 in, height: 60 in",
        "kind: mixing box, name: mixing box, outside air: { damper: typical airfoil opposed class 1A, width: 72 in, height: 60 in, blade angle: 90 deg }, return air: { damper: typical airfoil opposed class 1A, width: 30 in, height: 16 in, blade angle: 52 deg }, control: hand set, length: 54 in",
      ],
      [
        "outside air share: 100 %",
        "outside air share: 80 %\n  return air:\n    summer: { dry bulb: 75 °F, relative humidity: 50 % }\n    winter: { dry bulb: 71 °F, relative humidity: 30 % }",
      ],
    ],
    is: "missed",
  },
  {
    rule: "mixing alone does not protect",
    patch: [
      [
        "- { kind: steam coil with face and bypass, name: preheat coil, rows: 1, fins: 8 per in }\n",
        "- { kind: spray gap, name: gap }\n",
      ],
      ["winter: { dry bulb: 5 °F", "winter: { dry bulb: 45 °F"],
    ],
    is: "met",
  },
  {
    rule: "mixing alone does not protect",
    patch: [
      [
        "- { kind: steam coil with face and bypass, name: preheat coil, rows: 1, fins: 8 per in }\n",
        "- { kind: spray gap, name: gap }\n",
      ],
    ],
    is: "missed",
  },
];
