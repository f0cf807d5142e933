import { createTally, type Judge, type Tally } from "#rule/judge";
import { createHourLists, type HourLists, hourFigures } from "./hour-figures.ts";
import { planYear, type YearInput, type YearPlan } from "./plan.ts";
import { type CoilPlace, coilsOf } from "./read-hour.ts";
import { type MissTally, type SegmentResult, type SegmentRun, startSegment, stepSegment } from "./segment.ts";
import { segmentCount } from "./segment-count.ts";

/** All hours of a year, solved. */
export interface YearHours {
  readonly plan: YearPlan;
  readonly coils: readonly CoilPlace[];
  readonly lists: HourLists;
  readonly freezeMargins: readonly Float64Array[];
  readonly misses: readonly MissTally[];
  readonly unsolved: SegmentResult["unsolved"];
  readonly tally: Tally | undefined;
}

/** Puts the results of all segments together, in whatever order they came. */
export function mergeSegments(plan: YearPlan, results: readonly SegmentResult[]): YearHours {
  const ordered = [...results].sort((a, b) => a.first - b.first);
  const covered = ordered.reduce((sum, { first, count }) => (first === sum ? sum + count : Number.NaN), 0);
  if (covered !== plan.hours) throw new RangeError("the segments do not make a whole year");
  const coils = coilsOf(plan.unit);
  const lists = createHourLists(plan.hours);
  const freezeMargins = coils.map(() => new Float64Array(plan.hours));
  for (const result of ordered) {
    for (const name of hourFigures) lists[name].set(result.lists[name], result.first);
    freezeMargins.forEach((list, index) => {
      list.set(result.freezeMargins[index]!, result.first);
    });
  }
  return {
    plan,
    coils,
    lists,
    freezeMargins,
    misses: mergeMisses(ordered),
    unsolved: ordered.flatMap(({ unsolved }) => unsolved),
    tally: plan.judge === undefined ? undefined : mergeTallies(plan.judge, ordered),
  };
}

function mergeMisses(results: readonly SegmentResult[]): readonly MissTally[] {
  const merged: MissTally[] = [];
  for (const miss of results.flatMap(({ misses }) => misses)) {
    const known = merged.find((each) => each.section === miss.section && each.what === miss.what);
    if (known === undefined) {
      merged.push({ ...miss });
      continue;
    }
    known.hours += miss.hours;
    if (Math.abs(miss.wanted - miss.got) > Math.abs(known.wanted - known.got)) {
      Object.assign(known, { wanted: miss.wanted, got: miss.got, hour: miss.hour });
    }
  }
  return merged;
}

/** One tally of all: counts added, the smallest margin with its hour. */
function mergeTallies(judge: Judge, results: readonly SegmentResult[]): Tally {
  const merged = createTally(judge);
  for (const { tally } of results) {
    if (tally === undefined) throw new RangeError("a segment was not judged");
    for (let entry = 0; entry < judge.entries.length; entry++) {
      if (merged.unknown[entry] === 0) merged.firstUnknown[entry] = tally.firstUnknown[entry]!;
      for (const name of ["told", "missed", "unknown"] as const) merged[name][entry]! += tally[name][entry]!;
      if (tally.margin[entry]! >= merged.margin[entry]!) continue;
      for (const name of ["margin", "value", "limit", "at"] as const) merged[name][entry] = tally[name][entry]!;
    }
  }
  return merged;
}

/** A year being solved in one place; `stepYear` takes it further. */
export interface YearRun {
  readonly plan: YearPlan;
  readonly results: SegmentResult[];
  running: SegmentRun | undefined;
}

/** Makes a year ready to be solved step by step. */
export function startYear(input: YearInput): YearRun {
  const plan = planYear(input);
  return { plan, results: [], running: startSegment(plan, 0) };
}

/** Solves up to `most` more hours; gives the year when all are done. */
export function stepYear(run: YearRun, most: number): YearHours | undefined {
  let left = most;
  while (run.running !== undefined && left > 0) {
    const before = run.running.done;
    const isDone = stepSegment(run.running, left);
    left -= run.running.done - before;
    if (!isDone) return undefined;
    run.results.push(run.running.result);
    const next = run.results.length;
    run.running = next < segmentCount ? startSegment(run.plan, next) : undefined;
  }
  return run.running === undefined ? mergeSegments(run.plan, run.results) : undefined;
}
