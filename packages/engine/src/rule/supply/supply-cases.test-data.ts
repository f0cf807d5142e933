import type { RuleCase } from "../rule-case.test-data.ts";

/** Cases of the family. */
export const supplyCases: readonly RuleCase[] = [
  { rule: "supply temperature held", patch: [], is: "met" },
  { rule: "supply temperature held", patch: [["winter supply: 60 °F", "winter supply: 110 °F"]], is: "missed" },
  { rule: "supply dew point held", patch: [], is: "met" },
  { rule: "supply dew point held", patch: [["maximum dew point: 54.5 °F", "maximum dew point: 45 °F"]], is: "missed" },
  {
    rule: "winter dew point held",
    patch: [
      ["winter supply: 60 °F", "winter supply: 60 °F, winter minimum dew point: 0 °F"],
      ["dry bulb: 5 °F, relative humidity: 70 %", "dry bulb: 5 °F, relative humidity: 98 %"],
    ],
    is: "met",
  },
  {
    rule: "winter dew point held",
    patch: [["winter supply: 60 °F", "winter supply: 60 °F, winter minimum dew point: 40 °F"]],
    is: "missed",
  },
  {
    rule: "airflow held",
    patch: [["motor power: 25 hp", "motor power: 25 hp, speed controlled: no, fixed speed: 2300 rpm"]],
    is: "met",
  },
  {
    rule: "airflow held",
    patch: [["motor power: 25 hp", "motor power: 25 hp, speed controlled: no, fixed speed: 900 rpm"]],
    is: "missed",
  },
];
