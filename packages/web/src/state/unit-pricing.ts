import type { Arrangement } from "@oncethrough/engine/arrangement/arrange";
import type { Job } from "@oncethrough/engine/job/job";
import { type Offer, offerOf, pricedUnit } from "@oncethrough/engine/takeoff/offer";
import type { ShopBooks } from "@oncethrough/engine/takeoff/shop-book";
import { arrangementOf } from "./arranged.ts";
import type { OrderSum } from "./kept-prices.ts";
import type { SoundJob } from "./sound-job.ts";

/** The order alone: what has to be ready with every edit. */
export function orderOf(sound: SoundJob, books: ShopBooks): OrderSum {
  const { job, prices } = sound;
  const arrangement = arrangementOf(sound);
  keepTo(sound, arrangement, books);
  prices.order ??= orderSum(job, arrangement, books);
  return prices.order;
}

/** Base price, and every option beside it. */
export function offerIn(sound: SoundJob, books: ShopBooks): Offer {
  const { job, prices } = sound;
  const { unit } = orderOf(sound, books);
  prices.offer ??= offerOf(job, books, unit);
  return prices.offer;
}

/** Prices hold for one machine and the books of one shop. */
function keepTo({ prices }: SoundJob, arrangement: Arrangement, books: ShopBooks): void {
  if (prices.books === books && prices.order?.unit.arrangement === arrangement) return;
  prices.books = books;
  prices.order = undefined;
  prices.offer = undefined;
}

function orderSum({ unit, options }: Job, arrangement: Arrangement, books: ShopBooks): OrderSum {
  const priced = pricedUnit(unit, arrangement, books);
  const taken = options.filter((option) => option.taken);
  return {
    unit: priced,
    price: priced.price.price + taken.reduce((sum, option) => sum + (option.price ?? 0), 0),
    enteredMass: taken.reduce((sum, option) => sum + option.mass, 0),
    missing: priced.price.missing.length,
  };
}
