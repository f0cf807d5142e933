import type { Condition } from "#duty/condition";
import type { UnitRating } from "./rating.ts";
import type { Rises, UnitSearch } from "./search.ts";

/**
 * Sets what the coils have to reach so that the supply set point holds after everything downstream of them: fan heat,
 * leakage, humidifying steam. `rises` are the K expected there.
 */
export function setCoils(rating: UnitRating, rises: Rises): void {
  const { condition, operation } = rating;
  operation.coolingLeaving = coolingLeavingFor(condition, rises);
  operation.heatingLeaving = heatingLeavingFor(condition, rises);
  operation.humidifierLeaving = condition.setPoints.supplyMinimumHumidityRatio;
}

/** K by which the coils' set points would move from the rises that they were made with to those found. */
export function setPointsMoved({ condition }: UnitRating, used: Rises, found: Rises): number {
  return Math.max(
    distance(coolingLeavingFor(condition, used), coolingLeavingFor(condition, found)),
    distance(heatingLeavingFor(condition, used), heatingLeavingFor(condition, found)),
  );
}

function distance(a: number | undefined, b: number | undefined): number {
  return a === undefined || b === undefined ? 0 : Math.abs(a - b);
}

function coolingLeavingFor({ season, setPoints }: Condition, rises: Rises): number | undefined {
  const { supply, coolingCoilLeaving } = setPoints;
  if (season === "heating" || supply === undefined) return coolingCoilLeaving;
  return lower(coolingCoilLeaving, supply - rises.afterCooling);
}

function heatingLeavingFor({ season, setPoints }: Condition, rises: Rises): number | undefined {
  const { supply, heatingCoilLeaving } = setPoints;
  if (season === "cooling" || heatingCoilLeaving !== undefined || supply === undefined) return heatingCoilLeaving;
  return supply - rises.afterHeating;
}

function lower(first: number | undefined, second: number): number {
  return first === undefined ? second : Math.min(first, second);
}

/** Reads the rises from a walked unit. */
export function readRises(rating: UnitRating, { lastCooling, lastHeating }: UnitSearch, rises: Rises): void {
  rises.afterCooling = riseBehind(rating, lastCooling);
  rises.afterHeating = riseBehind(rating, lastHeating);
}

function riseBehind(rating: UnitRating, index: number): number {
  if (index < 0) return 0;
  return rating.supply.dryBulb - rating.sections[index]!.leaving.dryBulb;
}
