import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { liquidDensity } from "#fluid/liquid";
import { relativeHumidityFromHumidityRatio } from "#fluid/moist-air";
import { saturationHumidityRatio } from "#fluid/saturation";
import type { Coil } from "./coil.ts";
import { crossflowEffectiveness } from "./effectiveness.ts";
import { solveCoil } from "./march.ts";
import { type CoilInlet, type CoilPerformance, createCoilWork, createPerformance } from "./performance.ts";
import { plainSurface, sampleCoil, sampleInlet } from "./sample-coil.test-data.ts";

function solve(coil: Coil, inlet: CoilInlet): CoilPerformance {
  const out = createPerformance();
  solveCoil(coil, inlet, createCoilWork(), out);
  expect(out.converged).toBe(true);
  return out;
}

describe("the march on a dry coil", () => {
  // kays-london-1984: overall counterflow of n equal passes of known effectiveness; one row of the march is a pass with
  // the air unmixed and the liquid mixed, 1 − exp(−C (1 − exp(−NTU))) over C.
  it.each([1, 2, 4, 8])("agrees with the closed formula for %i passes in overall counterflow", (rows) => {
    const coil = sampleCoil({ rows, surface: { ...plainSurface, tubeHeatFactor: 1 } });
    const fixed: Coil = { ...coil, given: { air: 40, tube: 3000 } };
    const inlet = sampleInlet({ humidityRatio: 0.001, dryBulb: 30, liquidTemperature: 10 });
    const out = solve(fixed, inlet);
    const airCapacity = (out.heat / (inlet.dryBulb - out.leavingDryBulb)) * 1;
    const liquidCapacity = out.heat / (out.leavingLiquid - inlet.liquidTemperature);
    const outside = 1 / (40 * out.surfaceEfficiency * coil.outsideRow);
    const inside = 1 / (3000 * coil.insideRow) + coil.foulingRow + coil.wallRow;
    const units = 1 / ((outside + inside) * airCapacity);
    const ratio = airCapacity / liquidCapacity;
    const pass = (1 - Math.exp(-ratio * (1 - Math.exp(-units)))) / ratio;
    const power = ((1 - pass * ratio) / (1 - pass)) ** rows;
    const effectiveness = (power - 1) / (power - ratio);
    const got = (inlet.dryBulb - out.leavingDryBulb) / (inlet.dryBulb - inlet.liquidTemperature);
    expect(got / effectiveness).toBeCloseTo(1, 6);
  });

  it("lies close to crossflow with both streams unmixed in a single row", () => {
    const coil: Coil = { ...sampleCoil({ rows: 1 }), given: { air: 40, tube: 3000 } };
    const inlet = sampleInlet({ humidityRatio: 0.001, dryBulb: 30, liquidTemperature: 10 });
    const out = solve(coil, inlet);
    const air = out.heat / (30 - out.leavingDryBulb);
    const liquid = out.heat / (out.leavingLiquid - 10);
    const outside = 1 / (40 * out.surfaceEfficiency * coil.outsideRow);
    const units = 1 / ((outside + 1 / (3000 * coil.insideRow) + coil.foulingRow + coil.wallRow) * air);
    // Mixed liquid costs a little against unmixed: less than 1 % at this number of transfer units.
    const got = (30 - out.leavingDryBulb) / 20;
    expect(Math.abs(got / crossflowEffectiveness(units, air / liquid) - 1)).toBeLessThan(0.01);
  });
});

