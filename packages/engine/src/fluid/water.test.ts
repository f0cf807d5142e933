import { describe, expect, it } from "vitest";
import {
  WATER_PRESSURE,
  waterConductivity,
  waterDensity,
  waterEnthalpy,
  waterSpecificHeat,
  waterViscosity,
} from "./water.ts";
import {
  liquidWater,
  steamSaturationPressureEquation,
  steamSaturationTemperatureEquation,
  steamVapour,
} from "./water-equation.ts";
import { waterConductivityEquation, waterViscosityEquation } from "./water-transport-equation.ts";

/** Digits in which the releases print their verification values. */
const NINE_DIGITS = 6e-9;
const relative = (got: number, expected: number) => Math.abs(got / expected - 1);
const celsius = (kelvin: number) => kelvin - 273.15;

describe("water by the equations of the releases", () => {
  it("liquid meets table 5 of IF97: 300 K 3 MPa, 300 K 80 MPa, 500 K 3 MPa", () => {
    const rows = [
      [300, 3e6, 0.100215168e-2, 0.115331273e6, 0.417301218e4],
      [300, 80e6, 0.971180894e-3, 0.184142828e6, 0.401008987e4],
      [500, 3e6, 0.1202418e-2, 0.975542239e6, 0.465580682e4],
    ] as const;
    for (const [T, p, v, h, cp] of rows) {
      const state = liquidWater(celsius(T), p);
      expect(relative(state.specificVolume, v)).toBeLessThan(NINE_DIGITS);
      expect(relative(state.enthalpy, h)).toBeLessThan(NINE_DIGITS);
      expect(relative(state.specificHeat, cp)).toBeLessThan(NINE_DIGITS);
    }
  });

  it("steam meets table 15 of IF97: 300 K and 700 K at 3.5 kPa, 700 K at 30 MPa", () => {
    const rows = [
      [300, 3500, 0.394913866e2, 0.254991145e7, 0.191300162e4],
      [700, 3500, 0.923015898e2, 0.333568375e7, 0.208141274e4],
      [700, 30e6, 0.542946619e-2, 0.263149474e7, 0.103505092e5],
    ] as const;
    for (const [T, p, v, h, cp] of rows) {
      const state = steamVapour(celsius(T), p);
      expect(relative(state.specificVolume, v)).toBeLessThan(NINE_DIGITS);
      expect(relative(state.enthalpy, h)).toBeLessThan(NINE_DIGITS);
      expect(relative(state.specificHeat, cp)).toBeLessThan(NINE_DIGITS);
    }
  });

  it("saturation meets tables 35 and 36 of IF97", () => {
    for (const [T, p] of [
      [300, 0.353658941e4],
      [500, 0.263889776e7],
      [600, 0.123443146e8],
    ] as const) {
      expect(relative(steamSaturationPressureEquation(celsius(T)), p)).toBeLessThan(NINE_DIGITS);
    }
    for (const [p, T] of [
      [0.1e6, 0.372755919e3],
      [1e6, 0.453035632e3],
      [10e6, 0.584149488e3],
    ] as const) {
      expect(relative(steamSaturationTemperatureEquation(p) + 273.15, T)).toBeLessThan(NINE_DIGITS);
    }
  });

  it("viscosity meets table 4 of R12-08, µPa·s", () => {
    for (const [T, rho, mu] of [
      [298.15, 998, 889.7351],
      [298.15, 1200, 1437.649467],
      [373.15, 1000, 307.883622],
      [433.15, 1, 14.538324],
      [433.15, 1000, 217.685358],
      [873.15, 1, 32.619287],
      [873.15, 100, 35.802262],
      [873.15, 600, 77.430195],
    ] as const) {
      expect(relative(1e6 * waterViscosityEquation(celsius(T), rho), mu)).toBeLessThan(4e-8);
    }
  });

  it("conductivity meets table 4 of R15-11 without the enhancement, mW/mK", () => {
    for (const [T, rho, k] of [
      [298.15, 0, 18.4341883],
      [298.15, 998, 607.712868],
      [298.15, 1200, 799.038144],
      [873.15, 0, 79.1034659],
    ] as const) {
      expect(relative(1e3 * waterConductivityEquation(celsius(T), rho), k)).toBeLessThan(NINE_DIGITS);
    }
  });
});

describe("water as the program reads it", () => {
  it("follows the equations over 0…120 °C to 1e-6", () => {
    for (let t = 0; t <= 120; t += 0.31) {
      const state = liquidWater(t, WATER_PRESSURE);
      const rho = 1 / state.specificVolume;
      expect(relative(waterDensity(t), rho)).toBeLessThan(1e-6);
      expect(relative(waterSpecificHeat(t), state.specificHeat)).toBeLessThan(1e-6);
      expect(relative(waterViscosity(t), waterViscosityEquation(t, rho))).toBeLessThan(1e-6);
      expect(relative(waterConductivity(t), waterConductivityEquation(t, rho, state))).toBeLessThan(1e-6);
      expect(Math.abs(waterEnthalpy(t) - state.enthalpy)).toBeLessThan(0.1);
    }
  });

  it("holds its ends, and lets the enthalpy run on", () => {
    expect(waterViscosity(-5)).toBe(waterViscosity(0));
    expect(waterDensity(140)).toBe(waterDensity(120));
    expect(waterEnthalpy(122) - waterEnthalpy(120)).toBeCloseTo(2 * waterSpecificHeat(120), 6);
  });
});
