import type { QuantityKind } from "#quantity/kind";
import { askedOf, createTally, judgeRating, type Tally } from "#rule/judge";
import { createUnitRating } from "#unit/rate-unit";
import type { UnitRating } from "#unit/rating";
import { shortfallsOf } from "#unit/report";
import { rateInDeadBand } from "./dead-band.ts";
import { conditionOfHour } from "./hour-condition.ts";
import { createHourLists, createHourRow, type HourLists, type HourRow, hourFigures } from "./hour-figures.ts";
import type { YearPlan } from "./plan.ts";
import { type CoilPlace, coilsOf, freezeMarginOf, readHour } from "./read-hour.ts";
import { correctedSeason, type LastHour, readLastHour, type Season, seasonOf } from "./season.ts";
import { segmentCount } from "./segment-count.ts";

/** What is not held, and how often. */
export interface MissTally {
  readonly section: string;
  readonly what: string;
  readonly quantity: QuantityKind;
  hours: number;
  /** The hour where it is worst. */
  wanted: number;
  got: number;
  hour: number;
}

/** What came of a run of hours; plain data that a worker can send. */
export interface SegmentResult {
  readonly first: number;
  readonly count: number;
  readonly lists: HourLists;
  /** K above freezing of each coil, in the order of `coilsOf`. */
  readonly freezeMargins: readonly Float64Array[];
  readonly misses: readonly MissTally[];
  readonly unsolved: readonly { readonly hour: number; readonly reason: string }[];
  /** What the rules of the plan's judge said; undefined without one. */
  readonly tally: Tally | undefined;
}

/** A run of hours being solved; `stepSegment` takes it further. */
export interface SegmentRun {
  readonly plan: YearPlan;
  readonly coils: readonly CoilPlace[];
  readonly rating: UnitRating;
  readonly row: HourRow;
  readonly last: LastHour;
  readonly result: SegmentResult & {
    readonly misses: MissTally[];
    readonly unsolved: { hour: number; reason: string }[];
  };
  done: number;
  /** The hours themselves where they do not follow one another. */
  readonly hours: readonly number[] | undefined;
  /** Room for what the tally counted before the hour in hand. */
  readonly missedBefore: Int32Array;
}

/** First hour and number of hours of a segment. */
export function segmentRange(index: number, hours: number): { readonly first: number; readonly count: number } {
  const first = Math.round((index * hours) / segmentCount);
  return { first, count: Math.round(((index + 1) * hours) / segmentCount) - first };
}

/** Makes a run of hours ready to be solved. */
export function startSegment(plan: YearPlan, index: number): SegmentRun {
  const { first, count } = segmentRange(index, plan.hours);
  return startRun(plan, first, count, undefined);
}

/** Makes some hours of a year ready to be solved, one after the other as they are given; lists then follow that order. */
export function startHours(plan: YearPlan, hours: readonly number[]): SegmentRun {
  return startRun(plan, hours[0] ?? 0, hours.length, hours);
}

function startRun(plan: YearPlan, first: number, count: number, hours: readonly number[] | undefined): SegmentRun {
  const coils = coilsOf(plan.unit);
  return {
    plan,
    coils,
    rating: createUnitRating(plan.unit, conditionOfHour(plan, first, "heating")),
    row: createHourRow(),
    last: { rise: 1.5, outsideAirShare: plan.duty.returnAir === undefined ? 1 : plan.duty.outsideAirShare },
    result: {
      first,
      count,
      lists: createHourLists(count),
      freezeMargins: coils.map(() => new Float64Array(count)),
      misses: [],
      unsolved: [],
      tally: plan.judge === undefined ? undefined : createTally(plan.judge),
    },
    done: 0,
    hours,
    missedBefore: new Int32Array(plan.judge?.entries.length ?? 0),
  };
}

/** Solves up to `most` more hours; true when all are done. */
export function stepSegment(run: SegmentRun, most: number): boolean {
  const { result } = run;
  const end = Math.min(result.count, run.done + most);
  for (; run.done < end; run.done++) solveHour(run, run.done);
  return run.done === result.count;
}

function solveHour(run: SegmentRun, place: number): void {
  const { plan, rating, row, result, coils } = run;
  const { unit } = plan;
  const hour = run.hours?.[place] ?? result.first + place;
  rateHour(plan, hour, run.last, rating);
  if (!rating.solved) result.unsolved.push({ hour, reason: rating.reason });
  readLastHour(unit, rating, run.last);
  readHour(unit, rating, coils, row);
  if (rating.solved) {
    row.missed = tallyMisses(run, hour);
    row.rulesMissed = judgeHour(run, hour);
  }
  for (const name of hourFigures) result.lists[name][place] = row[name];
  coils.forEach((coil, index) => {
    result.freezeMargins[index]![place] = freezeMarginOf(rating, coil);
  });
}

/** Holds the hour against the rules; gives how many that decide are missed. */
function judgeHour({ plan: { judge }, rating, result: { tally }, missedBefore }: SegmentRun, hour: number): number {
  if (judge === undefined || tally === undefined) return 0;
  missedBefore.set(tally.missed);
  judgeRating(judge, rating, askedOf(rating, false), hour, tally);
  let missed = 0;
  for (let entry = 0; entry < missedBefore.length; entry++) {
    const { decides, waiver } = judge.entries[entry]!;
    if (decides && waiver === undefined && tally.missed[entry]! > missedBefore[entry]!) missed++;
  }
  return missed;
}

/** Solves the unit in an hour, with the set points of the season that the hour asks for. */
export function rateHour(plan: YearPlan, hour: number, last: LastHour, rating: UnitRating): void {
  rateSeason(plan, hour, seasonOf(plan, hour, last), rating);
  const other = rating.solved ? correctedSeason(plan, hour, rating) : undefined;
  if (other !== undefined) rateSeason(plan, hour, other, rating);
}

function rateSeason(plan: YearPlan, hour: number, season: Season, rating: UnitRating): void {
  rateInDeadBand(plan.unit, conditionOfHour(plan, hour, season), rating);
}

/** Counts what is asked and not held; gives how much of it there is in the hour. */
function tallyMisses({ plan, rating, result }: SegmentRun, hour: number): number {
  const shortfalls = shortfallsOf(plan.unit, rating);
  for (const { section, what, quantity, wanted, got } of shortfalls) {
    let tally = result.misses.find((each) => each.section === section && each.what === what);
    if (tally === undefined) {
      tally = { section, what, quantity, hours: 0, wanted, got, hour };
      result.misses.push(tally);
    }
    tally.hours++;
    if (Math.abs(wanted - got) > Math.abs(tally.wanted - tally.got)) Object.assign(tally, { wanted, got, hour });
  }
  return shortfalls.length;
}
