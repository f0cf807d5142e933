import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { saturationHumidityRatio } from "#fluid/saturation";
import { createAir } from "./air.ts";
import { settleDryBulb, settleState } from "./settle-state.ts";
import { enthalpyFlow, waterFlow } from "./station.ts";

const airWith = (freeLiquid: number) => Object.assign(createAir(), { dryAirFlow: 2, humidityRatio: 0.003, freeLiquid });

describe("settled state", () => {
  it("has the enthalpy that was asked for, with ice, with water and on the way between them", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -40_000, max: 150_000, noNaN: true }),
        fc.double({ min: 0, max: 0.2, noNaN: true }),
        (enthalpy, freeLiquid) => {
          const air = airWith(freeLiquid);
          const drained = settleDryBulb(air, enthalpy);
          expect(Math.abs(enthalpyFlow(air) - enthalpy)).toBeLessThan(1e-9 * (Math.abs(enthalpy) + 1000));
          expect(air.freeLiquid + drained).toBeCloseTo(freeLiquid, 12);
          expect(drained).toBeGreaterThanOrEqual(0);
        },
      ),
    );
  });

  it("condenses what the air cannot hold and keeps water and energy", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -30, max: 35, noNaN: true }),
        fc.double({ min: 1.001, max: 1.6, noNaN: true }),
        (dryBulb, oversaturation) => {
          const air = airWith(0.01);
          air.dryBulb = dryBulb;
          const vapour = oversaturation * saturationHumidityRatio(dryBulb, 101_325);
          air.humidityRatio = vapour;
          const enthalpy = enthalpyFlow(air);
          const water = waterFlow(air);
          const drained = settleState(air, enthalpy, vapour);
          expect(Math.abs(enthalpyFlow(air) - enthalpy)).toBeLessThan(1e-9 * (Math.abs(enthalpy) + 1000));
          expect(waterFlow(air) + drained).toBeCloseTo(water, 12);
          expect(air.humidityRatio / saturationHumidityRatio(air.dryBulb, 101_325)).toBeCloseTo(1, 7);
          // Condensing frees heat: the air gets warmer, unless it melts ice.
          if (dryBulb > 0) expect(air.dryBulb).toBeGreaterThan(dryBulb);
        },
      ),
    );
  });

  it("leaves vapour alone where the air can hold it", () => {
    const air = airWith(0);
    expect(settleState(air, 60_000, 0.003)).toBe(0);
    expect([air.humidityRatio, air.freeLiquid]).toEqual([0.003, 0]);
  });
});
