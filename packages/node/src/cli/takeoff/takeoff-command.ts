import { readShop } from "@oncethrough/engine/takeoff/read-shop";
import { readShopFolder } from "#files/shop-folder";
import { exitCode } from "../exit-code.ts";
import { readyJob } from "../job-source.ts";
import type { Style } from "../rate/rate-print.ts";
import { type Given, optionFlag, optionText, printJson, type Streams, unitSystem } from "../session.ts";
import { takeoffOf } from "./takeoff-output.ts";
import { printTakeoff, type TakeoffList, takeoffCsv } from "./takeoff-print.ts";

/** `oncethrough takeoff`: parts, blanks, sheets and bought things of a job's unit. */
export async function takeoffCommand(given: Given, streams: Streams): Promise<number> {
  const { books, problems } = readShop(await readShopFolder(optionText(given, "shop")));
  const ready = await readyJob(given, streams, "not taken off", problems);
  if (ready === undefined || books === undefined) return exitCode.found;
  const { job, ink } = ready;
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
