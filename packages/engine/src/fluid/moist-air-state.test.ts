import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { GivenAir } from "./given-air.ts";
import { condensedWaterEnthalpy, enthalpyFromHumidityRatio } from "./moist-air.ts";
import { type MoistAirState, moistAirState } from "./moist-air-state.ts";
import { saturationHumidityRatio } from "./saturation.ts";

const PRESSURE = 101_325;
const properties = [
  "dryBulb",
  "wetBulb",
  "dewPoint",
  "relativeHumidity",
  "humidityRatio",
  "enthalpy",
  "specificVolume",
] as const;
const pairs = properties.flatMap((first, i) => properties.slice(i + 1).map((second) => [first, second] as const));

function pairOf(
  state: MoistAirState,
  first: (typeof properties)[number],
  second: (typeof properties)[number],
): GivenAir {
  return { [first]: state[first], [second]: state[second] };
}

/**
 * How much dry bulb and humidity ratio may differ after a round trip. Most pairs fix the state to rounding. Wet bulb with
 * enthalpy are nearly the same line of the chart: an error of 1e-9 of the enthalpy is multiplied by that of the water.
 */
function tolerances(first: string, second: string): { K: number; W: number } {
  return first === "wetBulb" && second === "enthalpy" ? { K: 1e-4, W: 1e-7 } : { K: 1e-6, W: 1e-9 };
}

describe("state of moist air", () => {
  for (const [first, second] of pairs.filter(([a, b]) => !(a === "dewPoint" && b === "humidityRatio"))) {
    it(`comes back from ${first} and ${second}`, () => {
      const tolerance = tolerances(first, second);
      fc.assert(
        fc.property(
          fc.double({ min: -40, max: 60, noNaN: true }),
          fc.double({ min: 0.05, max: 0.99, noNaN: true }),
          fc.double({ min: 65_000, max: 110_000, noNaN: true }),
          (dryBulb, relativeHumidity, pressure) => {
            const state = moistAirState({ dryBulb, relativeHumidity }, pressure);
            // Near freezing a water bulb and an ice bulb have one humidity ratio; wet bulb and enthalpy are one there.
            fc.pre(Math.abs(state.wetBulb) > 1);
            const again = moistAirState(pairOf(state, first, second), pressure);
            expect(Math.abs(again.dryBulb - dryBulb)).toBeLessThan(tolerance.K);
            expect(Math.abs(again.humidityRatio - state.humidityRatio)).toBeLessThan(tolerance.W);
            for (const name of [first, second]) expect(again[name]).toBeCloseTo(state[name], 3);
          },
        ),
        { numRuns: 150 },
      );
    });
  }

  it("holds one picture of a state: every value agrees with the handbook table at 20 °C saturated", () => {
    // ASHRAE Handbook: Fundamentals 2021, chapter 1, table 2: W 0.014761, v 0.8498 m³/kg, h 57.558 kJ/kg. The relations
    // used are 0.1 % off in volume at most (ideal gas) and 0.1 kJ/kg in enthalpy here.
    const state = moistAirState({ dryBulb: 20, relativeHumidity: 1 }, PRESSURE);
    expect(Math.abs(state.humidityRatio / 0.014761 - 1)).toBeLessThan(1e-3);
    expect(Math.abs(state.specificVolume / 0.8498 - 1)).toBeLessThan(1e-3);
    expect(Math.abs(state.enthalpy - 57_558)).toBeLessThan(100);
    expect(state.wetBulb).toBeCloseTo(20, 8);
    expect(state.dewPoint).toBeCloseTo(20, 8);
    expect(state.density).toBeCloseTo((1 + state.humidityRatio) / state.specificVolume, 12);
  });

  it("gives the ideal relations when asked", () => {
    const real = moistAirState({ dryBulb: 30, relativeHumidity: 0.5 }, PRESSURE);
    const ideal = moistAirState({ dryBulb: 30, relativeHumidity: 0.5 }, PRESSURE, "ideal");
    // The enhancement factor is worth about 0.47 % there (IAPWS G8-10: 1.0047).
    expect(real.humidityRatio / ideal.humidityRatio - 1).toBeGreaterThan(0.004);
    expect(real.humidityRatio / ideal.humidityRatio - 1).toBeLessThan(0.006);
  });

  it("keeps the energy and the water of a fog, and both phases at freezing", () => {
    for (const [enthalpy, totalWater] of [
      [30_000, 0.012],
      [150_000, 0.06],
      [-20_000, 0.004],
    ] as const) {
      const fog = moistAirState({ enthalpy, totalWater }, PRESSURE);
      expect(fog.freeWater).toBeGreaterThan(0);
      expect(fog.humidityRatio).toBeCloseTo(saturationHumidityRatio(fog.dryBulb, PRESSURE), 14);
      expect(fog.humidityRatio + fog.freeWater).toBeCloseTo(totalWater, 14);
      const energy =
        enthalpyFromHumidityRatio(fog.dryBulb, fog.humidityRatio) + fog.freeWater * condensedWaterEnthalpy(fog.dryBulb);
      expect(Math.abs(energy - enthalpy)).toBeLessThan(1e-7);
      expect([fog.wetBulb, fog.dewPoint, fog.relativeHumidity]).toEqual([fog.dryBulb, fog.dryBulb, 1]);
    }
    // Saturated at 0 °C with 2 g/kg of which half is ice: 333.4 J/g less.
    const W = saturationHumidityRatio(0, PRESSURE);
    const slush = moistAirState({ enthalpy: W * 2.501e6 - 333.4, totalWater: W + 0.002 }, PRESSURE);
    expect(slush.dryBulb).toBe(0);
    expect(slush.freeWater).toBeCloseTo(0.002, 12);
    expect(slush.enthalpy).toBe(W * 2.501e6 - 333.4);
    const cold = moistAirState({ dryBulb: 10, totalWater: 0.01 }, PRESSURE);
    expect(cold.freeWater).toBeCloseTo(0.01 - saturationHumidityRatio(10, PRESSURE), 14);
    expect(moistAirState({ dryBulb: 10, totalWater: 0.005 }, PRESSURE).freeWater).toBe(0);
  });
});

