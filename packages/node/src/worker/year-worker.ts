import { workerData } from "node:worker_threads";
import { type TaskResult, YearDesk, type YearSetup, type YearTask } from "./year-setup.ts";

/*
 * A thread of the year's pool: it is given the setup when it starts, and then one piece of work after the other.
 */

const desk = new YearDesk(workerData as YearSetup);

/** Does a piece of work. */
export default function work(task: YearTask): TaskResult {
  return desk.perform(task);
}
