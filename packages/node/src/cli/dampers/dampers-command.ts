import { exitCode, UsageProblem } from "../exit-code.ts";
import { textInk } from "../ink.ts";
import { hasErrors, loadJob, problemLine } from "../job-source.ts";
import type { Style } from "../rate/rate-print.ts";
import { type Given, optionFlag, optionText, printJson, type Streams, unitSystem } from "../session.ts";
import { dampersOf } from "./dampers-output.ts";
import { printDampers } from "./dampers-print.ts";

/** `oncethrough dampers`: the dampers of a job, the angles to set them to, and the share they give elsewhere. */
export async function dampersCommand(given: Given, streams: Streams): Promise<number> {
  const { name, reading, problems } = await loadJob(given, streams);
  const ink = textInk(streams.colour);
  for (const problem of problems) streams.errors(problemLine(problem, ink));
  const { job } = reading;
  if (job === undefined || hasErrors(problems)) {
    streams.errors(`${name}: not solved; mend the text first\n`);
    return exitCode.found;
  }
  const condition = optionText(given, "condition");
  if (condition !== undefined && !job.conditions.some((each) => each.key === condition)) {
    const keys = job.conditions.map((each) => each.key).join(", ");
    throw new UsageProblem(`--condition "${condition}" is not a condition of this job; allowed: ${keys}`);
  }
  const output = dampersOf(job, condition);
  if (optionFlag(given, "json")) printJson(streams, output);
  else {
    const style: Style = { system: unitSystem(given), ink, columns: Math.min(streams.columns, 120) };
    streams.output(`${printDampers(output, style)}\n`);
  }
  return output.solved ? exitCode.fine : exitCode.found;
}
