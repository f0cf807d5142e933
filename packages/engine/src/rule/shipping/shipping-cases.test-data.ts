import type { RuleCase } from "../rule-case.test-data.ts";

/** Cases of the family. */
export const shippingCases: readonly RuleCase[] = [
  { rule: "longest piece", patch: [], is: "met" },
  { rule: "longest piece", patch: [["shipping length: 40 ft", "shipping length: 4 ft"]], is: "missed" },
  { rule: "widest piece", patch: [], is: "met" },
  { rule: "widest piece", patch: [["shipping width: 10 ft", "shipping width: 8 ft"]], is: "missed" },
  { rule: "highest piece", patch: [], is: "met" },
  { rule: "highest piece", patch: [["shipping height: 10 ft", "shipping height: 8 ft"]], is: "missed" },
  { rule: "heaviest piece", patch: [], is: "met" },
  { rule: "heaviest piece", patch: [["shipping mass: 40000 lb", "shipping mass: 1200 lb"]], is: "missed" },
  { rule: "unit fits the site, longest", patch: [], is: "met" },
  { rule: "unit fits the site, longest", patch: [["length: 60 ft", "length: 20 ft"]], is: "missed" },
  { rule: "unit fits the site, widest", patch: [], is: "met" },
  { rule: "unit fits the site, widest", patch: [[" width: 14 ft", " width: 8 ft"]], is: "missed" },
  { rule: "unit fits the site, highest", patch: [], is: "met" },
  { rule: "unit fits the site, highest", patch: [[" height: 14 ft", " height: 7 ft"]], is: "missed" },
];
