import { type AirRelations, enhancementCoefficients } from "./enhancement.ts";
import {
  DRY_AIR_SPECIFIC_HEAT,
  dryBulbFromEnthalpy,
  enthalpyFromHumidityRatio,
  HANDBOOK_ICE_ENTHALPY_AT_ZERO,
  ICE_ENTHALPY_AT_ZERO,
  ICE_SPECIFIC_HEAT,
  LIQUID_SPECIFIC_HEAT,
  VAPOUR_ENTHALPY_AT_ZERO,
  VAPOUR_SPECIFIC_HEAT,
} from "./moist-air.ts";
import { MASS_RATIO, saturatedVapourPressure, saturationHumidityRatio } from "./saturation.ts";
import { COLDEST_SATURATION } from "./saturation-equation.ts";
import { saturationPieces, TERMS } from "./saturation-table.ts";

/** No state within the pressures served saturates above this temperature: water boils at 102.3 °C at 110 kPa. */
const HOTTEST_BULB = 104.99;

function iceEnthalpyAtZero(relations: AirRelations): number {
  return relations === "ideal" ? HANDBOOK_ICE_ENTHALPY_AT_ZERO : ICE_ENTHALPY_AT_ZERO;
}

/**
 * Enthalpy of the water or ice on the wick, against liquid at 0 °C.
 *
 * @param wetBulb °C, -60…100: temperature of the wick, ice below 0 °C
 * @param relations choice, enhanced or ideal: the ideal relations carry the handbook's rounded ice
 * @returns J/kg: enthalpy
 * @outside linear, keeps answering
 * @example wickEnthalpy(-10, "enhanced") // -354400
 * @source ashrae-hof-2021-ch1 eq. 33, 35
 */
export function wickEnthalpy(wetBulb: number, relations: AirRelations): number {
  return wetBulb < 0 ? iceEnthalpyAtZero(relations) + ICE_SPECIFIC_HEAT * wetBulb : LIQUID_SPECIFIC_HEAT * wetBulb;
}

/**
 * Humidity ratio from dry bulb and thermodynamic wet bulb: h + (Ws* − W) h_w* = hs*, the wick being ice below 0 °C.
 *
 * @param dryBulb °C, -60…90: dry-bulb temperature
 * @param wetBulb °C, -60…90: thermodynamic wet-bulb temperature, at most the dry bulb
 * @param pressure Pa, 50000…110000: absolute pressure
 * @param relations choice, enhanced or ideal: with or without the enhancement factor
 * @returns kg/kg: humidity ratio; negative when the wet bulb is lower than any air at that dry bulb can have
 * @outside −100…200 °C throws; a wet bulb above the dry bulb gives supersaturated air
 * @throws RangeError when the wet bulb is not a number in −100…200 °C
 * @example humidityRatioFromWetBulb(30, 22.0012, 101325) // 0.013375 ± 2e-5
 * @source ashrae-hof-2021-ch1 eq. 33, 35
 */
export function humidityRatioFromWetBulb(
  dryBulb: number,
  wetBulb: number,
  pressure: number,
  relations: AirRelations = "enhanced",
): number {
  const bulb = wickEnthalpy(wetBulb, relations);
  const saturated = saturationHumidityRatio(wetBulb, pressure, relations);
  return (
    (saturated * (VAPOUR_ENTHALPY_AT_ZERO + VAPOUR_SPECIFIC_HEAT * wetBulb - bulb) -
      DRY_AIR_SPECIFIC_HEAT * (dryBulb - wetBulb)) /
    (VAPOUR_ENTHALPY_AT_ZERO + VAPOUR_SPECIFIC_HEAT * dryBulb - bulb)
  );
}

/**
 * Thermodynamic wet bulb from dry bulb and humidity ratio. Near freezing two wet bulbs can give one humidity ratio,
 * water just above 0 °C and ice just below: the answer is then the water.
 *
 * @param dryBulb °C, -60…90: dry-bulb temperature
 * @param humidityRatio kg/kg, 0 or more: humidity ratio, vapour only
 * @param pressure Pa, 50000…110000: absolute pressure
 * @param relations choice, enhanced or ideal: with or without the enhancement factor
 * @returns °C: wet-bulb temperature, at most the dry bulb
 * @outside air at or above saturation answers with its dry bulb; bulbs below −100 °C answer −100 °C
 * @throws RangeError when an input is not a number
 * @example wetBulbFromHumidityRatio(30, 0.0133747, 101325) // 22.00 ± 0.02
 * @source ashrae-hof-2021-ch1 eq. 33, 35
 */
