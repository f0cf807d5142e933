import { writeTextFile } from "#files/write-text";
import { exitCode, UsageProblem } from "../exit-code.ts";
import { textInk } from "../ink.ts";
import { hasErrors, loadCatalogue, loadJob, problemLine } from "../job-source.ts";
import type { Style } from "../rate/rate-print.ts";
import { type Given, optionFlag, optionText, printJson, type Streams, unitSystem } from "../session.ts";
import { printWorking } from "../working-print.ts";
import { fanOf, fanSectionIndex } from "./fan-output.ts";
import { fanPicture } from "./fan-picture.ts";
import { printFan } from "./fan-print.ts";

/** `oncethrough fan`: the fan of a job at every condition, and other ways to build it. */
export async function fanCommand(given: Given, streams: Streams): Promise<number> {
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
  const output = fanOf(job, {
    condition,
    working: optionFlag(given, "working"),
    catalogue: optionFlag(given, "alternatives") ? (await loadCatalogue(given)).catalogue : undefined,
  });
  const svg = optionText(given, "svg");
  if (svg !== undefined) {
    const picture = fanPicture(job, output.condition, unitSystem(given));
    if (picture === undefined) streams.errors(`${name}: the fan runs at no condition; there is nothing to draw\n`);
    else await writeTextFile(svg, picture);
  }
  if (optionFlag(given, "json")) printJson(streams, output);
  else {
    const style: Style = { system: unitSystem(given), ink, columns: Math.min(streams.columns, 120) };
    const figures = job.unit.sections[fanSectionIndex(job)]?.behaviour.figures ?? [];
    const parts = [printFan(output, figures, style)];
    if (output.working !== undefined) {
      const title = `${output.section} at ${output.condition}: how its figures came about`;
      parts.push(printWorking(title, output.working, style.system, ink, style.columns));
    }
    streams.output(`${parts.join("\n\n")}\n`);
  }
  return output.points.every((point) => point.solved) ? exitCode.fine : exitCode.found;
}
