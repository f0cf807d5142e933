import { listOf, number, published, record, text } from "../schema/describe.ts";

const cents = (words: string) => ({ type: "integer", description: `cents${words === "" ? "" : `, ${words}`}` });

const line = record({
  owner: text("name of the section, or `unit`"),
  sort: { enum: ["material", "bought", "labour"] },
  what: text(),
  amount: number("of the unit beside it"),
  unit: { enum: ["kg", "each", "m²", "h", "entered"] },
  rate: cents("for one"),
  cents: cents("rounded by itself, halves upwards"),
});

const missing = record({
  owner: text("name of the section, or `unit`"),
  what: text(),
  amount: number("of the unit beside it"),
  unit: { enum: ["kg", "each", "m²"] },
});

const owner = record({
  owner: text("name of the section, or `unit`"),
  material: cents(""),
  bought: cents(""),
  labour: cents(""),
  hours: number("h"),
  overhead: cents("on labour"),
  cost: cents("material, bought, labour and overhead"),
  price: cents("cost over one less the margin"),
});

const masses = record({ dry: number("kg"), operating: number("kg"), shipping: number("kg") });

const option = record({
  name: text(),
  note: text(),
  taken: { type: "boolean", description: "the order includes it" },
  changes: cents("that its changes of the machine come to, freight included"),
  entered: cents("entered with it"),
  cents: cents("both: what it adds to the base price alone; below zero a credit"),
  mass: number("kg dry that it adds"),
  length: number("m that the cabinet grows"),
  missing: listOf(missing, "what it brings that has no price and is in no sum"),
});

const order = record({
  price: cents("base and options taken"),
  together: cents("by which options taken together differ from the sum of their adders"),
  masses,
  enteredMass: number("kg entered with options taken, in none of the masses"),
});

/** The published schema of `oncethrough price --json`. */
export function priceSchema(): object {
  return published("price", "The price of a unit, as printed by `oncethrough price --json`; money in whole cents", {
    ...record({
      format: { const: "oncethrough price 1" },
      tag: text("of the unit"),
      isComplete: { type: "boolean", description: "false when something has no price and is in no sum" },
      currency: text("code of the currency"),
      basis: record({ prices: text(), rates: text(), stock: text() }),
      lines: listOf(line),
      missing: listOf(missing),
      owners: listOf(owner, "sections in airflow order, then the unit"),
      cost: cents(""),
      freight: cents(""),
      price: cents("of the base unit, with overhead, margin and freight"),
      margin: number("0 to 1, of the price"),
      overhead: number("over labour"),
      masses,
      options: listOf(option, "each priced alone beside the base price"),
      order,
    }),
  });
}
