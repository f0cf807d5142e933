import { describe, expect, it } from "vitest";
import { rateAndCheck } from "../balance.test-data.ts";
import { sampleAir, sampleCondition, sampleFrame, sampleOperation } from "../sample.test-data.ts";
import { valuesOfText } from "../shipped.test-data.ts";
import { hotWaterCoilFields, prepareHotWaterCoil } from "./design.ts";
import { hotWaterCoil } from "./kind.ts";

const design = (text = "{}") => prepareHotWaterCoil(valuesOfText(hotWaterCoilFields, text), sampleFrame);

function rate(
  text: string,
  entering: number,
  leaving: number | undefined,
  supplyChanges: object = {},
  changes: object = {},
  operation: object = {},
) {
  const heatingWater = {
    liquid: { substance: "propylene glycol", massFraction: 0.4 } as const,
    supplyTemperature: 60,
    temperatureChange: 15,
    massFlow: undefined,
    valveFails: "open" as const,
    pumpRunsWhenStopped: true,
    ...supplyChanges,
  };
  const condition = sampleCondition({
    season: "heating",
    utilities: { steam: undefined, chilledWater: undefined, heatingWater },
  });
  const at = {
    condition,
    operation: sampleOperation({ coolingLeaving: undefined, heatingLeaving: leaving, ...operation }),
  };
  const air = sampleAir(condition, 7, {
    dryBulb: entering,
    coldestFilament: entering,
    humidityRatio: 0.0005,
    ...changes,
  });
  return { out: rateAndCheck(hotWaterCoil, design(text), air, at), at };
}

describe("hot-water coil", () => {
  it("shows its change of temperature with the valve open", () => {
    const { out } = rate("rows: 2", -20, 90);
    expect(out.liquidEntering - out.liquidLeaving).toBeCloseTo(15, 4);
    expect(out.flowShare).toBe(1);
  });

  it("throttles to its set point", () => {
    const { out } = rate("rows: 3", -20, 10);
    // The search ends at two ten-millionths of the 30 K.
    expect(out.leavingDryBulb).toBeCloseTo(10, 4);
    expect(out.flowShare).toBeLessThan(1);
    expect(out.capacity).toBeCloseTo(out.heatToAir, 6);
  });

  it("keeps the flow of a pumped loop, blends, and so keeps its tubes warmer than a throttled coil", () => {
    const throttled = rate("rows: 3", -20, 4).out;
    const pumped = rate("rows: 3\ncontrol: pumped loop", -20, 4).out;
    expect(pumped.leavingDryBulb).toBeCloseTo(4, 5);
    expect(pumped.flowShare).toBeCloseTo(1, 12);
    expect(pumped.liquidEntering).toBeLessThan(60);
    expect(pumped.supplyMassFlow).toBeLessThan(pumped.liquidMassFlow);
    const drawn = pumped.supplyMassFlow * (60 - pumped.liquidLeaving);
    expect(drawn / (pumped.liquidMassFlow * (pumped.liquidEntering - pumped.liquidLeaving))).toBeCloseTo(1, 9);
    expect(pumped.coldestTubeWall).toBeGreaterThan(throttled.coldestTubeWall);
    expect(pumped.tubeReynolds).toBeGreaterThan(throttled.tubeReynolds);
  });

  it("measures its freeze margin from the liquid's freezing point", () => {
    const glycol = rate("{}", -18, 5).out;
    expect(glycol.freezePoint).toBeLessThan(-20);
    expect(glycol.freezeMargin).toBeCloseTo(glycol.coldestTubeWall - glycol.freezePoint, 12);
    const water = rate("{}", -18, 5, { liquid: { substance: "water", massFraction: 0 } }).out;
    expect(water.freezePoint).toBe(0);
  });

  it("has minutes to the first ice when its pump stops, hours behind shut dampers, a day where the pump runs on", () => {
    const liquid = { substance: "water", massFraction: 0 } as const;
    const stops = rate("{}", -18, 5, { liquid, pumpRunsWhenStopped: false }).out;
    expect(stops.iceAfterFlowLoss).toBeGreaterThan(20);
    expect(stops.iceAfterFlowLoss).toBeLessThan(600);
    expect(stops.frozenAfterFlowLoss).toBeGreaterThan(stops.iceAfterFlowLoss);
    expect(stops.iceAfterFanLoss).toBeGreaterThan(stops.iceAfterFanLossOpen);
    expect(stops.coldestFluid).toBe(Math.min(stops.liquidEntering, stops.liquidLeaving));
    expect(rate("{}", -18, 5, { liquid }).out.iceAfterFanLoss).toBe(86_400);
    expect(rate("{}", -18, 5).out.iceAfterFlowLoss).toBe(86_400);
  });

  it("measures the freezestat's element by its face", () => {
    const { out } = rate("finned height: 48 in\nfinned length: 60 in", -18, 5);
    // freezestat-guide: 20 ft of element for 20 ft².
    expect(out.freezestatLength / 0.3048).toBeCloseTo(20, 0);
    expect(out.freezestatMargin).toBeCloseTo(out.leaving.coldestFilament - out.freezestatSet, 12);
  });

  it("warns of water in tubes that stand in freezing air", () => {
    const { out, at } = rate("{}", -18, undefined, { liquid: { substance: "water", massFraction: 0 } });
    expect(out.coldestTubeWall).toBe(-18);
    expect(hotWaterCoil.notes?.(design(), out, at).some((note) => note.weight === "caution")).toBe(true);
  });

  it.each([0.035, 0.7, 7, 10])("keeps its balances at %f kg/s, running, stopped, idle, with snow", (dryAirFlow) => {
    for (const fansRunning of [true, false]) {
      for (const leaving of [undefined, 10]) {
        for (const text of ["rows: 1", "rows: 4\ncontrol: pumped loop\nflow path: parallel"]) {
          rate(text, -15, leaving, {}, { dryAirFlow, freeLiquid: 0.003 * dryAirFlow }, { fansRunning });
        }
      }
    }
  });

  it("rests on water colder than the air", () => {
    expect(rate("{}", 20, 25, { supplyTemperature: 15 }).out.capacity).toBe(0);
  });
});

