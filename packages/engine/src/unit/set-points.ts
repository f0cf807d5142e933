import type { UnitRating } from "./rating.ts";
import type { Unit } from "./unit.ts";

/**
 * Sets what the coils have to reach so that the supply set point holds after everything downstream of them: fan heat,
 * leakage, humidifying steam. `rises` are the K found on the last walk. Gives how far the set points moved (K).
 */
export function setCoils(rating: UnitRating, rises: Rises): number {
  const { condition, operation } = rating;
  const { supply, coolingCoilLeaving, heatingCoilLeaving, supplyMinimumHumidityRatio } = condition.setPoints;
  const before = operation.coolingLeaving ?? operation.heatingLeaving ?? Number.NaN;
  const forSupply = (rise: number) => (supply === undefined ? undefined : supply - rise);
  if (condition.season === "cooling") {
    operation.coolingLeaving = lower(coolingCoilLeaving, forSupply(rises.afterCooling));
    operation.heatingLeaving = heatingCoilLeaving;
  } else {
    operation.coolingLeaving = coolingCoilLeaving;
    operation.heatingLeaving = heatingCoilLeaving ?? forSupply(rises.afterHeating);
  }
  operation.humidifierLeaving = supplyMinimumHumidityRatio;
  const after = operation.coolingLeaving ?? operation.heatingLeaving ?? Number.NaN;
  const moved = Math.abs(after - before);
  return Number.isNaN(moved) && Number.isNaN(before) && Number.isNaN(after) ? 0 : moved;
}

function lower(first: number | undefined, second: number | undefined): number | undefined {
  if (first === undefined) return second;
  if (second === undefined) return first;
  return Math.min(first, second);
}

/** K of rise from the leaving plane of the last coil of each role to the supply. */
export interface Rises {
  afterCooling: number;
  afterHeating: number;
}

/** Reads the rises from a walked unit. */
export function readRises(unit: Unit, rating: UnitRating, rises: Rises): void {
  rises.afterCooling = riseBehind(rating, lastWithRole(unit, "cooling"));
  rises.afterHeating = riseBehind(rating, lastWithRole(unit, "heating"));
}

function lastWithRole(unit: Unit, role: "cooling" | "heating"): number {
  return unit.sections.findLastIndex((section) => section.behaviour.role === role);
}

function riseBehind(rating: UnitRating, index: number): number {
  if (index < 0) return 0;
  return rating.supply.dryBulb - rating.sections[index]!.leaving.dryBulb;
}
