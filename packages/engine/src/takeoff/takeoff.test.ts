import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { visitLeaves } from "#arrangement/part";
import { arrangeRunning } from "#arrangement/weigh";
import { exampleJob, exampleNames, handWorkedText, jobOf } from "#arrangement/weigh.test-data";
import { nestBlanks } from "./nesting.ts";
import { priceUnit, wholeCents } from "./price.ts";
import { readShop } from "./read-shop.ts";
import { bookText, shippedBooks } from "./shop.test-data.ts";
import type { ShopBooks } from "./shop-book.ts";
import { takeOff } from "./takeoff.ts";

function taken(text: string, books: ShopBooks = shippedBooks()) {
  const { unit, duty, conditions } = jobOf(text);
  const arrangement = arrangeRunning(unit, duty, conditions);
  const takeoff = takeOff(arrangement, books.stock);
  return { arrangement, takeoff, price: priceUnit(unit, arrangement, takeoff.sheets, [1000, 500], books) };
}

describe("nesting", () => {
  it("cuts four quarters of one sheet, and five of two", () => {
    const quarter = (count: number) => [{ length: 1000, width: 500, count }];
    expect(nestBlanks(quarter(4), 2000, 1000, 0)).toMatchObject({ least: 1, shelves: 1, joined: [] });
    expect(nestBlanks(quarter(5), 2000, 1000, 0)).toMatchObject({ least: 2, shelves: 2 });
    // A kerf leaves no room for the fourth.
    expect(nestBlanks(quarter(4), 2000, 1000, 3).shelves).toBe(4);
  });

  it("joins what is larger than the sheet of equal pieces", () => {
    const long = { length: 3900, width: 400, count: 1 };
    const nesting = nestBlanks([long], 2000, 1000, 0);
    expect(nesting).toMatchObject({ joined: [long], shelves: 1, area: 3900 * 400 });
  });

  it("needs no fewer sheets than the area asks, and by shelves no more than a plan of shelves can at worst", () => {
    const blanks = fc.array(
      fc.record({
        length: fc.integer({ min: 30, max: 3600 }),
        width: fc.integer({ min: 30, max: 1500 }),
        count: fc.integer({ min: 1, max: 6 }),
      }),
      { minLength: 1, maxLength: 30 },
    );
    fc.assert(
      fc.property(blanks, (given) => {
        const { least, shelves, area } = nestBlanks(given, 3657.6, 1524, 0);
        expect(shelves).toBeGreaterThanOrEqual(least);
        // Shelves by falling height fill a strip no higher than twice the area and one shelf (published bound of level
        // packing, from memory); sheets filled first-fit are more than half full but for one: four times the area and three.
        expect(shelves).toBeLessThanOrEqual(4 * (area / (3657.6 * 1524)) + 3);
      }),
      { numRuns: 200 },
    );
  });
});

describe.each(exampleNames)("the example %s, taken off", (name) => {
  const { unit, duty, conditions } = exampleJob(name);
  const arrangement = arrangeRunning(unit, duty, conditions);
  const books = shippedBooks();
  const takeoff = takeOff(arrangement, books.stock);
  const price = priceUnit(unit, arrangement, takeoff.sheets, [5000], books);

  it("lists every kilogram once, and every blank of every part", () => {
    const listed = takeoff.parts.reduce((sum, { mass }) => sum + mass, 0);
    expect(listed / arrangement.whole.mass).toBeCloseTo(1, 9);
    let blanks = 0;
    visitLeaves(arrangement.whole, ({ sheets }) => {
      for (const sheet of sheets) blanks += sheet.blanks.reduce((sum, { count }) => sum + count, 0);
    });
    expect(takeoff.cuts.reduce((sum, { count }) => sum + count, 0)).toBe(blanks);
    for (const sheet of takeoff.sheets) {
      expect(sheet.sheet, `${sheet.metal} ${sheet.gauge}`).toBeDefined();
      expect(sheet.shelves).toBeGreaterThanOrEqual(sheet.least);
    }
  });

  it("is priced wholly by the shipped books, in whole cents that add up", () => {
    expect(price.missing).toEqual([]);
    for (const { cents, amount, rate, what } of price.lines) {
      expect(Number.isInteger(cents), what).toBe(true);
      expect(Math.abs(cents - amount * rate), what).toBeLessThanOrEqual(0.5 + 1e-6);
    }
    const lines = price.lines.reduce((sum, { cents }) => sum + cents, 0);
    const owners = price.owners.reduce((sum, each) => sum + each.material + each.bought + each.labour, 0);
    expect(owners).toBe(lines);
    const cost = price.owners.reduce((sum, each) => sum + each.cost, 0);
    expect(price.cost).toBe(cost);
    expect(price.price).toBe(price.owners.reduce((sum, each) => sum + each.price, 0) + price.freight);
    // The margin is of the price: cost over price is one less it, to the rounding of a dozen lines.
    expect(price.cost / (price.price - price.freight)).toBeCloseTo(1 - books.rates.margin, 6);
    expect(price.freight).toBe(wholeCents(5000 * books.rates.freightPerKg + books.rates.freightPerPiece));
  });
});

