import { availableParallelism } from "node:os";
import { setImmediate } from "node:timers/promises";
import { fileURLToPath } from "node:url";
import { type SegmentResult, segmentCount, startSegment, stepSegment } from "@oncethrough/engine/year/segment";
import { mergeSegments, type YearHours } from "@oncethrough/engine/year/year-hours";
import { Piscina } from "piscina";
import { YearDesk, type YearSetup, type YearTask } from "./year-setup.ts";

/** How years are to be solved. */
export interface PoolOptions {
  /** Threads; as many as the machine runs at once when left out. One: the work is done here, between breaths. */
  readonly workers?: number;
  /** Stops the work; what was solved until then is thrown away. */
  readonly signal?: AbortSignal;
  /** Told after every piece of work: 0…1. */
  readonly progress?: (share: number) => void;
  /** Module that a thread starts with; the one beside this when left out. */
  readonly worker?: string;
}

/** The work was stopped: there is no result, not even a part of one. */
export class YearStopped extends Error {
  constructor() {
    super("stopped before the year was solved");
    this.name = "YearStopped";
  }
}

/** Most threads that are of use: a year has no more segments. */
export const mostWorkers = segmentCount;

/**
 * Solves a year of every job of the setup. Years are cut into the same segments whoever solves them, so that the answer
 * is the same for any number of threads.
 *
 * @throws YearStopped when the signal fell
 */
export async function solveYears(setup: YearSetup, options: PoolOptions = {}): Promise<readonly YearHours[]> {
  const desk = new YearDesk(setup);
  const plans = setup.jobs.map((_, place) => desk.plan(place));
  const tasks = setup.jobs.flatMap((_, job) =>
    Array.from({ length: segmentCount }, (__, segment): YearTask => ({ job, segment })),
  );
  const workers = Math.min(options.workers ?? availableParallelism(), mostWorkers);
  const results = workers > 1 ? await onThreads(setup, tasks, workers, options) : await here(desk, tasks, options);
  return plans.map((plan, job) =>
    mergeSegments(
      plan,
      results.filter((_, place) => tasks[place]!.job === job),
    ),
  );
}

/** Hours solved between two looks at the signal: some tens of milliseconds. */
const hoursAtOnce = 50;

async function here(
  desk: YearDesk,
  tasks: readonly YearTask[],
  { signal, progress }: PoolOptions,
): Promise<SegmentResult[]> {
  const results: SegmentResult[] = [];
  for (const { job, segment } of tasks) {
    const run = startSegment(desk.plan(job), segment);
    do {
      await setImmediate();
      if (signal?.aborted === true) throw new YearStopped();
    } while (!stepSegment(run, hoursAtOnce));
    results.push(run.result);
    progress?.(results.length / tasks.length);
  }
  return results;
}

async function onThreads(
  setup: YearSetup,
  tasks: readonly YearTask[],
  workers: number,
  { signal, progress, worker }: PoolOptions,
): Promise<SegmentResult[]> {
  const pool = new Piscina<YearTask, SegmentResult>({
    filename: worker ?? fileURLToPath(new URL("./year-worker.js", import.meta.url)),
    workerData: setup,
    minThreads: workers,
    maxThreads: workers,
    execArgv: [],
  });
  let done = 0;
  const fall = () => void pool.destroy();
  if (signal?.aborted === true) fall();
  signal?.addEventListener("abort", fall, { once: true });
  try {
    return await Promise.all(
      tasks.map(async (task) => {
        const result = await pool.run(task);
        progress?.(++done / tasks.length);
        return result;
      }),
    );
  } catch (error) {
    if (signal?.aborted === true) throw new YearStopped();
    throw error;
  } finally {
    signal?.removeEventListener("abort", fall);
    // One piece that failed ends all others with it.
    await pool.destroy();
  }
}
