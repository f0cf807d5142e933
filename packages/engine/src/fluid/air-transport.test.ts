import { describe, expect, it } from "vitest";
import { airConductivity, airPrandtl, airViscosity } from "./air-transport.ts";
import { standardPressure } from "./atmosphere.ts";

describe("transport properties of air", () => {
  it("meet the textbook table of air at 250, 300 and 350 K", () => {
    // Incropera et al., Fundamentals of Heat and Mass Transfer, table A.4, from memory. The table rounds to four digits
    // and rests on other measurements: 1 % in viscosity, 1.5 % in conductivity and Prandtl number.
    for (const [T, mu, k, Pr] of [
      [250, 159.6e-7, 22.3e-3, 0.72],
      // biome-ignore lint/suspicious/noApproximativeNumericConstant: a Prandtl number, not half the root of two
      [300, 184.6e-7, 26.3e-3, 0.707],
      [350, 208.2e-7, 30e-3, 0.7],
    ] as const) {
      const t = T - 273.15;
      expect(Math.abs(airViscosity(t) / mu - 1)).toBeLessThan(0.01);
      expect(Math.abs(airConductivity(t) / k - 1)).toBeLessThan(0.015);
      expect(Math.abs(airPrandtl(t) / Pr - 1)).toBeLessThan(0.015);
    }
  });
});

describe("standard atmosphere", () => {
  it("meets the handbook's table of altitudes", () => {
    // ASHRAE Handbook: Fundamentals, chapter 1, table 1, kPa, from memory; printed to a pascal, its equation to two.
    for (const [altitude, kilopascal] of [
      [-500, 107.478],
      [0, 101.325],
      [500, 95.461],
      [1000, 89.875],
      [1500, 84.556],
      [2000, 79.495],
      [2500, 74.682],
      [3000, 70.108],
    ] as const) {
      expect(Math.abs(standardPressure(altitude) - kilopascal * 1000)).toBeLessThan(3);
    }
  });

  it("refuses what is no altitude", () => {
    expect(() => standardPressure(50_000)).toThrow(/altitude 50000 m is outside −5000…40000 m/);
    expect(() => standardPressure(Number.NaN)).toThrow(RangeError);
  });
});
