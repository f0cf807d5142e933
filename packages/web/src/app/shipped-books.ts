import type { ShopFiles } from "@oncethrough/engine/takeoff/read-shop";

/** The books of the shop that come with the program, for a page without a server. */
export function shippedBooks(): ShopFiles {
  const texts = import.meta.glob<string>("../../../../shop/*.yaml", { query: "?raw", import: "default", eager: true });
  const book = (name: string) => ({ path: `shop/${name}.yaml`, text: texts[`../../../../shop/${name}.yaml`] ?? "" });
  return { prices: book("prices"), rates: book("rates"), stock: book("stock") };
}
