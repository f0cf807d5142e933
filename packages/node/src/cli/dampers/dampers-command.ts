import { exitCode } from "../exit-code.ts";
import { conditionOption } from "../job-option.ts";
import { readyJob } from "../job-source.ts";
import type { Style } from "../rate/rate-print.ts";
import { type Given, optionFlag, printJson, type Streams, unitSystem } from "../session.ts";
import { dampersOf } from "./dampers-output.ts";
import { printDampers } from "./dampers-print.ts";

/** `oncethrough dampers`: the dampers of a job, the angles to set them to, and the share they give elsewhere. */
export async function dampersCommand(given: Given, streams: Streams): Promise<number> {
  const ready = await readyJob(given, streams, "not solved");
  if (ready === undefined) return exitCode.found;
  const { job, ink } = ready;
  const condition = conditionOption(given, job)?.key;
  const output = dampersOf(job, condition);
  if (optionFlag(given, "json")) printJson(streams, output);
  else {
    const style: Style = { system: unitSystem(given), ink, columns: Math.min(streams.columns, 120) };
    streams.output(`${printDampers(output, style)}\n`);
  }
  return output.solved ? exitCode.fine : exitCode.found;
}
