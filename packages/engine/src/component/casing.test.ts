import { describe, expect, it } from "vitest";
import cases from "../../../../reference/cases/casing.json" with { type: "json" };
import drains from "../../../../reference/cases/condensate.json" with { type: "json" };
import { channelSection, spanDeflection, spanMoment } from "./base-rail.ts";
import { classFromLeakageFlux, europeanClass, leakageFluxFromClass } from "./casing-leakage.ts";
import {
  dryTransmittance,
  faceTemperature,
  panelTransmittance,
  plateDeflection,
  plateStress,
  sandwichDeflection,
  sandwichStiffness,
} from "./casing-panel.ts";
import { condensateTrap, halfFullDrain, railForTrap, sealLossSuction } from "./condensate-trap.ts";
import { sheetMass, sheetThickness } from "./sheet-metal.ts";
import { slingPull, slingTension } from "./sling.ts";

const inch = 0.0254;
const inchOfWater = 249.08891;
const perSquareFoot = 0.45359237 / 0.09290304;

describe("sheet", () => {
  // Manufacturers' Standard Gauge of sheet steel, 41.82 lb/ft² for an inch, and the galvanized list, 0.156 lb/ft² and
  // 0.00375 in more; partly from memory. Exact figures, so only rounding of the factor is left.
  it.each(cases.sheet_steel.rows.filter(({ gauge }) => gauge >= 10))(
    "of gauge $gauge weighs what the list says",
    (row) => {
      const gauge = String(row.gauge) as "18";
      expect(sheetMass("galvanized steel", gauge)).toBeCloseTo(row.galv_lb_ft2 * perSquareFoot, 5);
      expect(sheetThickness("galvanized steel", gauge)).toBeCloseTo(row.galv_in * inch, 9);
    },
  );

  // United States Standard gauge as stainless steel is sold by, 42 lb/ft² for an inch; from memory.
  it.each(cases.stainless.rows)("of stainless gauge $gauge weighs what the list says", (row) => {
    const gauge = String(row.gauge) as "18";
    expect(sheetMass("stainless steel 304", gauge)).toBeCloseTo(row.lb_ft2 * perSquareFoot, 5);
    expect(sheetThickness("stainless steel 316", gauge)).toBeCloseTo(row.t_in * inch, 9);
  });

  // American Wire Gauge (Brown & Sharpe), printed to four places.
  it("of aluminium is as thick as wire of its gauge: 18 gauge 0.0403 in", () => {
    expect(sheetThickness("aluminium", "18")).toBeCloseTo(0.0403 * inch, 5);
  });
});

describe("casing panel", () => {
  // ISO 6946: resistances in series, with the surfaces' 0.05 and 0.04 m²K/W as recalled; worked in the reference cases.
  it("passes the heat of the worked examples", () => {
    const { examples } = cases.U_value;
    const [thin, thick] = examples as unknown as [{ t_mm: number; U: number }, { t_mm: number; U: number }];
    for (const { t_mm, U } of [thin, thick])
      expect(panelTransmittance(t_mm / 1000, 0.037, 0.05, 0.04)).toBeCloseTo(U, 4);
  });

  // ISO 14683: linear bridges added by their length; worked in the reference cases.
  it("with an edge of 4 m around 1 m² passes what the worked example says", () => {
    const [, , framed] = cases.U_value.examples as [unknown, unknown, { U_eff: number }];
    // 4 m of edge at 0.10 W/mK on one square metre.
    expect(panelTransmittance(0.05, 0.037, 0.05, 0.04) + 4 * 0.1).toBeCloseTo(framed.U_eff, 4);
  });

  // EN 1886's way of judging a bridge, a face by its share of the difference in temperature; worked in the reference cases.
  it("sweats where the worked example says", () => {
    const { example, max_U_local_for_no_condensation: most } = cases.condensation;
    const face = faceTemperature(example.T_out, example.T_in, example.U_local, example.h_o);
    expect(face).toBeCloseTo(example.T_surface, 2);
    expect(dryTransmittance(example.T_out, example.T_in, example.Tdp_out, example.h_o)).toBeCloseTo(most, 4);
    expect(dryTransmittance(10, 12, 5, 8)).toBe(Number.POSITIVE_INFINITY);
  });

  // Beam of two skins and a shearing core, Timoshenko's sum of bending and shear; worked in the reference cases: 2.5 mm, L/402.
  it("bends as the worked sandwich: skins and core apart", () => {
    const e = cases.deflection.sandwich.example;
    const bending = sandwichStiffness(e.t1, e.t2, e.c, 200e9);
    expect(Math.abs(bending / e.D - 1)).toBeLessThan(1e-4);
    const apart = e.c + (e.t1 + e.t2) / 2;
    const w = sandwichDeflection(e.q, e.L, bending, (e.G * apart * apart) / e.c) * 1000;
    expect(Math.abs(w / e.w_total_mm - 1)).toBeLessThan(1e-4);
    expect(e.L / (w / 1000)).toBeCloseTo(402, 0);
  });

  // Roark's Formulas for Stress and Strain, table 11.4 case 1a (ν = 0.3) as read; clamped edges from memory of the same book.
  it("of one sheet bends by Roark's table at every ratio of sides", () => {
    const { alpha_simply_supported: alpha, beta_simply_supported_stress: beta } = cases.deflection.plate;
    for (const [ratio, a] of Object.entries(alpha)) {
      const long = ratio === "inf" ? 1e9 : Number(ratio);
      expect(plateDeflection("supported", 1, 1, long, 1, 1), ratio).toBeCloseTo(a, 6);
      expect(plateStress(1, 1, long, 1), ratio).toBeCloseTo(beta[ratio as keyof typeof beta], 6);
    }
    const clamped = cases.deflection.plate.example;
    expect(plateDeflection("clamped", clamped.q_Pa, clamped.a_m, clamped.a_m, 0.0012, clamped.E) * 1000).toBeCloseTo(
      clamped.w_clamped_mm,
      2,
    );
  });
});

