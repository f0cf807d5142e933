import { arrangeUnit } from "@oncethrough/engine/arrangement/arrange";
import { piecesOf } from "@oncethrough/engine/arrangement/lifting";
import { arrangementTask } from "@oncethrough/engine/arrangement/weigh";
import type { Job } from "@oncethrough/engine/job/job";
import { priceUnit, type UnitPrice } from "@oncethrough/engine/takeoff/price";
import type { ShopBooks } from "@oncethrough/engine/takeoff/shop-book";
import { sheetsOf } from "@oncethrough/engine/takeoff/takeoff";

/** What `oncethrough price --json` prints. Money is whole cents of `currency`; amounts are in SI. */
export interface PriceOutput extends UnitPrice {
  readonly format: "oncethrough price 1";
  readonly tag: string;
  /** False when something has no price and is in no sum. */
  readonly isComplete: boolean;
}

/** Prices the unit of a job by the books of a shop. */
export function priceOf(job: Job, books: ShopBooks): PriceOutput {
  const arrangement = arrangeUnit(job.unit, arrangementTask(job.duty));
  const sheets = sheetsOf(arrangement, books.stock);
  const pieces = piecesOf(job.unit, arrangement).map((piece) => piece.shippingMass);
  const loose = arrangement.sections.filter(({ section }) => section.layout.outside > 0).map(({ part }) => part.mass);
  const price = priceUnit(job.unit, arrangement, sheets, [...pieces, ...loose], books);
  return { format: "oncethrough price 1", tag: job.tag, isComplete: price.missing.length === 0, ...price };
}
