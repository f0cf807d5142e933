import type { Coil } from "@oncethrough/engine/component/coil/coil";
import { solveCoil } from "@oncethrough/engine/component/coil/march";
import {
  type CoilInlet,
  type CoilPerformance,
  createCoilWork,
  createPerformance,
} from "@oncethrough/engine/component/coil/performance";
import { liquidSpecificHeat } from "@oncethrough/engine/fluid/liquid";
import {
  enthalpyFromHumidityRatio,
  moistAirSpecificHeat,
  relativeHumidityFromHumidityRatio,
} from "@oncethrough/engine/fluid/moist-air";
import { wetBulbFromHumidityRatio } from "@oncethrough/engine/fluid/wet-bulb";
import { type CaseData, isCaseData, numberAt } from "./case-data.ts";
import { figureRow, notRunRow, type Row } from "./row.ts";

/** A figure of a solved coil under one of the names that cases use. */
interface Answer {
  readonly quantity: string;
  readonly unit: string;
  readonly got: number;
  /** What a case's uncertainty in per cent is a share of, counted from here: 0 for heat, what enters for a temperature. */
  readonly from?: number;
}

/** What a coil does, under every key that cases may hold it by. */
export type Answers = ReadonlyMap<string, Answer>;

/** Solves a coil from a cold start; throws a RangeError when it does not settle. */
export function performanceOf(coil: Coil, inlet: CoilInlet): CoilPerformance {
  const out = createPerformance();
  solveCoil(coil, inlet, createCoilWork(), out);
  if (!out.converged) throw new RangeError("the coil did not settle");
  return out;
}

/** Names the figures of a solved coil. */
export function answersOf(out: CoilPerformance, inlet: CoilInlet): Answers {
  const { leavingDryBulb: t, leavingHumidityRatio: W } = out;
  const { dryBulb, humidityRatio, pressure } = inlet;
  const celsius = (quantity: string, got: number, from: number): Answer => ({ quantity, unit: "°C", got, from });
  const number = (quantity: string, unit: string, got: number): Answer => ({ quantity, unit, got });
  const list: [readonly string[], Answer][] = [
    ...heats(Math.abs(out.heat), Math.abs(out.sensibleHeat)),
    [["T_air_out_C", "T_air_out"], celsius("leaving dry bulb", t, dryBulb)],
    [
      ["T_wb_out_C", "T_wb_out"],
      celsius(
        "leaving wet bulb",
        wetBulbFromHumidityRatio(t, W, pressure),
        wetBulbFromHumidityRatio(dryBulb, humidityRatio, pressure),
      ),
    ],
    [
      ["T_water_out_C", "T_water_out", "T_fluid_out_C", "T_fluid_out"],
      celsius("leaving liquid", out.leavingLiquid, inlet.liquidTemperature),
    ],
    [["W_out", "W_out_derived"], number("leaving humidity ratio", "kg/kg", W)],
    [
      ["RH_out"],
      number("leaving relative humidity", "1", Math.min(1, relativeHumidityFromHumidityRatio(t, W, pressure))),
    ],
    [["SHR"], number("sensible share", "1", out.sensibleHeat / out.heat)],
    [["condensate_kg_s"], number("condensate", "kg/s", out.condensate)],
    [["condensate_kg_h"], number("condensate", "kg/h", out.condensate * 3600)],
    [["h_in"], number("entering enthalpy", "J/kg dry air", enthalpyFromHumidityRatio(dryBulb, humidityRatio))],
    [["h_out"], number("leaving enthalpy", "J/kg dry air", enthalpyFromHumidityRatio(t, W))],
  ];
  return new Map(list.flatMap(([keys, answer]) => keys.map((key) => [key, answer] as const)));
}

function heats(total: number, sensible: number): [readonly string[], Answer][] {
  const watts = (quantity: string, got: number): Answer => ({ quantity, unit: "W", got, from: 0 });
  const kilowatts = (quantity: string, got: number): Answer => ({ quantity, unit: "kW", got: got / 1000, from: 0 });
  return [
    [["Q_total_kW", "Q_kW", "Q"], kilowatts("total capacity", total)],
    [["Q_total_W", "Q_W"], watts("total capacity", total)],
    [["Q_sensible_kW", "Qs_kW", "Qs", "Qs_from_T"], kilowatts("sensible capacity", sensible)],
    [["Q_sensible_W", "Qs_W"], watts("sensible capacity", sensible)],
    [["Q_latent_kW"], kilowatts("latent capacity", total - sensible)],
    [["Q_latent_W"], watts("latent capacity", total - sensible)],
  ];
}

/** Effectiveness of a dry coil: heat over the most that the smaller capacity could take. */
export function effectivenessOf(out: CoilPerformance, inlet: CoilInlet): number {
  const air = inlet.dryAirFlow * moistAirSpecificHeat(inlet.humidityRatio);
  const mean = (inlet.liquidTemperature + out.leavingLiquid) / 2;
  const liquid = inlet.liquidFlow * liquidSpecificHeat(inlet.liquid, mean);
  return out.heat / (Math.min(air, liquid) * (inlet.dryBulb - inlet.liquidTemperature));
}

/**
 * Rows for every figure that `expected` holds and the answers have. Nested objects are the answers of other models, told
 * apart by their name. The uncertainty is the case's own for the key, or its per cent of heat and of temperature change.
 */
export function rowsAgainst(
  name: string,
  expected: CaseData,
  data: CaseData,
  answers: Answers,
  suffix: string,
  against = "",
): Row[] {
  return Object.entries(expected).flatMap(([key, value]) => {
    if (isCaseData(value)) return rowsAgainst(name, value, {}, answers, suffix, ` against ${key}`);
    const answer = answers.get(key);
    const wanted = numberAt(expected, key);
    if (answer === undefined || wanted === null) return [];
    const quantity = answer.quantity + suffix + against;
    if (!Number.isFinite(answer.got))
      return [notRunRow(name, `the program gives ${answer.got}`, quantity, answer.unit)];
    return [figureRow(name, quantity, answer.unit, wanted, answer.got, uncertainty(data, key, wanted, answer))];
  });
}

function uncertainty(data: CaseData, key: string, wanted: number, answer: Answer): number | null {
  const own = isCaseData(data.uncertainty) ? numberAt(data.uncertainty, key) : null;
  if (own !== null) return Math.abs(own);
  const percent = numberAt(data, "uncertainty_pct");
  return percent === null || answer.from === undefined ? null : Math.abs((percent / 100) * (wanted - answer.from));
}
