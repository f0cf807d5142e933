import type { Job } from "@oncethrough/engine/job/job";
import { type Offer, offerOf, pricedUnit } from "@oncethrough/engine/takeoff/offer";
import type { ShopBooks } from "@oncethrough/engine/takeoff/shop-book";
import type { KeptPrices, OrderSum } from "./kept-prices.ts";
import type { SoundJob } from "./sound-job.ts";

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
