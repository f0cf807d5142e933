/** 0 °C in kelvin. */
export const ZERO_CELSIUS = 273.15;

/** Lowest and highest temperature of the saturation equations, °C. */
export const COLDEST_SATURATION = -100;
export const HOTTEST_SATURATION = 200;

/**
 * Saturation pressure of pure water vapour over ice below 0 °C and over liquid from 0 °C up: the defining equation of
 * Hyland and Wexler. The hot path uses `saturationPressure`, which follows it to better than 1e-9.
 *
 * @param temperature °C, -100…200: temperature of vapour and ice or water
 * @returns Pa: saturation pressure
 * @outside the equation is extrapolated
 * @example saturationPressureEquation(20) // 2338.8 ± 0.1
 * @source ashrae-hof-2021-ch1 eq. 5, 6
 */
export function saturationPressureEquation(temperature: number): number {
  const T = temperature + ZERO_CELSIUS;
  if (temperature < 0) {
    return Math.exp(
      -5674.5359 / T +
        6.3925247 -
        9.677843e-3 * T +
        6.2215701e-7 * T ** 2 +
        2.0747825e-9 * T ** 3 -
        9.484024e-13 * T ** 4 +
        4.1635019 * Math.log(T),
    );
  }
  return saturationPressureOverWater(temperature);
}

/**
 * Saturation pressure of pure water vapour over liquid water, also below 0 °C, where weather services count so.
 *
 * @param temperature °C, -45…200: temperature of vapour and water
 * @returns Pa: saturation pressure over liquid
 * @outside the equation is extrapolated; below 0 °C it is so already, and keeps to the Smithsonian tables within 0.3 % to −40 °C
 * @example saturationPressureOverWater(-20) // 125.4 ± 0.4
 * @source ashrae-hof-2021-ch1 eq. 6
 */
export function saturationPressureOverWater(temperature: number): number {
  const T = temperature + ZERO_CELSIUS;
  return Math.exp(
    -5800.2206 / T +
      1.3914993 -
      4.8640239e-2 * T +
      4.1764768e-5 * T ** 2 -
      1.4452093e-8 * T ** 3 +
      6.5459673 * Math.log(T),
  );
}

/**
 * First derivative of the natural logarithm of the saturation pressure with respect to temperature.
 *
 * @param temperature °C, -100…200: temperature of vapour and ice or water
 * @param overIce flag: over ice (true) or over liquid (false)
 * @returns 1/K: d ln(p)/dt
 * @outside the equation is extrapolated
 * @example saturationLogarithmSlope(20, false) // 0.06200 ± 1e-4
 * @source derived-here derivative of the equations of Hyland and Wexler
 */
export function saturationLogarithmSlope(temperature: number, overIce: boolean): number {
  const T = temperature + ZERO_CELSIUS;
  if (overIce) {
    return (
      5674.5359 / T ** 2 -
      9.677843e-3 +
      2 * 6.2215701e-7 * T +
      3 * 2.0747825e-9 * T ** 2 -
      4 * 9.484024e-13 * T ** 3 +
      4.1635019 / T
    );
  }
  return 5800.2206 / T ** 2 - 4.8640239e-2 + 2 * 4.1764768e-5 * T - 3 * 1.4452093e-8 * T ** 2 + 6.5459673 / T;
}

/**
 * Second derivative of the natural logarithm of the saturation pressure with respect to temperature.
 *
 * @param temperature °C, -100…200: temperature of vapour and ice or water
 * @param overIce flag: over ice (true) or over liquid (false)
 * @returns 1/K²: d² ln(p)/dt²
 * @outside the equation is extrapolated
 * @example saturationLogarithmCurvature(20, false) // -4.7e-4 ± 2e-5
 * @source derived-here derivative of the equations of Hyland and Wexler
 */
export function saturationLogarithmCurvature(temperature: number, overIce: boolean): number {
  const T = temperature + ZERO_CELSIUS;
  if (overIce) {
    return (
      (-2 * 5674.5359) / T ** 3 +
      2 * 6.2215701e-7 +
      6 * 2.0747825e-9 * T -
      12 * 9.484024e-13 * T ** 2 -
      4.1635019 / T ** 2
    );
  }
  return (-2 * 5800.2206) / T ** 3 + 2 * 4.1764768e-5 - 6 * 1.4452093e-8 * T - 6.5459673 / T ** 2;
}
