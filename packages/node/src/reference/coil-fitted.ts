import { counterflowEffectiveness, crossflowEffectiveness } from "@oncethrough/engine/component/coil/effectiveness";
import { type CaseData, numberAt } from "./case-data.ts";
import { needNumber } from "./coil-inputs.ts";
import { figureRow, type Row } from "./row.ts";

/** Figures under the keys by which a case may hold them: quantity, unit, what the program gives. */
export type NamedFigures = Readonly<Record<string, readonly [quantity: string, unit: string, got: number]>>;

/** A row for each figure that the case holds. */
export function namedRows(name: string, outputs: CaseData, figures: NamedFigures, against = ""): Row[] {
  return Object.entries(figures).flatMap(([key, [quantity, unit, got]]) => {
    const expected = numberAt(outputs, key);
    return expected === null ? [] : [figureRow(name, quantity + against, unit, expected, got, null)];
  });
}

/** Coefficients fitted to tests as powers of flow, with the effectiveness formula that belongs to them. */
export function fittedRows(name: string, inputs: CaseData, outputs: CaseData): Row[] {
  const airIn = needNumber(inputs, "T_air_in_C");
  const waterIn = needNumber(inputs, "T_water_in_C");
  const airFlow = needNumber(inputs, "m_air_kg_s");
  const waterFlow = needNumber(inputs, "m_water_kg_s");
  const air = airFlow * kilojoules(needNumber(inputs, "cp_air"));
  const water = waterFlow * kilojoules(needNumber(inputs, "cp_water"));
  const conductance = 1 / (1 / powerLaw(inputs.UA_air, airFlow) + 1 / powerLaw(inputs.UA_water, waterFlow));
  const least = Math.min(air, water);
  const units = conductance / least;
  const ratio = least / Math.max(air, water);
  const counter = /counter/i.test(String(inputs.eps ?? inputs.flow ?? ""));
  const effectiveness = counter ? counterflowEffectiveness(units, ratio) : crossflowEffectiveness(units, ratio);
  const heat = effectiveness * least * (waterIn - airIn);
  return namedRows(name, outputs, {
    UA_kW_K: ["conductance", "kW/K", conductance],
    NTU: ["transfer units", "1", units],
    eps: ["effectiveness", "1", effectiveness],
    Q_kW: ["total capacity", "kW", Math.abs(heat)],
    T_air_out_C: ["leaving dry bulb", "°C", airIn + heat / air],
    T_water_out_C: ["leaving liquid", "°C", waterIn - heat / water],
  });
}

/** kJ/kg K of a specific heat that may be written in J/kg K. */
export function kilojoules(specificHeat: number): number {
  return specificHeat > 100 ? specificHeat / 1000 : specificHeat;
}

/** kW/K of `1.7361 m_a^0.448735 kW/K` at a flow, or of a plain number. */
function powerLaw(words: unknown, flow: number): number {
  if (typeof words === "number") return words;
  const [, lead, power] = /([\d.]+)\s*m_?\w*\^(-?[\d.]+)/.exec(String(words)) ?? [];
  if (lead === undefined) throw new RangeError(`the conductance "${String(words)}" is no power of a flow`);
  return Number(lead) * flow ** Number(power);
}
