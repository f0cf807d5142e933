import { fanPressureFromFlow, fanShaftPowerFromFlow, fanSpeedFromPressure } from "#component/fan-performance";
import type { QuantityKind } from "#quantity/kind";
import type { FanDesign } from "./design.ts";
import type { FanSectionRating } from "./rate.ts";

/** A figure of a declared rating beside ours, both at the declared point and density. */
export interface DeclaredLine {
  readonly what: string;
  readonly quantity: QuantityKind;
  readonly declared: number;
  readonly ours: number;
  /** Declared over ours, less one. */
  readonly difference: number;
  /** Share by which a certified rating may miss; undefined where none is known. */
  readonly tolerance: number | undefined;
}

/** Something that the declared rating was made at, and what it is at the condition in hand. */
export interface DeclaredCircumstance {
  readonly what: string;
  readonly quantity: QuantityKind;
  readonly declared: number;
  readonly here: number;
}

/** A declared rating held against our curve. */
export interface DeclaredComparison {
  readonly number: string;
  readonly revision: string;
  readonly lines: readonly DeclaredLine[];
  /** What differs by more than one percent from the condition in hand. */
  readonly circumstances: readonly DeclaredCircumstance[];
  readonly source: string;
}

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
  const line = (
    what: string,
    quantity: QuantityKind,
    their: number,
    ours: number,
    tolerance?: number,
  ): DeclaredLine => ({ what, quantity, declared: their, ours, difference: their / ours - 1, tolerance });
  const all: DeclaredCircumstance[] = [
    { what: "airflow of each fan", quantity: "actualAirflow", declared: airflow, here: rating.flowPerFan },
    { what: "static pressure", quantity: "pressureDifference", declared: staticPressure, here: rating.staticPressure },
    { what: "density", quantity: "density", declared: density, here: rating.density },
  ];
  return {
    number: declared.number,
    revision: declared.revision,
    lines: [
      line("speed to reach the point", "rotationalSpeed", speed, ourSpeed, tolerances.speed),
      line("shaft power there", "shaftPower", shaftPower, ourPower, tolerances.shaftPower),
      line("static pressure at the declared speed", "pressureDifference", staticPressure, ourPressure),
      line(
        "static efficiency",
        "share",
        (airflow * staticPressure) / shaftPower,
        (airflow * staticPressure) / ourPower,
      ),
    ],
    circumstances: all.filter((each) => Math.abs(each.here - each.declared) > 0.01 * each.declared),
    source: "amca-211 tolerances of certified ratings",
  };
}
