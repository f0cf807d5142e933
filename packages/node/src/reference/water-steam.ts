import {
  steamLatentHeat,
  steamLiquidConductivity,
  steamLiquidEnthalpy,
  steamLiquidSpecificHeat,
  steamLiquidSpecificVolume,
  steamLiquidViscosity,
  steamSaturationPressure,
  steamSaturationTemperature,
  steamVapourEnthalpy,
  steamVapourSpecificVolume,
  steamVapourViscosity,
} from "@oncethrough/engine/fluid/steam";
import {
  WATER_PRESSURE,
  waterConductivity,
  waterDensity,
  waterEnthalpy,
  waterSpecificHeat,
  waterViscosity,
} from "@oncethrough/engine/fluid/water";
import { liquidWater } from "@oncethrough/engine/fluid/water-equation";
import { waterConductivityEquation, waterViscosityEquation } from "@oncethrough/engine/fluid/water-transport-equation";
import { type CaseData, listAt, numberAt, someHave } from "./case-data.ts";
import { caseName, caseRows, type Figure, type Format, listRows, metaOf } from "./format.ts";
import type { Row } from "./row.ts";

const ATMOSPHERE_BAR = 1.01325;

/** Steam at saturation by pressure, and liquid water by temperature. */
export const waterSteam: Format = {
  name: "water and steam",
  recognises: (data) =>
    someHave(listAt(data, "steam"), "p_kPa_abs", "p_bar_g", "T_C") || someHave(listAt(data, "liquid_water"), "T_C"),
  rows: (data) => [
    ...listRows(listAt(data, "steam"), "steam", (row, name) => steamRows(row, metaOf(data), name)),
    ...listRows(listAt(data, "liquid_water"), "liquid water", (row, name) => liquidRows(row, metaOf(data), name)),
  ],
};

function steamRows(row: CaseData, meta: CaseData, fallback: string): Row[] {
  const input = ["p_kPa_abs", "p_bar_g", "T_C"].find((key) => numberAt(row, key) !== null) ?? "p_kPa_abs";
  const name = caseName(row, [input], fallback);
  return caseRows(row.id === undefined ? `steam ${name}` : name, row, meta, [input], () => {
    const p = steamPressure(row, input);
    const figures = steamFigures(p);
    // What was put in is no figure to compare.
    return figures.filter((figure) => figure.key !== input);
  });
}

function steamPressure(row: CaseData, input: string): number {
  const value = row[input] as number;
  if (input === "p_kPa_abs") return value * 1000;
  if (input === "p_bar_g") return (value + ATMOSPHERE_BAR) * 1e5;
  return steamSaturationPressure(value);
}

function steamFigures(p: number): Figure[] {
  return [
    { key: "T_C", unit: "°C", got: () => steamSaturationTemperature(p) },
    { key: "hf_kJ_kg", unit: "kJ/kg", got: () => steamLiquidEnthalpy(p) / 1000 },
    { key: "hg_kJ_kg", unit: "kJ/kg", got: () => steamVapourEnthalpy(p) / 1000 },
    { key: "hfg_kJ_kg", unit: "kJ/kg", got: () => steamLatentHeat(p) / 1000 },
    { key: "vf_m3_kg", unit: "m³/kg", got: () => steamLiquidSpecificVolume(p) },
    { key: "vg_m3_kg", unit: "m³/kg", got: () => steamVapourSpecificVolume(p) },
    { key: "mu_f_uPa_s", unit: "µPa·s", got: () => steamLiquidViscosity(p) * 1e6 },
    { key: "k_f_W_mK", unit: "W/mK", got: () => steamLiquidConductivity(p) },
    { key: "cp_f_kJ_kgK", unit: "kJ/kg K", got: () => steamLiquidSpecificHeat(p) / 1000 },
    { key: "mu_g_uPa_s", unit: "µPa·s", got: () => steamVapourViscosity(p) * 1e6 },
  ];
}

function liquidRows(row: CaseData, meta: CaseData, fallback: string): Row[] {
  const name = caseName(row, ["T_C", "p_kPa"], fallback);
  return caseRows(row.id === undefined ? `water ${name}` : name, row, meta, ["T_C"], () => {
    const t = row.T_C as number;
    const p = 1000 * (numberAt(row, "p_kPa") ?? WATER_PRESSURE / 1000);
    checkLiquid(t, p);
    return liquidFigures(t, p);
  });
}

function checkLiquid(t: number, p: number): void {
  if (!(t >= 0 && t <= 210)) throw new RangeError(`liquid water: temperature ${t} °C is outside 0…210 °C`);
  // At 0 °C the triple point is the least pressure; a row on the saturation line itself may miss it by rounding.
  if (t > 0 && p < steamSaturationPressure(t) * (1 - 1e-4)) {
    throw new RangeError(`liquid water: at ${t} °C and ${p} Pa it would be steam`);
  }
}

/** At the pressure and temperatures of the program's own functions those, elsewhere the equations behind them. */
function liquidFigures(t: number, p: number): Figure[] {
  const own = Math.abs(p - WATER_PRESSURE) < 1 && t <= 120;
  const state = liquidWater(t, p);
  const rho = own ? waterDensity(t) : 1 / state.specificVolume;
  const cp = own ? waterSpecificHeat(t) : state.specificHeat;
  const mu = own ? waterViscosity(t) : waterViscosityEquation(t, rho);
  const k = own ? waterConductivity(t) : waterConductivityEquation(t, rho, state);
  const h = own ? waterEnthalpy(t) : state.enthalpy;
  return [
    { key: "rho_kg_m3", unit: "kg/m³", got: () => rho },
    { key: "cp_kJ_kgK", unit: "kJ/kg K", got: () => cp / 1000 },
    { key: "mu_mPa_s", unit: "mPa·s", got: () => mu * 1000 },
    { key: "k_W_mK", unit: "W/mK", got: () => k },
    { key: "Pr", unit: "1", got: () => (cp * mu) / k },
    { key: "h_kJ_kg", unit: "kJ/kg", got: () => h / 1000 },
  ];
}
