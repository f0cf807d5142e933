import { svgText } from "@oncethrough/engine/drawing/svg-text";
import { writeTextFile } from "#files/write-text";
import { exitCode, UsageProblem } from "../exit-code.ts";
import { readyJob } from "../job-source.ts";
import { type Given, optionFlag, optionText, printJson, type Streams, unitSystem } from "../session.ts";
import { type DrawOutput, drawingOf, type ViewName } from "./draw-output.ts";

/** pt: width of the picture when nothing is said. */
const usualWidth = 1100;

/** `oncethrough draw`: a view of a job's unit as SVG, or as the display list that it is painted from. */
export async function drawCommand(given: Given, streams: Streams): Promise<number> {
  const width = widthOf(given);
  const ready = await readyJob(given, streams, "not drawn");
  if (ready === undefined) return exitCode.found;
  const { job } = ready;
  const view = (optionText(given, "view") ?? "side") as ViewName;
  const output = drawingOf(job, view, { width, system: unitSystem(given), withSolids: optionFlag(given, "solids") });
  const file = optionText(given, "svg");
  const text = svgText(output.list, width, titleOf(output));
  if (file !== undefined) {
    await writeTextFile(file, text);
    streams.errors(`written to ${file}\n`);
  }
  if (optionFlag(given, "json")) printJson(streams, output);
  else if (file === undefined) streams.output(text);
  return exitCode.fine;
}

/** What the drawing is of, and what it is not. */
function titleOf({ tag, view, list }: DrawOutput): readonly string[] {
  const rigging =
    view === "plan" ? [] : ["lifting: figures for a rigging plan; qualified riggers and local codes decide"];
  return [`${tag} · ${list.title}`, "dimensions govern, do not scale; the job file is the record", ...rigging];
}

function widthOf(given: Given): number {
  const typed = optionText(given, "width");
  if (typed === undefined) return usualWidth;
  const width = Number(typed);
  if (Number.isFinite(width) && width >= 300 && width <= 20_000) return width;
  throw new UsageProblem(`--width "${typed}" is not understood; allowed: points, 300 to 20000`);
}
