import { wholeUnit } from "@oncethrough/engine/takeoff/owner";
import type { OrderSum } from "./kept-prices.ts";

/** What an act changed, in cents, kg and m. */
export interface PriceChange {
  readonly price: number;
  readonly dry: number;
  readonly operating: number;
  readonly shipping: number;
  readonly length: number;
}

/** A section as priced, and how it stood before the last act. */
export interface OwnerRow {
  /** Name of the section, or what belongs to the whole unit; `freight` and `options` have no mass. */
  readonly owner: string;
  readonly words: string;
  readonly price: number;
  readonly mass: number | undefined;
  /** Difference to before; undefined where there is nothing to set it against. */
  readonly priceChange: number | undefined;
  readonly massChange: number | undefined;
  /** New since the last act, or gone with it. */
  readonly fate: "stays" | "new" | "gone";
}

/** The difference between two orders. */
export function changeBetweenOrders(now: OrderSum, before: OrderSum): PriceChange {
  const [one, other] = [now.unit.masses, before.unit.masses];
  return {
    price: now.price - before.price,
    dry: difference(one.dry, other.dry),
    operating: difference(one.operating, other.operating),
    shipping: difference(one.shipping, other.shipping),
    length: difference(now.unit.length, before.unit.length),
  };
}

/** Less than this is what summing in another order leaves over: a milligram, a micrometre. */
const leftOver = 1e-6;

function difference(now: number, before: number): number {
  return Math.abs(now - before) < leftOver ? 0 : now - before;
}

/** An order section by section, set against the one before the last act. */
export function ownerRows(now: OrderSum, before: OrderSum | undefined): readonly OwnerRow[] {
  const then = before === undefined ? undefined : sharesOf(before);
  const rows = [...sharesOf(now)].map(([owner, share]): OwnerRow => {
    const was = then?.get(owner);
    const isNew = then !== undefined && was === undefined;
    return {
      owner,
      words: share.words,
      price: share.price,
      mass: share.mass,
      priceChange: then === undefined ? undefined : share.price - (was?.price ?? 0),
      massChange: then === undefined || share.mass === undefined ? undefined : difference(share.mass, was?.mass ?? 0),
      fate: isNew && share.mass !== undefined ? "new" : "stays",
    };
  });
  const gone = [...(then ?? [])].flatMap(([owner, was]): OwnerRow[] => {
    if (rows.some((row) => row.owner === owner)) return [];
    const massChange = was.mass === undefined ? undefined : -was.mass;
    return [{ ...was, owner, price: 0, mass: 0, priceChange: -was.price, massChange, fate: "gone" }];
  });
  return [...rows, ...gone];
}

interface Share {
  readonly words: string;
  readonly price: number;
  readonly mass: number | undefined;
}

function sharesOf({ unit, price }: OrderSum): ReadonlyMap<string, Share> {
  const { owners, freight } = unit.price;
  const shares = new Map<string, Share>();
  for (const each of owners) {
    const words = each.owner === wholeUnit ? "the unit as a whole" : each.owner;
    shares.set(each.owner, { words, price: each.price, mass: unit.masses.owners.get(each.owner) ?? 0 });
  }
  shares.set("\nfreight", { words: "freight", price: freight, mass: undefined });
  const entered = price - unit.price.price;
  if (entered !== 0) shares.set("\nentered", { words: "entered with options", price: entered, mass: undefined });
  return shares;
}
