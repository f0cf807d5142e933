import { describe, expect, it } from "vitest";
import { rateAndCheck } from "../balance.test-data.ts";
import { sampleAir, sampleCondition, sampleFrame, sampleOperation } from "../sample.test-data.ts";
import { valuesOfText } from "../shipped.test-data.ts";
import { prepareRecoveryCoil, recoveryCoilFields } from "./design.ts";
import { recoveryCoil } from "./kind.ts";

const design = (text = "{}") => prepareRecoveryCoil(valuesOfText(recoveryCoilFields, text), sampleFrame);

function rate(text: string, entering: number, operation: object, exhaust: object | null = {}, changes: object = {}) {
  const stream = exhaust === null ? undefined : { dryAirFlow: 7, dryBulb: 22, humidityRatio: 0.006, ...exhaust };
  const condition = sampleCondition({ season: "heating", exhaust: stream });
  const at = { condition, operation: sampleOperation({ coolingLeaving: undefined, ...operation }) };
  const air = sampleAir(condition, 8, {
    dryBulb: entering,
    coldestFilament: entering,
    humidityRatio: 0.0008,
    ...changes,
  });
  return { out: rateAndCheck(recoveryCoil, design(text), air, at), at };
}

describe("run-around recovery coil", () => {
  it("carries as much heat into the supply air as it takes from the exhaust", () => {
    const { out } = rate("frost limit: 0 °F", -2, { heatingLeaving: 20 });
    const exhaustSensible = 7 * 1020 * (22 - out.exhaustLeavingDryBulb);
    const latent = out.exhaustCondensate * 2_480_000;
    expect((exhaustSensible + latent) / out.capacity).toBeCloseTo(1, 1);
    expect(Math.abs((exhaustSensible + latent) / out.capacity - 1)).toBeLessThan(0.01);
    expect(out.temperatureEffectiveness).toBeGreaterThan(0.3);
    expect(out.temperatureEffectiveness).toBeLessThan(0.8);
  });

  it("leads liquid round the supply coil to hold the set point", () => {
    const { out } = rate("{}", 8, { heatingLeaving: 11 });
    expect(out.leavingDryBulb).toBeCloseTo(11, 4);
    expect(out.bypassShare).toBeGreaterThan(0);
    expect(out.capacity).toBeLessThan(out.fullCapacity);
  });

  it("leads liquid round the supply coil to keep the exhaust coil free of frost", () => {
    const cold = rate("frost limit: 30 °F", -25, { heatingLeaving: 20 }).out;
    expect(cold.intoExhaust).toBeCloseTo((30 - 32) / 1.8, 4);
    expect(cold.bypassShare).toBeGreaterThan(0.02);
    const bare = rate("frost limit: 0 °F", -25, { heatingLeaving: 20 }).out;
    expect(bare.capacity).toBeGreaterThan(cold.capacity);
    // Nothing but the frost limit holds the heat back here: what it gives up is what the loop without it carries more.
    expect(cold.bypassFor).toBe("the frost limit");
    expect((cold.capacity + cold.frostGivenUp) / bare.capacity).toBeCloseTo(1, 6);
    expect(bare.frostGivenUp).toBe(0);
    expect(cold.frostMargin).toBeGreaterThan(bare.frostMargin);
  });

  it("counts as given up to frost only what the set point would have taken", () => {
    const { out, at } = rate("frost limit: 38 °F\nrows: 10\nexhaust:\n  rows: 10", -20, { heatingLeaving: 0 });
    expect(out.bypassFor).toBe("the frost limit");
    expect(out.leavingDryBulb).toBeLessThan(-1);
    expect(out.capacity + out.frostGivenUp).toBeLessThan(out.fullCapacity * 0.999);
    expect(recoveryCoil.notes?.(design(), out, at).some(({ what }) => /frost control/.test(what))).toBe(true);
  });

  it("has minutes when its pump stops in air below the loop's freezing point, and glycol buys the rest", () => {
    const weak = rate("concentration: 10 %\nfrost limit: 35 °F", -20, { heatingLeaving: 20 }).out;
    expect(weak.iceAfterFlowLoss).toBeGreaterThan(1);
    expect(weak.iceAfterFlowLoss).toBeLessThan(600);
    expect(rate("concentration: 45 %", -20, { heatingLeaving: 20 }).out.iceAfterFlowLoss).toBe(86_400);
  });

  it("cools hot outside air with cooler exhaust", () => {
    const { out } = rate(
      "{}",
      38,
      { heatingLeaving: undefined, coolingLeaving: 12 },
      { dryBulb: 24, humidityRatio: 0.009 },
      { humidityRatio: 0.012 },
    );
    expect(out.leavingDryBulb).toBeLessThan(34);
    expect(out.heatToAir).toBeLessThan(0);
  });

  it("rests without exhaust air, without demand, or with the fan stopped", () => {
    expect(rate("{}", -5, { heatingLeaving: 20 }, null).out.capacity).toBe(0);
    expect(rate("{}", -5, { heatingLeaving: undefined }).out.capacity).toBe(0);
    expect(rate("{}", -5, { heatingLeaving: 20, fansRunning: false }).out.capacity).toBe(0);
    expect(rate("{}", 21.5, { heatingLeaving: 25 }).out.capacity).toBe(0);
  });

  it("refuses plain water below freezing", () => {
    expect(() => design("glycol: none\nconcentration: 0 %")).toThrow(/freeze/);
  });

  it.each([0.05, 2, 12])("keeps its balances at %f kg/s of supply air", (dryAirFlow) => {
    rate("stacked: 2\nexhaust:\n  rows: 4\n  fins: 8 per in", -12, { heatingLeaving: 15 }, {}, { dryAirFlow });
  });
});
