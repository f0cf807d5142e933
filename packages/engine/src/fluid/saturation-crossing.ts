import { findRoot } from "#numerics/find-root";
import { type AirRelations, enhancementCoefficients } from "./enhancement.ts";
import { DRY_AIR_SPECIFIC_HEAT, enthalpyFromHumidityRatio, VAPOUR_ENTHALPY_AT_ZERO } from "./moist-air.ts";
import { MASS_RATIO, saturationHumidityRatio } from "./saturation.ts";
import { COLDEST_SATURATION } from "./saturation-equation.ts";
import { saturationPieces, TERMS } from "./saturation-table.ts";

/** No state within the pressures served saturates above this temperature: water boils at 102.3 °C at 110 kPa. */
const HOTTEST_CROSSING = 104.99;

/** Temperatures of saturated air at sea level for every 2.5 kJ/kg from −70 to 630 kJ/kg: the first guesses. */
const SEA_LEVEL = 101_325;
const GUESS_STEP = 2500;
const GUESS_START = -70_000;
const GUESS_COUNT = 281;
const GUESSES: Float64Array = Float64Array.from({ length: GUESS_COUNT }, (_, i) => {
  const miss = (t: number) =>
    enthalpyFromHumidityRatio(t, saturationHumidityRatio(t, SEA_LEVEL)) - GUESS_START - i * GUESS_STEP;
  return findRoot(miss, -80, 80, 1e-6);
});

function seaLevelGuess(enthalpy: number): number {
  const place = (enthalpy - GUESS_START) / GUESS_STEP;
  if (!(place >= 0)) return GUESSES[0]!;
  const i = Math.floor(place);
  if (i >= GUESS_COUNT - 1) return GUESSES[GUESS_COUNT - 1]!;
  return GUESSES[i]! + (place - i) * (GUESSES[i + 1]! - GUESSES[i]!);
}

/**
 * First guess of a wet bulb, or of the temperature of saturated air: the sea-level curve, moved to the pressure by
 * scaling what the vapour contributes, then corrected for the enthalpy of the evaporated water.
 *
 * @param enthalpy J/kg, any: enthalpy per kg of dry air
 * @param humidityRatio kg/kg, 0 or more: humidity ratio
 * @param liquidSpecificHeat J/kg K, 0 or 4186: of the water on the wick; 0 leaves the correction out
 * @param pressure Pa, 50000…110000: absolute pressure
 * @returns °C: the guess
 * @outside rough, which costs steps of the search but no accuracy
 * @example saturationGuess(57558, 0, 0, 101325) // 20.0 ± 0.05
 * @source derived-here Ws is nearly proportional to 1/p
 */
export function saturationGuess(
  enthalpy: number,
  humidityRatio: number,
  liquidSpecificHeat: number,
  pressure: number,
): number {
  const ratio = pressure / SEA_LEVEL;
  const first = seaLevelGuess(enthalpy * ratio);
  const vapour = (enthalpy - DRY_AIR_SPECIFIC_HEAT * first) / VAPOUR_ENTHALPY_AT_ZERO;
  const atBulb = enthalpy + (vapour - humidityRatio) * liquidSpecificHeat * first;
  return seaLevelGuess(atBulb * ratio + DRY_AIR_SPECIFIC_HEAT * first * (1 - ratio));
}

/**
 * Temperature at which a + b t + Ws(t) (c + d t) = 0: what wet bulb and saturated enthalpy come to. Multiplied by
 * p − e, with e the vapour pressure at saturation, so that it stays smooth at the boiling point; then Halley's method,
 * whose derivatives come with the saturation table.
 *
 * @param a J/kg, any: constant part of the dry side
 * @param b J/kg K, above 0: slope of the dry side
 * @param c J/kg, above 0: constant part of what a kg of vapour counts
 * @param d J/kg K, any: slope of what a kg of vapour counts
 * @param pressure Pa, 50000…110000: absolute pressure
 * @param start °C, any: first guess
 * @param overIce flag: saturation over ice, root at or below 0 °C, or over water, root at or above 0 °C
 * @param relations choice, enhanced or ideal: with or without the enhancement factor
 * @returns °C: the root, to 1e-11 K
 * @outside a root outside −100…0 °C over ice or 0…105 °C over water answers the nearer end
 * @example saturationCrossing(-57558, 1006, 2501000, 1860, 101325, 15, false, "enhanced") // 20.00 ± 0.02
 * @source derived-here the equation times p − e
 */
export function saturationCrossing(
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
  const highest = overIce ? -Number.EPSILON : HOTTEST_CROSSING;
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
    // The error left by a step of Halley's method is its cube times 0.03 1/K² or less (near boiling; 4e-4 elsewhere).
    if (moved < 3e-4 && moved > -3e-4) return t;
  }
  return t;
}
