import { exitCode, UsageProblem } from "../exit-code.ts";
import { textInk } from "../ink.ts";
import { hasErrors, loadJob, problemLine } from "../job-source.ts";
import { type Given, optionFlag, optionText, printJson, type Streams, unitSystem } from "../session.ts";
import { soundOutput } from "./sound-output.ts";
import { printSound } from "./sound-print.ts";

/** `oncethrough sound`: octave-band sound power at the intake, at the discharge and through the casing of a job's unit. */
export async function soundCommand(given: Given, streams: Streams): Promise<number> {
  const { name, reading, problems } = await loadJob(given, streams);
  const ink = textInk(streams.colour);
  for (const problem of problems) streams.errors(problemLine(problem, ink));
  const { job } = reading;
  if (job === undefined || hasErrors(problems)) {
    streams.errors(`${name}: not solved; mend the text first\n`);
    return exitCode.found;
  }
  const key = optionText(given, "condition");
  if (key !== undefined && !job.conditions.some((each) => each.key === key)) {
    const keys = job.conditions.map((each) => each.key).join(", ");
    throw new UsageProblem(`--condition "${key}" is not a condition of this job; allowed: ${keys}`);
  }
  const output = soundOutput(job, key);
  if (output === undefined) {
    streams.errors(
      `${name}: no sound to tell at ${key ?? "any condition"}: the fan stands, or the unit is not solved\n`,
    );
    return exitCode.found;
  }
  if (optionFlag(given, "json")) printJson(streams, output);
  else
    streams.output(
      `${printSound(output, { ink, columns: Math.min(streams.columns, 120), system: unitSystem(given) })}\n`,
    );
  return exitCode.fine;
}
