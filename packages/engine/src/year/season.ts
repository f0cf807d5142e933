import { resetValue } from "#duty/schedule";
import { saturationHumidityRatio } from "#fluid/saturation";
import type { UnitRating } from "#unit/rating";
import type { Unit } from "#unit/unit";
import type { YearPlan } from "./plan.ts";

/** By which set points the coils work. */
export type Season = "cooling" | "heating";

/** What the last hour tells about the next. */
export interface LastHour {
  /** K that fan, leaks and the rest warm the air beyond what the coils do. */
  rise: number;
  outsideAirShare: number;
}

/** K by which a wrong guess of the season has to show before the hour is solved again. */
const grace = 0.5;

/**
 * Which set points the coming hour asks for: the summer ones where the air, left alone, would come out warmer than the
 * winter supply set point, or moister than the laboratories take; else the winter ones. The schedule may fix an outdoor
 * temperature instead.
 */
export function seasonOf(plan: YearPlan, hour: number, last: LastHour): Season {
  const { duty, weather } = plan;
  const outdoor = weather.dryBulb[hour]!;
  const { changeover } = duty.schedule;
  if (changeover !== undefined) return outdoor >= changeover ? "cooling" : "heating";
  const back = duty.returnAir?.winter.dryBulb ?? outdoor;
  const mixed = last.outsideAirShare * outdoor + (1 - last.outsideAirShare) * back;
  const { maximumDewPoint, coilLeaving, supply } = duty.setPoints;
  const winterSupply = winterSupplyAt(plan, hour);
  if (mixed + last.rise > winterSupply) return "cooling";
  const coldest = coilLeaving ?? supply ?? winterSupply;
  const isMoist =
    maximumDewPoint !== undefined &&
    mixed > coldest &&
    last.outsideAirShare * plan.humidityRatio[hour]! > saturationHumidityRatio(maximumDewPoint, plan.pressure[hour]!);
  return isMoist ? "cooling" : "heating";
}

/** °C that the winter supply is to have in the hour. */
function winterSupplyAt({ duty, weather }: YearPlan, hour: number): number {
  const { winterSupplyReset } = duty.schedule;
  if (winterSupplyReset === undefined) return duty.setPoints.winterSupply;
  return resetValue(winterSupplyReset, weather.dryBulb[hour]!);
}

/** The other season, where the solved hour shows that the guess was wrong: its coils stand idle on the wrong side. */
export function correctedSeason(plan: YearPlan, hour: number, rating: UnitRating): Season | undefined {
  const { unit, duty } = plan;
  if (duty.schedule.changeover !== undefined || rating.condition.flow.mode === "fan stopped") return undefined;
  const supply = rating.supply.dryBulb;
  const winterSupply = winterSupplyAt(plan, hour);
  if (rating.condition.season === "heating") {
    return supply > winterSupply + grace && heatOf(unit, rating, "heating") === 0 ? "cooling" : undefined;
  }
  const isIdle = heatOf(unit, rating, "cooling") === 0;
  return supply < winterSupply - grace && isIdle ? "heating" : undefined;
}

/** W that the coils of a role give or take, without sign. */
function heatOf(unit: Unit, rating: UnitRating, role: "cooling" | "heating"): number {
  let heat = 0;
  unit.sections.forEach(({ behaviour }, index) => {
    if (behaviour.role === role) heat += Math.abs(rating.sections[index]!.heatToAir);
  });
  return heat;
}

/** Reads what the next hour's guess needs: the rise behind all coils. */
export function readLastHour(unit: Unit, rating: UnitRating, last: LastHour): void {
  const behind = unit.sections.findLastIndex(
    ({ behaviour }) => behaviour.role === "heating" || behaviour.role === "cooling",
  );
  if (behind < 0 || rating.condition.flow.mode === "fan stopped") return;
  last.rise = rating.supply.dryBulb - rating.sections[behind]!.leaving.dryBulb;
  last.outsideAirShare = rating.outsideAirShare;
}
