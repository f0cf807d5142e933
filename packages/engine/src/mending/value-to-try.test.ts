import { describe, expect, it } from "vitest";
import { choice, flag, integer, quantity } from "#form/field";
import { valuesToTry } from "./value-to-try.ts";

const none = () => [];

describe("valuesToTry", () => {
  it("goes up from what stands there in whole inches, nearest first, within the field's bounds", () => {
    const field = quantity("length", { meaning: "", maximum: "60 in" });
    const values = valuesToTry({ field, text: "40 in" }, "more", none);
    expect(values[0]).toBe("42 in");
    expect(values.every((each) => /^\d+ in$/.test(each))).toBe(true);
    expect(Math.max(...values.map(Number.parseFloat))).toBeLessThanOrEqual(60);
    expect([...values].sort((a, b) => Number.parseFloat(a) - Number.parseFloat(b))).toEqual(values);
  });

  it("keeps the unit that was typed", () => {
    const field = quantity("length", { meaning: "" });
    expect(valuesToTry({ field, text: "1000 mm" }, "less", none)[0]).toBe("970 mm");
  });

  it("steps temperatures by degrees, not by shares", () => {
    const field = quantity("temperature", { meaning: "" });
    expect(valuesToTry({ field, text: "0 °C" }, "more", none)[0]).toBe("0.5 °C");
  });

  it("counts by ones, names every other choice, turns a flag", () => {
    expect(valuesToTry({ field: integer({ meaning: "", maximum: 10 }), text: "8" }, "more", none)).toEqual(["9", "10"]);
    const way = choice(["a", "b", "c"], { meaning: "" });
    expect(valuesToTry({ field: way, text: "b" }, "other", none)).toEqual(["a", "c"]);
    expect(valuesToTry({ field: flag({ meaning: "" }), text: "false" }, "other", none)).toEqual(["true"]);
  });

  it("has nothing to turn where nothing stands", () => {
    expect(valuesToTry({ field: quantity("length", { meaning: "" }), text: undefined }, "more", none)).toEqual([]);
  });
});
