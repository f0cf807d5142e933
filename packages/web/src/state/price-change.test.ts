/// <reference types="vite/client" />
import { readShop } from "@oncethrough/engine/takeoff/read-shop";
import { describe, expect, it } from "vitest";
import prices from "../../../../shop/prices.yaml?raw";
import rates from "../../../../shop/rates.yaml?raw";
import stock from "../../../../shop/stock.yaml?raw";
import { moneyText, roundMoneyText, signedText } from "./money-words.ts";
import { changeBetweenOrders, ownerRows } from "./price-change.ts";
import { catalogue, sampleBench } from "./sample-job.test-data.ts";
import { edited, fieldEdited, stepBack } from "./transitions.ts";
import { offerIn, orderOf } from "./unit-pricing.ts";

const file = (text: string) => ({ path: "book.yaml", text });
const books = readShop({ prices: file(prices), rates: file(rates), stock: file(stock) }).books!;

describe("what an act changes", () => {
  const first = sampleBench();
  const wider = fieldEdited(first, "unit.casing.width", "84 in", catalogue);
  const order = (bench: typeof first) => orderOf(bench.sound!, books);

  it("is the difference to what stood before it, and comes back with undo", () => {
    expect(first.before).toBeUndefined();
    expect(wider.before?.act).toBe("width 84 in");
    const change = changeBetweenOrders(order(wider), orderOf(wider.before!.sound, books));
    expect(change.price).toBe(order(wider).price - order(first).price);
    expect(change.price).toBeGreaterThan(0);
    expect(change.dry).toBeGreaterThan(0);
    expect(change.length).toBe(0);
    const back = stepBack(wider, catalogue);
    expect(back.before?.act).toBe("undone: width 84 in");
    const undone = changeBetweenOrders(order(back), orderOf(back.before!.sound, books));
    expect(undone.price).toBe(-change.price);
    expect(undone.dry).toBeCloseTo(-change.dry, 9);
  });

  it("says nothing of what summing in another order leaves over", () => {
    const now = order(wider);
    const { masses } = now.unit;
    const summed = { ...now, unit: { ...now.unit, masses: { ...masses, dry: masses.dry * (1 + 1e-15) - 1e-12 } } };
    expect(changeBetweenOrders(now, summed).dry).toBe(0);
  });

  it("adds up section by section to the whole, sections that come and go included", () => {
    const text = wider.text.replace("    - kind: access\n", "    - { kind: access, name: walk in, length: 40 in }\n");
    const other = edited(wider, "typing", text, catalogue);
    const [now, before] = [order(other), order(wider)];
    const rows = ownerRows(now, before);
    expect(rows.find(({ owner }) => owner === "walk in")?.fate).toBe("new");
    expect(rows.find(({ owner }) => owner === "access")).toMatchObject({ fate: "gone", price: 0 });
    const sum = (of: (row: (typeof rows)[number]) => number) => rows.reduce((all, row) => all + of(row), 0);
    expect(sum(({ price }) => price)).toBe(now.price);
    expect(sum(({ priceChange }) => priceChange ?? 0)).toBe(now.price - before.price);
    expect(sum(({ massChange }) => massChange ?? 0)).toBeCloseTo(now.unit.masses.dry - before.unit.masses.dry, 6);
    expect(ownerRows(now, undefined).every(({ priceChange }) => priceChange === undefined)).toBe(true);
  });

  it("holds while a text is unsound, and counts typing on as one act", () => {
    const broken = edited(wider, "typing", wider.text.replace("84 in", "84 apples"), catalogue);
    expect(broken.before).toBe(wider.before);
    const one = edited(wider, "typing", wider.text.replace("300 ft", "3001 ft"), catalogue);
    const two = edited(one, "typing", one.text.replace("3001 ft", "30012 ft"), catalogue);
    expect(two.before?.sound).toBe(wider.sound);
  });

  it("has the price of options that are taken in it", () => {
    const text = `${first.text}options:\n  - { name: test, price: $1000.50, mass: 20 kg }\n`;
    const offered = edited(first, "typing", text, catalogue);
    const taken = fieldEdited(offered, "options[0].taken", "yes", catalogue);
    expect(order(taken).price - order(offered).price).toBe(100_050);
    expect(order(taken).enteredMass).toBe(20);
    expect(offerIn(taken.sound!, books).total).toBe(order(taken).price);
    expect(ownerRows(order(taken), order(offered)).at(-1)).toMatchObject({ priceChange: 100_050, mass: undefined });
  });
});

describe("money in words", () => {
  it("has its currency and its sign before it", () => {
    expect(moneyText(-1_234_505, "USD")).toBe("−$12,345.05");
    expect(moneyText(99, "CHF")).toBe("CHF 0.99");
    expect(roundMoneyText(1_234_550, "EUR")).toBe("€12,346");
    expect(roundMoneyText(-49, "USD")).toBe("$0");
    expect(signedText(-250, (size) => moneyText(size, "USD"))).toBe("−$2.50");
    expect(signedText(20, (size) => roundMoneyText(size, "USD"))).toBe("$0");
  });
});
