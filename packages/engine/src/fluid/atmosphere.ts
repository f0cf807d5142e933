/**
 * Pressure of the standard atmosphere at an altitude.
 *
 * @param altitude m, -500…11000: height above sea level
 * @returns Pa: absolute pressure
 * @outside the formula is extrapolated to 40 km, where it ends; altitudes that are not numbers or higher throw
 * @throws RangeError when the altitude is not a number in −5000…40000 m
 * @example standardPressure(1500) // 84556 ± 5
 * @source ashrae-hof-2021-ch1 eq. 3
 */
export function standardPressure(altitude: number): number {
  if (!(altitude >= -5000 && altitude <= 40_000)) {
    throw new RangeError(`standard atmosphere: altitude ${altitude} m is outside −5000…40000 m`);
  }
  return 101_325 * (1 - 2.25577e-5 * altitude) ** 5.2559;
}
