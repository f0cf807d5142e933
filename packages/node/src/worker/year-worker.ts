import { workerData } from "node:worker_threads";
import { type SegmentResult, startSegment, stepSegment } from "@oncethrough/engine/year/segment";
import { YearDesk, type YearSetup, type YearTask } from "./year-setup.ts";

/*
 * A thread of the year's pool: it is given the setup when it starts, and then one piece of work after the other.
 */

const desk = new YearDesk(workerData as YearSetup);

/** Does a piece of work. */
export default function work({ job, segment }: YearTask): SegmentResult {
  const run = startSegment(desk.plan(job), segment);
  stepSegment(run, Number.POSITIVE_INFINITY);
  return run.result;
}
