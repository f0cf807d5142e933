import { type AirRelations, ENHANCEMENT_OVER_WATER, enhancementCoefficients } from "./enhancement.ts";
import { COLDEST_SATURATION, HOTTEST_SATURATION } from "./saturation-equation.ts";
import { saturationPieces, TERMS } from "./saturation-table.ts";

/** Molar mass of water over that of dry air. */
export const MASS_RATIO = 0.621945;

const PURE_AT_FREEZING = saturationPressure(0);

/**
 * Saturation pressure of pure water vapour, over ice below 0 °C and over liquid from 0 °C up. Follows
 * `saturationPressureEquation` to 1e-10 (2e-9 below −60 °C) at a fraction of its time.
 *
 * @param temperature °C, -100…200: temperature of vapour and ice or water
 * @returns Pa: saturation pressure
 * @outside throws
 * @throws RangeError when the temperature is not a number in −100…200 °C
 * @example saturationPressure(20) // 2338.8 ± 0.1
 * @source ashrae-hof-2021-ch1 eq. 5, 6
 */
export function saturationPressure(temperature: number): number {
  if (!(temperature >= COLDEST_SATURATION && temperature <= HOTTEST_SATURATION)) {
    throw new RangeError(`saturation pressure: temperature ${temperature} °C is outside −100…200 °C`);
  }
  const whole = temperature < HOTTEST_SATURATION ? Math.floor(temperature) : HOTTEST_SATURATION - 1;
  const s = temperature - whole;
  const i = (whole - COLDEST_SATURATION) * TERMS;
  const q = saturationPieces;
  return q[i]! + s * (q[i + 1]! + s * (q[i + 2]! + s * (q[i + 3]! + s * (q[i + 4]! + s * q[i + 5]!))));
}

/**
 * Enhancement factor: pressure of vapour in saturated air over the saturation pressure of pure vapour.
 *
 * @param dryBulb °C, -60…90: temperature
 * @param pressure Pa, 50000…110000: absolute pressure
 * @returns 1: enhancement factor, 1.002…1.008
 * @outside the fit is extrapolated; at −100 °C and 1 °C below boiling it still gives a plausible value
 * @throws RangeError when the temperature is not a number in −100…200 °C
 * @example enhancementFactor(20, 101325) // 1.00446 ± 1e-4
 * @source derived-here fitted to humid air of IAPWS G8-10; max. error in humidity ratio 0.03 % to 50 °C, 0.08 % to 90 °C
 */
export function enhancementFactor(dryBulb: number, pressure: number): number {
  return enhancement(dryBulb, pressure - saturationPressure(dryBulb), "enhanced");
}

function enhancement(t: number, d: number, relations: AirRelations): number {
  if (relations === "ideal") return 1;
  const k = enhancementCoefficients(t < 0, relations);
  return k[0]! + t * (k[1]! + t * (k[2]! + t * k[3]!)) + d * (k[4]! + t * (k[5]! + t * k[6]! + d * k[7]!));
}

/**
 * Pressure of the vapour in saturated air: enhancement factor times saturation pressure.
 *
 * @param dryBulb °C, -60…90: temperature
 * @param pressure Pa, 50000…110000: absolute pressure
 * @param relations choice, enhanced or ideal: with or without the enhancement factor
 * @returns Pa: vapour pressure at saturation; above `pressure` where water would boil
 * @outside −100…200 °C throws, between that and the range given the fit of the enhancement factor is extrapolated
 * @throws RangeError when the temperature is not a number in −100…200 °C
 * @example saturatedVapourPressure(20, 101325) // 2349.2 ± 0.3
 * @source ashrae-hof-2021-ch1 eq. 21
 */
export function saturatedVapourPressure(
  dryBulb: number,
  pressure: number,
  relations: AirRelations = "enhanced",
): number {
  const pure = saturationPressure(dryBulb);
  return enhancement(dryBulb, pressure - pure, relations) * pure;
}

/**
 * Pressure of the vapour in air saturated over water at 0 °C, where water and ice part.
 *
 * @param pressure Pa, 50000…110000: absolute pressure
 * @param relations choice, enhanced or ideal: with or without the enhancement factor
 * @returns Pa: vapour pressure at saturation over water
 * @outside the fit of the enhancement factor is extrapolated
 * @example saturatedVapourPressureAtFreezing(101325, "ideal") // 611.21 ± 0.01
 * @source ashrae-hof-2021-ch1 eq. 6, 21
 */
export function saturatedVapourPressureAtFreezing(pressure: number, relations: AirRelations): number {
  if (relations === "ideal") return PURE_AT_FREEZING;
  const k = ENHANCEMENT_OVER_WATER;
  return PURE_AT_FREEZING * (k[0]! + (pressure - PURE_AT_FREEZING) * k[4]!);
}

/**
 * Humidity ratio of saturated air.
 *
 * @param dryBulb °C, -60…90: temperature
 * @param pressure Pa, 50000…110000: absolute pressure
 * @param relations choice, enhanced or ideal: with or without the enhancement factor
 * @returns kg/kg: humidity ratio at saturation; Infinity where water boils, as air then takes up any amount
 * @outside −100…200 °C throws, between that and the range given the fit of the enhancement factor is extrapolated
 * @throws RangeError when the temperature is not a number in −100…200 °C
 * @example saturationHumidityRatio(20, 101325) // 0.014761 ± 8e-6
 * @source ashrae-hof-2021-ch1 eq. 21
 */
export function saturationHumidityRatio(
  dryBulb: number,
  pressure: number,
  relations: AirRelations = "enhanced",
): number {
  const vapour = saturatedVapourPressure(dryBulb, pressure, relations);
  return vapour < pressure ? (MASS_RATIO * vapour) / (pressure - vapour) : Number.POSITIVE_INFINITY;
}

/**
 * Humidity ratios of saturated air at several temperatures: for inner loops, where a number that a call returns would be put
 * into a box of its own.
 *
 * @param dryBulbs °C, -60…90: temperatures
 * @param count count, 0…4096: of them
 * @param pressure Pa, 50000…110000: absolute pressure
 * @param out list: receives as many kg/kg
 * @outside as `saturationHumidityRatio`
 * @throws RangeError when a temperature is not a number in −100…200 °C
 * @example (() => { const out = [0]; setSaturationHumidityRatios([20], 1, 101325, out); return out[0]; })() // 0.014761 ± 8e-6
 * @source ashrae-hof-2021-ch1 eq. 21
 */
export function setSaturationHumidityRatios(
  dryBulbs: Float64Array,
  count: number,
  pressure: number,
  out: Float64Array,
): void {
  for (let i = 0; i < count; i++) out[i] = saturationHumidityRatio(dryBulbs[i]!, pressure);
}
