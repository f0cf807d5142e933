import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { applied, changeBetween, inverted } from "./text-change.ts";

const text = fc.string({ unit: fc.constantFrom("a", "b", "\n", " ", "é", "𝔸"), maxLength: 40 });

describe("changes of a text", () => {
  it("lead from one text to the other and back, whatever they are", () => {
    fc.assert(
      fc.property(text, text, (before, after) => {
        const change = changeBetween(before, after);
        if (change === undefined) {
          expect(after).toBe(before);
          return;
        }
        expect(applied(before, change)).toBe(after);
        expect(applied(after, inverted(change))).toBe(before);
      }),
    );
  });

  it("touch only what differs", () => {
    expect(changeBetween("rows: 6\nfins: 10\n", "rows: 8\nfins: 10\n")).toEqual({
      from: 6,
      removed: "6",
      inserted: "8",
    });
    expect(changeBetween("aa", "aaa")).toEqual({ from: 2, removed: "", inserted: "a" });
  });

  it("are refused by a text they were not made for", () => {
    expect(() => applied("rows: 4", { from: 6, removed: "6", inserted: "8" })).toThrow(RangeError);
  });
});
