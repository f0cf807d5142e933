import { writeTextFile } from "#files/write-text";
import { exitCode } from "../exit-code.ts";
import { conditionOption } from "../job-option.ts";
import { loadCatalogue, readyJob } from "../job-source.ts";
import type { Style } from "../rate/rate-print.ts";
import { type Given, optionFlag, optionText, printJson, type Streams, unitSystem } from "../session.ts";
import { printWorking } from "../working-print.ts";
import { fanOf, fanSectionIndex } from "./fan-output.ts";
import { fanPicture } from "./fan-picture.ts";
import { printFan } from "./fan-print.ts";

/** `oncethrough fan`: the fan of a job at every condition, and other ways to build it. */
export async function fanCommand(given: Given, streams: Streams): Promise<number> {
  const ready = await readyJob(given, streams, "not solved");
  if (ready === undefined) return exitCode.found;
  const { name, job, ink } = ready;
  const condition = conditionOption(given, job)?.key;
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
