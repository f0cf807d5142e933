import { describe, expect, it } from "vitest";
import { checkFields } from "./check-fields.ts";
import { choice, type Fields, flag, group, integer, list, quantity, text, variant } from "./field.ts";
import { readForm } from "./read.ts";

describe("a table of fields", () => {
  it("is sound when every default and limit can be read and fits", () => {
    const sound: Fields = {
      length: quantity("length", { meaning: "a", default: "3-1/2 in", minimum: "0 in", maximum: "10 ft" }),
      rows: integer({ meaning: "a", default: 2, minimum: 1, maximum: 8 }),
      side: choice(["left", "right"], { meaning: "a", default: "left" }),
      on: flag({ meaning: "a", default: false }),
    };
    expect(checkFields(sound)).toEqual([]);
  });

  const faulty: [Fields, RegExp][] = [
    [{ a: quantity("length", { meaning: "a", default: "3 psi" }) }, /^a: "3 psi": .*unit of gauge pressure/],
    [{ a: quantity("length", { meaning: "a", default: "3" }) }, /no unit/],
    [{ a: quantity("length", { meaning: "a", default: "3 in", minimum: "1 ft" }) }, /default outside its limits/],
    [{ a: quantity("length", { meaning: "a", minimum: "2 ft", maximum: "3 in" }) }, /minimum above maximum/],
    [{ a: integer({ meaning: "a", default: 1.5 }) }, /not whole/],
    [{ a: integer({ meaning: "a", default: 9, maximum: 8 }) }, /default outside/],
    [{ a: { type: "choice", choices: ["x"], default: "y", meaning: "a" } }, /no choice/],
    [{ a: choice(["x", "x"], { meaning: "a" }) }, /twice/],
    [{ a: text({ meaning: "a", default: "long", longest: 3 }) }, /too long/],
    [{ a: text({ meaning: " " }) }, /no meaning/],
    [{ a: flag({ meaning: "a", default: true, optional: true }) }, /optional and with a default/],
    [{ aAB: flag({ meaning: "a" }), "a b": flag({ meaning: "a" }) }, /does not survive/],
    [{ g: group({ b: integer({ meaning: "", default: 1 }) }, { meaning: "a" }) }, /^g\.b: no meaning/],
    [{ l: list(integer({ meaning: "", default: 1 }), { meaning: "a" }) }, /^l\[0\]: no meaning/],
    [{ v: variant({ fan: { kind: flag({ meaning: "a" }) } }, { meaning: "a" }) }, /field of its own called kind/],
  ];
  it.each(faulty)("tells what is wrong %#", (fields, reason) => {
    expect(checkFields(fields).join("\n")).toMatch(reason);
  });

  it("that is faulty is a mistake in the program, not of the text", () => {
    const fields = { a: quantity("length", { meaning: "a", minimum: "3" }) } as const;
    const context = { component: () => undefined, componentNames: () => [] };
    expect(() => readForm("a: 5 in", fields, context)).toThrow(/descriptor/);
  });
});
