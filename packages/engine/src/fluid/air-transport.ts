import { ZERO_CELSIUS } from "./saturation-equation.ts";

/**
 * Dynamic viscosity of dry air by Sutherland's formula; vapour and pressure change it by less than 1 % in this trade.
 *
 * @param dryBulb °C, -60…200: temperature
 * @returns Pa·s: dynamic viscosity
 * @outside the formula is extrapolated
 * @example airViscosity(20) // 0.00001813 ± 1e-8
 * @source us-standard-atmosphere-1976 eq. 51
 */
export function airViscosity(dryBulb: number): number {
  const T = dryBulb + ZERO_CELSIUS;
  return (1.458e-6 * T * Math.sqrt(T)) / (T + 110.4);
}

/**
 * Thermal conductivity of dry air.
 *
 * @param dryBulb °C, -60…200: temperature
 * @returns W/mK: thermal conductivity
 * @outside the formula is extrapolated
 * @example airConductivity(20) // 0.02569 ± 1e-4
 * @source us-standard-atmosphere-1976 eq. 53
 */
export function airConductivity(dryBulb: number): number {
  const T = dryBulb + ZERO_CELSIUS;
  return (2.64638e-3 * T * Math.sqrt(T)) / (T + 245.4 * 10 ** (-12 / T));
}

/**
 * Prandtl number of dry air, with the specific heat of 1006 J/kg K.
 *
 * @param dryBulb °C, -60…200: temperature
 * @returns 1: Prandtl number
 * @outside the formulas are extrapolated
 * @example airPrandtl(20) // 0.71 ± 0.005
 * @source us-standard-atmosphere-1976 eq. 51, 53
 */
export function airPrandtl(dryBulb: number): number {
  return (1006 * airViscosity(dryBulb)) / airConductivity(dryBulb);
}
