import type { SegmentResult } from "@oncethrough/engine/year/segment";
import { segmentCount } from "@oncethrough/engine/year/segment-count";
import type { Trial } from "@oncethrough/engine/year/uncertainty";
import type { Task } from "./task.ts";

/** How a task is cut into pieces that several workers do, and put together again: the same whoever does which. */
export interface Pieces {
  readonly count: number;
  readonly piece: (index: number) => Task;
  readonly whole: (done: readonly unknown[]) => Task;
}

/** Most workers that are of use: a year has no more pieces. */
export const mostWorkers = segmentCount;

/** The pieces of a task; undefined for one that a single worker does. */
export function piecesOf(task: Task): Pieces | undefined {
  if (task.kind === "year") {
    return {
      count: segmentCount,
      piece: (segment) => ({ ...task, kind: "year piece", segment }),
      whole: (done) => ({ ...task, kind: "year whole", pieces: done as readonly SegmentResult[] }),
    };
  }
  if (task.kind === "uncertainty") {
    return {
      count: task.trials,
      piece: (trial) => ({ ...task, kind: "trial", trial }),
      whole: (done) => ({ ...task, kind: "uncertainty whole", pieces: done as readonly Trial[] }),
    };
  }
  return undefined;
}

/** True for what the workers of years do. */
export function isOfYears(kind: Task["kind"]): boolean {
  const kinds: readonly Task["kind"][] = [
    "year",
    "year piece",
    "year whole",
    "uncertainty",
    "trial",
    "uncertainty whole",
  ];
  return kinds.includes(kind);
}
