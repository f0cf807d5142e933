import { type Arrangement, arrangeUnit } from "@oncethrough/engine/arrangement/arrange";
import { arrangementTask } from "@oncethrough/engine/arrangement/task";
import type { SoundJob } from "./sound-job.ts";
import { tellConditions } from "./tell-conditions.ts";

/**
 * The machine of a job in millimetres, one for everything that projects it. How deep its traps stand hangs on all
 * conditions: until they are told of, those of the job before it stand, and it is the same arrangement until then. A job
 * with other sections has all its conditions solved here.
 */
export function arrangementOf({ job, book, machine }: SoundJob): Arrangement {
  const { unit, duty } = job;
  if (machine.running === undefined && (machine.before === undefined || book.told !== undefined)) {
    machine.running = (book.told ?? tellConditions(book)).running;
    machine.last = machine.arrangement ?? machine.last;
    machine.arrangement = undefined;
  }
  const running = machine.running ?? machine.before!;
  machine.arrangement ??= arrangeUnit(unit, arrangementTask(duty), running, machine.last);
  return machine.arrangement;
}
