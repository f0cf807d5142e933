import type { Job } from "@oncethrough/engine/job/job";
import { type Offer, offerOf, type PricedUnit, pricedUnit } from "@oncethrough/engine/takeoff/offer";
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

/** The pricing of one job: made when it is first asked for, and kept while the books are the same. */
export class UnitPricing {
  readonly #job: Job;
  #books: ShopBooks | undefined;
  #order: OrderSum | undefined;
  #offer: Offer | undefined;

  constructor(job: Job) {
    this.#job = job;
  }

  /** The order alone: what has to be ready with every edit. */
  order(books: ShopBooks): OrderSum {
    this.#keepTo(books);
    this.#order ??= orderOf(this.#job, books);
    return this.#order;
  }

  /** Base price, and every option beside it. */
  offer(books: ShopBooks): Offer {
    this.#keepTo(books);
    this.#offer ??= offerOf(this.#job, books);
    return this.#offer;
  }

  #keepTo(books: ShopBooks): void {
    if (this.#books === books) return;
    this.#books = books;
    this.#order = undefined;
    this.#offer = undefined;
  }
}

function orderOf({ unit, duty, options }: Job, books: ShopBooks): OrderSum {
  const priced = pricedUnit(unit, duty, books);
  const taken = options.filter((option) => option.taken);
  return {
    unit: priced,
    price: priced.price.price + taken.reduce((sum, option) => sum + (option.price ?? 0), 0),
    enteredMass: taken.reduce((sum, option) => sum + option.mass, 0),
    missing: priced.price.missing.length,
  };
}
