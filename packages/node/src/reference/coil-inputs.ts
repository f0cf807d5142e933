import type { CoilInlet } from "@oncethrough/engine/component/coil/performance";
import { type Liquid, liquidDensity } from "@oncethrough/engine/fluid/liquid";
import { density, humidityRatioFromRelativeHumidity } from "@oncethrough/engine/fluid/moist-air";
import { humidityRatioFromWetBulb } from "@oncethrough/engine/fluid/wet-bulb";
import { type CaseData, isCaseData, numberAt, shortened } from "./case-data.ts";

/** The first number found under one of the keys; null when there is none. */
export function firstNumber(data: CaseData, ...keys: readonly string[]): number | null {
  for (const key of keys) {
    const value = numberAt(data, key);
    if (value !== null) return value;
  }
  return null;
}

/** The number under one of the keys, or a RangeError that says which are wanted. */
export function needNumber(data: CaseData, ...keys: readonly string[]): number {
  const value = firstNumber(data, ...keys);
  if (value !== null) return value;
  const present = keys.find((key) => data[key] !== undefined && data[key] !== null);
  if (present === undefined) throw new RangeError(`${keys.join(" or ")} is not given`);
  throw new RangeError(`${present} is not a number (${shortened(JSON.stringify(data[present]))})`);
}

/** The object under a key; an empty one when there is none. */
export function partOf(data: CaseData, key: string): CaseData {
  const value = data[key];
  return isCaseData(value) ? value : {};
}

/** Air and liquid that enter the coil of a case. */
export function inletOf(inputs: CaseData, geometry: CaseData): CoilInlet {
  const pressure = 1000 * (firstNumber(inputs, "p_kPa") ?? 101.325);
  const dryBulb = needNumber(inputs, "T_air_in_C");
  const humidityRatio = humidityRatioOf(inputs, dryBulb, pressure);
  const liquid = liquidOf(inputs.fluid);
  const liquidTemperature = needNumber(inputs, "T_water_in_C", "T_fluid_in_C");
  return {
    dryAirFlow: positive("airflow", dryAirFlowOf(inputs, geometry, dryBulb, humidityRatio, pressure)),
    dryBulb,
    humidityRatio,
    pressure,
    coldestFilament: dryBulb,
    liquid,
    liquidFlow: positive("flow of liquid", liquidFlowOf(inputs, liquid, liquidTemperature)),
    liquidTemperature,
  };
}

function positive(what: string, value: number): number {
  if (value > 0) return value;
  throw new RangeError(`${what} ${value} kg/s: more than 0 is wanted`);
}

function humidityRatioOf(inputs: CaseData, dryBulb: number, pressure: number): number {
  const given = firstNumber(inputs, "W_in", "W_in_dry_basis");
  if (given !== null) return given;
  const massFraction = firstNumber(inputs, "w_in_mass_fraction");
  if (massFraction !== null) return massFraction / (1 - massFraction);
  const share = firstNumber(inputs, "RH");
  if (share !== null) return humidityRatioFromRelativeHumidity(dryBulb, share, pressure);
  const wetBulb = firstNumber(inputs, "T_wb_in_C");
  if (wetBulb !== null) return humidityRatioFromWetBulb(dryBulb, wetBulb, pressure);
  throw new RangeError("the moisture of the air is not given (W_in, RH or T_wb_in_C)");
}

/** kg/m³ of the air that a volume flow means where nothing else is said. */
const nominalDensity = 1.2;

function dryAirFlowOf(inputs: CaseData, geometry: CaseData, t: number, W: number, pressure: number): number {
  const mass = firstNumber(inputs, "m_air_kg_s", "m_air_kg_s_from_face_velocity_at_inlet_density");
  // Sources that count moisture by the mass of moist air count the flow so, too: their dry cases close only then.
  const countsMoistAir = "w_in_mass_fraction" in inputs || "W_in_dry_basis" in inputs;
  if (mass !== null) return countsMoistAir ? mass / (1 + W) : mass;
  const hourly = firstNumber(inputs, "V_air_m3h");
  const volume = firstNumber(inputs, "V_air_m3_s") ?? (hourly === null ? null : hourly / 3600);
  // Worked examples in m³/h mean air of 1.2 kg/m³: their own heat balances say so.
  if (volume !== null) return (volume * (firstNumber(inputs, "rho") ?? nominalDensity)) / (1 + W);
  const fpm = firstNumber(inputs, "face_velocity_fpm");
  const velocity = firstNumber(inputs, "face_velocity_m_s") ?? (fpm === null ? null : fpm * 0.00508);
  if (velocity === null)
    throw new RangeError("the airflow is not given (m_air_kg_s, a volume flow or a face velocity)");
  const area =
    firstNumber(geometry, "face_area_m2") ??
    needNumber(geometry, "finned_height_m") * needNumber(geometry, "finned_length_m");
  return (velocity * area * density(t, W, pressure)) / (1 + W);
}

function liquidFlowOf(inputs: CaseData, liquid: Liquid, temperature: number): number {
  const mass = firstNumber(inputs, "m_water_kg_s", "m_fluid_kg_s");
  if (mass !== null) return mass;
  const hourly = firstNumber(inputs, "V_fluid_m3h", "V_water_m3h");
  if (hourly !== null) return (hourly / 3600) * liquidDensity(liquid, temperature);
  throw new RangeError("the flow of liquid is not given (m_water_kg_s or V_fluid_m3h)");
}

/** Liquid as cases name it: `EG 35 % mass`, `PG 30 %`; water when nothing is said. */
export function liquidOf(words: unknown): Liquid {
  if (words === undefined || words === null || words === "water") return { substance: "water", massFraction: 0 };
  const [, name, percent] = /^(EG|PG)\s*([\d.]+)\s*%/i.exec(String(words)) ?? [];
  if (name === undefined)
    throw new RangeError(`fluid ${shortened(JSON.stringify(words))} is not water, EG or PG with a share`);
  const substance = name.toUpperCase() === "EG" ? "ethylene glycol" : "propylene glycol";
  return { substance, massFraction: Number(percent) / 100 };
}