describe("limits", () => {
  it("does nothing without flow on either side", () => {
    for (const changes of [{ liquidFlow: 0 }, { dryAirFlow: 0 }]) {
      const inlet = sampleInlet(changes);
      const out = solve(sampleCoil(), inlet);
      expect(out.heat).toBe(0);
      expect(out.leavingDryBulb).toBe(inlet.dryBulb);
    }
  });

  it("stays dry on water warmer than the dew point, whatever the rest", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 40, noNaN: true }),
        fc.double({ min: 0.05, max: 0.95, noNaN: true }),
        (t, share) => {
          const humidityRatio = share * saturationHumidityRatio(t, 101_325);
          // Water a tenth of a kelvin above the dew point, found as the saturation of the same moisture.
          let dewPoint = t;
          while (saturationHumidityRatio(dewPoint, 101_325) > humidityRatio) dewPoint -= 0.05;
          const out = solve(
            sampleCoil(),
            sampleInlet({ dryBulb: t, humidityRatio, liquidTemperature: dewPoint + 0.1 }),
          );
          expect(out.condensate).toBe(0);
          expect(out.leavingHumidityRatio).toBe(humidityRatio);
        },
      ),
      { numRuns: 60 },
    );
  });

  it("heats a trickle of air in parallel flow to the liquid's temperature, and stays dry", () => {
    const coil = sampleCoil({ rows: 7, flow: "parallel" });
    const inlet = sampleInlet({ dryAirFlow: 0.005, dryBulb: 5, humidityRatio: 0.003, liquidTemperature: 95 });
    const out = solve(coil, inlet);
    expect(out.leavingDryBulb).toBeCloseTo(95, 1);
    expect(out.condensate).toBe(0);
  });

  it("cools saturated air along saturation, never beyond it", () => {
    for (const t of [12, 20, 30]) {
      const humidityRatio = saturationHumidityRatio(t, 101_325);
      const out = solve(sampleCoil(), sampleInlet({ dryBulb: t, humidityRatio, liquidTemperature: 5 }));
      const humidity = relativeHumidityFromHumidityRatio(out.leavingDryBulb, out.leavingHumidityRatio, 101_325);
      expect(humidity).toBeLessThanOrEqual(1 + 1e-9);
      expect(humidity).toBeGreaterThan(0.97);
    }
  });

  it("reaches the pinch with surface without end: the smaller capacity takes the whole difference", () => {
    const coil: Coil = { ...sampleCoil({ rows: 16 }), given: { air: 1e6, tube: 1e7 }, wallRow: 0, foulingRow: 0 };
    const moreWater = solve(coil, sampleInlet({ humidityRatio: 0.002, liquidFlow: 20 }));
    expect(moreWater.leavingDryBulb).toBeCloseTo(6.67, 2);
    const lessWater = solve(coil, sampleInlet({ humidityRatio: 0.002, liquidFlow: 0.2 }));
    expect(lessWater.leavingLiquid).toBeCloseTo(36.7, 1);
    const wet = solve(coil, sampleInlet({ liquidFlow: 40 }));
    expect(wet.leavingDryBulb).toBeCloseTo(6.67, 1);
    expect(wet.leavingHumidityRatio).toBeCloseTo(saturationHumidityRatio(6.67, 101_325), 4);
  });
});

describe("capacity rises", () => {
  const inlets = [sampleInlet(), sampleInlet({ humidityRatio: 0.009 }), sampleInlet({ humidityRatio: 0.003 })];

  it("with rows, at the same circuits and flows in counterflow", () => {
    for (const inlet of inlets) {
      for (const surface of [plainSurface, { ...plainSurface, wetHeat: "none" as const }]) {
        let before = 0;
        for (let rows = 1; rows <= 12; rows++) {
          const { heat } = solve(sampleCoil({ rows, surface }), inlet);
          expect(heat).toBeGreaterThan(before);
          before = heat;
        }
      }
    }
  });

  it("with water flow, fins and colder water; and falls with fouling", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.3, max: 12, noNaN: true }), fc.constantFrom(...inlets), (liquidFlow, base) => {
        const coil = sampleCoil();
        const inlet = { ...base, liquidFlow };
        const { heat } = solve(coil, inlet);
        expect(solve(coil, { ...inlet, liquidFlow: 1.05 * liquidFlow }).heat).toBeGreaterThan(heat);
        expect(solve(coil, { ...inlet, liquidTemperature: 5.5 }).heat).toBeGreaterThan(heat);
        expect(solve(sampleCoil({ foulingInside: 2e-4 }), inlet).heat).toBeLessThan(heat);
      }),
      { numRuns: 60 },
    );
  });
});

