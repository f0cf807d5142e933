import { describe, expect, it } from "vitest";
import { rateAndCheck } from "../balance.test-data.ts";
import { sampleAir, sampleCondition, sampleFrame, sampleOperation } from "../sample.test-data.ts";
import { valuesOfText } from "../shipped.test-data.ts";
import { faceBypassFields, prepareFaceBypass } from "./design.ts";
import { steamCoilFaceBypass } from "./kind.ts";

const design = (text = "{}") => prepareFaceBypass(valuesOfText(faceBypassFields, text), sampleFrame);

function rate(
  entering: number,
  leaving: number | undefined,
  text = "{}",
  changes: object = {},
  operation: object = {},
) {
  const steam = { pressure: 140_000, condensateReturnPressure: 101_325, valveFails: "open" as const };
  const condition = sampleCondition({
    season: "heating",
    utilities: { steam, chilledWater: undefined, heatingWater: undefined },
  });
  const at = {
    condition,
    operation: sampleOperation({ coolingLeaving: undefined, heatingLeaving: leaving, ...operation }),
  };
  const air = sampleAir(condition, 8, {
    dryBulb: entering,
    coldestFilament: entering,
    humidityRatio: 0.0005,
    ...changes,
  });
  return rateAndCheck(steamCoilFaceBypass, design(text), air, at);
}

describe("steam coil with face and bypass", () => {
  it("holds the leaving air with full steam, sharing the air", () => {
    const out = rate(-15, 6);
    expect(out.leavingDryBulb).toBeCloseTo(6, 5);
    expect(out.faceShare).toBeGreaterThan(0.05);
    expect(out.faceShare).toBeLessThan(0.97);
    // 140 kPa at the connection, less what inner tubes and orifices take.
    expect((out.steamPressure + out.distributorLoss) / 140_000).toBeCloseTo(1, 4);
    expect(out.stalled).toBe(0);
    expect(out.coldestTubeWall).toBeGreaterThan(60);
    // Energy of the two paths: what the lanes warm, spread over all the air.
    expect(out.faceShare * (out.laneLeaving + 15)).toBeCloseTo(21, 4);
  });

  it("holds the leaving air with dampers that close tight, too", () => {
    const out = rate(-15, 6, "damper leakage: 0 %");
    expect(out.leavingDryBulb).toBeCloseTo(6, 5);
    // What leaks as little as makes no difference needs the same share.
    expect(out.faceShare).toBeCloseTo(rate(-15, 6).faceShare, 6);
  });

  it("leaves a cold filament that mixing has not reached", () => {
    const out = rate(-15, 6);
    expect(out.leaving.coldestFilament).toBeCloseTo(6 - 0.25 * 21, 4);
    expect(rate(-15, 6, "mixing effectiveness: 100 %").leaving.coldestFilament).toBeCloseTo(6, 4);
  });

  it("cannot go below its damper leakage: in mild air it overheats by that, and says so", () => {
    const out = rate(9.5, 9.8);
    expect(out.faceShare).toBeCloseTo(0.03, 12);
    expect(out.leavingDryBulb).toBeGreaterThan(9.9);
  });

  it("costs the loss of its worse path, never less than either", () => {
    for (const entering of [-25, -5, 5]) {
      const out = rate(entering, 8);
      expect(out.totalPressureLoss).toBe(Math.max(out.facePathLoss, out.bypassPathLoss));
    }
  });

  it.each([0.04, 1, 12])("keeps its balances at %f kg/s, running, stopped and idle", (dryAirFlow) => {
    for (const fansRunning of [true, false]) {
      for (const leaving of [undefined, 8, 60])
        rate(-12, leaving, "lanes: 4\nrows: 1", { dryAirFlow }, { fansRunning });
    }
  });

  it("is refused where the channels leave no room for a lane", () => {
    expect(() => design("bypass opening: 30 in")).toThrow(/too low/);
  });

  it("draws every lane with its dampers", () => {
    const items = steamCoilFaceBypass.picture(design(), sampleFrame, "preheat");
    expect(items.filter((item) => item.reference.part === "casing")).toHaveLength(3);
    expect(new Set(items.map((item) => item.key)).size).toBe(items.length);
  });
});
