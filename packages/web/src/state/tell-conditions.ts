import { runUnit } from "@oncethrough/engine/arrangement/running";
import { airPath } from "@oncethrough/engine/chart/air-path";
import { fanChartPoint } from "@oncethrough/engine/chart/fan-system";
import { fastestFanSpeed } from "@oncethrough/engine/unit/largest-flow";
import { unmetOf, unsolvedOf } from "./findings.ts";
import type { RatingBook } from "./rating-book.ts";
import type { ToldConditions } from "./told-conditions.ts";

/** Solves what is not solved yet, and tells of all. */
export function tellConditions(book: RatingBook): ToldConditions {
  const ratings = book.all();
  const { unit } = book.job;
  return {
    running: runUnit(unit, ratings),
    paths: ratings.map((rating) => airPath(unit, rating)),
    fanPoints: ratings.flatMap((rating) => fanChartPoint(unit, rating) ?? []),
    unmet: unmetOf(book),
    unsolved: unsolvedOf(book),
    fastest: fastestFanSpeed(ratings),
  };
}