describe("a price by hand", () => {
  const stock = `book: stock
basis: invented
date: 2026-11-25
kerf: 0 mm
sheets: [{ metal: galvanized steel, gauge: 18, length: 120 in, width: 48 in }]
`;
  const prices = `book: prices
basis: invented
date: 2026-11-25
materials: [{ material: copper, per kg: $10.00 }]
items: [{ item: typical MERV, each: $9.99 }, { item: typical MERV 14, each: $100.01 }]
`;
  const rates = `book: rates
basis: invented
date: 2026-11-25
overhead: 50 %
margin: 20 %
freight per kg: $0.01
freight per piece: $5.00
operations:
  - { operation: hang doors, per: door, hours: 2, rate: $10.05 }
  - { operation: engineering, per: unit, hours: 1.5, rate: $99.99 }
`;
  const { price, takeoff } = taken(handWorkedText, shippedBooks({ stock, prices, rates }));

  it("takes the longer name of two that fit, counts panels, hours, overhead, margin and freight", () => {
    // Six panels of 24 by 24 and 12 by 24 in fill five feet by five with standard sizes: two rows of three.
    const filters = price.owners.find(({ owner }) => owner === "filters");
    expect(filters).toMatchObject({ bought: 6 * 10_001, labour: 0 });
    // One door in the access, two at the fan.
    expect(price.owners.find(({ owner }) => owner === "intake")).toMatchObject({ labour: 2010, overhead: 1005 });
    expect(price.owners.find(({ owner }) => owner === "fan")).toMatchObject({ labour: 4020, overhead: 2010 });
    // 1.5 h at $99.99 is 14998.5 cents, rounded upwards; half of it 7499.5 likewise; over 0.8.
    const whole = price.owners.find(({ owner }) => owner === "unit");
    expect(whole).toMatchObject({ labour: 14_999, overhead: 7500, cost: 22_499, price: wholeCents(22_499 / 0.8) });
    expect(price.freight).toBe(1500 + 2 * 500);
  });

  it("lists what has no price with its amount and counts it nowhere", () => {
    const tubes = price.missing.find(({ what }) => what === "aluminium");
    expect(tubes).toMatchObject({ owner: "cooling coil", unit: "kg" });
    expect(tubes?.amount).toBeGreaterThan(20);
    expect(price.missing.map(({ what }) => what)).toContain("typical spring 2 in");
    const counted = price.lines.map(({ what }) => what);
    for (const { what, owner } of price.missing) {
      expect(price.lines.some((line) => line.what === what && line.owner === owner)).toBe(false);
    }
    expect(counted).toContain("copper");
  });

  it("says where the stock book has no sheet", () => {
    const kept = takeoff.sheets.filter(({ sheet }) => sheet !== undefined);
    expect(kept.map(({ gauge }) => gauge)).toEqual(["18"]);
    expect(takeoff.sheets.length).toBeGreaterThan(1);
  });

  it("takes what was entered with a special as it was entered", () => {
    const special = `    - kind: special
      name: sensor bay
      what: sensor bay with mast
      curve: [{ airflow: 8000 cfm, pressure loss: 0.05 in.wg }]
      length: 24 in
      mass: 100 lb
      price: $1,234.56
      source: quotation
    - { kind: fan,`;
    const { price: with_ } = taken(handWorkedText.replace("    - { kind: fan,", special));
    const entered = with_.lines.filter(({ owner, what }) => owner === "sensor bay" && what === "sensor bay with mast");
    expect(entered).toEqual([expect.objectContaining({ sort: "bought", unit: "entered", cents: 123_456 })]);
    const { price: without } = taken(
      handWorkedText.replace("    - { kind: fan,", special.replace("      price: $1,234.56\n", "")),
    );
    expect(without.missing).toContainEqual({
      owner: "sensor bay",
      what: "sensor bay with mast",
      amount: 1,
      unit: "each",
    });
  });
});

describe("books of the shop", () => {
  const file = (text: string) => ({ path: "own.yaml", text });

  it("say their mistakes by file, line and what is allowed", () => {
    const prices = file(bookText("prices").replace("material: copper,", "material: unobtainium,"));
    const { books, problems } = readShop({ prices, rates: file(bookText("rates")), stock: file(bookText("stock")) });
    expect(books).toBeUndefined();
    expect(problems[0]).toMatchObject({ file: "own.yaml", field: "material", severity: "error" });
    expect(problems[0]?.line).toBeGreaterThan(5);
    expect(problems[0]?.allowed).toContain("copper");
  });

  it("refuse a thing with two prices, and a book in the place of another", () => {
    const two = bookText("prices").replace(
      "item: actuator, each: $310.00",
      "item: actuator, each: $310.00, per kg: $3.00",
    );
    const doubled = readShop({ prices: file(two), rates: file(bookText("rates")), stock: file(bookText("stock")) });
    expect(doubled.problems[0]?.problem).toMatch(/one price/);
    const swapped = readShop({
      prices: file(bookText("prices")),
      rates: file(bookText("rates").replace("book: rates", "book: stock")),
      stock: file(bookText("stock")),
    });
    expect(swapped.problems[0]).toMatchObject({ field: "book", allowed: "rates" });
  });

  it("never stops at any text", () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 200 }), (text) => {
        const reading = readShop({ prices: file(text), rates: file(text), stock: file(text) });
        expect(reading.books).toBeUndefined();
        expect(reading.problems.length).toBeGreaterThan(0);
      }),
      { numRuns: 100 },
    );
  });
});
