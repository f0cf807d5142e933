import { monthStarts } from "#weather/calendar";
import type { HourFigure } from "./hour-figures.ts";
import { type MeterKey, meters } from "./meter.ts";
import type { YearHours } from "./year-hours.ts";

/** s. */
const hour = 3600;

/** What a meter counted: over the year, by month, and its highest hour. */
export interface MeterTotal {
  readonly key: MeterKey;
  readonly total: number;
  readonly months: readonly number[];
  /** Highest rate and the hour in which it occurs. */
  readonly peak: number;
  readonly peakHour: number;
  /** Highest rate of each month. */
  readonly monthPeaks: readonly number[];
}

/** What every meter counted; meters that nothing ever passed are left out. */
export function meterTotals(year: YearHours): readonly MeterTotal[] {
  return meters
    .map(({ key, figure }) => meterTotal(year, key, figure))
    .filter(({ peak, total }) => peak > 0 || total !== 0);
}

function meterTotal({ lists, plan }: YearHours, key: MeterKey, figure: HourFigure): MeterTotal {
  const list = lists[figure];
  const starts = monthStarts(plan.hours);
  const months: number[] = [];
  const monthPeaks: number[] = [];
  let peakHour = 0;
  for (let month = 0; month < 12; month++) {
    let sum = 0;
    let highest = 0;
    for (let k = starts[month]!; k < starts[month + 1]!; k++) {
      sum += list[k]!;
      highest = Math.max(highest, list[k]!);
      if (list[k]! > list[peakHour]!) peakHour = k;
    }
    months.push(sum * hour);
    monthPeaks.push(highest);
  }
  const total = months.reduce((sum, month) => sum + month, 0);
  return { key, total, months, peak: list[peakHour]!, peakHour, monthPeaks };
}

/** Energy that does not balance over the year, as a share of all that passed. */
export function yearImbalance({ lists }: YearHours): number {
  const sum = (list: Float64Array) => list.reduce((total, value) => total + value, 0);
  return sum(lists.imbalance) / sum(lists.throughput);
}
