import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type AirStream, airStream, mixAir, settle } from "./mixing.ts";
import { condensedWaterEnthalpy, enthalpyFromHumidityRatio, humidityRatioFromRelativeHumidity } from "./moist-air.ts";
import { saturationHumidityRatio } from "./saturation.ts";

const stream = (pressure: number) =>
  fc
    .record({
      flow: fc.double({ min: 0.01, max: 30, noNaN: true }),
      t: fc.double({ min: -50, max: 60, noNaN: true }),
      rh: fc.double({ min: 0, max: 1, noNaN: true }),
    })
    .map(({ flow, t, rh }) => airStream(flow, t, humidityRatioFromRelativeHumidity(t, rh, pressure)));

const twoStreams = fc
  .double({ min: 60_000, max: 110_000, noNaN: true })
  .chain((pressure) => fc.tuple(fc.constant(pressure), stream(pressure), stream(pressure)));

const water = (air: AirStream) => air.dryAirFlow * (air.humidityRatio + air.freeWater);
const energy = (air: AirStream) => air.dryAirFlow * air.enthalpy;

describe("mixing", () => {
  it("keeps dry air, water and energy to 1e-12", () => {
    fc.assert(
      fc.property(twoStreams, ([pressure, first, second]) => {
        const mixed = mixAir(first, second, pressure, airStream(0, 0, 0));
        expect(Math.abs(mixed.dryAirFlow / (first.dryAirFlow + second.dryAirFlow) - 1)).toBeLessThan(1e-12);
        expect(Math.abs(water(mixed) - water(first) - water(second))).toBeLessThan(1e-12 * mixed.dryAirFlow);
        const scale = Math.abs(energy(first)) + Math.abs(energy(second)) + mixed.dryAirFlow;
        expect(Math.abs(energy(mixed) - energy(first) - energy(second)) / scale).toBeLessThan(1e-12);
      }),
      { numRuns: 1000 },
    );
  });

  it("the state has the energy that it says it has, fog included", () => {
    fc.assert(
      fc.property(twoStreams, ([pressure, first, second]) => {
        const mixed = mixAir(first, second, pressure, airStream(0, 0, 0));
        // Part drops, part ice at 0 °C: the temperature alone does not tell the energy.
        fc.pre(!(mixed.dryBulb === 0 && mixed.freeWater > 0));
        const told =
          enthalpyFromHumidityRatio(mixed.dryBulb, mixed.humidityRatio) +
          mixed.freeWater * condensedWaterEnthalpy(mixed.dryBulb);
        expect(Math.abs(told - mixed.enthalpy)).toBeLessThan(1e-12 * (Math.abs(mixed.enthalpy) + 1e5));
        expect(mixed.freeWater).toBeGreaterThanOrEqual(0);
        // Within a millikelvin below freezing air may be a trace too moist for ice and yet clear: 1e-4 at most.
        const trace = mixed.dryBulb < 0 && mixed.dryBulb > -0.001 ? 1e-4 : 1e-12;
        expect(mixed.humidityRatio).toBeLessThanOrEqual(saturationHumidityRatio(mixed.dryBulb, pressure) * (1 + trace));
      }),
      { numRuns: 1000 },
    );
  });

  it("lies between its streams, and may be written over one of them", () => {
    fc.assert(
      fc.property(twoStreams, ([pressure, first, second]) => {
        const apart = mixAir(first, second, pressure, airStream(0, 0, 0));
        const low = Math.min(first.dryBulb, second.dryBulb);
        const high = Math.max(first.dryBulb, second.dryBulb);
        expect(apart.dryBulb).toBeGreaterThanOrEqual(low - 1e-9);
        // Fog sets heat free; without it the specific heat of the vapour moves the mixture by a fraction of a kelvin only.
        if (apart.freeWater === 0) expect(apart.dryBulb).toBeLessThanOrEqual(high + 1e-9);
        expect(mixAir(first, second, pressure, first)).toEqual(apart);
      }),
      { numRuns: 300 },
    );
  });

  it("makes fog of winter air and humid room air", () => {
    // −15 °C saturated with 24 °C 60 %: the straight mixing line passes above saturation (any psychrometric chart).
    const pressure = 101_325;
    const outside = airStream(1, -15, saturationHumidityRatio(-15, pressure));
    const room = airStream(1, 24, humidityRatioFromRelativeHumidity(24, 0.6, pressure));
    const mixed = mixAir(outside, room, pressure, airStream(0, 0, 0));
    expect(mixed.freeWater).toBeGreaterThan(0.0001);
    expect(mixed.dryBulb).toBeGreaterThan(4.5);
  });

  it("refuses no flow at all", () => {
    expect(() => mixAir(airStream(0, 20, 0.01), airStream(0, 10, 0), 101_325, airStream(0, 0, 0))).toThrow(/no flow/);
  });

  it("settles clear air as it is", () => {
    const air = settle(enthalpyFromHumidityRatio(25, 0.008), 0.008, 101_325, airStream(1, 0, 0));
    expect(air.dryBulb).toBeCloseTo(25, 12);
    expect(air.freeWater).toBe(0);
  });
});
