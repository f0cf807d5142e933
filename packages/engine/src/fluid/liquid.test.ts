import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  HIGHEST_GLYCOL_FRACTION,
  type Liquid,
  liquidConductivity,
  liquidDensity,
  liquidFreezePoint,
  liquidIsCovered,
  liquidSpecificHeat,
  liquidViscosity,
} from "./liquid.ts";
import { waterConductivity, waterDensity, waterSpecificHeat, waterViscosity } from "./water.ts";

const glycols = ["ethylene glycol", "propylene glycol"] as const;
const liquid = (substance: Liquid["substance"], massFraction: number): Liquid => ({ substance, massFraction });

describe("liquids", () => {
  it("water is water, whatever the fraction says, and glycol of none is water", () => {
    for (const each of [liquid("water", 0), liquid("water", 0.4), ...glycols.map((name) => liquid(name, 0))]) {
      expect(liquidDensity(each, 30)).toBe(waterDensity(30));
      expect(liquidSpecificHeat(each, 30)).toBe(waterSpecificHeat(30));
      expect(liquidViscosity(each, 30)).toBe(waterViscosity(30));
      expect(liquidConductivity(each, 30)).toBe(waterConductivity(30));
      expect(liquidFreezePoint(each)).toBe(0);
    }
  });

  it("a trace of glycol is nearly water: the polynomials of the solutions meet water within 2 %", () => {
    // Melinder fitted solutions; at no glycol the polynomials need not meet water, and miss its viscosity by 1.4 % at 0 °C.
    for (const name of glycols) {
      for (const t of [0, 20, 40]) {
        const trace = liquid(name, 1e-6);
        expect(Math.abs(liquidDensity(trace, t) / waterDensity(t) - 1)).toBeLessThan(0.002);
        expect(Math.abs(liquidSpecificHeat(trace, t) / waterSpecificHeat(t) - 1)).toBeLessThan(0.003);
        expect(Math.abs(liquidConductivity(trace, t) / waterConductivity(t) - 1)).toBeLessThan(0.01);
        expect(Math.abs(liquidViscosity(trace, t) / waterViscosity(t) - 1)).toBeLessThan(0.02);
      }
    }
  });

  it("more glycol freezes later, is thicker, takes less heat and conducts less", () => {
    const fraction = fc.double({ min: 0.01, max: HIGHEST_GLYCOL_FRACTION - 0.02, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...glycols), fraction, fc.double({ min: 0, max: 80, noNaN: true }), (name, x, t) => {
        const thin = liquid(name, x);
        const thick = liquid(name, x + 0.02);
        expect(liquidFreezePoint(thick)).toBeLessThan(liquidFreezePoint(thin));
        expect(liquidViscosity(thick, t)).toBeGreaterThan(liquidViscosity(thin, t));
        expect(liquidSpecificHeat(thick, t)).toBeLessThan(liquidSpecificHeat(thin, t));
        expect(liquidConductivity(thick, t)).toBeLessThan(liquidConductivity(thin, t));
        expect(liquidViscosity(thin, t + 5)).toBeLessThan(liquidViscosity(thin, t));
      }),
      { numRuns: 500 },
    );
  });

  it("says where the sources end", () => {
    expect(liquidIsCovered(liquid("propylene glycol", 0.4), 20)).toBe(true);
    expect(liquidIsCovered(liquid("propylene glycol", 0.4), -21)).toBe(false);
    expect(liquidIsCovered(liquid("water", 0), 80)).toBe(true);
    expect(liquidIsCovered(liquid("water", 0), -0.1)).toBe(false);
  });

  it("stays sensible up to 95 °C, beyond the published range", () => {
    // ASHRAE Handbook: Fundamentals, chapter 31, 30 % ethylene glycol by mass at 80 °C, from memory: 1011 kg/m³, 3.86 kJ/kg K,
    // 0.70 mPa·s, 0.51 W/mK; 2 %, 3 % and, in viscosity, 12 % are the spread of sources there.
    const hot = liquid("ethylene glycol", 0.3);
    expect(Math.abs(liquidDensity(hot, 80) / 1011 - 1)).toBeLessThan(0.02);
    expect(Math.abs(liquidSpecificHeat(hot, 80) / 3860 - 1)).toBeLessThan(0.03);
    expect(Math.abs(liquidViscosity(hot, 80) / 0.0007 - 1)).toBeLessThan(0.12);
    expect(Math.abs(liquidConductivity(hot, 80) / 0.51 - 1)).toBeLessThan(0.03);
    for (const name of glycols) {
      for (let t = 40; t < 95; t += 5) {
        const each = liquid(name, 0.5);
        expect(liquidDensity(each, t + 5)).toBeLessThan(liquidDensity(each, t));
        expect(liquidViscosity(each, t + 5)).toBeLessThan(liquidViscosity(each, t));
      }
    }
  });

  it("refuses fractions that the polynomials do not know", () => {
    expect(() => liquidDensity(liquid("ethylene glycol", 0.61), 20)).toThrow(
      /ethylene glycol: mass fraction 0.61 is outside 0…0.6/,
    );
    expect(() => liquidFreezePoint(liquid("propylene glycol", 30))).toThrow(RangeError);
    expect(() => liquidViscosity(liquid("propylene glycol", Number.NaN), 20)).toThrow(RangeError);
  });
});
