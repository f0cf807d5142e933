import { availableParallelism } from "node:os";
import { setImmediate } from "node:timers/promises";
import { fileURLToPath } from "node:url";
import type { HourWeight } from "@oncethrough/engine/year/representative";
import type { SegmentResult } from "@oncethrough/engine/year/segment";
import { segmentCount } from "@oncethrough/engine/year/segment-count";
import { mergeTrials, type Trial, type Uncertainty } from "@oncethrough/engine/year/uncertainty";
import { mergeSegments, type YearHours } from "@oncethrough/engine/year/year-hours";
import { Piscina } from "piscina";
import { type TaskResult, YearDesk, type YearSetup, type YearTask } from "./year-setup.ts";

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
  const tasks = setup.jobs.flatMap((_, job) =>
    Array.from({ length: segmentCount }, (__, segment): YearTask => ({ kind: "segment", job, segment })),
  );
  const results = (await doAll(setup, desk, tasks, options)) as readonly SegmentResult[];
  return setup.jobs.map((_, job) =>
    mergeSegments(
      desk.plan(job),
      results.filter((__, place) => tasks[place]!.job === job),
    ),
  );
}

/** Trials of every job: how many, by which seed, in which hours for each job. */
export interface TrialsAsked {
  readonly count: number;
  readonly seed: number;
  readonly hours: readonly (readonly HourWeight[])[];
}

/**
 * Solves trials of every job within its tolerances. What a trial draws follows from the seed and its number, so that the
 * answer is the same for any number of threads.
 *
 * @throws YearStopped when the signal fell
 */
export async function solveTrials(
  setup: YearSetup,
  { count, seed, hours }: TrialsAsked,
  options: PoolOptions = {},
): Promise<readonly Uncertainty[]> {
  const desk = new YearDesk(setup);
  const tasks = setup.jobs.flatMap((_, job) =>
    Array.from({ length: count }, (__, trial): YearTask => ({ kind: "trial", job, trial, seed, hours: hours[job]! })),
  );
  const results = (await doAll(setup, desk, tasks, options)) as readonly Trial[];
  return setup.jobs.map((_, job) =>
    mergeTrials(
      desk.plan(job),
      hours[job]!,
      seed,
      results.filter((__, place) => tasks[place]!.job === job),
    ),
  );
}

function doAll(setup: YearSetup, desk: YearDesk, tasks: readonly YearTask[], options: PoolOptions) {
  const workers = Math.min(options.workers ?? availableParallelism(), mostWorkers);
  return workers > 1 ? onThreads(setup, tasks, workers, options) : here(desk, tasks, options);
}

async function here(desk: YearDesk, tasks: readonly YearTask[], { signal, progress }: PoolOptions) {
  const results: TaskResult[] = [];
  for (const task of tasks) {
    await setImmediate();
    if (signal?.aborted === true) throw new YearStopped();
    results.push(desk.perform(task));
    progress?.(results.length / tasks.length);
  }
  return results;
}

async function onThreads(
  setup: YearSetup,
  tasks: readonly YearTask[],
  workers: number,
  { signal, progress, worker }: PoolOptions,
): Promise<readonly TaskResult[]> {
  const pool = new Piscina<YearTask, TaskResult>({
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
