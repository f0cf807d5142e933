import { describe, expect, it } from "vitest";
import { enthalpyFromHumidityRatio } from "#fluid/moist-air";
import { rateAndCheck } from "../balance.test-data.ts";
import { sampleAir, sampleFrame, sampleSectionCondition } from "../sample.test-data.ts";
import { valuesOfText } from "../shipped.test-data.ts";
import { steamHumidifierFields } from "./design.ts";
import { steamHumidifier } from "./kind.ts";

const design = (more = "") =>
  steamHumidifier.prepare(
    valuesOfText(steamHumidifierFields, `dispersion: typical tube panel 6 in\n${more}`),
    sampleFrame,
  );
const winter = { dryBulb: 18, humidityRatio: 0.002, windSpeed: 0, rain: 0 };
const at = (humidifierLeaving: number | undefined, more: Parameters<typeof sampleSectionCondition>[0] = {}) =>
  sampleSectionCondition({ season: "heating", outdoor: winter, ...more }, { humidifierLeaving });

describe("steam humidifier", () => {
  it("adds the water that is wanted, with the steam's enthalpy", () => {
    const out = rateAndCheck(steamHumidifier, design(), sampleAir(at(0.007).condition, 9), at(0.007));
    expect(out.steamToAir).toBeCloseTo(9 * 0.005, 12);
    expect(out.limit).toBe("none");
    // Steam tables (IAPWS-IF97): saturated steam at 1.84 bar absolute has 2702 kJ/kg, condensate at 1.013 bar 419 kJ/kg.
    expect(out.steamEnthalpy / 1000).toBeCloseTo(2702, -1);
    expect(out.condensingHeat / 1000).toBeCloseTo(2702 - 419, -1);
    expect(out.steamUsed).toBeCloseTo(0.045 / 0.86, 9);
  });

  it("warms the air by about a kelvin, as steam does (ASHRAE chapter 1: slope of the process is the steam's enthalpy)", () => {
    const bare = design();
    const dry = { ...bare, dispersion: { ...bare.dispersion, condensingShare: 0 } };
    const out = rateAndCheck(steamHumidifier, dry, sampleAir(at(0.007).condition, 9), at(0.007));
    const rise =
      enthalpyFromHumidityRatio(out.leaving.dryBulb, out.leaving.humidityRatio) - enthalpyFromHumidityRatio(18, 0.002);
    expect(rise / (0.007 - 0.002)).toBeCloseTo(out.steamEnthalpy, 3);
    expect(out.leaving.dryBulb - 18).toBeGreaterThan(0.5);
    expect(out.leaving.dryBulb - 18).toBeLessThan(1.5);
  });

  it("stops where the air takes no more, and tells what is missing", () => {
    const wet = at(0.03);
    const out = rateAndCheck(steamHumidifier, design(), sampleAir(wet.condition, 9), wet);
    expect(out.limit).toBe("saturation");
    expect(out.relativeHumidity).toBeCloseTo(0.9, 4);
    expect(steamHumidifier.shortfalls?.(design(), out, wet)).toHaveLength(1);
  });

  it("stops at its capacity, without steam, with the fan off, and when nothing is wanted", () => {
    const small = rateAndCheck(
      steamHumidifier,
      design("capacity: 100 lb/h"),
      sampleAir(at(0.007).condition, 9),
      at(0.007),
    );
    expect(small.steamToAir).toBeCloseTo((100 * 0.45359237) / 3600, 9);
    expect(small.limit).toBe("capacity");
    const { utilities } = at(0.007).condition;
    const without = at(0.007, { utilities: { ...utilities, steam: undefined } });
    const none = rateAndCheck(steamHumidifier, design(), sampleAir(without.condition, 9), without);
    expect([none.steamToAir, none.limit]).toEqual([0, "no steam"]);
    const idle = rateAndCheck(steamHumidifier, design(), sampleAir(at(undefined).condition, 9), at(undefined));
    expect([idle.steamToAir, idle.limit, idle.leaving.dryBulb]).toEqual([0, "none", 18]);
    const stopped = sampleSectionCondition({ outdoor: winter }, { humidifierLeaving: 0.007, fansRunning: false });
    expect(rateAndCheck(steamHumidifier, design(), sampleAir(stopped.condition, 0.1), stopped).steamToAir).toBe(0);
  });

  it("needs more length the closer to saturation it goes", () => {
    const distance = (wanted: number) =>
      rateAndCheck(steamHumidifier, design(), sampleAir(at(wanted).condition, 9), at(wanted)).absorptionDistance;
    expect(distance(0.009)).toBeGreaterThan(distance(0.005));
    expect(distance(0.007)).toBeGreaterThan(0.1);
    expect(distance(0.007)).toBeLessThan(1.5);
  });

  it("balances at small and large flow, with snow in the stream", () => {
    for (const flow of [0.05, 3, 14]) {
      const cold = at(0.004, { outdoor: { ...winter, dryBulb: -3 } });
      rateAndCheck(steamHumidifier, design(), sampleAir(cold.condition, flow, { freeLiquid: 0.0005 * flow }), cold);
    }
  });
});
