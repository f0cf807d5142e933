import type { Condition } from "#duty/condition";
import { density } from "#fluid/moist-air";
import { readExternalStatic, walkToMixingBox } from "./balance.ts";
import type { UnitRating } from "./rating.ts";
import type { Rises, UnitSearch } from "./search.ts";
import { readRises, setPointsMoved } from "./set-points.ts";
import type { Unit } from "./unit.ts";
import { fanRatingAt, walk } from "./walk.ts";

/** Share of the flow to which the flow is held: no airflow is measured to a thousandth. */
const flowTolerance = 1e-7;
/** Share of the fan's pressure, or of what moves the air of a stopped unit, to which the duct system is met. */
const pressureTolerance = 1e-6;
/** K to which a set point allows for what follows it: a thousandth of what the best sensor tells. */
const temperatureTolerance = 1e-5;
/** Wind pressure at the intake over velocity pressure; common practice for a wall or hood that faces the wind. */
const facingWind = 0.7;
const gravity = 9.80665;

/** One walk through the whole unit with `total` kg/s of dry air leaving the mixing box. */
export function walkWhole(unit: Unit, rating: UnitRating, search: UnitSearch, total: number): void {
  const next = walkToMixingBox(unit, rating, search, total, windPressureOf(rating.condition));
  walk(unit, rating, search, next, unit.sections.length - 1);
  rating.walks++;
}

/** Pa of wind at the intake. A running fan is not to count on wind, unless the condition says how the intake lies to it. */
function windPressureOf({ outdoor, barometricPressure, flow }: Condition): number {
  const coefficient = outdoor.windPressureCoefficient ?? (flow.mode === "fan stopped" ? facingWind : 0);
  if (coefficient === 0 || outdoor.windSpeed === 0) return 0;
  const outdoorDensity = density(outdoor.dryBulb, outdoor.humidityRatio, barometricPressure);
  return 0.5 * coefficient * outdoorDensity * outdoor.windSpeed ** 2;
}

/** Pa by which the warm column downstream draws air through a stopped unit. */
function stackPressureOf({ outdoor, barometricPressure, returnAir, flow }: Condition): number {
  if (flow.mode !== "fan stopped") return 0;
  const outdoorDensity = density(outdoor.dryBulb, outdoor.humidityRatio, barometricPressure);
  const column = density(returnAir.dryBulb, returnAir.humidityRatio, barometricPressure);
  return Math.max(0, (outdoorDensity - column) * gravity * flow.stackHeight);
}

/** Pa that move air through a stopped unit: wind and warm column. */
export function drivingPressure({ condition }: UnitRating): number {
  return windPressureOf(condition) + stackPressureOf(condition);
}

/** Reads a walked unit: rises behind the coils, and the Pa that are lacking at its end. */
export function lackingAfterWalk(rating: UnitRating, search: UnitSearch): number {
  readRises(rating, search, search.rises);
  return readExternalStatic(rating) - stackPressureOf(rating.condition);
}

/** Whether the walked unit meets flow, duct system and set points; `used` are the rises that its set points allow for. */
export function holdsBalance(rating: UnitRating, search: UnitSearch, lacking: number, used: Rises): boolean {
  const { flow } = rating.condition;
  const heldFlow = flow.mode === "flow held" ? flow.dryAirFlow : rating.supply.dryAirFlow;
  const scale =
    flow.mode === "fan stopped" ? drivingPressure(rating) : Math.abs(fanRatingAt(rating, search.fan).totalPressureLoss);
  return (
    Math.abs(heldFlow - rating.supply.dryAirFlow) <= flowTolerance * heldFlow &&
    Math.abs(lacking) <= pressureTolerance * scale + 1e-9 &&
    setPointsMoved(rating, used, search.rises) <= temperatureTolerance
  );
}
