import fc from "fast-check";
import { describe, expect, it } from "vitest";
import cases from "../../../../reference/cases/vibration.json" with { type: "json" };
import {
  deflectionFromIsolation,
  leastSpringDeflection,
  springLoads,
  springNaturalFrequency,
  springStiffness,
  springTransmissibility,
} from "./spring.ts";

describe("spring", () => {
  // A vibration engineering page: f = 15.76/√δ(mm) Hz and the undamped ratio of forces; its example is 25 mm at 1500 rpm.
  it("meets the published example: 25 mm at 1500 rpm", () => {
    const { delta_mm, rpm, fn, r, T_undamped } = cases.published_check;
    const natural = springNaturalFrequency(delta_mm / 1000);
    expect(natural).toBeCloseTo(fn, 2);
    expect(rpm / 60 / natural).toBeCloseTo(r, 2);
    // The example rounds 15.76/√δ; a part in a thousand of the ratio is two of transmissibility.
    expect(Math.abs(springTransmissibility(rpm / 60 / natural, 0) / T_undamped - 1)).toBeLessThan(3e-3);
  });

  // A maker's letter prints 188/√δ(in) cycles a minute: 2 in springs amplify below √2 of that and isolate 97.8 % at 900 rpm.
  it("isolates 97.8 % at 900 rpm on 2 in, and amplifies below 188 rpm", () => {
    const natural = springNaturalFrequency(2 * 0.0254);
    expect(natural * 60).toBeCloseTo(132.9, 0);
    expect(1 - springTransmissibility(900 / 60 / natural, 0)).toBeCloseTo(0.978, 3);
    expect(springTransmissibility(180 / 60 / natural, 0)).toBeGreaterThan(1);
    expect(springTransmissibility(195 / 60 / natural, 0)).toBeLessThan(1);
  });

  // r² = 1 + 1/(1 − E) of the same page, worked in the reference cases to three or four figures.
  it.each(cases.deflection_table_computed)("needs the tabled deflection at $rpm rpm", (row) => {
    expect(Math.abs(deflectionFromIsolation(row.rpm / 60, 0.9) / (row.defl_mm_for_90pct / 1000) - 1)).toBeLessThan(
      2e-3,
    );
    expect(Math.abs(deflectionFromIsolation(row.rpm / 60, 0.95) / (row.defl_mm_for_95pct / 1000) - 1)).toBeLessThan(
      2e-3,
    );
    expect(Math.abs(deflectionFromIsolation(row.rpm / 60, 0.98) / (row.defl_mm_for_98pct / 1000) - 1)).toBeLessThan(
      2e-3,
    );
  });

  // Rows of the handbook's table as recalled in the reference cases.
  it("takes the recalled least deflections, and the next span for 60 hp", () => {
    for (const [index, rpm] of [300, 500, 900].entries()) {
      const row = cases.minimum_static_deflection_practice.rows[index]!;
      const least = (floor: "slab on grade" | "20 ft" | "30 ft" | "40 ft", hp = 20) =>
        leastSpringDeflection(rpm / 60, floor, hp * 745.7) / 0.0254;
      expect(least("slab on grade")).toBeCloseTo(row.slab_in, 9);
      expect(least("20 ft")).toBeCloseTo(row.floor20ft_in, 9);
      expect(least("30 ft")).toBeCloseTo(row.floor30ft_in, 9);
      expect(least("40 ft")).toBeCloseTo(row.floor40ft_in, 9);
      expect(least("20 ft", 75)).toBeCloseTo(Math.max(row.floor30ft_in, 2.5), 9);
    }
  });

  // Rigid body on equal springs, R = W(1/n + x_g x/Σx² + y_g y/Σy²), in any text of statics; worked in the reference cases.
  it("shares the worked example's mass between four corners", () => {
    const example = cases.load_distribution_example;
    const springs = example.springs_xy_m.map(([x, y]) => ({ x: x!, y: y! }));
    const loads = springLoads(example.W_kg, { x: example.cg_xy_m[0]!, y: example.cg_xy_m[1]! }, springs);
    loads.forEach((load, index) => {
      expect(load).toBeCloseTo(example.loads_kg[index]!, 9);
      expect(springStiffness(load, 0.038) / 1000).toBeCloseTo(example.spring_rate_for_38mm_N_mm[index]!, 1);
    });
  });

  it("carries the whole mass and its moments, wherever the springs stand", () => {
    const place = fc.record({
      x: fc.double({ min: -2, max: 2, noNaN: true }),
      y: fc.double({ min: -2, max: 2, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(place, { minLength: 1, maxLength: 5 }), place, (more, centre) => {
        const springs = [{ x: -1, y: -1 }, { x: 1.5, y: -0.8 }, { x: 0.2, y: 1.2 }, ...more];
        const loads = springLoads(900, centre, springs);
        const sum = (weigh: (point: { x: number; y: number }) => number) =>
          springs.reduce((total, point, index) => total + loads[index]! * weigh(point), 0);
        expect(sum(() => 1)).toBeCloseTo(900, 6);
        expect(sum((point) => point.x)).toBeCloseTo(900 * centre.x, 6);
        expect(sum((point) => point.y)).toBeCloseTo(900 * centre.y, 6);
      }),
    );
  });

  it("refuses springs in one line", () => {
    expect(() =>
      springLoads(1, { x: 0, y: 0 }, [
        { x: 0, y: 0 },
        { x: 1, y: 0 },
        { x: 2, y: 0 },
      ]),
    ).toThrow(/one line/);
  });
});
