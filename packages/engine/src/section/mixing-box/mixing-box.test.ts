import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { relativeHumidityFromHumidityRatio } from "#fluid/moist-air";
import { findRoot } from "#numerics/find-root";
import { rateAndCheck } from "../balance.test-data.ts";
import { sampleAir, sampleFrame, sampleSectionCondition } from "../sample.test-data.ts";
import { valuesOfText } from "../shipped.test-data.ts";
import { absolutePressure } from "../station.ts";
import { mixingBoxFields } from "./design.ts";
import { mixingBox } from "./kind.ts";

const design = (text: string) => mixingBox.prepare(valuesOfText(mixingBoxFields, text), sampleFrame);
const outside = "outside air:\n  damper: typical airfoil opposed class 1A\n  width: 2.2 m\n  height: 1.2 m\n";
const back =
  "return air:\n  damper: typical airfoil opposed class 1A\n  width: 1.5 m\n  height: 0.6 m\n  blade angle: 45 deg\n";
const handSet = design(outside + back);
const actuated = design(`${outside + back}control: actuated\n`);
const pureOutside = design(`${outside}control: actuated\n`);
const winter = { dryBulb: -20, humidityRatio: 0.0006, windSpeed: 0, rain: 0 };

describe("mixing box", () => {
  it("mixes as the mass-weighted mean of two streams", () => {
    const at = sampleSectionCondition({}, { returnDryAirFlow: 2 });
    const out = rateAndCheck(mixingBox, handSet, sampleAir(at.condition, 8), at);
    // Adiabatic mixing (ASHRAE chapter 1, section 10): humidity on the line between the states, temperature very nearly.
    expect(out.leaving.humidityRatio).toBeCloseTo(0.8 * out.entering.humidityRatio + 0.2 * 0.0088, 12);
    expect(out.leaving.dryBulb).toBeCloseTo(0.8 * 34 + 0.2 * 23, 1);
    expect(out.outsideAirShare).toBeCloseTo(0.8, 12);
  });

  it("leaves the coldest filament by the mixing effectiveness (Robinson 2003)", () => {
    const at = sampleSectionCondition({ outdoor: winter }, { returnDryAirFlow: 2 });
    const out = rateAndCheck(mixingBox, handSet, sampleAir(at.condition, 8), at);
    const mixed = out.leaving.dryBulb;
    // E = 1 − spread after over spread before: the cold side keeps (1 − E) of its distance from the mean.
    expect(out.coldestFilament).toBeCloseTo(mixed - (1 - 0.6) * (mixed + 20), 9);
  });

  it("tells by the imbalance which return flow the dampers give", () => {
    const imbalance = (flow: number) => {
      const at = sampleSectionCondition({}, { returnDryAirFlow: flow });
      return rateAndCheck(mixingBox, handSet, sampleAir(at.condition, 10 - flow, { totalPressure: -80 }), at)
        .returnImbalance;
    };
    expect(imbalance(0)).toBeGreaterThan(0);
    expect(imbalance(6)).toBeLessThan(0);
    const flow = findRoot(imbalance, 0, 6, 1e-10);
    const at = sampleSectionCondition({}, { returnDryAirFlow: flow });
    const out = rateAndCheck(mixingBox, handSet, sampleAir(at.condition, 10 - flow, { totalPressure: -80 }), at);
    // At balance both paths end at one total pressure.
    expect(out.returnTotalPressure - out.returnLoss).toBeCloseTo(out.leaving.totalPressure, 6);
  });

  it("actuated, finds the blade angle at which nothing is left over, and says when it cannot", () => {
    const air = (flow: number) => sampleSectionCondition({}, { returnDryAirFlow: flow });
    const held = rateAndCheck(
      mixingBox,
      actuated,
      sampleAir(air(1.5).condition, 8.5, { totalPressure: -80 }),
      air(1.5),
    );
    expect(held.returnImbalance).toBeCloseTo(0, 6);
    expect(held.returnBladeAngle).toBeGreaterThan(10);
    expect(held.returnBladeAngle).toBeLessThan(90);
    const tooMuch = rateAndCheck(mixingBox, actuated, sampleAir(air(6).condition, 4, { totalPressure: -60 }), air(6));
    expect(tooMuch.returnBladeAngle).toBe(90);
    expect(tooMuch.returnImbalance).toBeLessThan(0);
    const none = rateAndCheck(mixingBox, actuated, sampleAir(air(0).condition, 10, { totalPressure: -200 }), air(0));
    expect(none.returnBladeAngle).toBe(0);
    expect(none.returnImbalance).toBeGreaterThan(0);
  });

  it("makes fog where cold outside and moist return air meet, energy and water exact", () => {
    const at = sampleSectionCondition(
      {
        outdoor: { dryBulb: -25, humidityRatio: 0.0004, windSpeed: 0, rain: 0 },
        returnAir: { dryBulb: 28, humidityRatio: 0.019, staticPressure: 0, outsideAirShare: 0.5 },
      },
      { returnDryAirFlow: 4 },
    );
    const out = rateAndCheck(mixingBox, handSet, sampleAir(at.condition, 4), at);
    expect(out.fog).toBeGreaterThan(0);
    const { leaving } = out;
    expect(
      relativeHumidityFromHumidityRatio(leaving.dryBulb, leaving.humidityRatio, absolutePressure(leaving)),
    ).toBeCloseTo(1, 6);
  });

  it("lets snow that warms to melting drain in part, without breaking the balances", () => {
    for (const dryBulb of [-2, -1, -0.5]) {
      const at = sampleSectionCondition(
        { outdoor: { ...winter, dryBulb, humidityRatio: 0.003 } },
        { returnDryAirFlow: 0.5 },
      );
      const out = rateAndCheck(mixingBox, handSet, sampleAir(at.condition, 8, { freeLiquid: 0.06 }), at);
      expect(out.leaving.freeLiquid).toBeLessThanOrEqual(0.06);
    }
  });

  it("closed, passes the leakage of its class", () => {
    const at = sampleSectionCondition({}, { dampers: "closed", fansRunning: false });
    // 3 cfm/ft² at 1 in. of water (class 1A): that flow takes about that pressure, the wall's share being nothing beside it.
    const flow = (3 * 0.00508 * pureOutside.outside.area * 1.2014) / 1.0;
    const out = rateAndCheck(mixingBox, pureOutside, sampleAir(at.condition, flow / 1.018), at);
    const expected =
      249.09 *
      (flow / out.outsideDensity / (3 * 0.00508 * pureOutside.outside.area)) ** 2 *
      (out.outsideDensity / 1.2014);
    expect(out.outsideLoss / expected).toBeCloseTo(1, 2);
  });

  it("stays as it is set when the unit's dampers close and its blades are locked by hand", () => {
    const at = sampleSectionCondition({}, { dampers: "closed", fansRunning: false });
    const out = rateAndCheck(mixingBox, handSet, sampleAir(at.condition, 0.1), at);
    expect([out.outsideBladeAngle, out.returnBladeAngle]).toEqual([90, 45]);
    expect(mixingBox.notes?.(handSet, out, at).map((note) => note.what)).toContainEqual(
      expect.stringMatching(/locked by hand/),
    );
  });

  it("without return opening takes no return air, whatever it is told", () => {
    const at = sampleSectionCondition({}, { returnDryAirFlow: 3 });
    const out = rateAndCheck(mixingBox, pureOutside, sampleAir(at.condition, 8, { coldestFilament: 30 }), at);
    expect([out.returnDryAirFlow, out.returnImbalance, out.leaving.dryAirFlow]).toEqual([0, 0, 8]);
    expect(out.leaving.coldestFilament).toBe(30);
  });

  it("balances over random states, flows and backflow; the imbalance falls as the return flow grows", () => {
    const state = fc.record({
      dryBulb: fc.double({ min: -40, max: 45, noNaN: true }),
      saturation: fc.double({ min: 0.05, max: 1, noNaN: true }),
      back: fc.double({ min: 10, max: 30, noNaN: true }),
      backHumidity: fc.double({ min: 0.002, max: 0.018, noNaN: true }),
      flow: fc.double({ min: 0.05, max: 15, noNaN: true }),
      share: fc.double({ min: -0.4, max: 3, noNaN: true }),
      liquid: fc.double({ min: 0, max: 0.02, noNaN: true }),
      filament: fc.double({ min: 0, max: 5, noNaN: true }),
      closed: fc.boolean(),
    });
    fc.assert(
      fc.property(state, (each) => {
        const humidityRatio = each.saturation * 0.004 * Math.exp(0.065 * each.dryBulb) * 0.9;
        const at = (share: number) =>
          sampleSectionCondition(
            {
              outdoor: { dryBulb: each.dryBulb, humidityRatio, windSpeed: 0, rain: 0 },
              returnAir: {
                dryBulb: each.back,
                humidityRatio: each.backHumidity,
                staticPressure: -40,
                outsideAirShare: 0.8,
              },
            },
            { returnDryAirFlow: share * each.flow, dampers: each.closed ? "closed" : "as set" },
          );
        const air = sampleAir(at(0).condition, each.flow, {
          freeLiquid: each.liquid * each.flow,
          coldestFilament: each.dryBulb - each.filament,
        });
        const box = each.closed ? actuated : handSet;
        const out = rateAndCheck(mixingBox, box, air, at(each.share));
        const lowest = Math.min(air.coldestFilament, each.share > 0 ? each.back : Number.POSITIVE_INFINITY);
        expect(out.coldestFilament).toBeGreaterThanOrEqual(lowest - 1e-9);
        const more = rateAndCheck(mixingBox, box, air, at(each.share + 0.05));
        expect(more.returnImbalance).toBeLessThan(out.returnImbalance + 1e-9);
      }),
      { numRuns: 200 },
    );
  });

  it("refuses dampers that do not fit, naming the field", () => {
    expect(() => design(outside.replace("2.2 m", "2.6 m"))).toThrow(
      expect.objectContaining({ field: "outsideAir.width" }),
    );
    expect(() => design(`${outside + back.replace("0.6 m", "1.5 m")}length: 1 m\n`)).toThrow(
      expect.objectContaining({ field: "returnAir.height" }),
    );
  });
});
