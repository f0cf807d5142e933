import { sobolPoint } from "#numerics/sobol";
import type { Entry } from "#rule/judge";
import { yearCost } from "./cost.ts";
import { type MeterKey, meters } from "./meter.ts";
import type { YearPlan } from "./plan.ts";
import { type HourWeight, solveRepresentative, weightedSum } from "./representative.ts";
import { type Draw, drawOf, planWithDraw, tolerances } from "./tolerance.ts";

/** What came of one trial: the unit as one draw makes it, in the hours that stand for its year. Plain data. */
export interface Trial {
  readonly trial: number;
  readonly draw: Draw;
  /** Hours of the year in which the fan runs, and those of them in which all that is asked of the air is held. */
  readonly running: number;
  readonly held: number;
  readonly unsolved: number;
  readonly totals: Readonly<Record<MeterKey, number>>;
  /** Cents a year. */
  readonly cost: number;
  /** K, the smallest of all coils and hours. */
  readonly freezeMargin: number;
  /** Smallest margin of each entry of the plan's judge; +∞ where nothing was told. */
  readonly margins: Float64Array;
}

/** s. */
const hourLength = 3600;

/** Solves a trial by its number: whoever solves it, the seed and the number say what is drawn. */
export function solveTrial(plan: YearPlan, hours: readonly HourWeight[], seed: number, trial: number): Trial {
  const draw = drawOf(sobolPoint(trial, tolerances.length, seed));
  const own = planWithDraw(plan, draw);
  const solved = solveRepresentative(own, hours);
  const { lists, unsolved, tally } = solved.result;
  const counted = (isCounted: (at: number) => boolean) =>
    solved.weights.reduce((total, weight, at) => total + (isCounted(at) ? weight : 0), 0);
  const totals = Object.fromEntries(
    meters.map(({ key, figure }) => [key, hourLength * weightedSum(solved, figure)]),
  ) as Record<MeterKey, number>;
  return {
    trial,
    draw,
    running: counted((at) => lists.running[at] === 1),
    held: counted((at) => lists.running[at] === 1 && lists.solved[at] === 1 && lists.missed[at] === 0),
    unsolved: unsolved.length,
    totals,
    cost: costOf(totals, plan),
    freezeMargin: lists.freezeMargin.reduce(
      (least, value, at) => (lists.running[at] === 1 ? Math.min(least, value) : least),
      Number.POSITIVE_INFINITY,
    ),
    margins: tally?.margin ?? new Float64Array(0),
  };
}

/** Cents of what is paid by amount: demand and filters do not follow from hours that stand for others. */
function costOf(totals: Readonly<Record<MeterKey, number>>, { duty }: YearPlan): number {
  const none = Array<number>(12).fill(0);
  const list = meters.map(({ key }) => ({
    key,
    total: totals[key],
    months: [totals[key], ...none.slice(1)],
    monthPeaks: none,
    peak: 0,
    peakHour: 0,
  }));
  return yearCost(list, none, duty.tariffs).cost;
}

/** A figure over all trials: its middle, and what nine of ten trials lie between. */
export interface Spread {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

/** What the trials say together. */
export interface Uncertainty {
  readonly trials: number;
  readonly seed: number;
  readonly hours: number;
  /** Probability that the leaving air is held at an hour of the year while the fan runs. */
  readonly heldShare: number;
  /** Share of trials in which it is held in every hour. */
  readonly alwaysHeld: number;
  /** Standard error of the latter as if trials were drawn by chance; even points do no worse. */
  readonly alwaysHeldError: number;
  readonly totals: readonly { readonly key: MeterKey; readonly spread: Spread }[];
  readonly cost: Spread;
  readonly freezeMargin: Spread;
  /** Rules that some trial misses or that have less than a tenth left in one, the worst first. */
  readonly rules: readonly { readonly entry: Entry; readonly missed: number; readonly spread: Spread }[];
  readonly unsolved: number;
  readonly tolerances: readonly {
    readonly key: string;
    readonly name: string;
    readonly spread: string;
    readonly source: string;
  }[];
}

/** Below this margin in any trial a rule is told. */
const near = 0.1;

/** Puts trials together, in whatever order they came. */
export function mergeTrials(
  plan: YearPlan,
  hours: readonly HourWeight[],
  seed: number,
  given: readonly Trial[],
): Uncertainty {
  const trials = [...given].sort((a, b) => a.trial - b.trial);
  if (trials.length === 0 || trials.some(({ trial }, at) => trial !== at)) throw new RangeError("trials are missing");
  const sum = (value: (trial: Trial) => number) => trials.reduce((total, trial) => total + value(trial), 0);
  const always =
    trials.filter(({ held, running, unsolved }) => held === running && unsolved === 0).length / trials.length;
  const rules = (plan.judge?.entries ?? []).flatMap((entry, at) => {
    const margins = trials.map((trial) => trial.margins[at]!);
    if (!entry.decides || entry.waiver !== undefined || !margins.every(Number.isFinite) || Math.min(...margins) > near)
      return [];
    return [
      { entry, missed: margins.filter((margin) => margin < -1e-9).length / trials.length, spread: spreadOf(margins) },
    ];
  });
  return {
    trials: trials.length,
    seed,
    hours: hours.length,
    heldShare:
      sum(({ held }) => held) /
      Math.max(
        1,
        sum(({ running }) => running),
      ),
    alwaysHeld: always,
    alwaysHeldError: Math.sqrt((always * (1 - always)) / trials.length),
    totals: meters
      .map(({ key }) => ({ key, spread: spreadOf(trials.map(({ totals }) => totals[key])) }))
      .filter(({ spread }) => spread.high > 0),
    cost: spreadOf(trials.map(({ cost }) => cost)),
    freezeMargin: spreadOf(trials.map(({ freezeMargin }) => freezeMargin)),
    rules: rules.sort((a, b) => b.missed - a.missed || a.spread.low - b.spread.low),
    unsolved: sum(({ unsolved }) => unsolved),
    tolerances: tolerances.map(({ key, name, spread, source }) => ({ key, name, spread, source })),
  };
}

/** Middle and the twentieth at either end, straight between neighbours. */
export function spreadOf(values: readonly number[]): Spread {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (share: number) => {
    const place = share * (sorted.length - 1);
    const below = Math.floor(place);
    const [low, high] = [sorted[below]!, sorted[Math.min(below + 1, sorted.length - 1)]!];
    return low === high ? low : low + (place - below) * (high - low);
  };
  return { low: at(0.05), middle: at(0.5), high: at(0.95) };
}
