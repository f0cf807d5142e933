import { exitCode } from "../exit-code.ts";
import { textInk } from "../ink.ts";
import { hasErrors, loadJob, problemLine } from "../job-source.ts";
import type { Style } from "../rate/rate-print.ts";
import { type Given, optionFlag, printJson, type Streams, unitSystem } from "../session.ts";
import { printParts } from "./parts-print.ts";
import { weightOf } from "./weigh-output.ts";
import { printWeight } from "./weigh-print.ts";

/** `oncethrough weigh`: masses, centre of gravity, lifting, rail, traps, panels and springs of a job's unit. */
export async function weighCommand(given: Given, streams: Streams): Promise<number> {
  const { name, reading, problems } = await loadJob(given, streams);
  const ink = textInk(streams.colour);
  for (const problem of problems) streams.errors(problemLine(problem, ink));
  const { job } = reading;
  if (job === undefined || hasErrors(problems)) {
    streams.errors(`${name}: not weighed; mend the text first\n`);
    return exitCode.found;
  }
  const output = weightOf(job, optionFlag(given, "parts"));
  if (optionFlag(given, "json")) printJson(streams, output);
  else {
    const style: Style = { system: unitSystem(given), ink, columns: Math.min(streams.columns, 120) };
    const parts = output.parts === undefined ? "" : `\n\n${printParts(output.parts, style)}`;
    streams.output(`${printWeight(output, style)}${parts}\n`);
  }
  return output.unsolved.length === 0 ? exitCode.fine : exitCode.found;
}
