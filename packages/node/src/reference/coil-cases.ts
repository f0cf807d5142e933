import type { Coil } from "@oncethrough/engine/component/coil/coil";
import type { CoilInlet } from "@oncethrough/engine/component/coil/performance";
import { type CaseData, isCaseData, listAt, numberAt, shortened } from "./case-data.ts";
import { coilOfGeometry, coilOfResistances, hasGeometry, rangeOf, surfaceChoices } from "./coil-build.ts";
import { answersOf, effectivenessOf, performanceOf, rowsAgainst } from "./coil-figures.ts";
import { fittedRows } from "./coil-fitted.ts";
import { firstNumber, inletOf, partOf } from "./coil-inputs.ts";
import { stallRows, steamBalanceRows, steamVectorRows } from "./coil-steam.ts";
import { caseName, type Format, listRows, metaOf } from "./format.ts";
import { figureRow, notRunRow, type Row } from "./row.ts";

/** Cooling coils on chilled water or glycol: measured points, worked examples, other models' answers. */
export const coilCooling: Format = {
  name: "cooling-coil cases",
  recognises: (data) => isCoilFile(data) && coolingCases(data) > 0,
  rows: coilFileRows,
};

/** Heating coils on hot water, glycol or steam. */
export const coilHeating: Format = {
  name: "heating-coil cases",
  recognises: isCoilFile,
  rows: coilFileRows,
};

function coilFileRows(data: CaseData): Row[] {
  return [
    ...listRows(listAt(data, "cases"), "case", (each, name) => caseRows(each, metaOf(data), name)),
    ...listRows(listAt(partOf(data, "steam_coil_vectors"), "points"), "steam-coil vector", steamVectorRows),
  ];
}

const coilKeys = ["T_air_in_C", "T_water_in_C", "T_fluid_in_C", "m_water_kg_s", "UA_air", "T_steam", "steam"];

function isCoilFile(data: CaseData): boolean {
  const cases = listAt(data, "cases").filter(isCaseData);
  // Cases all told in words are known by what the file says of itself.
  if (cases.length > 0 && /\bcoils?\b/i.test(String(metaOf(data).description))) return true;
  return (
    cases.some(
      (each) => coilKeys.some((key) => key in partOf(each, "inputs")) || "tube_od_m" in partOf(each, "geometry"),
    ) || listAt(partOf(data, "steam_coil_vectors"), "points").some(isCaseData)
  );
}

function coolingCases(data: CaseData): number {
  return listAt(data, "cases").filter((each) => {
    const inputs = isCaseData(each) ? partOf(each, "inputs") : {};
    const air = firstNumber(inputs, "T_air_in_C");
    const liquid = firstNumber(inputs, "T_water_in_C", "T_fluid_in_C");
    return air !== null && liquid !== null && liquid < air;
  }).length;
}

function caseRows(data: CaseData, meta: CaseData, fallback: string): Row[] {
  const name = caseName(data, [], fallback);
  const { inputs, outputs } = data;
  if (!isCaseData(inputs)) return noted([notRunRow(name, inWords("inputs", inputs))], data);
  if (!isCaseData(outputs)) return noted([notRunRow(name, inWords("outputs", outputs))], data);
  // What the file says of all its cases holds where a case says nothing.
  const own = { uncertainty_pct: numberAt(meta, "uncertainty_pct"), ...data };
  try {
    const rows = rowsOf(name, own, inputs, outputs);
    return rows.length > 0
      ? noted(rows, data)
      : noted([notRunRow(name, "it holds no figure that the program gives")], data);
  } catch (error) {
    if (error instanceof RangeError) return noted([notRunRow(name, error.message)], data);
    throw error;
  }
}

function inWords(what: string, value: unknown): string {
  if (value === undefined || value === null) return `it has no ${what}`;
  return `its ${what} are told in words (${shortened(String(value))})`;
}

/** The kind of case stands before what else is to be said, on its first row. */
function noted(rows: readonly Row[], data: CaseData): Row[] {
  const [first, ...others] = rows;
  const parts = [typeof data.type === "string" ? data.type : "", first!.note ?? ""].filter((part) => part !== "");
  return parts.length === 0 ? [...rows] : [{ ...first!, note: parts.join("; ") }, ...others];
}

function rowsOf(name: string, data: CaseData, inputs: CaseData, outputs: CaseData): Row[] {
  if (firstNumber(inputs, "T_steam") !== null) return stallRows(name, inputs, outputs);
  if ("steam" in inputs) return steamBalanceRows(name, inputs, outputs);
  if (typeof inputs.UA_air === "string") return fittedRows(name, inputs, outputs);
  const against = whoseAnswer(data);
  const geometry = partOf(data, "geometry");
  if (hasGeometry(data)) return builtRows(name, data, outputs, inletOf(inputs, geometry), against);
  const coil = coilOfResistances(data, inputs);
  return resistanceRows(name, data, outputs, coil, inletOf(inputs, geometry), against);
}

/** Answers of models keep statistics of their own: they are no measurements. */
function whoseAnswer(data: CaseData): string {
  const type = String(data.type ?? "");
  if (/research.model/i.test(type)) return " against research model";
  return /librar/i.test(type) ? " against open library" : "";
}

function builtRows(name: string, data: CaseData, outputs: CaseData, inlet: CoilInlet, against: string): Row[] {
  return surfaceChoices.flatMap(({ suffix, changes, farthest }) => {
    const coil = coilOfGeometry(partOf(data, "geometry"), changes);
    const out = performanceOf(coil, inlet);
    const { distance, words } = rangeOf(coil, out.airReynolds);
    if (distance > farthest) return [];
    const [first, ...others] = rowsAgainst(name, outputs, data, answersOf(out, inlet), suffix, against);
    return first === undefined ? [] : [{ ...first, note: words }, ...others];
  });
}

function resistanceRows(
  name: string,
  data: CaseData,
  outputs: CaseData,
  coil: Coil,
  inlet: CoilInlet,
  against: string,
): Row[] {
  const { dry, wet, ...rest } = outputs;
  const answers = answersOf(performanceOf(coil, inlet), inlet);
  const expected = isCaseData(wet) ? { ...rest, ...wet } : rest;
  const rows = rowsAgainst(name, expected, data, answers, "", against);
  return isCaseData(dry) ? [...dryRows(name, dry, data, coil, inlet), ...rows] : rows;
}

/** A regime asked for as dry: the coil on air without moisture, its flow raised so that the heat capacity stays. */
function dryRows(name: string, dry: CaseData, data: CaseData, coil: Coil, moist: CoilInlet): Row[] {
  const capacity = 1 + (1.86 / 1.006) * moist.humidityRatio;
  const inlet = { ...moist, humidityRatio: 0, dryAirFlow: moist.dryAirFlow * capacity };
  const out = performanceOf(coil, inlet);
  const rows = rowsAgainst(name, dry, data, answersOf(out, inlet), ", dry regime");
  const wanted = numberAt(dry, "eps");
  if (wanted === null) return rows;
  return [...rows, figureRow(name, "effectiveness, dry regime", "1", wanted, effectivenessOf(out, inlet), null)];
}
