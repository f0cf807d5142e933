import { dewPointFromHumidityRatio } from "@oncethrough/engine/fluid/dew-point";
import {
  density,
  enthalpyFromHumidityRatio,
  humidityRatioFromRelativeHumidity,
  moistAirSpecificHeat,
  specificVolume,
} from "@oncethrough/engine/fluid/moist-air";
import { enhancementFactor, saturationHumidityRatio } from "@oncethrough/engine/fluid/saturation";
import { wetBulbFromHumidityRatio } from "@oncethrough/engine/fluid/wet-bulb";
import { type CaseData, listAt, numberAt, someHave } from "./case-data.ts";
import { caseName, caseRows, type Figure, type Format, listRows, metaOf } from "./format.ts";
import type { Row } from "./row.ts";

/** States of moist air by temperature, pressure and relative humidity (or humidity ratio where that is missing). */
export const moistAirGrid: Format = {
  name: "moist-air grid",
  recognises: (data) => {
    const points = listAt(data, "points");
    return someHave(points, "RH", "W", "Wsat", "f_enh") && someHave(points, "p_kPa", "T_C");
  },
  rows: (data) => listRows(listAt(data, "points"), "point", (point, name) => pointRows(point, metaOf(data), name)),
};

function pointRows(point: CaseData, meta: CaseData, fallback: string): Row[] {
  const humidity = numberAt(point, "RH") === null && numberAt(point, "W") !== null ? "W" : "RH";
  const inputs = ["T_C", "p_kPa", humidity];
  return caseRows(caseName(point, inputs, fallback), point, meta, inputs, () =>
    figuresOf(point.T_C as number, (point.p_kPa as number) * 1000, point, humidity),
  );
}

function figuresOf(t: number, p: number, point: CaseData, humidity: string): Figure[] {
  const given = point[humidity] as number;
  const W = humidity === "W" ? given : humidityRatioFromRelativeHumidity(t, given, p);
  const figures: Figure[] = [
    { key: "Wsat", unit: "kg/kg", got: () => saturationHumidityRatio(t, p) },
    { key: "f_enh", unit: "1", got: () => enhancementFactor(t, p) },
    { key: "v_m3_kgda", unit: "m³/kg dry air", got: () => specificVolume(t, W, p) },
    { key: "rho_kg_m3", unit: "kg/m³", got: () => density(t, W, p) },
    { key: "h_kJ_kgda", unit: "kJ/kg dry air", got: () => enthalpyFromHumidityRatio(t, W) / 1000 },
    { key: "cp_kJ_kgdaK", unit: "kJ/kg dry air K", got: () => moistAirSpecificHeat(W) / 1000 },
    { key: "tdp_C", unit: "°C", got: () => dewPointFromHumidityRatio(W, p) },
    { key: "twb_C", unit: "°C", got: () => wetBulbFromHumidityRatio(t, W, p) },
  ];
  return humidity === "W" ? figures : [{ key: "W", unit: "kg/kg", got: () => W }, ...figures];
}
