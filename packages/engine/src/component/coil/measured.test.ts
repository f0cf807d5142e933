import { describe, expect, it } from "vitest";
import type { FinnedSurface } from "#component/finned-surface/family";
import { condensedWaterEnthalpy } from "#fluid/moist-air";
import { saturationHumidityRatio } from "#fluid/saturation";
import published from "../../../../../reference/cases/coil_cooling_cases.json" with { type: "json" };
import { buildCoil } from "./coil.ts";
import { solveCoil } from "./march.ts";
import { createCoilWork, createPerformance } from "./performance.ts";
import { resistanceCoil } from "./resistance-coil.ts";
import { plainSurface } from "./sample-coil.test-data.ts";

interface Geometry {
  readonly rows: number;
  readonly tubes_per_row: number;
  readonly circuits: number;
  readonly finned_length_m: number;
  readonly tube_od_m: number;
  readonly tube_id_m: number;
  readonly Pt_m: number;
  readonly Pl_m: number;
  readonly fins_per_m: number;
  readonly fin_thickness_m: number;
}
interface Measured {
  readonly id: string;
  readonly geometry: Geometry;
  readonly inputs: {
    T_air_in_C: number;
    W_in: number;
    p_kPa: number;
    T_water_in_C: number;
    m_air_kg_s: number;
    m_water_kg_s: number;
  };
  readonly outputs: { Q_total_kW: number; Q_sensible_kW: number; surface: string };
}

/** The sixteen points of elmahdy-mitalas-1977. */
const measured = published.cases.filter(({ id }) => /^EM[48]/.test(id)) as unknown as Measured[];

/** Error of total capacity, share, with the default model and what of the surface is changed. Clean tubes, a laboratory's. */
function errorOf(point: Measured, changes: Partial<FinnedSurface> = {}): number {
  const { geometry: g, inputs } = point;
  const tubeWall = (g.tube_od_m - g.tube_id_m) / 2;
  const coil = buildCoil({
    surface: {
      ...plainSurface,
      collars: false,
      tubeOutsideDiameter: g.tube_od_m,
      transversePitch: g.Pt_m,
      longitudinalPitch: g.Pl_m,
      ...changes,
    },
    rows: g.rows,
    tubesPerRow: g.tubes_per_row,
    finnedLength: g.finned_length_m,
    finsPerLength: g.fins_per_m,
    finThickness: g.fin_thickness_m,
    finMaterial: "aluminium",
    tubeWall,
    tubeMaterial: "copper",
    circuits: g.circuits,
    flow: "counter",
    turbulators: false,
    foulingInside: 0,
    foulingOutside: 0,
  });
  const out = createPerformance();
  const inlet = {
    dryAirFlow: inputs.m_air_kg_s,
    dryBulb: inputs.T_air_in_C,
    humidityRatio: inputs.W_in,
    pressure: inputs.p_kPa * 1000,
    coldestFilament: inputs.T_air_in_C,
    liquid: { substance: "water", massFraction: 0 } as const,
    liquidFlow: inputs.m_water_kg_s,
    liquidTemperature: inputs.T_water_in_C,
  };
  solveCoil(coil, inlet, createCoilWork(), out);
  return out.heat / (1000 * point.outputs.Q_total_kW) - 1;
}

const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
const meanAbsolute = (values: readonly number[]) => mean(values.map(Math.abs));

describe("measured coils of elmahdy-mitalas-1977", () => {
  it("are sixteen", () => expect(measured).toHaveLength(16));

  // The stated aim for a published correlation without any fit: 10 % each, 5 % in the mean; the points carry about 4 % of
  // their own, as their flows come from heat balances.
  it("are met by the default model, which knows nothing of them", () => {
    const errors = measured.map((point) => errorOf(point));
    for (const error of errors) expect(Math.abs(error)).toBeLessThan(0.1);
    expect(meanAbsolute(errors)).toBeLessThan(0.05);
  });

  // The surface's multiplier from the six dry points alone; the wet points are then a forecast. The stated aim: 5 % plus
  // the points' own 4 % each, 4 % in the mean of absolute errors.
  it("are forecast wet by a surface fitted dry", () => {
    const dry = measured.filter(({ outputs }) => outputs.surface === "Dry");
    const wet = measured.filter(({ outputs }) => outputs.surface !== "Dry");
    expect([dry.length, wet.length]).toEqual([6, 10]);
    let best = { heatFactor: 1, squares: Number.POSITIVE_INFINITY };
    for (let heatFactor = 0.8; heatFactor <= 1.4; heatFactor += 0.01) {
      const squares = mean(dry.map((point) => errorOf(point, { heatFactor }) ** 2));
      if (squares < best.squares) best = { heatFactor, squares };
    }
    expect(best.heatFactor).toBeGreaterThan(0.9);
    expect(best.heatFactor).toBeLessThan(1.25);
    const errors = wet.map((point) => errorOf(point, { heatFactor: best.heatFactor }));
    for (const error of errors) expect(Math.abs(error)).toBeLessThan(0.09);
    expect(meanAbsolute(errors)).toBeLessThan(0.04);
  });

  it("are met more closely by the correlation that was fitted to them, which is no proof", () => {
    const errors = measured.map((point) =>
      errorOf(point, { correlation: "Elmahdy-Mitalas 1977", wetHeat: "Elmahdy-Mitalas 1977" }),
    );
    expect(meanAbsolute(errors)).toBeLessThan(0.035);
  });

  it("lie within what other published plain-fin correlations give", () => {
    for (const correlation of ["Gray-Webb 1986", "McQuiston 1978"]) {
      expect(meanAbsolute(measured.map((point) => errorOf(point, { correlation })))).toBeLessThan(0.08);
    }
  });
});

