import type { Job } from "@oncethrough/engine/job/job";
import { type Adder, offerOf, type UnitMasses } from "@oncethrough/engine/takeoff/offer";
import type { UnitPrice } from "@oncethrough/engine/takeoff/price";
import type { ShopBooks } from "@oncethrough/engine/takeoff/shop-book";

/** What `oncethrough price --json` prints. Money is whole cents of `currency`; amounts are in SI. */
export interface PriceOutput extends UnitPrice {
  readonly format: "oncethrough price 1";
  readonly tag: string;
  /** False when something of the base unit or of an option has no price and is in no sum. */
  readonly isComplete: boolean;
  /** kg of the base unit. */
  readonly masses: Pick<UnitMasses, "dry" | "operating" | "shipping">;
  readonly options: readonly Adder[];
  readonly order: OrderPrice;
}

/** The base unit with the options that are taken. */
export interface OrderPrice {
  readonly price: number;
  /** Cents by which options taken together differ from the sum of their adders. */
  readonly together: number;
  readonly masses: PriceOutput["masses"];
  /** kg entered with options, in none of the masses. */
  readonly enteredMass: number;
}

/** Prices the unit of a job and its options by the books of a shop. */
export function priceOf(job: Job, books: ShopBooks): PriceOutput {
  const { base, adders, ordered, together, enteredMass, total } = offerOf(job, books);
  const masses = ({ dry, operating, shipping }: UnitMasses) => ({ dry, operating, shipping });
  return {
    format: "oncethrough price 1",
    tag: job.tag,
    isComplete: base.price.missing.length === 0 && adders.every(({ missing }) => missing.length === 0),
    ...base.price,
    masses: masses(base.masses),
    options: adders,
    order: { price: total, together, masses: masses(ordered.masses), enteredMass },
  };
}
