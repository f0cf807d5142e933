import { wetBulbFromHumidityRatio } from "#fluid/wet-bulb";
import { calibratedWeights } from "./calibrate.ts";
import type { HourFigure } from "./hour-figures.ts";
import { type MeterKey, meters } from "./meter.ts";
import { airflowShare, type YearPlan } from "./plan.ts";
import { type SegmentResult, startHours, stepSegment } from "./segment.ts";
import { meterTotals } from "./totals.ts";
import type { YearHours } from "./year-hours.ts";

/** An hour that stands for several: how many hours of the year it counts. */
export interface HourWeight {
  readonly hour: number;
  readonly weight: number;
}

/** Fewest and most hours that may stand for a year. */
export const representativeRange = { fewest: 12, most: 1000 } as const;

/** How much what is known of an hour counts when hours alike are sought: airflow decides most. */
const importance = { dryBulb: 1, humidityRatio: 0.8, airflow: 2, filterLoading: 0.3 } as const;

/** Hours alike, with their mean and how far they scatter. */
interface Cell {
  readonly hours: readonly number[];
  readonly mean: readonly number[];
  /** Sum of squares about the mean, of each feature. */
  readonly scatter: readonly number[];
}

/**
 * Chooses `count` hours that stand for the year. The coldest, the warmest, the moistest hour and that of the highest wet
 * bulb stand for themselves, so that worst margins are seen. The others are parted into cells of hours alike in outdoor
 * air, airflow and filters: the cell that scatters most is cut at its mean until there are enough, and the hour nearest to
 * the mean of a cell stands for it. The weights are then adjusted to sums that are known of all hours, degree-hours above
 * all. No chance is in it: one year always gives the same hours.
 */
export function representativeHours(plan: YearPlan, count: number): readonly HourWeight[] {
  const alone = extremeHoursOf(plan).slice(0, count - 1);
  const features = featuresOf(plan);
  const all = Array.from({ length: plan.hours }, (_, hour) => hour).filter((hour) => !alone.includes(hour));
  const cells = [cellOf(all, features)];
  while (cells.length < count - alone.length) {
    const widest = cells.reduce((best, cell) => (sum(cell.scatter) > sum(best.scatter) ? cell : best));
    const parts = cutCell(widest, features);
    if (parts === undefined) break;
    cells.splice(cells.indexOf(widest), 1, ...parts);
  }
  const middles = cells.map((cell) => middleOf(cell, features));
  const sizes = cells.map((cell) => cell.hours.length);
  const weights = calibratedWeights(plan, middles, sizes, all);
  const chosen = middles.map((hour, at) => ({ hour, weight: weights[at]! }));
  return [...alone.map((hour) => ({ hour, weight: 1 })), ...chosen].sort((a, b) => a.hour - b.hour);
}

function extremeHoursOf(plan: YearPlan): readonly number[] {
  const { weather, humidityRatio, pressure } = plan;
  const wetBulb = weather.dryBulb.map((air, hour) =>
    wetBulbFromHumidityRatio(air, humidityRatio[hour]!, pressure[hour]!),
  );
  const highest = (list: Float64Array) => list.reduce((best, value, hour) => (value > list[best]! ? hour : best), 0);
  const coldest = weather.dryBulb.reduce((best, value, hour) => (value < weather.dryBulb[best]! ? hour : best), 0);
  return [...new Set([coldest, highest(weather.dryBulb), highest(humidityRatio), highest(wetBulb)])];
}

/** What is known of every hour before it is solved, each brought to a scatter of its importance. */
function featuresOf(plan: YearPlan): readonly Float64Array[] {
  const airflow = new Float64Array(plan.hours).map((_, hour) => airflowShare(plan, hour));
  const scaled = (list: Float64Array, weight: number) => {
    const mean = sum(list) / list.length;
    const spread = Math.sqrt(list.reduce((total, value) => total + (value - mean) ** 2, 0) / list.length);
    return spread > 1e-9 * Math.max(1, Math.abs(mean))
      ? list.map((value) => (weight * (value - mean)) / spread)
      : list.map(() => 0);
  };
  return [
    scaled(plan.weather.dryBulb, importance.dryBulb),
    // A thousandth of a kilogram is a small number: scaled before it is held against a mean of one.
    scaled(
      plan.humidityRatio.map((ratio) => 1000 * ratio),
      importance.humidityRatio,
    ),
    scaled(airflow, importance.airflow),
    scaled(plan.filterLoading, importance.filterLoading),
  ];
}

