import { readFileSync } from "node:fs";
import { readShop } from "./read-shop.ts";
import type { ShopBooks } from "./shop-book.ts";

const shop = new URL("../../../../shop/", import.meta.url);

/** The text of a shipped book. */
export function bookText(name: "prices" | "rates" | "stock"): string {
  return readFileSync(new URL(`${name}.yaml`, shop), "utf8");
}

/** The shipped books, with what differs. */
export function shippedBooks(changes: Partial<Record<"prices" | "rates" | "stock", string>> = {}): ShopBooks {
  const file = (name: "prices" | "rates" | "stock") => ({
    path: `${name}.yaml`,
    text: changes[name] ?? bookText(name),
  });
  const { books, problems } = readShop({ prices: file("prices"), rates: file("rates"), stock: file("stock") });
  if (books === undefined) throw new Error(JSON.stringify(problems));
  return books;
}
