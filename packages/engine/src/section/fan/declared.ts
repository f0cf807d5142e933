import { fanPressureFromFlow, fanShaftPowerFromFlow, fanSpeedFromPressure } from "#component/fan-performance";
import { type DeclaredCircumstance, type DeclaredComparison, declaredLine } from "../declared.ts";
import type { FanDesign } from "./design.ts";
import type { FanSectionRating } from "./rate.ts";

/** By which a certified fan may miss: speed to reach the point, shaft power there. */
const tolerances = { speed: 0.05, shaftPower: 0.075 } as const;

/**
 * Holds a declared rating against our curve at the declared airflow, static pressure and density, and says what of it
 * differs at the condition in hand; undefined where the job declares none.
 */
export function compareDeclared(design: FanDesign, rating: FanSectionRating): DeclaredComparison | undefined {
  const declared = design.declaredRating;
  if (declared === undefined) return undefined;
  const { curve } = design.wheel;
  const { airflow, staticPressure, density, speed, shaftPower } = declared;
  const ourSpeed = fanSpeedFromPressure(curve, design.diameter, density, airflow, staticPressure);
  const ourPower = fanShaftPowerFromFlow(curve, design.diameter, ourSpeed, density, airflow);
  const ourPressure = fanPressureFromFlow(curve, design.diameter, speed, density, airflow);
  const all: DeclaredCircumstance[] = [
    {
      what: "airflow of each fan",
      quantity: "actualAirflow",
      declared: airflow,
      here: rating.flowPerFan,
      asksMore: rating.flowPerFan > airflow,
    },
    {
      what: "static pressure",
      quantity: "pressureDifference",
      declared: staticPressure,
      here: rating.staticPressure,
      asksMore: rating.staticPressure > staticPressure,
    },
    { what: "density", quantity: "density", declared: density, here: rating.density, asksMore: false },
  ];
  return {
    number: declared.number,
    revision: declared.revision,
    at: "both at the declared airflow, pressure and density",
    lines: [
      declaredLine("speed to reach the point", "rotationalSpeed", speed, ourSpeed, tolerances.speed),
      declaredLine("shaft power there", "shaftPower", shaftPower, ourPower, tolerances.shaftPower),
      declaredLine("static pressure at the declared speed", "pressureDifference", staticPressure, ourPressure),
      declaredLine(
        "static efficiency",
        "share",
        (airflow * staticPressure) / shaftPower,
        (airflow * staticPressure) / ourPower,
      ),
    ],
    circumstances:
      rating.fanSpeed === 0 ? [] : all.filter((each) => Math.abs(each.here - each.declared) > 0.01 * each.declared),
    remarks: [],
    source: "amca-211 tolerances of certified ratings",
  };
}
