/**
 * Which relations moist air follows. `enhanced`, the default everywhere, counts that air under pressure holds slightly
 * more vapour than an empty space (0.2 to 0.7 %). `ideal` leaves that out, as handbook formulas do; it is there for
 * comparison with them.
 */
export type AirRelations = "enhanced" | "ideal";

/**
 * Coefficients of f = k0 + k1 t + k2 t² + k3 t³ + d (k4 + k5 t + k6 t² + k7 t d), d = p − p_ws in Pa, t in °C.
 * The first four carry the small difference between the saturation equations of Hyland and Wexler and IAPWS-95 or the
 * ice equation, the others follow the form of the virial expansion: proportional to the pressure of the dry air.
 * Fitted here (least maximum error in humidity ratio) to 227 states of IAPWS G8-10 humid air in equilibrium with
 * IAPWS-95 water or IAPWS-06 ice, −60…90 °C, 50…110 kPa, p_ws below 0.97 p.
 */
export const ENHANCEMENT_OVER_ICE: Float64Array = Float64Array.of(
  1.0004088171,
  1.410054e-5,
  0,
  0,
  3.845247e-8,
  -6.222457e-11,
  8.245186e-12,
  0,
);
export const ENHANCEMENT_OVER_WATER: Float64Array = Float64Array.of(
  1.0004002659,
  -3.617929e-5,
  1.070574e-6,
  -8.13434e-9,
  3.784378e-8,
  1.537562e-9,
  0,
  -1.239154e-14,
);
export const NO_ENHANCEMENT: Float64Array = Float64Array.of(1, 0, 0, 0, 0, 0, 0, 0);

/**
 * The coefficients that hold over ice or over water.
 *
 * @param overIce flag: over ice, below 0 °C, or over water
 * @param relations choice, enhanced or ideal: ideal gives a factor of 1
 * @returns list: k0 to k7
 * @outside not applicable
 * @example enhancementCoefficients(true, "ideal")[0] // 1
 * @source derived-here fitted to humid air of IAPWS G8-10
 */
export function enhancementCoefficients(overIce: boolean, relations: AirRelations): Float64Array {
  if (relations === "ideal") return NO_ENHANCEMENT;
  return overIce ? ENHANCEMENT_OVER_ICE : ENHANCEMENT_OVER_WATER;
}
