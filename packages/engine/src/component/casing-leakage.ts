import { cubicMetresPerSecondPerCfm, pascalsPerInchOfWater } from "#quantity/inch-pound";
import { casingLeakageClasses, casingLeakageTests } from "#standard/casing-class";

/** m³/s per m² in one cfm per 100 ft². */
const fluxUnit = cubicMetresPerSecondPerCfm / 9.290_304;
const crackExponent = 0.65;

/**
 * Leakage of casing by area, from its class: cfm for 100 ft² at one inch of water, with the 0.65 power of pressure.
 *
 * @param leakageClass factor, 0…100: class
 * @param pressure Pa, 0…10000: across the casing
 * @returns m³/s per m²: leakage
 * @outside the same power goes on
 * @example leakageFluxFromClass(6, 8 * 249.08891) / 5.08e-5 // 23.18 ± 0.01
 * @source smacna-duct-leakage F = C P^0.65
 */
export function leakageFluxFromClass(leakageClass: number, pressure: number): number {
  return leakageClass * fluxUnit * (pressure / pascalsPerInchOfWater) ** crackExponent;
}

/**
 * Class of casing from a leakage by area at a pressure.
 *
 * @param flux m³/s per m², 0…0.1: leakage
 * @param pressure Pa, 1…10000: across the casing
 * @returns factor: class
 * @outside the same power goes on
 * @example classFromLeakageFlux(0.44e-3, 400) // 6.37 ± 0.02
 * @source smacna-duct-leakage F = C P^0.65 solved for the class
 */
export function classFromLeakageFlux(flux: number, pressure: number): number {
  return flux / (fluxUnit * (pressure / pascalsPerInchOfWater) ** crackExponent);
}

/**
 * The class of EN 1886 that a casing class of the duct trade meets, tested under suction.
 *
 * @param leakageClass factor, 0…100: class
 * @returns text: `L1`, `L2`, `L3`, or `none`
 * @outside the same comparison goes on
 * @example europeanClass(3) // "L2"
 * @source en-1886 classes at 400 Pa suction
 */
export function europeanClass(leakageClass: number): string {
  const flux = leakageFluxFromClass(leakageClass, casingLeakageTests.suction);
  return casingLeakageClasses.rows.find((row) => flux <= row.atSuction * (1 + 1e-9))?.name ?? "none";
}
