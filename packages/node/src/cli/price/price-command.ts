import { readShop } from "@oncethrough/engine/takeoff/read-shop";
import { readShopFolder } from "#files/shop-folder";
import { exitCode } from "../exit-code.ts";
import { textInk } from "../ink.ts";
import { hasErrors, loadJob, problemLine } from "../job-source.ts";
import type { Style } from "../rate/rate-print.ts";
import { type Given, optionFlag, optionText, printJson, type Streams, unitSystem } from "../session.ts";
import { priceOf } from "./price-output.ts";
import { priceCsv, printPrice } from "./price-print.ts";

/** `oncethrough price`: what a job's unit costs and is sold for, by the shop's books. */
export async function priceCommand(given: Given, streams: Streams): Promise<number> {
  const { name, reading, problems } = await loadJob(given, streams);
  const { books, problems: bookProblems } = readShop(await readShopFolder(optionText(given, "shop")));
  const ink = textInk(streams.colour);
  const all = [...bookProblems, ...problems];
  for (const problem of all) streams.errors(problemLine(problem, ink));
  const { job } = reading;
  if (job === undefined || books === undefined || hasErrors(all)) {
    streams.errors(`${name}: not priced; mend the text first\n`);
    return exitCode.found;
  }
  const output = priceOf(job, books);
  if (optionFlag(given, "json")) printJson(streams, output);
  else if (optionFlag(given, "csv")) streams.output(priceCsv(output));
  else {
    const style: Style = { system: unitSystem(given), ink, columns: Math.min(streams.columns, 120) };
    streams.output(`${printPrice(output, style, optionFlag(given, "lines"))}\n`);
  }
  return output.isComplete ? exitCode.fine : exitCode.found;
}
