/*
 * Exact factors for published correlations that are written in inch-pound units: multiply to reach SI. What people
 * type and read goes through the unit table instead.
 */

/** m in an inch. */
export const metresPerInch = 0.0254;

/** m in a foot. */
export const metresPerFoot = 0.3048;

/** W in a mechanical horsepower, 550 ft·lbf/s. */
export const wattsPerHorsepower = 550 * 0.3048 * 0.453_592_37 * 9.806_65;

/** Pa in a conventional inch of water (4 °C, standard gravity). */
export const pascalsPerInchOfWater = 9.806_65 * 25.4;

/** m³/s in a cubic foot a minute. */
export const cubicMetresPerSecondPerCfm = 0.3048 ** 3 / 60;

/** m/s in a foot a minute. */
export const metresPerSecondPerFpm = 0.3048 / 60;

/** N in a pound-force. */
export const newtonsPerPound = 0.453_592_37 * 9.806_65;
