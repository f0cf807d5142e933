import type { RuleCase } from "../rule-case.test-data.ts";

/** Cases of the family. */
export const fanCases: readonly RuleCase[] = [
  { rule: "fan pressure below its peak", patch: [], is: "met", limit: 0.9 },
  { rule: "fan pressure below its peak", patch: [["diameter: 22.25 in", "diameter: 27 in"]], is: "missed" },
  { rule: "fan stable", patch: [], is: "met" },
  { rule: "fan stable", patch: [["diameter: 22.25 in", "diameter: 33 in"]], is: "missed" },
  { rule: "motor load", patch: [], is: "met" },
  { rule: "motor load", patch: [["motor power: 25 hp", "motor power: 10 hp"]], is: "missed" },
  { rule: "motor never overloads on the curve", patch: [], is: "met" },
  { rule: "motor never overloads on the curve", patch: [["motor power: 25 hp", "motor power: 10 hp"]], is: "missed" },
  { rule: "wheel speed", patch: [], is: "met" },
  {
    rule: "wheel speed",
    patch: [
      ["class: II", "class: I"],
      ["pressure: 2 in.wg", "pressure: 5 in.wg"],
    ],
    is: "missed",
  },
  { rule: "fan inlet clearance", patch: [], is: "met" },
  { rule: "fan inlet clearance", patch: [["casing: { width: 96 in", "casing: { width: 74 in"]], is: "missed" },
  { rule: "space from coil to fan", patch: [], is: "met" },
  {
    rule: "space from coil to fan",
    patch: [
      ["upstream space: 26 in", "upstream space: 10 in"],
      ["- { kind: access, name: fan access, length: 30 in }\n    ", ""],
    ],
    is: "missed",
  },
  { rule: "fan outlet duct", patch: [], is: "met" },
  { rule: "fan outlet duct", patch: [["outlet duct: 90 in", "outlet duct: 10 in"]], is: "missed" },
  { rule: "speed control on large motors", patch: [], is: "met" },
  {
    rule: "speed control on large motors",
    patch: [["motor power: 25 hp", "motor power: 25 hp, speed controlled: no"]],
    is: "missed",
  },
  { rule: "fan turndown", patch: [], is: "met" },
  { rule: "fan turndown", patch: [["minimum: 9500 cfm", "minimum: 500 cfm"]], is: "missed" },
  { rule: "bearing life", patch: [], is: "met" },
  { rule: "bearing life", patch: [["motor power: 25 hp", "motor power: 25 hp, bearing life: 20000 h"]], is: "missed" },
  {
    rule: "motors of an array",
    patch: [
      [
        "kind: fan, diameter: 22.25 in, outlet duct: 90 in, class: II, motor power: 25 hp",
        "kind: fan, wheel: typical airfoil plenum wheel, diameter: 18.25 in, count: 4, class: II, motor power: 7.5 hp",
      ],
    ],
    is: "met",
  },
  {
    rule: "motors of an array",
    patch: [
      [
        "kind: fan, diameter: 22.25 in, outlet duct: 90 in, class: II, motor power: 25 hp",
        "kind: fan, wheel: typical airfoil plenum wheel, diameter: 18.25 in, count: 4, class: II, motor power: 15 hp",
      ],
    ],
    is: "missed",
  },
  {
    rule: "redundant fans",
    patch: [
      ["airflow with one fan out: 0 %", "airflow with one fan out: 50 %"],
      [
        "kind: fan, diameter: 22.25 in, outlet duct: 90 in, class: II, motor power: 25 hp",
        "kind: fan, wheel: typical airfoil plenum wheel, diameter: 18.25 in, count: 4, class: II, motor power: 7.5 hp",
      ],
    ],
    is: "met",
  },
  {
    rule: "redundant fans",
    patch: [["airflow with one fan out: 0 %", "airflow with one fan out: 50 %"]],
    is: "missed",
  },
];
