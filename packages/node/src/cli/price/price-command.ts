import { readShop } from "@oncethrough/engine/takeoff/read-shop";
import { readShopFolder } from "#files/shop-folder";
import { exitCode } from "../exit-code.ts";
import { readyJob } from "../job-source.ts";
import type { Style } from "../rate/rate-print.ts";
import { type Given, optionFlag, optionText, printJson, type Streams, unitSystem } from "../session.ts";
import { priceOf } from "./price-output.ts";
import { priceCsv, printPrice } from "./price-print.ts";

/** `oncethrough price`: what a job's unit costs and is sold for, by the shop's books. */
export async function priceCommand(given: Given, streams: Streams): Promise<number> {
  const { books, problems } = readShop(await readShopFolder(optionText(given, "shop")));
  const ready = await readyJob(given, streams, "not priced", problems);
  if (ready === undefined || books === undefined) return exitCode.found;
  const { job, ink } = ready;
  const output = priceOf(job, books);
  if (optionFlag(given, "json")) printJson(streams, output);
  else if (optionFlag(given, "csv")) streams.output(priceCsv(output));
  else {
    const style: Style = { system: unitSystem(given), ink, columns: Math.min(streams.columns, 120) };
    streams.output(`${printPrice(output, style, optionFlag(given, "lines"))}\n`);
  }
  return output.isComplete ? exitCode.fine : exitCode.found;
}
