import { type Arrangement, arrangeUnit } from "@oncethrough/engine/arrangement/arrange";
import { runUnit } from "@oncethrough/engine/arrangement/running";
import { arrangementTask } from "@oncethrough/engine/arrangement/weigh";
import type { SoundJob } from "./sound-job.ts";

/**
 * The machine of a job in millimetres, one for everything that projects it. How deep its traps stand hangs on all
 * conditions: until the page has solved them, those of the job before it stand, and it is the same arrangement until then.
 */
export function arrangementOf({ job, book, machine }: SoundJob): Arrangement {
  const { unit, duty, conditions } = job;
  if (machine.running === undefined && (machine.before === undefined || book.tried === conditions.length)) {
    machine.running = runUnit(unit, book.all());
    machine.arrangement = undefined;
  }
  machine.arrangement ??= arrangeUnit(unit, arrangementTask(duty), machine.running ?? machine.before!);
  return machine.arrangement;
}
