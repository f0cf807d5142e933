import { exitCode } from "../exit-code.ts";
import { readyJob } from "../job-source.ts";
import type { Style } from "../rate/rate-print.ts";
import { type Given, optionFlag, printJson, type Streams, unitSystem } from "../session.ts";
import { printParts } from "./parts-print.ts";
import { weightOf } from "./weigh-output.ts";
import { printWeight } from "./weigh-print.ts";

/** `oncethrough weigh`: masses, centre of gravity, lifting, rail, traps, panels and springs of a job's unit. */
export async function weighCommand(given: Given, streams: Streams): Promise<number> {
  const ready = await readyJob(given, streams, "not weighed");
  if (ready === undefined) return exitCode.found;
  const { job, ink } = ready;
  const output = weightOf(job, optionFlag(given, "parts"));
  if (optionFlag(given, "json")) printJson(streams, output);
  else {
    const style: Style = { system: unitSystem(given), ink, columns: Math.min(streams.columns, 120) };
    const parts = output.parts === undefined ? "" : `\n\n${printParts(output.parts, style)}`;
    streams.output(`${printWeight(output, style)}${parts}\n`);
  }
  return output.unsolved.length === 0 ? exitCode.fine : exitCode.found;
}
