import { describe, expect, it } from "vitest";
import { relativeHumidityFromHumidityRatio } from "#fluid/moist-air";
import { humidityRatioFromWetBulb } from "#fluid/wet-bulb";
import { standardAirDensity } from "#quantity/standard-air";
import { rateAndCheck } from "../balance.test-data.ts";
import type { Frame } from "../contract.ts";
import { sampleAir, sampleCondition, sampleFrame, sampleOperation } from "../sample.test-data.ts";
import { valuesOfText } from "../shipped.test-data.ts";
import { chilledWaterCoilFields, prepareChilledWaterCoil } from "./design.ts";
import { chilledWaterCoil } from "./kind.ts";

const celsius = (fahrenheit: number) => (fahrenheit - 32) / 1.8;

function design(text = "{}", frame: Frame = sampleFrame) {
  return prepareChilledWaterCoil(valuesOfText(chilledWaterCoilFields, text), frame);
}

const chilledWater = {
  liquid: { substance: "water", massFraction: 0 } as const,
  supplyTemperature: celsius(44),
  temperatureChange: 12 / 1.8,
  massFlow: undefined,
  valveFails: "closed" as const,
  pumpRunsWhenStopped: false,
};

const utilities = { steam: undefined, chilledWater, heatingWater: undefined };

describe("chilled-water coil at the trade's yardstick", () => {
  // A fact of the trade, common practice, no source: eight rows of 5/8-in. copper tubes with 12 plain fins per inch take
  // 98/82 °F outside air to about 53 °F on 44 °F water with 12 °F rise at about 4.5 ft/s. ±2 °F is the spread of practice.
  const outdoors = { dryBulb: celsius(98), humidityRatio: humidityRatioFromWetBulb(celsius(98), celsius(82), 101_325) };
  const condition = sampleCondition({ utilities, outdoor: { ...outdoors, windSpeed: 0, rain: 0 } });

  // The correlation chosen by itself gives 3 to 4 % more than the independent one, worth 1 °F of leaving air: ±3 °F.
  it.each([
    [400, "Wang-Chi-Chang 2000", 2],
    [425, "Wang-Chi-Chang 2000", 2],
    [450, "Wang-Chi-Chang 2000", 2],
    [400, undefined, 3],
    [450, undefined, 3],
  ])("takes 98/82 °F air at %i fpm (%s) to 53 ± %i °F without any multiplier", (fpm, correlation, spread) => {
    // Tubes of 1.22 m make the velocity about 4.5 ft/s at that rise; the cabinet is as wide as that takes.
    const named = correlation === undefined ? "" : `\ncorrelation: ${correlation}`;
    const coil = design(`finned length: 48 in\nfinned height: 36 in${named}`, {
      width: 1.5,
      height: 1.2,
      hand: "right",
    });
    const dryAirFlow = (fpm * 0.00508 * coil.block.faceArea * standardAirDensity) / (1 + outdoors.humidityRatio);
    const at = { condition, operation: sampleOperation({ coolingLeaving: -20 }) };
    const out = rateAndCheck(chilledWaterCoil, coil, sampleAir(condition, dryAirFlow), at);
    const leaving = out.leavingDryBulb * 1.8 + 32;
    expect(Math.abs(leaving - 53)).toBeLessThan(spread);
    expect(out.liquidLeaving * 1.8 + 32).toBeCloseTo(56, 3);
    expect(out.tubeVelocity / 0.3048).toBeGreaterThan(4);
    expect(out.tubeVelocity / 0.3048).toBeLessThan(5);
    expect(out.wetLoss).toBeGreaterThan(out.dryLoss);
  });

  it("throttles to its set point, and the leaving air is close to saturation but not beyond", () => {
    const coil = design();
    const at = { condition, operation: sampleOperation({ coolingLeaving: celsius(55) }) };
    const out = rateAndCheck(chilledWaterCoil, coil, sampleAir(condition, 9), at);
    expect(out.leavingDryBulb).toBeCloseTo(celsius(55), 4);
    expect(out.flowShare).toBeLessThan(1);
    expect(out.flowShare).toBeGreaterThan(0.3);
    expect(chilledWaterCoil.shortfalls?.(coil, out, at)).toEqual([]);
    const humidity = relativeHumidityFromHumidityRatio(out.leavingDryBulb, out.leaving.humidityRatio, 101_325);
    expect(humidity).toBeGreaterThan(0.9);
    expect(humidity).toBeLessThanOrEqual(1 + 1e-9);
  });

  it("marks air outside the customary certified range, dry bulb and wet bulb", () => {
    const at = { condition, operation: sampleOperation({ coolingLeaving: -20 }) };
    const marked = (dryBulb: number, humidityRatio: number) => {
      const coil = design();
      const air = sampleAir(condition, 9, { dryBulb, coldestFilament: dryBulb, humidityRatio });
      const out = rateAndCheck(chilledWaterCoil, coil, air, at);
      return (chilledWaterCoil.notes?.(coil, out, at) ?? []).some(({ what }) => /customarily certified/.test(what));
    };
    expect(marked(33, 0.016)).toBe(false);
    expect(marked(39, 0.016)).toBe(true);
    // 33 °C at 2 g/kg has a wet bulb of 13 °C, 37 °C at 28 g/kg one of 31 °C.
    expect(marked(33, 0.002)).toBe(true);
    expect(marked(37, 0.028)).toBe(true);
  });

  it("says by how much a set point is missed", () => {
    const coil = design("rows: 3");
    const at = { condition, operation: sampleOperation({ coolingLeaving: celsius(52) }) };
    const out = rateAndCheck(chilledWaterCoil, coil, sampleAir(condition, 9), at);
    const [shortfall] = chilledWaterCoil.shortfalls?.(coil, out, at) ?? [];
    expect(shortfall?.got).toBe(out.leavingDryBulb);
    expect(out.leavingDryBulb).toBeGreaterThan(celsius(53));
    expect(out.flowShare).toBe(1);
  });
});