export function wetBulbFromHumidityRatio(
  dryBulb: number,
  humidityRatio: number,
  pressure: number,
  relations: AirRelations = "enhanced",
): number {
  const enthalpy = enthalpyFromHumidityRatio(dryBulb, humidityRatio);
  return Math.min(bulb(enthalpy, humidityRatio, dryBulb, pressure, relations), dryBulb);
}

/**
 * Thermodynamic wet bulb from enthalpy and humidity ratio. Where the water is more than the air can hold at that
 * enthalpy, the same equation gives the temperature of the fog: saturated air with the rest as drops or ice.
 *
 * @param enthalpy J/kg, -60000…8000000: enthalpy per kg of dry air
 * @param humidityRatio kg/kg, 0 or more: all water, vapour and free, per kg of dry air
 * @param pressure Pa, 50000…110000: absolute pressure
 * @param relations choice, enhanced or ideal: with or without the enhancement factor
 * @returns °C: wet-bulb temperature; exactly 0 where a fog is part drops, part ice
 * @outside bulbs outside −100…105 °C answer the nearer of the two
 * @throws RangeError when an input is not a number
 * @example wetBulbFromEnthalpy(64361, 0.0133747, 101325) // 22.00 ± 0.02
 * @source ashrae-hof-2021-ch1 eq. 33, 35
 */
export function wetBulbFromEnthalpy(
  enthalpy: number,
  humidityRatio: number,
  pressure: number,
  relations: AirRelations = "enhanced",
): number {
  return bulb(enthalpy, humidityRatio, dryBulbFromEnthalpy(enthalpy, humidityRatio), pressure, relations);
}

/**
 * Temperature at which saturated air (no free water) has a given enthalpy: the inverse of the saturation curve that
 * coil surfaces follow.
 *
 * @param enthalpy J/kg, -60000…8000000: enthalpy per kg of dry air
 * @param pressure Pa, 50000…110000: absolute pressure
 * @param relations choice, enhanced or ideal: with or without the enhancement factor
 * @returns °C: temperature of saturated air
 * @outside temperatures outside −100…105 °C answer the nearer of the two
 * @throws RangeError when an input is not a number
 * @example saturatedDryBulbFromEnthalpy(57558, 101325) // 20.00 ± 0.02
 * @source ashrae-hof-2021-ch1 eq. 30
 */
export function saturatedDryBulbFromEnthalpy(
  enthalpy: number,
  pressure: number,
  relations: AirRelations = "enhanced",
): number {
  const atZero = VAPOUR_ENTHALPY_AT_ZERO * saturationHumidityRatio(0, pressure, relations);
  const overIce = enthalpy < atZero;
  // The saturation curve at sea level, roughly; the enthalpy above dry air's scales with the inverse of the pressure.
  const start = overIce
    ? (enthalpy - atZero) / 1400
    : 21.6 * Math.log((Math.max(enthalpy, 0) * (pressure / 101_325) + 20_000) / 29_500);
  const t = saturationCrossing(
    -enthalpy,
    DRY_AIR_SPECIFIC_HEAT,
    VAPOUR_ENTHALPY_AT_ZERO,
    VAPOUR_SPECIFIC_HEAT,
    pressure,
    start,
    overIce,
    relations,
  );
  return overIce ? Math.min(t, 0) : Math.max(t, 0);
}

