import { readShop } from "@oncethrough/engine/takeoff/read-shop";
import { readShopFolder } from "#files/shop-folder";
import { exitCode } from "../exit-code.ts";
import { textInk } from "../ink.ts";
import { hasErrors, loadJob, problemLine } from "../job-source.ts";
import type { Style } from "../rate/rate-print.ts";
import { type Given, optionFlag, optionText, printJson, type Streams, unitSystem } from "../session.ts";
import { takeoffOf } from "./takeoff-output.ts";
import { printTakeoff, type TakeoffList, takeoffCsv } from "./takeoff-print.ts";

/** `oncethrough takeoff`: parts, blanks, sheets and bought things of a job's unit. */
export async function takeoffCommand(given: Given, streams: Streams): Promise<number> {
  const { name, reading, problems } = await loadJob(given, streams);
  const { books, problems: bookProblems } = readShop(await readShopFolder(optionText(given, "shop")));
  const ink = textInk(streams.colour);
  const all = [...bookProblems, ...problems];
  for (const problem of all) streams.errors(problemLine(problem, ink));
  const { job } = reading;
  if (job === undefined || books === undefined || hasErrors(all)) {
    streams.errors(`${name}: not taken off; mend the text first\n`);
    return exitCode.found;
  }
  const output = takeoffOf(job, books.stock);
  const list = optionText(given, "csv");
  if (optionFlag(given, "json")) printJson(streams, output);
  else if (list !== undefined) streams.output(takeoffCsv(output, list as TakeoffList, unitSystem(given)));
  else {
    const style: Style = { system: unitSystem(given), ink, columns: Math.min(streams.columns, 140) };
    streams.output(`${printTakeoff(output, style)}\n`);
  }
  return exitCode.fine;
}
