import { describe, expect, it } from "vitest";
import { sampleCoil } from "./sample-coil.test-data.ts";
import { freezeTimes } from "./time-to-freeze.ts";

const water = { substance: "water", massFraction: 0 } as const;

describe("time to freeze", () => {
  const coil = sampleCoil({ rows: 2 });

  it("is minutes at most on running air, and has no end in air above freezing", () => {
    const times = freezeTimes(coil, water, 35, -15, 10, 0);
    expect(times.firstIce).toBeGreaterThan(5);
    expect(times.firstIce).toBeLessThan(300);
    expect(times.solid).toBeGreaterThan(2 * times.firstIce);
    expect(freezeTimes(coil, water, 35, 1, 10, 0).firstIce).toBe(Number.POSITIVE_INFINITY);
  });

  it("agrees with stepping the cooling of the same row through time", () => {
    // One capacity behind one resistance: Euler steps of a twentieth of a second against the logarithm.
    const { firstIce } = freezeTimes(coil, water, 35, -15, 10, 0);
    const perKelvin = firstIce / Math.log(25 / 15);
    let temperature = 10;
    let time = 0;
    for (; temperature > 0; time += 0.05) temperature -= ((temperature + 15) * 0.05) / perKelvin;
    expect(time / firstIce).toBeCloseTo(1, 2);
  });

  it("is longer in less air, in warmer air, from a warmer start, and with glycol", () => {
    const { firstIce } = freezeTimes(coil, water, 35, -15, 10, 0);
    expect(freezeTimes(coil, water, 5, -15, 10, 0).firstIce).toBeGreaterThan(firstIce);
    expect(freezeTimes(coil, water, 35, -5, 10, 0).firstIce).toBeGreaterThan(firstIce);
    expect(freezeTimes(coil, water, 35, -15, 40, 0).firstIce).toBeGreaterThan(firstIce);
    const glycol = { substance: "propylene glycol", massFraction: 0.2 } as const;
    expect(freezeTimes(coil, glycol, 35, -15, 10, -7).firstIce).toBeGreaterThan(firstIce);
  });

  it("has begun where the liquid is no warmer than its freezing point", () => {
    expect(freezeTimes(coil, water, 35, -15, 0, 0).firstIce).toBe(0);
  });
});
