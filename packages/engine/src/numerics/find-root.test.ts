import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { findRoot } from "./find-root.ts";

// Roots known in closed form; the functions are of the kinds that trouble root finders.
const known: [name: string, f: (x: number) => number, low: number, high: number, root: number][] = [
  ["square", (x) => x * x - 2, 0, 2, Math.SQRT2],
  ["flat cube", (x) => (x - 1) ** 3, -1, 4, 1],
  ["steep exponential", (x) => Math.exp(20 * x) - Math.exp(3), -5, 5, 0.15],
  ["hyperbola", (x) => 1 / x - 4, 1e-6, 5, 0.25],
  ["cosine", (x) => Math.cos(x), 0, 3, Math.PI / 2],
  ["root at the lower end", (x) => x, 0, 1, 0],
  ["bracket given backwards", (x) => x - 0.25, 1, -1, 0.25],
];

describe("root finder", () => {
  for (const [name, f, low, high, root] of known) {
    it(`finds the root of a ${name}`, () => {
      // A triple root is flat to 1e-16 within 5e-6 of it: no method can do better there.
      const tolerance = name === "flat cube" ? 1e-5 : 1e-12;
      expect(Math.abs(findRoot(f, low, high, 1e-13) - root)).toBeLessThan(tolerance);
    });
  }

  it("copes with a value that is infinite at one end", () => {
    const f = (x: number) => (x > 0.9 ? Number.POSITIVE_INFINITY : x - 0.3);
    expect(findRoot(f, 0, 1, 1e-12)).toBeCloseTo(0.3, 10);
  });

  it("needs few evaluations of a smooth function", () => {
    let count = 0;
    const counted = (x: number) => {
      count++;
      return Math.exp(x) - 5;
    };
    findRoot(counted, 0, 10, 1e-12);
    // Halving alone would take 43.
    expect(count).toBeLessThan(16);
  });

  it("refuses a bracket without change of sign, and functions without a number, by name", () => {
    expect(() => findRoot((x) => x * x + 1, -1, 1, 1e-9)).toThrow(/no change of sign between -1 \(value 2\)/);
    expect(() => findRoot(() => Number.NaN, 0, 1, 1e-9)).toThrow(RangeError);
  });

  it("finds the root of any rising cubic within its bracket", () => {
    const number = fc.double({ min: -50, max: 50, noNaN: true });
    fc.assert(
      fc.property(number, fc.double({ min: 0.01, max: 10, noNaN: true }), (root, slope) => {
        const f = (x: number) => (x - root) * (slope + (x - root) ** 2);
        const found = findRoot(f, -60, 60, 1e-10);
        expect(Math.abs(found - root)).toBeLessThan(1e-9);
      }),
    );
  });
});