describe("customary ranges of certified heating ratings", () => {
  // From memory of the published standard: air 0–100 °F, 200–1500 fpm; water 120–250 °F, 0.5–8 ft/s.
  const water = { liquid: { substance: "water", massFraction: 0 } as const, temperatureChange: 10 };
  const isOutside = (entering: number, supplyTemperature: number, changes: object = {}) => {
    const { out, at } = rate("rows: 2", entering, 90, { ...water, supplyTemperature }, changes);
    expect(out.liquidMassFlow).toBeGreaterThan(0);
    return (hotWaterCoil.notes?.(design("rows: 2"), out, at) ?? []).some(({ what }) =>
      /customarily certified/.test(what),
    );
  };

  it("are told where a rating leaves them by its air, its face or its water, and not inside", () => {
    expect(isOutside(5, 80)).toBe(false);
    expect(isOutside(-17.7, 80)).toBe(false);
    expect(isOutside(-18.5, 80)).toBe(true);
    expect(isOutside(5, 48)).toBe(true);
    expect(isOutside(5, 80, { dryAirFlow: 1.5 })).toBe(true);
  });

  it("are others for glycol: 0–200 °F, 10–60 % by mass", () => {
    const isOutside = (supplyTemperature: number, massFraction: number) => {
      const liquid = { substance: "ethylene glycol", massFraction } as const;
      const { out, at } = rate("rows: 2", 5, 90, { liquid, temperatureChange: 10, supplyTemperature });
      return (hotWaterCoil.notes?.(design("rows: 2"), out, at) ?? []).some(({ what }) =>
        /customarily certified/.test(what),
      );
    };
    expect(isOutside(60, 0.4)).toBe(false);
    expect(isOutside(98, 0.4)).toBe(true);
    expect(isOutside(60, 0.05)).toBe(true);
  });
});
