import { choice, factor, group, list, quantity, text, type ValuesOf } from "#form/field";
import { type MaterialName, materials, sheetMetals } from "#standard/material";
import { sheetGaugeNames } from "#standard/sheet-gauge";
import { workMeasures } from "./work-measure.ts";

const materialNames = Object.keys(materials) as MaterialName[];
const bases = ["the shop's own", "quoted", "common practice", "invented"] as const;

/** What every book of the shop says about itself. */
const bookFields = {
  book: choice(["prices", "rates", "stock"], { meaning: "Which book it is" }),
  basis: choice(bases, { meaning: "What its figures rest on" }),
  date: text({ meaning: "When it was last gone over, year-month-day", longest: 20 }),
  note: text({ meaning: "What it covers and what not", default: "", longest: 600 }),
} as const;

const money = (meaning: string) => quantity("money", { meaning, optional: true, minimum: "$0" });

/** The price book: materials by mass, bought things by piece, mass or area. */
export const priceBookFields = {
  ...bookFields,
  currency: text({ meaning: "Currency of every amount, by its code", default: "USD", longest: 3 }),
  materials: list(
    group(
      {
        material: choice(materialNames, { meaning: "What is bought by mass" }),
        perKg: quantity("money", { meaning: "A kilogram of it", minimum: "$0" }),
      },
      { meaning: "A material" },
    ),
    { meaning: "Materials, the last of a name counts", most: 200 },
  ),
  items: list(
    group(
      {
        item: text({ meaning: "How the bought thing is called, or how its name begins", longest: 80 }),
        each: money("One of it"),
        perKg: money("A kilogram of it"),
        perSquareMetre: money("A square metre of it"),
      },
      {
        meaning: "A bought thing",
        check: (values, say) => {
          const given = [values.each, values.perKg, values.perSquareMetre].filter((each) => each !== undefined);
          if (given.length !== 1) {
            say(undefined, "a bought thing has one price", "one of `each`, `per kg`, `per square metre`");
          }
        },
      },
    ),
    { meaning: "Bought things; the longest name that fits counts", most: 2000 },
  ),
} as const;

/** The rate book: hours of work and what is laid on top. */
export const rateBookFields = {
  ...bookFields,
  operations: list(
    group(
      {
        operation: text({ meaning: "What is done", longest: 60 }),
        per: choice(workMeasures, { meaning: "What the hours go with" }),
        hours: factor({ meaning: "Hours for one of it", minimum: 0, maximum: 1000 }),
        rate: quantity("money", { meaning: "An hour of it, with what the hand costs besides wages", minimum: "$0" }),
      },
      { meaning: "An operation" },
    ),
    { meaning: "Operations of the shop", fewest: 1, most: 200 },
  ),
  overhead: quantity("share", { meaning: "Overhead over labour", minimum: "0 %", maximum: "1000 %" }),
  margin: quantity("share", {
    meaning: "Margin of the price: price is cost over one less the margin",
    minimum: "0 %",
    maximum: "90 %",
  }),
  freightPerKg: quantity("money", { meaning: "Freight of a kilogram as shipped", minimum: "$0" }),
  freightPerPiece: quantity("money", { meaning: "Freight of a piece besides", minimum: "$0" }),
} as const;

/** The stock book: sheets that are kept, and what of them is lost. */
export const stockBookFields = {
  ...bookFields,
  sheets: list(
    group(
      {
        metal: choice(sheetMetals, { meaning: "What the sheet is of" }),
        gauge: choice(sheetGaugeNames, { meaning: "Its gauge" }),
        length: quantity("length", { meaning: "Long side", minimum: "12 in", maximum: "40 ft" }),
        width: quantity("length", { meaning: "Short side", minimum: "12 in", maximum: "10 ft" }),
      },
      { meaning: "A sheet" },
    ),
    { meaning: "Sheets in stock, one size for each metal and gauge; the last counts", fewest: 1, most: 200 },
  ),
  kerf: quantity("smallLength", { meaning: "Lost between blanks", default: "3 mm", minimum: "0 mm", maximum: "50 mm" }),
} as const;

/** The price book as read. */
export type PriceBook = ValuesOf<typeof priceBookFields>;
/** The rate book as read. */
export type RateBook = ValuesOf<typeof rateBookFields>;
/** The stock book as read. */
export type StockBook = ValuesOf<typeof stockBookFields>;

/** The three books of a shop. */
export interface ShopBooks {
  readonly prices: PriceBook;
  readonly rates: RateBook;
  readonly stock: StockBook;
}
