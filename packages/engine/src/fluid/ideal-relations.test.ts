import psychrolib from "psychrolib";
import { describe, expect, it } from "vitest";
import { dewPointFromHumidityRatio } from "./dew-point.ts";
import {
  enthalpyFromHumidityRatio,
  humidityRatioFromRelativeHumidity,
  relativeHumidityFromHumidityRatio,
  specificVolume,
} from "./moist-air.ts";
import { saturationHumidityRatio, saturationPressure } from "./saturation.ts";
import { humidityRatioFromWetBulb, wetBulbFromHumidityRatio } from "./wet-bulb.ts";

// The psychrolib package carries the handbook's ideal relations (ASHRAE Handbook: Fundamentals 2017, chapter 1). It
// changes from ice to water at 0.01 °C, here it is 0 °C: temperatures between are left out.
psychrolib.SetUnitSystem(psychrolib.SI);

const states = [50_000, 70_000, 101_325, 110_000].flatMap((p) =>
  Array.from({ length: 45 }, (_, i) => -50.3 + 2.9 * i)
    .filter((t) => psychrolib.GetSatVapPres(t) < 0.9 * p)
    .flatMap((t) => [0.02, 0.1, 0.4, 0.7, 0.95, 1].map((rh) => ({ t, rh, p }))),
);

function relative(got: number, expected: number): number {
  return Math.abs(got / expected - 1);
}

describe("ideal relations agree with the psychrolib package", () => {
  it("looks at many states", () => expect(states.length).toBeGreaterThan(800));

  it("forward to 1e-6", () => {
    for (const { t, rh, p } of states) {
      const W = psychrolib.GetHumRatioFromRelHum(t, rh, p);
      // It never goes below 1e-7 kg/kg.
      if (W < 2e-7) continue;
      expect(relative(saturationPressure(t), psychrolib.GetSatVapPres(t))).toBeLessThan(1e-6);
      expect(relative(saturationHumidityRatio(t, p, "ideal"), psychrolib.GetSatHumRatio(t, p))).toBeLessThan(1e-6);
      expect(relative(humidityRatioFromRelativeHumidity(t, rh, p, "ideal"), W)).toBeLessThan(1e-6);
      expect(relative(relativeHumidityFromHumidityRatio(t, W, p, "ideal"), rh)).toBeLessThan(1e-6);
      expect(relative(specificVolume(t, W, p), psychrolib.GetMoistAirVolume(t, W, p))).toBeLessThan(1e-6);
      const enthalpy = psychrolib.GetMoistAirEnthalpy(t, W);
      expect(Math.abs(enthalpyFromHumidityRatio(t, W) - enthalpy)).toBeLessThan(1e-6 * Math.abs(enthalpy) + 1e-6);
    }
  });

  it("humidity ratio from wet bulb to 1e-6 of that at saturation, over ice too", () => {
    for (const { t, p } of states) {
      for (const depression of [0, 0.5, 2, 6]) {
        const bulb = t - depression;
        const expected = psychrolib.GetHumRatioFromTWetBulb(t, bulb, p);
        if (expected <= 1.1e-7 || (bulb >= 0 && bulb <= 0.01)) continue;
        const scale = 1e-6 * saturationHumidityRatio(bulb, p, "ideal");
        expect(Math.abs(humidityRatioFromWetBulb(t, bulb, p, "ideal") - expected)).toBeLessThan(scale);
      }
    }
  });

  it("wet bulb to 1 mK, half a kelvin and more from freezing", () => {
    let count = 0;
    for (const { t, rh, p } of states) {
      const W = psychrolib.GetHumRatioFromRelHum(t, rh, p);
      const expected = psychrolib.GetTWetBulbFromHumRatio(t, W, p);
      // Below 1e-6 kg/kg its lower bound of 1e-7 kg/kg moves the dew point from which it starts.
      if (Math.abs(expected) < 0.5 || W < 1e-6) continue;
      expect(Math.abs(wetBulbFromHumidityRatio(t, W, p, "ideal") - expected)).toBeLessThan(1e-3);
      count++;
    }
    expect(count).toBeGreaterThan(700);
  });

  it("dew point to 1 mK", () => {
    for (const { t, rh, p } of states) {
      const W = psychrolib.GetHumRatioFromRelHum(t, rh, p);
      if (W < 2e-7) continue;
      const expected = psychrolib.GetTDewPointFromHumRatio(t, W, p);
      if (Math.abs(expected) < 0.02) continue;
      expect(Math.abs(dewPointFromHumidityRatio(W, p, "ideal") - expected)).toBeLessThan(1e-3);
    }
  });
});
