import { describe, expect, it } from "vitest";
import { cooledDryBulb, cooling, heatedDryBulb } from "./air-process.ts";
import { condensedWaterEnthalpy, enthalpyFromHumidityRatio, humidityRatioFromRelativeHumidity } from "./moist-air.ts";
import { saturationHumidityRatio } from "./saturation.ts";

const PRESSURE = 101_325;

describe("air processes", () => {
  it("cools dry air without condensate and humid air along saturation", () => {
    const dry = cooling(30, 0.005, 12, PRESSURE);
    expect(dry.condensate).toBe(0);
    expect(dry.heat).toBeCloseTo(18 * (1006 + 1860 * 0.005), 8);
    const W = humidityRatioFromRelativeHumidity(30, 0.85, PRESSURE);
    const humid = cooling(30, W, 14, PRESSURE);
    expect(humid.humidityRatio).toBe(saturationHumidityRatio(14, PRESSURE));
    const before = enthalpyFromHumidityRatio(30, W);
    const after = enthalpyFromHumidityRatio(14, humid.humidityRatio) + humid.condensate * condensedWaterEnthalpy(14);
    expect(humid.heat).toBeCloseTo(before - after, 8);
    expect(() => cooling(14, 0.005, 15, PRESSURE)).toThrow(/target 15 °C is not at most 14 °C/);
  });

  it("heats as the specific heat says", () => {
    const t = heatedDryBulb(10, 0.005, 20_000);
    expect(enthalpyFromHumidityRatio(t, 0.005) - enthalpyFromHumidityRatio(10, 0.005)).toBeCloseTo(20_000, 6);
  });

  it("finds the dry bulb of cooled air on either side of its dew point", () => {
    const clear = enthalpyFromHumidityRatio(25, 0.012);
    expect(cooledDryBulb(clear, 0.012, PRESSURE)).toBeCloseTo(25, 10);
    const saturated = enthalpyFromHumidityRatio(9, saturationHumidityRatio(9, PRESSURE));
    expect(cooledDryBulb(saturated, 0.012, PRESSURE)).toBeCloseTo(9, 10);
  });
});
