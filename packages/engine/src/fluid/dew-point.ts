import { chebyshevFit, type Fit } from "#numerics/chebyshev";
import { findRoot } from "#numerics/find-root";
import { type AirRelations, enhancementCoefficients } from "./enhancement.ts";
import { vapourPressureFromHumidityRatio } from "./moist-air.ts";
import { saturatedVapourPressureAtFreezing } from "./saturation.ts";
import { COLDEST_SATURATION, saturationPressureEquation, ZERO_CELSIUS } from "./saturation-equation.ts";
import { saturationPieces, TERMS } from "./saturation-table.ts";

/** Warmest dew point answered: no air within the pressures served holds more. */
const HOTTEST_DEW_POINT = 110;

/** First guesses: temperature of saturation as a polynomial in ln(p), good to 4e-4 K. */
const GUESS_OVER_ICE: Fit = saturationInverse(COLDEST_SATURATION, -1e-9);
const GUESS_OVER_WATER: Fit = saturationInverse(0, HOTTEST_DEW_POINT);

function saturationInverse(coldest: number, hottest: number): Fit {
  const logarithm = (t: number) => Math.log(saturationPressureEquation(t));
  const temperature = (u: number) => findRoot((t) => logarithm(t) - u, coldest, hottest, 1e-9);
  return chebyshevFit(temperature, logarithm(coldest), logarithm(hottest), 6);
}

/**
 * Dew point, or frost point below 0 °C: the temperature at which air of this humidity ratio is saturated.
 *
 * @param humidityRatio kg/kg, 0 or more: humidity ratio, vapour only
 * @param pressure Pa, 50000…110000: absolute pressure
 * @param relations choice, enhanced or ideal: with or without the enhancement factor
 * @returns °C: dew point
 * @outside air drier than saturation at −100 °C, dry air included, answers −100 °C; a dew point above 110 °C answers 110 °C
 * @throws RangeError when an input is not a number or the humidity ratio is negative
 * @example dewPointFromHumidityRatio(0.0133747, 101325) // 18.45 ± 0.02
 * @source ashrae-hof-2021-ch1 eq. 36
 */
export function dewPointFromHumidityRatio(
  humidityRatio: number,
  pressure: number,
  relations: AirRelations = "enhanced",
): number {
  return dewPointFromVapourPressure(vapourPressureFromHumidityRatio(humidityRatio, pressure), pressure, relations);
}

/**
 * Dew point, or frost point below 0 °C, from the pressure of the vapour.
 *
 * @param vapourPressure Pa, 0…pressure: pressure of the vapour in the air
 * @param pressure Pa, 50000…110000: absolute pressure
 * @param relations choice, enhanced or ideal: with or without the enhancement factor
 * @returns °C: dew point
 * @outside below saturation at −100 °C answers −100 °C, above 110 °C answers 110 °C
 * @throws RangeError when an input is not a number or the vapour pressure is negative
 * @example dewPointFromVapourPressure(2349.2, 101325) // 20.00 ± 0.01
 * @source ashrae-hof-2021-ch1 eq. 36
 */
export function dewPointFromVapourPressure(
  vapourPressure: number,
  pressure: number,
  relations: AirRelations = "enhanced",
): number {
  if (!(vapourPressure >= 0 && pressure > 0)) {
    throw new RangeError(`dew point: vapour pressure ${vapourPressure} Pa at ${pressure} Pa; at least 0 is needed`);
  }
  // Between the end of the ice curve and the start of the liquid curve the dew point is 0 °C; liquid where both fit.
  const overIce = vapourPressure < saturatedVapourPressureAtFreezing(pressure, relations);
  const k = enhancementCoefficients(overIce, relations);
  const guess = overIce ? GUESS_OVER_ICE : GUESS_OVER_WATER;
  const u = Math.log(vapourPressure);
  if (u <= GUESS_OVER_ICE.low) return COLDEST_SATURATION;
  if (u >= GUESS_OVER_WATER.high) return HOTTEST_DEW_POINT;
  const c = guess.coefficients;
  const x = (u - guess.middle) * guess.scale;
  let t = c[0]! + x * (c[1]! + x * (c[2]! + x * (c[3]! + x * (c[4]! + x * (c[5]! + x * c[6]!)))));
  // The guess is for pure vapour: take off what the enhancement factor is worth, by dt = −df T² / 5350 K (6140 K on ice).
  const d = pressure - vapourPressure;
  const excess = k[0]! - 1 + t * (k[1]! + t * (k[2]! + t * k[3]!)) + d * (k[4]! + t * (k[5]! + t * k[6]! + d * k[7]!));
  const kelvin = t + ZERO_CELSIUS;
  t -= (excess * kelvin * kelvin) / (overIce ? 6140 : 5350);
  if (overIce) {
    if (t >= 0) t = -Number.EPSILON;
    else if (t < COLDEST_SATURATION) return COLDEST_SATURATION;
  } else if (t < 0) t = 0;
  const first = polished(t, vapourPressure, pressure, k);
  const far = first - t > 0.001 || t - first > 0.001;
  t =
    far && first > COLDEST_SATURATION && first < HOTTEST_DEW_POINT
      ? polished(first, vapourPressure, pressure, k)
      : first;
  return overIce ? Math.min(t, 0) : Math.max(t, 0);
}

/** One step of Halley's method on e(t) − vapour pressure: from a guess 0.001 K off it ends within 1e-10 K. */
function polished(t: number, vapourPressure: number, pressure: number, k: Float64Array): number {
  const q = saturationPieces;
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
  const g = f * pure - vapourPressure;
  const g1 = f * pure1 + f1 * pure;
  const g2 = f * pure2 + 2 * f1 * pure1;
  return t - (g * g1) / (g1 * g1 - 0.5 * g * g2);
}
