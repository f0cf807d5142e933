import { describe, expect, it } from "vitest";
import { type OrderedSection, orderAdvice, orderProblems } from "./order.ts";

const roles: Record<string, OrderedSection["kind"]["role"]> = {
  fan: "fan",
  "mixing box": "mixing",
  "chilled-water coil": "cooling",
  "steam coil": "heating",
};
const row = (...kinds: string[]): readonly OrderedSection[] =>
  kinds.map((name, index) => {
    const role = roles[name];
    return { name: `${index} ${name}`, kind: { name, ...(role === undefined ? {} : { role }) } };
  });

/** Where air comes in, is mixed, and leaves is geometry, no source. */
describe("orders that cannot be built", () => {
  it.each([
    ["no fan", row("louver"), 0, /has no fan/],
    ["a second fan", row("fan", "access", "fan"), 2, /a second fan/],
    ["a second mixing box", row("mixing box", "mixing box", "fan"), 1, /a second mixing box/],
    ["the mixing box behind the fan", row("fan", "mixing box"), 1, /behind the fan/],
    ["something before the hood", row("louver", "intake hood", "fan"), 1, /0 louver would stand before it/],
    ["something behind the plenum", row("fan", "discharge plenum", "access"), 1, /2 access would meet none/],
  ])("%s", (_, order, index, words) => {
    expect(orderProblems(order)).toEqual([
      expect.objectContaining({ index, problem: expect.stringMatching(words as RegExp) }),
    ]);
  });

  it("are none of the usual ones", () => {
    const usual = row("intake hood", "louver", "mixing box", "filter bank", "steam coil", "spray gap");
    const rest = row("chilled-water coil", "moisture eliminator", "access", "fan", "filter bank", "discharge plenum");
    const all = [...usual, ...rest].map((section, index) => ({ ...section, name: `${index}` }));
    expect(orderProblems(all)).toEqual([]);
    expect(orderAdvice(all)).toEqual([]);
  });
});

/** Common practice, no source: what the sections are for. */
describe("orders that do not do their work", () => {
  it.each([
    ["an eliminator before the coil", row("filter bank", "moisture eliminator", "chilled-water coil", "fan"), 1],
    ["a spray gap before no coil", row("spray gap", "access", "fan"), 0],
    ["a louver behind filters", row("intake hood", "filter bank", "louver", "fan"), 2],
    ["filters right behind a wet coil", row("filter bank", "chilled-water coil", "filter bank", "fan"), 2],
    ["a coil before all filters", row("steam coil", "filter bank", "fan"), 0],
    ["the only heating behind the cooling coil", row("chilled-water coil", "steam coil", "fan"), 1],
  ])("%s", (_, order, index) => {
    expect(orderAdvice(order).map((each) => each.index)).toEqual([index]);
  });

  it("reheat behind the cooling coil is sound where a preheat stands before it", () => {
    expect(orderAdvice(row("steam coil", "chilled-water coil", "steam coil", "fan"))).toEqual([]);
  });
});
