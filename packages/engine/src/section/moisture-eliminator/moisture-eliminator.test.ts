import { describe, expect, it } from "vitest";
import { rateAndCheck } from "../balance.test-data.ts";
import { sampleAir, sampleFrame, sampleSectionCondition } from "../sample.test-data.ts";
import { valuesOfText } from "../shipped.test-data.ts";
import { moistureEliminatorFields } from "./design.ts";
import { moistureEliminator } from "./kind.ts";

const design = moistureEliminator.prepare(
  valuesOfText(moistureEliminatorFields, "eliminator: typical two-bend 6 in"),
  sampleFrame,
);

describe("moisture eliminator", () => {
  it("catches its share of the drops and drains them, within its limits", () => {
    const at = sampleSectionCondition();
    const air = sampleAir(at.condition, 11, { freeLiquid: 0.05 });
    const out = rateAndCheck(moistureEliminator, design, air, at);
    expect(out.drained).toBeCloseTo(0.99 * 0.05, 12);
    expect(out.leaving.freeLiquid).toBeCloseTo(0.01 * 0.05, 12);
    // By hand: six velocity pressures on the face.
    expect(out.totalPressureLoss).toBeCloseTo(6 * 0.5 * out.density * out.faceVelocity ** 2, 9);
  });

  it("lets water go again when the air is too fast, later in thin air (Souders and Brown)", () => {
    const sea = sampleSectionCondition();
    const fast = rateAndCheck(moistureEliminator, design, sampleAir(sea.condition, 26, { freeLiquid: 0.05 }), sea);
    expect(fast.faceVelocity).toBeGreaterThan(fast.velocityLimit);
    expect(fast.capture).toBeLessThan(0.9);
    const high = sampleSectionCondition({ barometricPressure: 80_000 });
    const thin = rateAndCheck(moistureEliminator, design, sampleAir(high.condition, 15, { freeLiquid: 0.05 }), high);
    expect(thin.velocityLimit / fast.velocityLimit).toBeCloseTo(Math.sqrt(fast.density / thin.density), 9);
  });

  it("balances from a trickle to half as much again, in frost too", () => {
    for (const flow of [0.05, 2, 14]) {
      for (const dryBulb of [-10, 12]) {
        const at = sampleSectionCondition({ outdoor: { dryBulb, humidityRatio: 0.001, windSpeed: 0, rain: 0 } });
        rateAndCheck(moistureEliminator, design, sampleAir(at.condition, flow, { freeLiquid: 0.01 }), at);
      }
    }
  });
});