function cellOf(hours: readonly number[], features: readonly Float64Array[]): Cell {
  const mean = features.map((list) => hours.reduce((total, hour) => total + list[hour]!, 0) / hours.length);
  const scatter = features.map((list, of) => hours.reduce((total, hour) => total + (list[hour]! - mean[of]!) ** 2, 0));
  return { hours, mean, scatter };
}

/** Cuts a cell at the mean of the feature that scatters most; undefined where all its hours are alike. */
function cutCell({ hours, mean, scatter }: Cell, features: readonly Float64Array[]): readonly [Cell, Cell] | undefined {
  const of = scatter.reduce((best, value, at) => (value > scatter[best]! ? at : best), 0);
  const below = hours.filter((hour) => features[of]![hour]! < mean[of]!);
  if (below.length === 0 || below.length === hours.length) return undefined;
  const above = hours.filter((hour) => features[of]![hour]! >= mean[of]!);
  return [cellOf(below, features), cellOf(above, features)];
}

function middleOf({ hours, mean }: Cell, features: readonly Float64Array[]): number {
  const distance = (hour: number) => features.reduce((total, list, of) => total + (list[hour]! - mean[of]!) ** 2, 0);
  let best = hours[0]!;
  for (const hour of hours) if (distance(hour) < distance(best)) best = hour;
  return best;
}

function sum(list: ArrayLike<number>): number {
  let total = 0;
  for (let at = 0; at < list.length; at++) total += list[at]!;
  return total;
}

/** Solves the hours that stand for a year, from cold to warm, so that each starts from its like. */
export function solveRepresentative(plan: YearPlan, chosen: readonly HourWeight[]): RepresentativeResult {
  const ordered = [...chosen].sort(
    (a, b) => plan.weather.dryBulb[a.hour]! - plan.weather.dryBulb[b.hour]! || a.hour - b.hour,
  );
  const run = startHours(
    plan,
    ordered.map(({ hour }) => hour),
  );
  stepSegment(run, Number.POSITIVE_INFINITY);
  return { result: run.result, weights: ordered.map(({ weight }) => weight) };
}

/** Solved hours with their weights. */
export interface RepresentativeResult {
  readonly result: SegmentResult;
  readonly weights: readonly number[];
}

/** What a figure comes to over the year by the hours that stand for it: its weighted sum. */
export function weightedSum({ result, weights }: RepresentativeResult, figure: HourFigure): number {
  return result.lists[figure].reduce((total, value, place) => total + value * weights[place]!, 0);
}

/** A meter's total by representative hours against that of all hours. */
export interface RepresentativeError {
  readonly key: MeterKey;
  readonly full: number;
  readonly estimate: number;
  /** Estimate less full, over full. */
  readonly error: number;
}

/** Hours that stand for a year, and how far what they tell is from the whole. */
export interface RepresentativeYear {
  readonly hours: readonly HourWeight[];
  readonly errors: readonly RepresentativeError[];
  /** Hours in which something is missed, by them and in truth. */
  readonly missedHours: { readonly full: number; readonly estimate: number };
}

/** s. */
const hourLength = 3600;

/** Chooses hours for a solved year and measures what they tell against it. */
export function measureRepresentative(year: YearHours, count: number): RepresentativeYear {
  const hours = representativeHours(year.plan, count);
  const solved = solveRepresentative(year.plan, hours);
  const errors = meterTotals(year).map(({ key, total: full }): RepresentativeError => {
    const { figure } = meters.find((each) => each.key === key)!;
    const estimate = hourLength * weightedSum(solved, figure);
    return { key, full, estimate, error: estimate / full - 1 };
  });
  const isMissed = (value: number) => value > 0;
  const missed = solved.result.lists.missed.reduce(
    (total, value, at) => total + (isMissed(value) ? solved.weights[at]! : 0),
    0,
  );
  return {
    hours,
    errors,
    missedHours: { full: year.lists.missed.filter(isMissed).length, estimate: missed },
  };
}