describe("impossible air is refused with the reason", () => {
  const cases: [given: GivenAir, pressure: number, reason: RegExp][] = [
    [{ dryBulb: 20 }, PRESSURE, /exactly two of dry bulb, .* are needed; given: dry bulb/],
    [{}, PRESSURE, /none is given/],
    [{ dryBulb: 20, wetBulb: 15, dewPoint: 10 }, PRESSURE, /given: dry bulb, wet bulb, dew point/],
    [{ dryBulb: 20, wetBulb: 25 }, PRESSURE, /wet bulb 25 °C is above the dry bulb 20 °C/],
    [{ dryBulb: 20, dewPoint: 21 }, PRESSURE, /dew point 21 °C is above the dry bulb 20 °C/],
    [{ dryBulb: 30, wetBulb: 2 }, PRESSURE, /wet bulb 2 °C is below 10\.\d+ °C, which even dry air has/],
    [{ dryBulb: 20, relativeHumidity: 1.2 }, PRESSURE, /relative humidity 1.2 is outside 0…1/],
    [{ dryBulb: 20, humidityRatio: -0.001 }, PRESSURE, /humidity ratio -0.001 kg\/kg is negative/],
    [{ dryBulb: 20, humidityRatio: 0.03 }, PRESSURE, /holds at most 0.0147\d+ kg\/kg/],
    [{ dryBulb: 20, enthalpy: 90_000 }, PRESSURE, /enthalpy 90000 J\/kg would need .* holds at most/],
    [{ dryBulb: 20, enthalpy: 10_000 }, PRESSURE, /drier than dry/],
    [{ dryBulb: 20, specificVolume: 0.7 }, PRESSURE, /drier than dry/],
    [{ wetBulb: 15, dewPoint: 16 }, PRESSURE, /dew point 16 °C is above the wet bulb 15 °C/],
    [{ wetBulb: 15, humidityRatio: 0.02 }, PRESSURE, /above saturation at the wet bulb 15 °C/],
    [{ wetBulb: 15, enthalpy: 80_000 }, PRESSURE, /does not go with a wet bulb of 15 °C/],
    [{ wetBulb: 0.1, enthalpy: 9500 }, PRESSURE, /not independent/],
    [{ wetBulb: 15, specificVolume: 0.7 }, PRESSURE, /no air of 15…90 °C has wet bulb 15 °C and that specific volume/],
    [{ wetBulb: 30, relativeHumidity: 0 }, PRESSURE, /no air of 30…90 °C|outside −?-?60…90/],
    [{ dewPoint: 10, humidityRatio: 0.0077 }, PRESSURE, /dew point and humidity ratio are not independent/],
    [{ dewPoint: 10, enthalpy: 20_000 }, PRESSURE, /below the dew point 10 °C/],
    [{ dewPoint: 10, relativeHumidity: 0 }, PRESSURE, /relative humidity 0 at any temperature/],
    [{ humidityRatio: 0.02, enthalpy: 40_000 }, PRESSURE, /holds at most/],
    [{ humidityRatio: 0.01, specificVolume: 2 }, PRESSURE, /dry bulb .* outside -60…90 °C/],
    [{ relativeHumidity: 0.5, enthalpy: -90_000 }, PRESSURE, /no air of -60…90 °C has relative humidity 0.5/],
    [{ enthalpy: 50_000, specificVolume: 0.5 }, PRESSURE, /that of air below -60 °C/],
    [{ enthalpy: 90_000, specificVolume: 0.8 }, PRESSURE, /no air of|holds at most/],
    [{ totalWater: 0.01, relativeHumidity: 0.5 }, PRESSURE, /total water is taken with dry bulb or enthalpy only/],
    [{ dryBulb: 95, relativeHumidity: 0.5 }, PRESSURE, /dry bulb is 95 °C, which is outside -60…90 °C/],
    [{ dryBulb: Number.NaN, wetBulb: 10 }, PRESSURE, /dry bulb is NaN/],
    [{ dryBulb: 20, wetBulb: Number.NaN }, PRESSURE, /wet bulb NaN/],
    [{ dryBulb: 20, enthalpy: Number.POSITIVE_INFINITY }, PRESSURE, /enthalpy Infinity is not a number/],
    [{ dryBulb: 20, relativeHumidity: 0.5 }, 49_000, /pressure 49000 Pa is outside 50000…110000 Pa/],
    [{ dryBulb: 85, relativeHumidity: 1 }, 50_000, /water boils/],
    [{ dryBulb: 90, wetBulb: 85 }, 50_000, /water boils/],
    [{ wetBulb: 85, dewPoint: 20 }, 50_000, /water boils/],
  ];
  for (const [given, pressure, reason] of cases) {
    it(`${JSON.stringify(given)} at ${pressure} Pa`, () => {
      expect(() => moistAirState(given, pressure)).toThrow(reason);
      expect(() => moistAirState(given, pressure)).toThrow(RangeError);
    });
  }
});
