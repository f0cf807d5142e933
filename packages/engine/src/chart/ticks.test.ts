import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { multiples, niceRange, niceStep, tickText } from "./ticks.ts";

describe("ticks", () => {
  it("cuts spans by steps of 1, 2 and 5", () => {
    expect([niceStep(10, 10), niceStep(1, 4), niceStep(70, 6), niceStep(0.004, 4), niceStep(300, 4)]).toEqual([
      1, 0.2, 10, 0.001, 100,
    ]);
    expect(() => niceStep(0, 4)).toThrow(RangeError);
  });

  it("gives every multiple once, both ends included, without rounding noise", () => {
    expect(multiples(0, 0.5, 0.1)).toEqual([0, 0.1, 0.2, 0.3, 0.4, 0.5]);
    expect(multiples(-3, 1, 2)).toEqual([-2, 0]);
  });

  it("holds every range in at most a few more ticks than asked", () => {
    const value = fc.double({ min: -1e6, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(value, value, fc.integer({ min: 2, max: 12 }), (one, other, count) => {
        const [low, high] = [Math.min(one, other), Math.max(one, other)];
        const range = niceRange(low, high, count, 1);
        const slack = 1e-6 * range.step;
        expect(range.low).toBeLessThanOrEqual(low + slack);
        expect(range.high).toBeGreaterThanOrEqual(high - slack);
        expect(range.ticks[0]).toBeCloseTo(range.low, 6);
        expect(range.ticks.at(-1)).toBeCloseTo(range.high, 6);
        // A step may be √2.5 finer than asked, and each end may add one tick.
        expect(range.ticks.length).toBeLessThanOrEqual(1.6 * count + 3);
      }),
    );
  });

  it("prints as many decimals as the step has, with a true minus", () => {
    expect([tickText(0.2, 0.2), tickText(-2, 1), tickText(150, 50), tickText(1, 0.5)]).toEqual([
      "0.2",
      "−2",
      "150",
      "1.0",
    ]);
  });
});