/** Wet bulb, water where water can be, else ice; between the two exactly 0 °C (only fog gets there). */
function bulb(h: number, W: number, start: number, pressure: number, relations: AirRelations): number {
  if (!(Number.isFinite(h) && Number.isFinite(W) && pressure > 0)) {
    throw new RangeError(`wet bulb: enthalpy ${h} J/kg, humidity ratio ${W} kg/kg and pressure ${pressure} Pa`);
  }
  // Surplus of enthalpy over a water bulb of 0 °C, whose liquid has none: positive means that the bulb is water.
  const vapour = saturatedVapourPressure(0, pressure, relations);
  const surplus = h - ((MASS_RATIO * vapour) / (pressure - vapour)) * VAPOUR_ENTHALPY_AT_ZERO;
  if (surplus >= 0) {
    const c = LIQUID_SPECIFIC_HEAT;
    const t = saturationCrossing(
      -h,
      DRY_AIR_SPECIFIC_HEAT + W * c,
      VAPOUR_ENTHALPY_AT_ZERO,
      VAPOUR_SPECIFIC_HEAT - c,
      pressure,
      start,
      false,
      relations,
    );
    return Math.max(t, 0);
  }
  const iceAtZero = iceEnthalpyAtZero(relations);
  const t = saturationCrossing(
    -h + W * iceAtZero,
    DRY_AIR_SPECIFIC_HEAT + W * ICE_SPECIFIC_HEAT,
    VAPOUR_ENTHALPY_AT_ZERO - iceAtZero,
    VAPOUR_SPECIFIC_HEAT - ICE_SPECIFIC_HEAT,
    pressure,
    start,
    true,
    relations,
  );
  return t > -1e-12 ? 0 : t;
}

/**
 * Temperature at which a + b t + Ws(t) (c + d t) = 0: what wet bulb and saturated enthalpy come to. Multiplied by
 * p − e, with e the vapour pressure at saturation, so that it stays smooth at the boiling point; then Halley's method,
 * whose three derivatives come with the saturation table.
 */
function saturationCrossing(
  a: number,
  b: number,
  c: number,
  d: number,
  pressure: number,
  start: number,
  overIce: boolean,
  relations: AirRelations,
): number {
  const q = saturationPieces;
  const k = enhancementCoefficients(overIce, relations);
  const lowest = overIce ? COLDEST_SATURATION : 0;
  const highest = overIce ? -Number.EPSILON : HOTTEST_BULB;
  let t = start < lowest ? lowest : Math.min(start, highest);
  for (let count = 0; count < 60; count++) {
    const whole = Math.floor(t);
    const s = t - whole;
    const i = (whole - COLDEST_SATURATION) * TERMS;
    const q1 = q[i + 1]!;
    const q2 = q[i + 2]!;
    const q3 = q[i + 3]!;
    const q4 = q[i + 4]!;
    const q5 = q[i + 5]!;
    const pure = q[i]! + s * (q1 + s * (q2 + s * (q3 + s * (q4 + s * q5))));
    const pure1 = q1 + s * (2 * q2 + s * (3 * q3 + s * (4 * q4 + s * 5 * q5)));
    const pure2 = 2 * q2 + s * (6 * q3 + s * (12 * q4 + s * 20 * q5));
    const dry = pressure - pure;
    const k7 = k[7]! * t * dry;
    const slope = k[4]! + t * (k[5]! + t * k[6]!) + k7;
    const f = k[0]! + t * (k[1]! + t * (k[2]! + t * k[3]!)) + dry * slope;
    const f1 =
      k[1]! + t * (2 * k[2]! + t * 3 * k[3]!) + dry * (k[5]! + 2 * t * k[6]! + dry * k[7]!) - pure1 * (slope + k7);
    const e = f * pure;
    const e1 = f * pure1 + f1 * pure;
    const e2 = f * pure2 + 2 * f1 * pure1;
    const line = a + b * t;
    const m = MASS_RATIO * (c + d * t) - line;
    const m1 = MASS_RATIO * d - b;
    const g = line * pressure + e * m;
    const g1 = b * pressure + e1 * m + e * m1;
    const g2 = e2 * m + 2 * e1 * m1;
    const halley = g1 * g1 - 0.5 * g * g2;
    const step = halley > 0.3 * g1 * g1 ? (g * g1) / halley : g / g1;
    let next = t - step;
    if (next < lowest) next = lowest;
    else if (next > highest) next = highest;
    const moved = next - t;
    t = next;
    if (moved < 1e-7 && moved > -1e-7) return t;
  }
  return t;
}
