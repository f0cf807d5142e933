import type { Arrangement } from "@oncethrough/engine/arrangement/arrange";
import type { Running } from "@oncethrough/engine/arrangement/running";

/** What is kept of a job's machine in millimetres. */
export interface KeptMachine {
  /** What the machine of the job before this one felt, when it had the same sections. */
  readonly before: Running | undefined;
  /** The arrangement of the job before: sections that did not change are taken from it. */
  last: Pick<Arrangement, "casing" | "placed"> | undefined;
  /** What this one feels at all its conditions. */
  running: Running | undefined;
  arrangement: Arrangement | undefined;
}

/** Nothing arranged yet; a job with the sections of the one before begins with what that one felt. */
export function keptMachine(names: readonly string[], before: KeptMachine | undefined): KeptMachine {
  const known = before?.running ?? before?.before;
  const isSame = known?.sections.map(({ section }) => section).join("\n") === names.join("\n");
  const last = before?.arrangement ?? before?.last;
  return { before: isSame ? known : undefined, last, running: undefined, arrangement: undefined };
}