describe("chilled-water coil in other states", () => {
  it("costs pressure alone when no cooling is wanted, and its tubes are as cold as the coldest air", () => {
    const condition = sampleCondition({ utilities });
    const at = { condition, operation: sampleOperation({ coolingLeaving: undefined }) };
    const air = sampleAir(condition, 8, { dryBulb: 3, coldestFilament: -8, humidityRatio: 0.002 });
    const out = rateAndCheck(chilledWaterCoil, design(), air, at);
    expect(out.capacity).toBe(0);
    expect(out.leaving.dryBulb).toBeCloseTo(3, 12);
    expect(out.coldestTubeWall).toBe(-8);
    expect(out.totalPressureLoss).toBe(out.dryLoss);
    expect(chilledWaterCoil.notes?.(design(), out, at).some((note) => /freeze/.test(note.what))).toBe(true);
  });

  it("drains fog that meets its wet fins", () => {
    const condition = sampleCondition({ utilities });
    const at = { condition, operation: sampleOperation({ coolingLeaving: 11 }) };
    const air = sampleAir(condition, 8, { dryBulb: 24, coldestFilament: 24, humidityRatio: 0.0188, freeLiquid: 0.004 });
    const out = rateAndCheck(chilledWaterCoil, design(), air, at);
    expect(out.leaving.freeLiquid).toBe(0);
    expect(out.condensate).toBeGreaterThan(0.004);
  });

  it.each([0.05, 1, 4, 9.8, 15])("keeps its balances at %f kg/s of air, running and stopped", (flow) => {
    for (const fansRunning of [true, false]) {
      for (const coolingLeaving of [undefined, 11.7]) {
        for (const valveFails of ["open", "closed"] as const) {
          const water = { ...chilledWater, valveFails, pumpRunsWhenStopped: true };
          const condition = sampleCondition({ utilities: { ...utilities, chilledWater: water } });
          const at = { condition, operation: sampleOperation({ fansRunning, coolingLeaving }) };
          rateAndCheck(
            chilledWaterCoil,
            design("stacked: 2\nrows: 6\nfins: 10 per in"),
            sampleAir(condition, flow),
            at,
          );
        }
      }
    }
  });

  it("shares air and water evenly between stacked coils: half the height twice is the same machine", () => {
    const condition = sampleCondition({
      utilities: { ...utilities, chilledWater: { ...chilledWater, massFlow: 12, temperatureChange: undefined } },
    });
    const at = { condition, operation: sampleOperation({ coolingLeaving: -20 }) };
    const one = design("finned height: 1.8288 m\nfinned length: 2 m");
    const two = design("stacked: 2\nfinned height: 0.9144 m\nfinned length: 2 m", { ...sampleFrame, height: 2.4 });
    expect(two.block.faceArea).toBeCloseTo(one.block.faceArea, 10);
    const air = sampleAir(condition, 9);
    const a = rateAndCheck(chilledWaterCoil, one, air, at);
    const b = rateAndCheck(chilledWaterCoil, two, air, at);
    expect(b.capacity / a.capacity).toBeCloseTo(1, 9);
    expect(b.dryLoss / a.dryLoss).toBeCloseTo(1, 9);
  });
});

describe("condensate on stacked coils", () => {
  const condition = sampleCondition({ utilities });
  const at = { condition, operation: sampleOperation({ coolingLeaving: -20 }) };
  const told = (text: string) => {
    const coil = design(text, { ...sampleFrame, height: 2.4 });
    const out = rateAndCheck(chilledWaterCoil, coil, sampleAir(condition, 9), at);
    const notes = chilledWaterCoil.notes?.(coil, out, at) ?? [];
    return { out, notes: notes.map(({ what }) => what).filter((what) => /pan/.test(what)) };
  };

  it("drains coil by coil into intermediate pans, and all into one without them", () => {
    const size = "stacked: 3\nfinned height: 24 in\nfinned length: 80 in\n";
    const pans = told(`${size}intermediate pans: yes`);
    const none = told(`${size}intermediate pans: no`);
    expect(pans.out.panPitch).toBeCloseTo(24 * 0.0254, 2);
    expect(none.out.filmLoading / pans.out.filmLoading).toBeCloseTo(3, 6);
    // The film's thickness goes with the cube root of what runs down.
    expect(none.out.filmShare / pans.out.filmShare).toBeCloseTo(Math.cbrt(3), 6);
    // cooling-coil-pan-practice: a pan every 24 in. in one guide, never more than about 48 in.
    expect(pans.notes).toEqual([]);
    expect(none.notes).toHaveLength(2);
    expect(none.notes[1]).toMatch(/seldom builds more than 48 in/);
  });
});

