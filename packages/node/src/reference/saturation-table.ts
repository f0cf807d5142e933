import { cooling } from "@oncethrough/engine/fluid/air-process";
import {
  enthalpyFromHumidityRatio,
  humidityRatioFromRelativeHumidity,
  specificVolume,
} from "@oncethrough/engine/fluid/moist-air";
import { saturationHumidityRatio } from "@oncethrough/engine/fluid/saturation";
import { type CaseData, isCaseData, listAt, numberAt, shortened, someHave } from "./case-data.ts";
import { caseName, caseRows, type Figure, type Format, listRows, metaOf } from "./format.ts";
import { notRunRow, type Row } from "./row.ts";

const SEA_LEVEL_KILOPASCAL = 101.325;

/** Properties of saturated air by temperature, at sea level unless a pressure is given; with worked examples of cooling. */
export const saturationTable: Format = {
  name: "moist-air saturation table",
  recognises: (data) => someHave(listAt(data, "rows"), "W_s", "v_s", "h_s") || isExampleFile(data),
  rows: (data) => [
    ...listRows(listAt(data, "rows"), "row", (row, name) => saturatedRows(row, metaOf(data), name)),
    ...listRows(listAt(data, "worked_examples"), "worked example", (example, name) =>
      exampleRows(example, metaOf(data), name),
    ),
  ],
};

function isExampleFile(data: CaseData): boolean {
  return someHave(listAt(data, "worked_examples"), "inputs");
}

function saturatedRows(row: CaseData, meta: CaseData, fallback: string): Row[] {
  return caseRows(caseName(row, ["T_C", "p_kPa"], fallback), row, meta, ["T_C"], () => {
    const t = row.T_C as number;
    const p = 1000 * (numberAt(row, "p_kPa") ?? numberAt(meta, "p_kPa") ?? SEA_LEVEL_KILOPASCAL);
    const W = saturationHumidityRatio(t, p);
    return [
      { key: "W_s", unit: "kg/kg", got: () => W },
      { key: "v_s", unit: "m³/kg dry air", got: () => specificVolume(t, W, p) },
      { key: "h_s", unit: "kJ/kg dry air", got: () => enthalpyFromHumidityRatio(t, W) / 1000 },
    ];
  });
}

/** A flow of moist air cooled to saturation; inputs told in words cannot be run. */
function exampleRows(example: CaseData, meta: CaseData, fallback: string): Row[] {
  const name = caseName(example, [], fallback);
  const { inputs, outputs } = example;
  if (!isCaseData(inputs)) {
    return [notRunRow(name, `its inputs are told in words (${shortened(String(inputs))})`)];
  }
  if (!isCaseData(outputs)) {
    return [notRunRow(name, `its outputs are told in words (${shortened(String(outputs))})`)];
  }
  const both = { ...example, ...outputs, ...inputs };
  return caseRows(name, both, meta, ["T1_C", "RH1", "V1_m3_s", "T2_C"], () => coolingFigures(inputs));
}

function coolingFigures(inputs: CaseData): Figure[] {
  const t1 = inputs.T1_C as number;
  const t2 = inputs.T2_C as number;
  const p = 1000 * (numberAt(inputs, "p_kPa") ?? SEA_LEVEL_KILOPASCAL);
  const W1 = humidityRatioFromRelativeHumidity(t1, inputs.RH1 as number, p);
  const v1 = specificVolume(t1, W1, p);
  const flow = (inputs.V1_m3_s as number) / v1;
  const process = cooling(t1, W1, t2, p);
  return [
    { key: "h1_kJ_kgda", unit: "kJ/kg dry air", got: () => enthalpyFromHumidityRatio(t1, W1) / 1000 },
    { key: "W1", unit: "kg/kg", got: () => W1 },
    { key: "v1_m3_kgda", unit: "m³/kg dry air", got: () => v1 },
    {
      key: "h2_kJ_kgda",
      unit: "kJ/kg dry air",
      got: () => enthalpyFromHumidityRatio(t2, process.humidityRatio) / 1000,
    },
    { key: "W2", unit: "kg/kg", got: () => process.humidityRatio },
    { key: "m_a_kg_s", unit: "kg/s", got: () => flow },
    { key: "m_w_kg_s", unit: "kg/s", got: () => flow * process.condensate },
    { key: "q_kW", unit: "kW", got: () => (flow * process.heat) / 1000 },
  ];
}
