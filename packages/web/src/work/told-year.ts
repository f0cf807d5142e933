import { measureRepresentative, type RepresentativeYear } from "@oncethrough/engine/year/representative";
import { type SegmentResult, startSegment, stepSegment } from "@oncethrough/engine/year/segment";
import { mergeTrials, solveTrial, type Trial } from "@oncethrough/engine/year/uncertainty";
import { mergeSegments, type YearHours } from "@oncethrough/engine/year/year-hours";
import { reportYear, type YearReport } from "@oncethrough/engine/year/year-report";
import type { BookShelf } from "./book-shelf.ts";
import type {
  TrialTask,
  UncertaintyResult,
  UncertaintyWholeTask,
  YearPieceTask,
  YearResult,
  YearWholeTask,
} from "./task.ts";

/** Hours solved between two chances to stop: some tens of milliseconds. */
const hoursAtOnce = 40;
/** Hours that stand for a year. */
const hoursThatStand = 48;

/** A run of hours of a year; whoever solves it, it is the same. */
export function* solvePiece(task: YearPieceTask, shelf: BookShelf): Generator<number, SegmentResult> {
  yield 0;
  const run = startSegment(shelf.plan(task.text, task.weather), task.segment);
  while (!stepSegment(run, hoursAtOnce)) yield run.done / run.result.count;
  return run.result;
}

/** A year put together from its pieces, told as plain data. */
export function* tellYear(task: YearWholeTask, shelf: BookShelf): Generator<number, YearResult> {
  yield 0;
  const plan = shelf.plan(task.text, task.weather);
  const year = mergeSegments(plan, task.pieces);
  const representative = measureRepresentative(year, hoursThatStand);
  return plainYear(year, reportYear(year, shelf.book(task.text).job.conditions), representative);
}

/** One trial of a year within the tolerances, in the hours that stand for it. */
export function* solveOneTrial(task: TrialTask, shelf: BookShelf): Generator<number, Trial> {
  yield 0;
  const plan = shelf.plan(task.text, task.weather);
  return solveTrial(plan, shelf.standing(plan, hoursThatStand), task.seed, task.trial);
}

/** What all trials say together, as plain data. */
export function* tellUncertainty(task: UncertaintyWholeTask, shelf: BookShelf): Generator<number, UncertaintyResult> {
  yield 0;
  const plan = shelf.plan(task.text, task.weather);
  const { rules, ...told } = mergeTrials(plan, shelf.standing(plan, hoursThatStand), task.seed, task.pieces);
  const plain = rules.map(({ entry, missed, spread }) => ({
    rule: entry.rule.id,
    section: entry.section,
    missed,
    spread,
  }));
  return { ...told, rules: plain };
}

function plainYear(
  { plan, lists, unsolved }: YearHours,
  { findings, ...report }: YearReport,
  representative: RepresentativeYear,
): YearResult {
  const { weather } = plan;
  return {
    place: weather.place.name,
    report,
    representative,
    rules: findings.flatMap(({ entry, outcome, margin, at, missed }) =>
      outcome === "fail" && entry.waiver === undefined
        ? [{ rule: entry.rule.id, section: entry.section, margin, at, missed }]
        : [],
    ),
    year: {
      lists,
      unsolved,
      plan: {
        hours: plan.hours,
        humidityRatio: plan.humidityRatio,
        pressure: plan.pressure,
        weather: { dryBulb: weather.dryBulb, origin: weather.origin },
      },
    },
  };
}
