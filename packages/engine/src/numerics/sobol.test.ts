import { describe, expect, it } from "vitest";
import { normalQuantile } from "./normal-quantile.ts";
import { mostSobolDimensions, sobolPoint } from "./sobol.ts";

describe("Sobol points", () => {
  // SciPy 1.17.1, scipy.stats.qmc.Sobol(d=8, scramble=False).random(8): the same direction numbers (Joe and Kuo 2008).
  const scipy = [
    [0, 0, 0, 0, 0, 0, 0, 0],
    [0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5],
    [0.75, 0.25, 0.25, 0.25, 0.75, 0.75, 0.25, 0.75],
    [0.25, 0.75, 0.75, 0.75, 0.25, 0.25, 0.75, 0.25],
    [0.375, 0.375, 0.625, 0.875, 0.375, 0.125, 0.375, 0.875],
    [0.875, 0.875, 0.125, 0.375, 0.875, 0.625, 0.875, 0.375],
    [0.625, 0.125, 0.875, 0.625, 0.625, 0.875, 0.125, 0.125],
    [0.125, 0.625, 0.375, 0.125, 0.125, 0.375, 0.625, 0.625],
  ];

  it("are those of an independent library", () => {
    scipy.forEach((point, index) => {
      expect(sobolPoint(index, 8, 0)).toEqual(point);
    });
  });

  it.each([0, 1, 77])("lie one in each of 256 slices of every dimension, with seed %i too", (seed) => {
    const points = Array.from({ length: 256 }, (_, index) => sobolPoint(index, mostSobolDimensions, seed));
    for (let dimension = 0; dimension < mostSobolDimensions; dimension++) {
      const slices = new Set(points.map((point) => Math.floor(256 * point[dimension]!)));
      expect(slices.size).toBe(256);
    }
  });

  it("differ by seed, and refuse what they cannot give", () => {
    expect(sobolPoint(5, 3, 1)).not.toEqual(sobolPoint(5, 3, 2));
    expect(() => sobolPoint(0, 11, 0)).toThrow(/1 to 10/);
    expect(() => sobolPoint(-1, 2, 0)).toThrow(RangeError);
    expect(() => sobolPoint(0, 2, 1.5)).toThrow(RangeError);
  });
});

describe("the normal distribution", () => {
  it("has the quantiles of the tables", () => {
    // Abramowitz and Stegun 1964, table 26.1 and 26.5, to their digits.
    expect(normalQuantile(0.5)).toBe(0);
    expect(normalQuantile(0.8413447461)).toBeCloseTo(1, 8);
    expect(normalQuantile(0.99)).toBeCloseTo(2.326348, 6);
    expect(normalQuantile(0.001)).toBeCloseTo(-3.090232, 6);
  });
});
