import { fanSystemCurves, systemCurveCount } from "@oncethrough/engine/chart/fan-system";
import { startCoilSearch } from "@oncethrough/engine/design/coil-alternatives";
import { checkCoilLimits, coilLimitFields } from "@oncethrough/engine/design/coil-limits";
import { checkFanLimits, fanLimitFields } from "@oncethrough/engine/design/fan-limits";
import { selectFans } from "@oncethrough/engine/design/fan-selection";
import { sectionCoilSearch } from "@oncethrough/engine/design/section-alternatives";
import { coilSectionTask, fanSectionTask, ratedCoilSectionTask } from "@oncethrough/engine/design/section-task";
import type { UnitRating } from "@oncethrough/engine/unit/rating";
import type { RatingBook } from "#state/rating-book";
import type { BookShelf } from "./book-shelf.ts";
import { compareJobs } from "./compare-jobs.ts";
import { findFilters } from "./find-filters.ts";
import { judgeJob, mendFinding, solveConditions } from "./judge-job.ts";
import { readLimits } from "./read-limits.ts";
import { sizeDuty } from "./size-duty.ts";
import type {
  AlternativesTask,
  CoilAlternatives,
  FanAlternatives,
  RatedCoilAlternatives,
  Results,
  SystemCurvesTask,
  Task,
} from "./task.ts";
import { solveOneTrial, solvePiece, tellUncertainty, tellYear } from "./told-year.ts";

/** Does a task by steps; yields how far it is, 0…1, wherever it may be stopped. */
export function perform(task: Task, shelf: BookShelf): Generator<number, Results[Task["kind"]]> {
  switch (task.kind) {
    case "coil alternatives":
      return findCoils(task, shelf);
    case "rated coil alternatives":
      return findRatedCoils(task, shelf);
    case "fan alternatives":
      return findFans(task, shelf);
    case "filter alternatives":
      return findFilters(task, shelf);
    case "system curves":
      return drawSystem(task, shelf);
    case "sizing":
      return sizeDuty(task, shelf);
    case "conditions":
      return solveConditions(task, shelf);
    case "findings":
      return judgeJob(task, shelf);
    case "smallest fix":
      return mendFinding(task, shelf);
    case "comparison":
      return compareJobs(task, shelf);
    case "year piece":
      return solvePiece(task, shelf);
    case "year whole":
      return tellYear(task, shelf);
    case "trial":
      return solveOneTrial(task, shelf);
    case "uncertainty whole":
      return tellUncertainty(task, shelf);
    case "year":
    case "uncertainty":
      throw new Error("a year is done in pieces");
  }
}

/** Ways looked at between two chances to stop: some twenty milliseconds. */
const waysAtOnce = 150;
/** Share of the work that solving the conditions counts. */
const solvingShare = 0.3;

function* findCoils(task: AlternativesTask, shelf: BookShelf): Generator<number, CoilAlternatives> {
  const book = shelf.book(task.text);
  const { unit } = book.job;
  const rating = yield* askedMost(book, task, (each) => Math.abs(each.sections[task.index]?.heatToAir ?? 0));
  const limits = readLimits(task.limits, coilLimitFields, checkCoilLimits, shelf.catalogue);
  const asked = coilSectionTask(unit, task.index, rating, limits, shelf.catalogue);
  if (asked === undefined) throw new Error(`the coil rests at ${rating.condition.name}`);
  const search = startCoilSearch(asked);
  while (search.step(waysAtOnce)) yield solvingShare + ((1 - solvingShare) * search.looked()) / search.all;
  return { at: rating.condition, choice: search.choice("price") };
}

function* findRatedCoils(task: AlternativesTask, shelf: BookShelf): Generator<number, RatedCoilAlternatives> {
  const book = shelf.book(task.text);
  const rating = yield* askedMost(book, task, (each) => Math.abs(each.sections[task.index]?.heatToAir ?? 0));
  const limits = readLimits(task.limits, coilLimitFields, checkCoilLimits, shelf.catalogue);
  const asked = ratedCoilSectionTask(book.job.unit, task.index, rating, limits, shelf.catalogue);
  if (asked === undefined) throw new Error(`the coil rests at ${rating.condition.name}`);
  const search = sectionCoilSearch(asked);
  for (;;) {
    const step = search.next();
    if (step.done) return { at: rating.condition, ratedChoice: step.value };
    if (step.value % waysAtOnce === 0) yield solvingShare + (1 - solvingShare) * shareOfWays(step.value);
  }
}

/** How far a search is whose end is not known beforehand: on towards one, ever slower. */
function shareOfWays(looked: number): number {
  return looked / (looked + 2000);
}

function* findFans(task: AlternativesTask, shelf: BookShelf): Generator<number, FanAlternatives> {
  const book = shelf.book(task.text);
  const rating = yield* askedMost(book, task, (each) => each.fanElectricPower);
  const limits = readLimits(task.limits, fanLimitFields, checkFanLimits, shelf.catalogue);
  const asked = fanSectionTask(book.job.unit, task.index, rating, limits, shelf.catalogue);
  if (asked === undefined) throw new Error(`the fan stands at ${rating.condition.name}`);
  const { looked, candidates } = selectFans(asked);
  const most = Number.POSITIVE_INFINITY;
  const kept = candidates.filter(
    ({ sound, length }) => sound <= (limits.sound ?? most) && length <= (limits.length ?? most),
  );
  return {
    at: rating.condition,
    looked,
    candidates: kept.map(({ wheel, ...rest }) => ({ ...rest, wheel: wheel.head.name })),
  };
}

function* drawSystem(task: SystemCurvesTask, shelf: BookShelf): Generator<number, Results["system curves"]> {
  const { job } = shelf.book(task.text);
  const condition = job.conditions.find(({ key }) => key === task.condition);
  if (condition === undefined) throw new Error(`the job has no condition ${task.condition}`);
  const curves: Results["system curves"][number][] = [];
  for (const curve of fanSystemCurves(job.unit, condition)) {
    curves.push(curve);
    yield curves.length / systemCurveCount;
  }
  return curves;
}

/** The rating at the condition asked for, or at the one that asks most of the section. */
function* askedMost(
  book: RatingBook,
  { condition }: AlternativesTask,
  asks: (rating: UnitRating) => number,
): Generator<number, UnitRating> {
  let found: UnitRating | undefined;
  const all = book.job.conditions;
  for (const [index, { key }] of all.entries()) {
    if (condition !== undefined && key !== condition) continue;
    const rating = book.rating(key);
    if (rating?.solved === true && (found === undefined || asks(rating) > asks(found))) found = rating;
    yield (solvingShare * (index + 1)) / all.length;
  }
  if (found === undefined) throw new Error("the unit is not solved at the condition");
  return found;
}
