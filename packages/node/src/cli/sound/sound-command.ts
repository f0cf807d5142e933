import { exitCode } from "../exit-code.ts";
import { conditionOption } from "../job-option.ts";
import { readyJob } from "../job-source.ts";
import { type Given, optionFlag, printJson, type Streams, unitSystem } from "../session.ts";
import { soundOutput } from "./sound-output.ts";
import { printSound } from "./sound-print.ts";

/** `oncethrough sound`: octave-band sound power at the intake, at the discharge and through the casing of a job's unit. */
export async function soundCommand(given: Given, streams: Streams): Promise<number> {
  const ready = await readyJob(given, streams, "not solved");
  if (ready === undefined) return exitCode.found;
  const { name, job, ink } = ready;
  const key = conditionOption(given, job)?.key;
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
