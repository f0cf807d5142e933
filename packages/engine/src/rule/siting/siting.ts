import { type Machine, machineRule, type Rule } from "../contract.ts";
import { inches } from "../inch-pound-limits.ts";

type Distance = keyof Machine["duty"]["site"]["intakeDistances"];

function distanceRule(
  id: string,
  field: Distance,
  from: string,
  feet: number,
  covers: readonly string[],
  source: string,
  certainty: Rule["certainty"],
  protects: string,
): Rule {
  return machineRule({
    id,
    covers,
    protects,
    measures: `distance from the intake to ${from}`,
    quantity: "length",
    sense: "at least",
    limit: inches(12 * feet),
    source,
    certainty,
    severity: "hazard",
    remedy: "another place for the unit or its intake",
    mends: [{ at: "duty", field: `site.intakeDistances.${field}`, way: "more" }],
    of: "unit",
    missing: `the duty does not give \`intake distances\` to ${from}, under \`site\``,
    value: ({ duty }) =>
      duty.site.placement === "indoor" ? undefined : (duty.site.intakeDistances[field] ?? Number.NaN),
  });
}

/** What the intake must keep away from. Laboratory hood exhaust is for its own standards and the designer's dispersion study. */
export const sitingRules: readonly Rule[] = [
  distanceRule(
    "intake to exhaust",
    "exhaust",
    "the nearest exhaust or plumbing vent",
    15,
    ["INT-01", "INT-03"],
    "ufc-4-171-05 15 ft; ashrae-62-1 table 5.5.1 has 10, 15 and 30 ft by class of air",
    "read",
    "people from exhaust air drawn in again",
  ),
  distanceRule(
    "intake to cooling tower",
    "coolingTower",
    "cooling towers and stacks",
    25,
    ["INT-01", "INT-04"],
    "mil-hdbk-1003-3 6.5 and ashrae-62-1 table 5.5.1, 25 ft from a tower's exhaust",
    "read",
    "people from legionella and combustion gas",
  ),
  distanceRule(
    "intake to traffic",
    "traffic",
    "truck docks and busy roads",
    25,
    ["INT-01"],
    "ashrae-62-1 table 5.5.1 truck dock or idling 25 ft, quoted",
    "second-hand",
    "people from engine exhaust",
  ),
  distanceRule(
    "intake to lot line or hazard",
    "lotLine",
    "the lot line or a hazardous source",
    10,
    ["INT-02"],
    "international-mechanical-code 401.4, quoted",
    "second-hand",
    "people from what a neighbour lets out",
  ),
  distanceRule(
    "intake above surface",
    "surfaceBelow",
    "the roof or ground below it, snow counted",
    1,
    ["INT-01", "INT-09"],
    "ashrae-62-1 table 5.5.1 measured from the snow expected, quoted",
    "second-hand",
    "the intake from drifted snow and splashed rain",
  ),
  distanceRule(
    "intake above grade",
    "grade",
    "the ground that people can reach",
    10,
    ["INT-03"],
    "ufc-4-171-05 10 ft above grade",
    "read",
    "the building from what somebody throws in",
  ),
];
