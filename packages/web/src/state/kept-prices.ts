import type { Offer, PricedUnit } from "@oncethrough/engine/takeoff/offer";
import type { ShopBooks } from "@oncethrough/engine/takeoff/shop-book";

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
