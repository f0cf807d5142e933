import {
  firstIce,
  frozenTube,
  longestWait,
  rowConductance,
  rowHeatCapacity,
  rowMeltingHeat,
} from "#component/coil/time-to-freeze";
import type { Condition } from "#duty/condition";
import type { Duty } from "#duty/duty";
import { type Liquid, liquidFreezePoint } from "#fluid/liquid";
import { moistAirSpecificHeat } from "#fluid/moist-air";
import type { CoilBlock } from "#section/coil/block";
import type { LiquidCoilFigures } from "#section/coil/liquid";
import { createUnitRating, rateUnit } from "#unit/rate-unit";
import type { UnitRating } from "#unit/rating";
import { conditionOfHour } from "./hour-condition.ts";
import type { YearPlan } from "./plan.ts";
import { type CoilPlace, coilsOf } from "./read-hour.ts";
import type { LastHour } from "./season.ts";
import { rateHour } from "./segment.ts";

/** What fails. */
export type Failure =
  | "steam and heating water fail, the fan runs on"
  | "the fan fails, dampers stay open"
  | "the fan fails, dampers close";

/** How long a coil has when something fails in an hour. */
export interface FreezeTime {
  readonly failure: Failure;
  readonly section: string;
  readonly hour: number;
  /** °C of the coldest filament that meets the coil after the failure. */
  readonly air: number;
  /** s; Infinity where it does not freeze within a day. */
  readonly firstIce: number;
  readonly solid: number;
}

/** Hours that are looked at: the coldest ones; in milder air nothing freezes sooner. */
const coldestHours = 6;
const failures: readonly Failure[] = [
  "steam and heating water fail, the fan runs on",
  "the fan fails, dampers stay open",
  "the fan fails, dampers close",
];

/**
 * Time to the first ice of every coil with liquid, if heat or fan failed in one of the coldest hours: the shortest for
 * each failure and coil. The liquid stands still from the moment of failure, at what it had then.
 */
export function timesToFreeze(plan: YearPlan): readonly FreezeTime[] {
  const coils = coilsOf(plan.unit).filter(({ kind }) => !kind.startsWith("steam coil"));
  const rating = createUnitRating(plan.unit, conditionOfHour(plan, 0, "heating"));
  const failed = createUnitRating(plan.unit, conditionOfHour(plan, 0, "heating"));
  const found: FreezeTime[] = [];
  for (const hour of coldest(plan)) {
    const last: LastHour = { rise: 1.5, outsideAirShare: 1 };
    rateHour(plan, hour, last, rating);
    const starts = coils.map((coil) => startOf(rating, coil));
    for (const failure of failures) {
      rateUnit(plan.unit, failedCondition(rating.condition, failure, plan), failed);
      if (!failed.solved) continue;
      coils.forEach((coil, index) => {
        const time = freezeTimeOf(plan, failed, coil, starts[index]!);
        found.push({ failure, section: coil.section, hour, ...time });
      });
    }
  }
  return failures.flatMap((failure) =>
    coils.flatMap(({ section }) => {
      const own = found.filter((each) => each.failure === failure && each.section === section);
      const worst = own.sort((a, b) => a.firstIce - b.firstIce)[0];
      return worst === undefined ? [] : [worst];
    }),
  );
}

function coldest({ weather, hours }: YearPlan): readonly number[] {
  return Array.from({ length: hours }, (_, hour) => hour)
    .sort((a, b) => weather.dryBulb[a]! - weather.dryBulb[b]!)
    .slice(0, coldestHours);
}

/** The condition of the hour with the failure in it. Failed valves pass nothing. */
function failedCondition(condition: Condition, failure: Failure, { duty }: YearPlan): Condition {
  const shut = { ...condition.utilities, steam: undefined, heatingWater: undefined };
  if (failure === "steam and heating water fail, the fan runs on") {
    return { ...condition, utilities: shut, exhaust: undefined };
  }
  const dampers = failure === "the fan fails, dampers close" ? "closed" : "as set";
  const outdoor = { ...condition.outdoor, windSpeed: Math.max(condition.outdoor.windSpeed, duty.site.windSpeed) };
  return {
    ...condition,
    outdoor,
    utilities: shut,
    exhaust: undefined,
    flow: { mode: "fan stopped", dampers, stackHeight: duty.stackHeight },
  };
}

/** °C of the liquid when it comes to stand: the colder end of what flows, or, where none flows, the air around it. */
function startOf(rating: UnitRating, { index }: CoilPlace): number {
  const coil = rating.sections[index] as LiquidCoilFigures;
  return coil.liquidMassFlow > 0 ? Math.min(coil.liquidEntering, coil.liquidLeaving) : coil.entering.dryBulb;
}

function freezeTimeOf(
  { unit, duty }: YearPlan,
  failed: UnitRating,
  { index, kind }: CoilPlace,
  start: number,
): Pick<FreezeTime, "air" | "firstIce" | "solid"> {
  const figures = failed.sections[index] as LiquidCoilFigures;
  const { block, liquid } = unit.sections[index]!.design as { readonly block: CoilBlock; readonly liquid?: Liquid };
  const filling = liquidIn(duty, kind, liquid);
  const { coil, stacked } = block;
  const { dryAirFlow, humidityRatio, coldestFilament: air } = figures.entering;
  const surface = figures.airCoefficient * figures.surfaceEfficiency;
  const capacity = (dryAirFlow / stacked) * moistAirSpecificHeat(humidityRatio);
  const conductance = rowConductance(coil, capacity, surface);
  const freezePoint = liquidFreezePoint(filling);
  const first = firstIce(rowHeatCapacity(coil, filling, 1), conductance, start, air, freezePoint);
  const solid = frozenTube(first, rowMeltingHeat(coil, filling, 1), conductance, air, freezePoint);
  // A day counts as no danger.
  const never = (seconds: number) => (seconds >= longestWait ? Number.POSITIVE_INFINITY : seconds);
  return { air, firstIce: never(first), solid: never(solid) };
}

/** What stands in a coil's tubes: its own loop's liquid, or what the building supplies. */
function liquidIn(duty: Duty, kind: string, own: Liquid | undefined): Liquid {
  if (own !== undefined) return own;
  const given = kind === "chilled-water coil" ? duty.utilities.chilledWater : duty.utilities.heatingWater;
  if (given === undefined || given.glycol === "none") return { substance: "water", massFraction: 0 };
  return { substance: given.glycol, massFraction: given.concentration };
}
