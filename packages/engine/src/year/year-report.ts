import type { Condition } from "#duty/condition";
import { dewPointFromHumidityRatio } from "#fluid/dew-point";
import { wetBulbFromHumidityRatio } from "#fluid/wet-bulb";
import { type Finding, findingsOf, sortedFindings } from "#rule/finding";
import { createUnitRating, rateUnit } from "#unit/rate-unit";
import type { Unit } from "#unit/unit";
import { calendarHour } from "#weather/calendar";
import { type YearCost, yearCost } from "./cost.ts";
import { type FreezeTime, timesToFreeze } from "./freeze-time.ts";
import { createHourRow } from "./hour-figures.ts";
import { type MeterKey, meters } from "./meter.ts";
import { coilsOf, readHour } from "./read-hour.ts";
import type { MissTally } from "./segment.ts";
import { type MeterTotal, meterTotals, yearImbalance } from "./totals.ts";
import { countFreezing, countWatches, type FreezeExposure, type WatchCount } from "./watch.ts";
import type { YearHours } from "./year-hours.ts";

/** What a year of the machine comes to. */
export interface YearReport {
  readonly hours: number;
  readonly runningHours: number;
  /** Hours that could not be solved; their figures are in no sum that is to be relied on. */
  readonly unsolved: YearHours["unsolved"];
  /** True where the weather was made up from design days. */
  readonly isSynthetic: boolean;
  readonly notes: readonly string[];
  readonly totals: readonly MeterPeak[];
  readonly cost: YearCost;
  readonly filterChanges: readonly number[];
  readonly misses: readonly MissTally[];
  /** Hours in which anything that is asked is not held, and in which any rule that decides is missed. */
  readonly hoursMissed: number;
  readonly hoursRulesMissed: number;
  readonly freezing: readonly FreezeExposure[];
  readonly watches: readonly WatchCount[];
  readonly freezeTimes: readonly FreezeTime[];
  /** Every rule that looks at the running unit, with its smallest margin and the hour (`at`) where that is. */
  readonly findings: readonly Finding[];
  /** Share of all energy that passed. */
  readonly imbalance: number;
}

/** A meter's total with its peak's outdoor state, and the highest figure at the conditions of the duty. */
export interface MeterPeak extends MeterTotal {
  readonly outdoor: { readonly dryBulb: number; readonly wetBulb: number; readonly dewPoint: number };
  /** Highest rate at the running conditions of the job, and which that is. */
  readonly designPeak: number;
  readonly designCondition: string;
}

/** Tells a solved year. `conditions` are those of the job, to hold peaks against. */
export function reportYear(year: YearHours, conditions: readonly Condition[]): YearReport {
  const { plan, lists, misses, unsolved, tally } = year;
  const design = designPeaks(plan.unit, conditions);
  const totals = meterTotals(year).map(
    (total): MeterPeak => ({
      ...total,
      outdoor: outdoorState(year, total.peakHour),
      ...design[total.key],
    }),
  );
  return {
    hours: plan.hours,
    runningHours: lists.running.reduce((sum, value) => sum + value, 0),
    unsolved,
    isSynthetic: plan.weather.origin === "synthetic",
    notes: plan.notes,
    totals,
    cost: yearCost(totals, filterMonths(plan.filterChanges, plan.hours), plan.duty.tariffs),
    filterChanges: plan.filterChanges,
    misses,
    hoursMissed: lists.missed.filter((count) => count > 0).length,
    hoursRulesMissed: lists.rulesMissed.filter((count) => count > 0).length,
    freezing: countFreezing(year),
    watches: countWatches(year),
    freezeTimes: timesToFreeze(plan),
    findings: plan.judge === undefined || tally === undefined ? [] : sortedFindings(findingsOf(plan.judge, tally)),
    imbalance: yearImbalance(year),
  };
}

function outdoorState({ plan }: YearHours, hour: number): MeterPeak["outdoor"] {
  const dryBulb = plan.weather.dryBulb[hour]!;
  const ratio = plan.humidityRatio[hour]!;
  const pressure = plan.pressure[hour]!;
  return {
    dryBulb,
    wetBulb: wetBulbFromHumidityRatio(dryBulb, ratio, pressure),
    dewPoint: Math.min(dryBulb, dewPointFromHumidityRatio(ratio, pressure)),
  };
}

type DesignPeak = Pick<MeterPeak, "designPeak" | "designCondition">;

function designPeaks(unit: Unit, conditions: readonly Condition[]): Readonly<Record<MeterKey, DesignPeak>> {
  const coils = coilsOf(unit);
  const row = createHourRow();
  const peaks = Object.fromEntries(meters.map(({ key }) => [key, { designPeak: 0, designCondition: "" }])) as Record<
    MeterKey,
    DesignPeak
  >;
  for (const condition of conditions) {
    if (condition.flow.mode === "fan stopped") continue;
    const rating = rateUnit(unit, condition, createUnitRating(unit, condition));
    if (!rating.solved) continue;
    readHour(unit, rating, coils, row);
    for (const { key, figure } of meters) {
      if (row[figure] > peaks[key].designPeak) {
        peaks[key] = { designPeak: row[figure], designCondition: condition.key };
      }
    }
  }
  return peaks;
}

function filterMonths(changes: readonly number[], hours: number): readonly number[] {
  const months = Array<number>(12).fill(0);
  for (const hour of changes) months[calendarHour(hour, hours).month - 1]!++;
  return months;
}
