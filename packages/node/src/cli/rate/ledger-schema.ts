import { listOf, number, record, text } from "../schema/describe.ts";

const line = record(
  {
    section: text("name of the section, as in the job"),
    part: text("what takes the pressure"),
    pressure: number("Pa of total pressure; negative where it is added"),
    plane: text("which of the part's areas the velocity belongs to"),
    area: number("m²"),
    velocity: number("m/s in that area at that density"),
    density: number("kg/m³"),
    coefficient: number("loss over the velocity pressure in that area"),
    behind: number("Pa of total pressure against the surroundings behind it"),
    source: text("bibliography key and place, or the record"),
    bladeAngle: number("degrees from closed, of a damper's blades"),
    span: record({
      of: { enum: ["fins", "filter"] },
      least: number("Pa dry all over, or clean"),
      most: number("Pa wet all over, or at change-out"),
      share: number("0 to 1: share that is wet, or loading"),
    }),
    isBeside: { const: true, description: "on a path beside that of the supply air: not in the sum" },
    isFan: { const: true, description: "the fan's own pressure" },
  },
  "bladeAngle",
  "span",
  "isBeside",
  "isFan",
);

/** How a pressure ledger is published. */
export const ledgerRecord = record({
  lines: listOf(line, "in airflow order"),
  intake: number("Pa before the intake, from wind"),
  losses: number("Pa of all losses on the path of the supply air"),
  ductSystem: number("Pa of static pressure for the duct system"),
  reserve: number("Pa of static pressure kept beyond that"),
  velocityPressure: number("Pa at the end of the unit"),
  endArea: number("m² that the flow fills there"),
  endVelocity: number("m/s there"),
  endDensity: number("kg/m³ there"),
  fanTotal: number("Pa; losses + duct system + reserve + velocity pressure − intake"),
  fanOutletVelocityPressure: number("Pa; 0 for wheels without an outlet"),
  fanStatic: number("Pa; fan total less the velocity pressure in the outlet"),
});

/** How a unit with its filters loaded so far is published. */
export const filterStateRecord = record({
  filterLoading: number("0 clean to 1 at change-out"),
  solved: { type: "boolean" },
  sections: listOf(
    record({
      section: text("name, as in the job"),
      loss: number("Pa of total pressure; of the fan's section its inlet and outlet"),
    }),
    "in airflow order",
  ),
  losses: number("Pa of all losses on the path of the supply air"),
  fanTotal: number("Pa"),
  fanStatic: number("Pa"),
  fanSpeed: number("rev/s"),
  electricPower: number("W from the mains"),
  standardAirflow: number("m³/s of standard air that leaves the unit"),
});