describe("casing leakage", () => {
  // SMACNA HVAC Air Duct Leakage Test Manual: F = C_L P^0.65, as a duct tester's printed manual quotes it.
  it.each(cases.leakage.SMACNA.examples)(
    "of class $CL at $P in. is as computed from the published formula",
    ({ CL, P, F }) => {
      const cfmPer100 = (leakageFluxFromClass(CL, P * inchOfWater) / 0.00047194745) * 9.290304;
      expect(cfmPer100).toBeCloseTo(F, 2);
    },
  );

  // EN 1886 at 400 Pa of suction, L1 as read, the others from memory; converted by hand: 0.15 L/s·m² is 2.953 cfm for
  // 100 ft² at 1.606 in., and 2.953/1.606^0.65 = 2.17.
  it.each([
    ["L1", 2.17],
    ["L2", 6.37],
    ["L3", 19.1],
  ] as const)("of %s at 400 Pa is class %d", (name, wanted) => {
    const flux = cases.leakage.EN1886[name].neg400Pa / 1000;
    expect(Math.abs(classFromLeakageFlux(flux, 400) / wanted - 1)).toBeLessThan(3e-3);
    expect(europeanClass(wanted - 0.1)).toBe(name);
    expect(europeanClass(30)).toBe("none");
  });
});

describe("condensate trap", () => {
  // Printed installation texts of three makes agree: H = suction + 1 in, seal half of it; table in the reference cases.
  it("TV-2: under 3 in. of suction falls 4 in and seals 2 in, and so on through the printed table", () => {
    for (const row of drains.draw_through.table) {
      const trap = condensateTrap(row.p_in * inchOfWater, 0.0334);
      // The conventional inch of water is 25.4 mm of it.
      expect(trap.drop / inch).toBeCloseTo(row.H, 4);
      expect(trap.seal / inch).toBeCloseTo(row.J, 4);
      expect(trap.depth).toBeCloseTo(trap.drop + trap.seal + 0.0334, 12);
    }
  });

  // A printed installation text: seal ½ in more than the pressure; its example is 3.6 in.
  it("TV-1: at 3.6 in. of pressure seals 4.1 in, 4.6 in with its outlet", () => {
    const trap = condensateTrap(3.6 * inchOfWater, 0);
    expect(trap.seal / inch).toBeCloseTo(4.1, 4);
    expect(trap.depth / inch).toBeCloseTo(4.6, 4);
  });

  it("holds in SI as worked, and loses its seal at twice its depth, above what it was made for", () => {
    const { p_Pa, H_mm, J_mm } = drains.SI.example;
    const trap = condensateTrap(p_Pa, 0);
    // The worked example rounds the margin to 25 mm and the column to 9.81: half a millimetre.
    expect(Math.abs(trap.drop * 1000 - H_mm)).toBeLessThan(0.6);
    expect(Math.abs(trap.seal * 1000 - J_mm)).toBeLessThan(0.3);
    expect(sealLossSuction(trap.seal)).toBeGreaterThan(-p_Pa);
  });

  it.each(drains.flow.pipes)(
    "of $D_mm mm runs half full as Manning's formula says",
    ({ D_mm, slope_pct, Q_half_full_L_min }) => {
      const flow = halfFullDrain(D_mm / 1000, slope_pct / 100) * 60_000;
      expect(Math.abs(flow / Q_half_full_L_min - 1)).toBeLessThan(1e-3);
    },
  );

  // An owner's master specification: 6 in at least, and the trap's depth, slope and pad.
  it("asks for six inches of rail, or the trap, its fall and its room (CLG-27)", () => {
    expect(railForTrap(0.05, 0.01, 0.025)).toBeCloseTo(6 * inch, 9);
    expect(railForTrap(0.25, 0.02, 0.025)).toBeCloseTo(0.295, 9);
  });
});

describe("rail and slings", () => {
  it("channel agrees with the sum of its three plates about their own middles (parallel-axis theorem)", () => {
    const [h, b, t] = [0.25, 0.07, 0.006];
    const web = (t * (h - 2 * t) ** 3) / 12;
    const flanges = 2 * ((b * t ** 3) / 12 + b * t * ((h - t) / 2) ** 2);
    const section = channelSection(h, b, t);
    expect(section.secondMoment).toBeCloseTo(web + flanges, 12);
    expect(section.area).toBeCloseTo(t * (h - 2 * t) + 2 * b * t, 12);
    expect(section.modulus * (h / 2)).toBeCloseTo(section.secondMoment, 15);
  });

  // Any beam table: w L²/8 and 5 w L⁴/(384 E I) under an even load.
  it("span bends by the beam formulas: stress and deflection of a metre under a kilonewton", () => {
    expect(spanMoment(1000, 1)).toBeCloseTo(125, 9);
    expect(spanDeflection(1000, 1, 200e9, 1e-6)).toBeCloseTo(5000 / (384 * 200e9 * 1e-6), 12);
  });

  it("sling at 30° carries twice its load; tension, load and pull make a right triangle", () => {
    expect(slingTension(1000, 30)).toBeCloseTo(2000, 6);
    expect(Math.hypot(1000, slingPull(1000, 52))).toBeCloseTo(slingTension(1000, 52), 6);
  });
});
