import type { Fields, ValuesOf } from "#form/field";
import type { Problem } from "#form/problem";
import { readForm } from "#form/read";
import { priceBookFields, rateBookFields, type ShopBooks, stockBookFields } from "./shop-book.ts";

/** A text of the shop and where it comes from. */
export interface ShopFile {
  readonly path: string;
  readonly text: string;
}

/** What is wrong with a book, and in which file. */
export interface ShopProblem extends Problem {
  readonly file: string;
}

/** The books when all three are sound, else every problem. */
export interface ShopReading {
  readonly books: ShopBooks | undefined;
  readonly problems: readonly ShopProblem[];
}

const nothing = { component: () => undefined, componentNames: () => [] };

/** The three books as text. */
export interface ShopFiles {
  readonly prices: ShopFile;
  readonly rates: ShopFile;
  readonly stock: ShopFile;
}

/** Reads the three books of a shop. It does not throw, whatever the texts are. */
export function readShop(files: ShopFiles): ShopReading {
  const problems: ShopProblem[] = [];
  const prices = readBook(files.prices, priceBookFields, "prices", problems);
  const rates = readBook(files.rates, rateBookFields, "rates", problems);
  const stock = readBook(files.stock, stockBookFields, "stock", problems);
  const isWhole = prices !== undefined && rates !== undefined && stock !== undefined;
  return { books: isWhole ? { prices, rates, stock } : undefined, problems };
}

function readBook<const F extends Fields>(
  file: ShopFile,
  fields: F,
  book: string,
  problems: ShopProblem[],
): ValuesOf<F> | undefined {
  const reading = readForm(file.text, fields, nothing);
  problems.push(...reading.problems.map((problem) => ({ ...problem, file: file.path })));
  if (!reading.ok) return undefined;
  const found = (reading.values as { readonly book?: string }).book;
  if (found === book) return reading.values;
  const place = reading.places("book");
  problems.push({
    file: file.path,
    line: place?.line ?? 1,
    column: place?.column ?? 1,
    path: "book",
    field: "book",
    value: found ?? "",
    problem: `this is the book of ${found}, where that of ${book} is wanted`,
    allowed: book,
    severity: "error",
  });
  return undefined;
}