describe("time to freeze of a chilled-water coil", () => {
  it("is that of its standing water in winter air, and none in summer", () => {
    const winter = sampleCondition({
      utilities,
      outdoor: { dryBulb: -15, humidityRatio: 0.001, windSpeed: 0, rain: 0 },
    });
    const at = { condition: winter, operation: sampleOperation({ coolingLeaving: undefined }) };
    const air = sampleAir(winter, 8, { dryBulb: 8, coldestFilament: 4, humidityRatio: 0.002 });
    const out = rateAndCheck(chilledWaterCoil, design(), air, at);
    expect(out.iceAfterFlowLoss).toBe(86_400);
    // Behind a preheat coil that fails with the fan, water of 4 °C meets outside air.
    expect(out.iceAfterFanLoss).toBeLessThan(86_400);
    expect(out.iceAfterFanLossOpen).toBeLessThan(out.iceAfterFanLoss);
    const summer = sampleCondition({ utilities });
    const cools = { condition: summer, operation: sampleOperation({ coolingLeaving: 12 }) };
    const warm = rateAndCheck(chilledWaterCoil, design(), sampleAir(summer, 8), cools);
    expect([warm.iceAfterFlowLoss, warm.iceAfterFanLossOpen]).toEqual([86_400, 86_400]);
    expect(warm.coldestFluid).toBe(warm.liquidEntering);
  });
});

describe("a chilled-water coil that cannot be built", () => {
  it.each([
    ["circuits: 7", /7 circuits do not divide/],
    ["finned height: 8 ft", /does not fit/],
    ["finned length: 9 ft", /longer than the cabinet/],
    ["length: 6 in", /deeper than the section/],
  ])("%s says what is wrong", (text, words) => {
    expect(() => design(text)).toThrow(words);
  });

  it("says that a low cabinet does not take six coils", () => {
    expect(() => design("stacked: 6", { ...sampleFrame, height: 0.5 })).toThrow(/too low/);
  });
});

describe("picture of a chilled-water coil", () => {
  it("draws to scale, inside the section but for pan and drain, each item with a key of its own", () => {
    const coil = design("stacked: 2\nrows: 8");
    const items = chilledWaterCoil.picture(coil, sampleFrame, "cooling coil");
    expect(new Set(items.map((item) => item.key)).size).toBe(items.length);
    const casings = items.filter((item) => item.reference.part === "casing");
    expect(casings).toHaveLength(2);
    const tube = items.find((item) => item.shape === "circle" && item.reference.part === "tubes");
    expect(tube?.shape === "circle" && tube.radius).toBeCloseTo(7.94, 1);
    for (const item of items) {
      const heights = item.shape === "line" ? item.points.filter((_, i) => i % 2 === 1) : [item.y];
      for (const y of heights) expect(y).toBeLessThanOrEqual(sampleFrame.height * 1000 + 1);
    }
  });
});

describe("ends of the connections", () => {
  const text = (ends: string, circuits: number) =>
    `rows: 6\nfinned height: 36 in\nconnection ends: ${ends}\ncircuits: ${circuits}`;

  it("take the circuits whose passes lead there: even ones back, odd ones across", () => {
    // Six rows of 24 tubes of 1.5 in: 144 tubes; 24 circuits make six passes, 48 make three.
    expect(design(text("same end", 24)).block.coil.passes).toBe(6);
    expect(design(text("opposite ends", 48)).block.coil.passes).toBe(3);
    for (const circuits of [24, 48]) expect(() => design(text("as the circuits give", circuits))).not.toThrow();
  });

  it("refuse circuits that lead to the other end, and say which would do", () => {
    expect(() => design(text("opposite ends", 24))).toThrow(/24 circuits make 6 passes, which end where they began/);
    expect(() => design(text("same end", 48))).toThrow(/48 circuits make 3 passes, which end opposite their supply/);
    const allowed = (ends: string, circuits: number) => {
      try {
        design(text(ends, circuits));
      } catch (problem) {
        return (problem as { readonly allowed: string }).allowed.match(/\d+/g)!.map(Number);
      }
      throw new Error("not refused");
    };
    expect(allowed("opposite ends", 24)).toContain(48);
    for (const circuits of allowed("opposite ends", 24)) expect((144 / circuits) % 2).toBe(1);
    expect(allowed("same end", 48)).toContain(24);
    for (const circuits of allowed("same end", 48)) expect((144 / circuits) % 2).toBe(0);
  });
});
