import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dewPointFromHumidityRatio } from "./dew-point.ts";
import { enthalpyFromHumidityRatio, humidityRatioFromRelativeHumidity } from "./moist-air.ts";
import { saturationHumidityRatio } from "./saturation.ts";
import {
  humidityRatioFromWetBulb,
  saturatedDryBulbFromEnthalpy,
  wetBulbFromEnthalpy,
  wetBulbFromHumidityRatio,
  wickEnthalpy,
} from "./wet-bulb.ts";

const dryBulb = fc.double({ min: -60, max: 90, noNaN: true });
const pressure = fc.double({ min: 50_000, max: 110_000, noNaN: true });
const share = fc.double({ min: 0, max: 1, noNaN: true });

/** Humidity ratio of a state, or none where the vapour would leave no room for a hundredth of dry air. */
function humidity(t: number, rh: number, p: number): number | null {
  const W = humidityRatioFromRelativeHumidity(t, rh, p);
  return W < 60 ? W : null;
}

describe("wet bulb and dew point over the whole range", () => {
  it("wet bulb fulfils its defining equation to 1e-9 of the enthalpy", () => {
    fc.assert(
      fc.property(dryBulb, share, pressure, (t, rh, p) => {
        const W = humidity(t, rh, p);
        fc.pre(W !== null);
        const bulb = wetBulbFromHumidityRatio(t, W, p);
        const h = enthalpyFromHumidityRatio(t, W);
        const Ws = saturationHumidityRatio(bulb, p);
        const balance = h + (Ws - W) * wickEnthalpy(bulb, "enhanced") - enthalpyFromHumidityRatio(bulb, Ws);
        const scale = Math.abs(h) + 1000;
        expect(Math.abs(balance) / scale).toBeLessThan(1e-9);
      }),
      { numRuns: 2000 },
    );
  });

  it("lies between dew point and dry bulb", () => {
    fc.assert(
      fc.property(dryBulb, share, pressure, (t, rh, p) => {
        const W = humidity(t, rh, p);
        fc.pre(W !== null);
        const bulb = wetBulbFromHumidityRatio(t, W, p);
        expect(bulb).toBeLessThanOrEqual(t);
        expect(bulb).toBeGreaterThanOrEqual(Math.min(dewPointFromHumidityRatio(W, p), t) - 1e-9);
      }),
      { numRuns: 2000 },
    );
  });

  it("never falls when humidity or dry bulb rises", () => {
    fc.assert(
      fc.property(dryBulb, share, share, pressure, (t, first, second, p) => {
        const W1 = humidity(t, Math.min(first, second), p);
        const W2 = humidity(t, Math.max(first, second), p);
        fc.pre(W1 !== null && W2 !== null);
        expect(wetBulbFromHumidityRatio(t, W2, p)).toBeGreaterThanOrEqual(wetBulbFromHumidityRatio(t, W1, p) - 1e-10);
        const warmer = Math.min(t + 1, 90);
        expect(wetBulbFromHumidityRatio(warmer, W1, p)).toBeGreaterThanOrEqual(
          wetBulbFromHumidityRatio(t, W1, p) - 1e-10,
        );
      }),
      { numRuns: 2000 },
    );
  });

  it("comes back from humidity ratio and from enthalpy, away from the gap at freezing", () => {
    fc.assert(
      fc.property(dryBulb, share, pressure, (t, fraction, p) => {
        const lowest = wetBulbFromHumidityRatio(t, 0, p);
        const bulb = lowest + fraction * (t - lowest);
        const W = humidityRatioFromWetBulb(t, bulb, p);
        fc.pre(W >= 0 && W < 60 && Math.abs(bulb) > 1);
        // Where the air is nearly all vapour the bulb hardly says anything about it: 1e-8 K stays for W of tens.
        const tolerance = W > 1 ? 1e-7 : 1e-9;
        expect(Math.abs(wetBulbFromHumidityRatio(t, W, p) - bulb)).toBeLessThan(tolerance);
        expect(Math.abs(wetBulbFromEnthalpy(enthalpyFromHumidityRatio(t, W), W, p) - bulb)).toBeLessThan(tolerance);
      }),
      { numRuns: 2000 },
    );
  });

  it("dew point and saturated enthalpy come back from saturation", () => {
    fc.assert(
      fc.property(dryBulb, pressure, (t, p) => {
        const W = saturationHumidityRatio(t, p);
        fc.pre(W < 60);
        expect(Math.abs(dewPointFromHumidityRatio(W, p) - t)).toBeLessThan(2e-9);
        expect(Math.abs(saturatedDryBulbFromEnthalpy(enthalpyFromHumidityRatio(t, W), p) - t)).toBeLessThan(1e-9);
      }),
      { numRuns: 2000 },
    );
  });

  it("water is preferred on the wick where ice would do as well, and the step stays below a kelvin", () => {
    // At 5 °C the bulb of water of 0 °C and an ice bulb of half a degree less have the same humidity ratio.
    const W = humidityRatioFromWetBulb(5, 0, 101_325);
    expect(wetBulbFromHumidityRatio(5, W + 1e-12, 101_325)).toBeGreaterThanOrEqual(0);
    const iced = wetBulbFromHumidityRatio(5, W - 1e-9, 101_325);
    expect(iced).toBeLessThan(0);
    expect(iced).toBeGreaterThan(-1);
    expect(humidityRatioFromWetBulb(5, iced, 101_325)).toBeCloseTo(W, 8);
  });

  it("answers saturated and dry air at the edges", () => {
    expect(wetBulbFromHumidityRatio(20, 0.05, 101_325)).toBe(20);
    expect(dewPointFromHumidityRatio(0, 101_325)).toBe(-100);
    expect(() => dewPointFromHumidityRatio(-0.001, 101_325)).toThrow(/at least 0/);
    expect(() => wetBulbFromEnthalpy(Number.NaN, 0.01, 101_325)).toThrow(RangeError);
    expect(() => saturatedDryBulbFromEnthalpy(Number.NaN, 101_325)).toThrow(RangeError);
  });
});