/**
 * A wet counterflow exchanger of three resistances, integrated on its own in a thousand slices from the leaving-air end, by
 * shooting on the leaving enthalpy: surface by bisection at every slice. Independent of the march.
 */
function integrateWet(o: {
  air: number;
  liquid: number;
  flow: number;
  water: number;
  t: number;
  W: number;
  tw: number;
}): number {
  const h = (t: number, W: number) => 1006 * t + W * (2_501_000 + 1860 * t);
  const hs = (t: number) => h(t, saturationHumidityRatio(t, 101_325));
  const slices = 1000;
  const cp = 1006 + 1860 * o.W;
  const run = (leaving: number): number => {
    let ha = leaving;
    let tw = o.tw;
    for (let i = 0; i < slices; i++) {
      let low = tw;
      let high = tw + 40;
      for (let k = 0; k < 50; k++) {
        const ts = (low + high) / 2;
        if ((ha - hs(ts)) / (o.air * cp) > (ts - tw) / o.liquid) low = ts;
        else high = ts;
      }
      const heat = (low - tw) / o.liquid / slices;
      ha += heat / o.flow;
      tw += heat / o.water;
    }
    return ha;
  };
  const wanted = h(o.t, o.W);
  let low = hs(o.tw);
  let high = wanted;
  for (let k = 0; k < 60; k++) {
    const guess = (low + high) / 2;
    if (run(guess) < wanted) low = guess;
    else high = guess;
  }
  return o.flow * (wanted - low);
}

describe("resistance form", () => {
  // Mitchell and Braun's textbook coil (mitchell-braun-2012, SM-2-1): wet all over. Its effectiveness takes one slope of the
  // saturation curve from the water's temperatures alone and so comes out about 8 % above the integral, which is what the march gives.
  it("agrees with an independent integration of the same wet exchanger", () => {
    const coil = resistanceCoil({ air: 1 / 9495.5, metal: 0, liquid: 1 / 9495.5 }, 1);
    const out = createPerformance();
    const inlet = {
      dryAirFlow: 2.646,
      dryBulb: 26.667,
      humidityRatio: 0.01765,
      pressure: 101_325,
      coldestFilament: 26.667,
      liquid: { substance: "water", massFraction: 0 } as const,
      liquidFlow: 3.78,
      liquidTemperature: 5.556,
    };
    solveCoil(coil, inlet, createCoilWork(), out);
    const water = (out.heat / (out.leavingLiquid - 5.556)) * 1;
    const integrated = integrateWet({
      air: 1 / 9495.5,
      liquid: 1 / 9495.5,
      flow: 2.646,
      water,
      t: 26.667,
      W: 0.01765,
      tw: 5.556,
    });
    // The integration's heat leaves the air whole; the condensate's enthalpy goes down the drain.
    const gross = out.heat + out.condensate * condensedWaterEnthalpy(12);
    expect(out.wetShare).toBe(1);
    expect(Math.abs(gross / integrated - 1)).toBeLessThan(0.006);
    expect(out.leavingLiquid).toBeGreaterThan(10.4);
    expect(out.leavingLiquid).toBeLessThan(11.07);
  });

  // ulg-coil-course, exercise on regimes: 21.64 kW wet, 16.12 °C, 2.977 g/s, by an effectiveness of the wet-bulb difference.
  // Half a per cent in heat and 2 % in condensate is what its linear wet-bulb capacity and the march differ by.
  it("meets a published wet example", () => {
    const out = createPerformance();
    const coil = resistanceCoil({ air: 0.0005, metal: 0.0001, liquid: 0.0003 }, 1);
    const inlet = {
      dryAirFlow: 1,
      dryBulb: 30,
      humidityRatio: 0.01336,
      pressure: 101_325,
      coldestFilament: 30,
      liquid: { substance: "water", massFraction: 0 } as const,
      liquidFlow: 2,
      liquidTemperature: 5,
    };
    solveCoil(coil, inlet, createCoilWork(), out);
    expect(Math.abs(out.heat / 21_638.8 - 1)).toBeLessThan(0.01);
    expect(Math.abs(out.leavingDryBulb - 16.121)).toBeLessThan(0.15);
    expect(Math.abs(out.condensate / 0.002977 - 1)).toBeLessThan(0.03);
  });
});

describe("other models' answers for a six-row research coil (nbsir-84-2996)", () => {
  // No measurement: two published routines and a march lie 15 to 25 % apart. The default has to lie between them, 5 % more
  // allowed at either end.
  it.each(published.cases.filter(({ id }) => /^NBS-[abcd]$/.test(id)).map((each) => [each.id, each] as const))(
    "%s",
    (_id, each) => {
      const point = each as unknown as Measured;
      const answers = Object.values(each.outputs as unknown as Record<string, { Q: number }>).map(({ Q }) => Q);
      const heat = 1 + errorOf({ ...point, outputs: { Q_total_kW: 1, Q_sensible_kW: 1, surface: "" } });
      expect(heat).toBeGreaterThan(0.95 * Math.min(...answers));
      expect(heat).toBeLessThan(1.05 * Math.max(...answers));
    },
  );
});
