import type { Job } from "@oncethrough/engine/job/job";
import { type Offer, offerOf, type PricedUnit, pricedUnit } from "@oncethrough/engine/takeoff/offer";
import type { ShopBooks } from "@oncethrough/engine/takeoff/shop-book";
import type { SoundJob } from "./sound-job.ts";

/** What an order comes to. */
export interface OrderSum {
  /** The unit with the options that are taken. */
  readonly unit: PricedUnit;
  /** Cents: the unit, and what was entered with options taken. */
  readonly price: number;
  /** kg entered with options taken, in no mass of the unit. */
  readonly enteredMass: number;
  /** Things without a price, in no sum. */
  readonly missing: number;
}

/** Prices of one job: made when they are first asked for, and kept while the books are the same. */
export interface KeptPrices {
  books: ShopBooks | undefined;
  order: OrderSum | undefined;
  offer: Offer | undefined;
}

/** The order alone: what has to be ready with every edit. */
export function orderOf({ job, prices }: SoundJob, books: ShopBooks): OrderSum {
  keepTo(prices, books);
  prices.order ??= orderSum(job, books);
  return prices.order;
}

/** Base price, and every option beside it. */
export function offerIn({ job, prices }: SoundJob, books: ShopBooks): Offer {
  keepTo(prices, books);
  prices.offer ??= offerOf(job, books);
  return prices.offer;
}

function keepTo(prices: KeptPrices, books: ShopBooks): void {
  if (prices.books === books) return;
  prices.books = books;
  prices.order = undefined;
  prices.offer = undefined;
}

function orderSum({ unit, duty, options }: Job, books: ShopBooks): OrderSum {
  const priced = pricedUnit(unit, duty, books);
  const taken = options.filter((option) => option.taken);
  return {
    unit: priced,
    price: priced.price.price + taken.reduce((sum, option) => sum + (option.price ?? 0), 0),
    enteredMass: taken.reduce((sum, option) => sum + option.mass, 0),
    missing: priced.price.missing.length,
  };
}
