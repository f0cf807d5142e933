import type { RuleCase } from "../rule-case.test-data.ts";

/** Cases of the family. */
export const serviceCases: readonly RuleCase[] = [
  { rule: "clear length of an access", patch: [], is: "met" },
  {
    rule: "clear length of an access",
    patch: [["name: fan access, length: 30 in", "name: fan access, length: 16 in, door width: 14 in"]],
    is: "missed",
  },
  { rule: "access door width", patch: [], is: "met" },
  {
    rule: "access door width",
    patch: [["name: fan access, length: 30 in", "name: fan access, length: 30 in, door width: 16 in"]],
    is: "missed",
  },
  { rule: "access lit", patch: [], is: "met" },
  {
    rule: "access lit",
    patch: [["name: fan access, length: 30 in", "name: fan access, length: 30 in, light: no"]],
    is: "missed",
  },
  { rule: "doors open against the pressure", patch: [], is: "met" },
  {
    rule: "doors open against the pressure",
    patch: [["name: fan access, length: 30 in", "name: fan access, length: 30 in, swing: inward"]],
    is: "missed",
  },
  { rule: "filters reached by a door", patch: [], is: "met" },
  {
    rule: "filters reached by a door",
    patch: [
      ["- { kind: access, name: filter access, length: 30 in }\n    ", ""],
      ["length: 44 in }", "length: 22 in }"],
    ],
    is: "missed",
  },
  { rule: "coil reached from one side", patch: [], is: "met" },
  {
    rule: "coil reached from one side",
    patch: [
      ["- { kind: access, name: coil access, length: 30 in }\n    ", ""],
      ["- { kind: access, name: fan access, length: 30 in }\n    ", ""],
    ],
    is: "missed",
  },
  { rule: "room to draw the coil", patch: [], is: "met" },
  { rule: "room to draw the coil", patch: [["service side: 12 ft", "service side: 5 ft"]], is: "missed" },
  { rule: "room to draw the coil", patch: [["service side: 12 ft, ", ""]], is: "cannot tell" },
  { rule: "working space before the unit", patch: [], is: "met" },
  { rule: "working space before the unit", patch: [["service side: 12 ft", "service side: 2 ft"]], is: "missed" },
  {
    rule: "way out for the motor",
    patch: [["name: fan access, length: 30 in", "name: fan access, length: 40 in, door width: 32 in"]],
    is: "met",
  },
  { rule: "way out for the motor", patch: [], is: "missed" },
];
