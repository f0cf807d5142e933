import { describe, expect, it } from "vitest";
import { fitSurface, type TestPoint } from "./fit-surface.ts";
import { solveCoil } from "./march.ts";
import { createCoilWork, createPerformance } from "./performance.ts";
import { plainSurface, sampleCoil, sampleInlet } from "./sample-coil.test-data.ts";

/** Points that a coil with known factors would have given; `scatter` is added to the heat, share. */
function pointsOf(factors: object, scatter: readonly number[] = []): TestPoint[] {
  const coil = sampleCoil({ rows: 4, surface: { ...plainSurface, ...factors } });
  const inlets = [2, 3, 4].flatMap((dryAirFlow) =>
    [2, 4, 7].flatMap((liquidFlow) =>
      [0.004, 0.016].map((W) => sampleInlet({ dryAirFlow, liquidFlow, humidityRatio: W, dryBulb: 30 })),
    ),
  );
  return inlets.map((inlet, i) => {
    const out = createPerformance();
    solveCoil(coil, inlet, createCoilWork(), out);
    return { inlet, heat: out.heat * (1 + (scatter[i % Math.max(1, scatter.length)] ?? 0)) };
  });
}

describe("fitting a surface", () => {
  const base = sampleCoil({ rows: 4 });

  it("finds the factors that made the points", () => {
    const made = { heatFactor: 1.27, tubeHeatFactor: 0.88, wetHeatFactor: 1.1 };
    const fit = fitSurface(base, pointsOf(made), ["heatFactor", "tubeHeatFactor", "wetHeatFactor"]);
    for (const { factor, value } of fit.factors) expect(value / made[factor]).toBeCloseTo(1, 2);
    expect(fit.meanAbsoluteError).toBeLessThan(1e-3);
    expect(fit.leftAlone).toEqual([]);
  });

  it("gives standard errors that cover what scatter does to the factors", () => {
    const scatter = [0.02, -0.015, 0.01, -0.02, 0.015, -0.01, 0];
    const fit = fitSurface(base, pointsOf({ heatFactor: 1.2 }, scatter), ["heatFactor"]);
    const [found] = fit.factors;
    expect(found!.standardError).toBeGreaterThan(0.001);
    // Three standard errors: less than one such set in three hundred lies outside.
    expect(Math.abs(found!.value - 1.2)).toBeLessThan(3 * found!.standardError);
    expect(fit.rootMeanSquare).toBeGreaterThan(0.01);
  });

  it("leaves alone what the points cannot tell, and says why", () => {
    const dry = pointsOf({}).filter(({ inlet }) => inlet.humidityRatio < 0.01);
    const fit = fitSurface(base, dry, ["heatFactor", "wetHeatFactor"]);
    expect(fit.leftAlone.map(({ factor }) => factor)).toEqual(["wetHeatFactor"]);
    const slow = dry.filter(({ inlet }) => inlet.liquidFlow === 4);
    expect(fitSurface(base, slow, ["heatFactor", "tubeHeatFactor"]).leftAlone[0]?.reason).toMatch(
      /four points|velocities/,
    );
  });

  it("refuses points without heat", () => {
    expect(() => fitSurface(base, [{ inlet: sampleInlet(), heat: 0 }], ["heatFactor"])).toThrow(/point 1/);
  });
});