// Tables of coil makers, agreeing: propylene glycol entering at 45 °F gives, at the flow of water, 0.93–0.94 of water's
// capacity at 30 %, 0.90 at 40 %, 0.87 at 50 %. Such tables take turbulent flow for granted, which 1-in. tubes at 8 ft/s keep
// to 50 %. Three hundredths cover the spread of the tables and of coils.
describe("capacity on propylene glycol at equal flow", () => {
  const surface = { ...plainSurface, tubeOutsideDiameter: 0.0254, transversePitch: 0.0508, longitudinalPitch: 0.044 };
  const wide = sampleCoil({ surface, tubesPerRow: 18, circuits: 9, tubeWall: 0.0009 });
  const at = (coil: Coil, massFraction: number, velocity: number) => {
    const liquid = { substance: "propylene glycol", massFraction } as const;
    const liquidFlow = velocity * coil.bore * coil.circuits * liquidDensity(liquid, 7.2);
    return solve(
      coil,
      sampleInlet({ dryBulb: 26.7, humidityRatio: 0.0112, liquid, liquidFlow, liquidTemperature: 7.2 }),
    );
  };

  it.each([
    [0.3, 0.935],
    [0.4, 0.9],
    [0.5, 0.87],
  ])("mass fraction %f gives %f of water's", (massFraction, published) => {
    const glycol = at(wide, massFraction, 2.44);
    expect(glycol.tubeReynolds).toBeGreaterThan(4000);
    expect(Math.abs(glycol.heat / at(wide, 0, 2.44).heat - published)).toBeLessThan(0.03);
  });

  it("falls far below the tables where narrow tubes leave the flow laminar", () => {
    const narrow = sampleCoil();
    const glycol = at(narrow, 0.5, 1.2);
    expect(glycol.tubeReynolds).toBeLessThan(2300);
    expect(glycol.heat / at(narrow, 0, 1.2).heat).toBeLessThan(0.7);
  });
});

describe("the joint of fin and tube", () => {
  it("stands in series between air and tube: one row by hand", () => {
    // kays-london-1984: one row, liquid without end of capacity, ε = 1 − exp(−NTU) with 1/UA the sum of the resistances.
    const contactResistance = 5e-5;
    const coil: Coil = {
      ...sampleCoil({ rows: 1, surface: { ...plainSurface, contactResistance }, foulingInside: 0 }),
      given: { air: 60, tube: 5000 },
    };
    const inlet = sampleInlet({ humidityRatio: 0.001, dryBulb: 30, liquidTemperature: 10, liquidFlow: 4000 });
    const out = solve(coil, inlet);
    const { bank } = coil;
    const tubes = 24;
    const length = 1.22;
    const wall = Math.log(0.015875 / (0.015875 - 2 * 0.000508)) / (2 * Math.PI * 386 * length * tubes);
    const joint = contactResistance / (Math.PI * (0.015875 + 2 * 0.0001651) * length * tubes);
    const inside = 1 / (5000 * Math.PI * (0.015875 - 2 * 0.000508) * length * tubes);
    const outside = 1 / (60 * out.surfaceEfficiency * bank.outsideArea);
    const units = 1 / ((outside + wall + joint + inside) * inlet.dryAirFlow * (1006 + 1.86));
    expect((30 - out.leavingDryBulb) / 20).toBeCloseTo(1 - Math.exp(-units), 4);
    // The joint counts: a fourth of the resistance on this side of the air.
    expect(joint / (wall + joint + inside)).toBeGreaterThan(0.15);
  });

  it("takes capacity of a wet coil, more the looser it is", () => {
    const heat = (contactResistance: number) =>
      solve(sampleCoil({ surface: { ...plainSurface, contactResistance } }), sampleInlet()).heat;
    expect(heat(2e-5)).toBeLessThan(heat(0));
    expect(heat(1e-4)).toBeLessThan(heat(2e-5));
  });
});
