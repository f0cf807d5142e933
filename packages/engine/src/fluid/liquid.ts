import { ETHYLENE_GLYCOL, type GlycolCoefficients, PROPYLENE_GLYCOL } from "./glycol-coefficients.ts";
import { waterConductivity, waterDensity, waterSpecificHeat, waterViscosity } from "./water.ts";

/** What flows in a coil: water, or water with a share of glycol by mass. */
export interface Liquid {
  readonly substance: "water" | "ethylene glycol" | "propylene glycol";
  /** Glycol by mass of the solution, 0…0.6; not read for water. */
  readonly massFraction: number;
}

/** Highest share of glycol by mass that the polynomials cover. */
export const HIGHEST_GLYCOL_FRACTION = 0.6;
/** Highest temperature of the glycol polynomials as published, °C. */
const HOTTEST_PUBLISHED_GLYCOL = 40;
const HOTTEST_PUBLISHED_WATER = 120;

/** The coefficients for a solution; null for plain water. */
function glycolOf(liquid: Liquid): GlycolCoefficients | null {
  if (liquid.substance === "water") return null;
  const fraction = liquid.massFraction;
  if (!(fraction >= 0 && fraction <= HIGHEST_GLYCOL_FRACTION)) {
    throw new RangeError(
      `${liquid.substance}: mass fraction ${fraction} is outside 0…${HIGHEST_GLYCOL_FRACTION} (share of glycol by mass)`,
    );
  }
  if (fraction === 0) return null;
  return liquid.substance === "ethylene glycol" ? ETHYLENE_GLYCOL : PROPYLENE_GLYCOL;
}

/**
 * Sum of c_ij x^i y^j with x the concentration in % and y the temperature, both from their base values; powers of y
 * to 3 for i = 0, 1, 2, to 2 for i = 3, to 1 for i = 4, to 0 for i = 5.
 */
function glycolProperty(
  c: readonly number[],
  glycol: GlycolCoefficients,
  fraction: number,
  temperature: number,
): number {
  const x = fraction * 100 - glycol.concentration;
  const y = temperature - glycol.temperature;
  return (
    c[0]! +
    y * (c[1]! + y * (c[2]! + y * c[3]!)) +
    x *
      (c[4]! +
        y * (c[5]! + y * (c[6]! + y * c[7]!)) +
        x *
          (c[8]! +
            y * (c[9]! + y * (c[10]! + y * c[11]!)) +
            x * (c[12]! + y * (c[13]! + y * c[14]!) + x * (c[15]! + y * c[16]! + x * c[17]!))))
  );
}

/**
 * Density of the liquid.
 *
 * @param liquid record, mass fraction 0…0.6: the liquid
 * @param temperature °C, freeze point…40, water 0…120: temperature
 * @returns kg/m³: density
 * @outside the glycol polynomial is extrapolated, water holds its end value
 * @throws RangeError when the mass fraction of a glycol is not a number in 0…0.6
 * @example liquidDensity({ substance: "ethylene glycol", massFraction: 0.3 }, 20) // 1038.05 ± 0.01
 * @source melinder-2010 table of coefficients
 */
export function liquidDensity(liquid: Liquid, temperature: number): number {
  const glycol = glycolOf(liquid);
  if (!glycol) return waterDensity(temperature);
  return glycolProperty(glycol.density, glycol, liquid.massFraction, temperature);
}

/**
 * Specific heat of the liquid.
 *
 * @param liquid record, mass fraction 0…0.6: the liquid
 * @param temperature °C, freeze point…40, water 0…120: temperature
 * @returns J/kg K: specific heat
 * @outside the glycol polynomial is extrapolated, water holds its end value
 * @throws RangeError when the mass fraction of a glycol is not a number in 0…0.6
 * @example liquidSpecificHeat({ substance: "ethylene glycol", massFraction: 0.35 }, 9.4) // 3582.5 ± 1
 * @source melinder-2010 table of coefficients
 */
export function liquidSpecificHeat(liquid: Liquid, temperature: number): number {
  const glycol = glycolOf(liquid);
  if (!glycol) return waterSpecificHeat(temperature);
  return glycolProperty(glycol.specificHeat, glycol, liquid.massFraction, temperature);
}

/**
 * Dynamic viscosity of the liquid.
 *
 * @param liquid record, mass fraction 0…0.6: the liquid
 * @param temperature °C, freeze point…40, water 0…120: temperature
 * @returns Pa·s: dynamic viscosity
 * @outside the glycol polynomial is extrapolated, water holds its end value
 * @throws RangeError when the mass fraction of a glycol is not a number in 0…0.6
 * @example liquidViscosity({ substance: "ethylene glycol", massFraction: 0.3 }, 20) // 0.00216645 ± 1e-7
 * @source melinder-2010 table of coefficients
 */
export function liquidViscosity(liquid: Liquid, temperature: number): number {
  const glycol = glycolOf(liquid);
  if (!glycol) return waterViscosity(temperature);
  return 1e-3 * Math.exp(glycolProperty(glycol.viscosity, glycol, liquid.massFraction, temperature));
}

/**
 * Thermal conductivity of the liquid.
 *
 * @param liquid record, mass fraction 0…0.6: the liquid
 * @param temperature °C, freeze point…40, water 0…120: temperature
 * @returns W/mK: thermal conductivity
 * @outside the glycol polynomial is extrapolated, water holds its end value
 * @throws RangeError when the mass fraction of a glycol is not a number in 0…0.6
 * @example liquidConductivity({ substance: "ethylene glycol", massFraction: 0.3 }, 20) // 0.464897 ± 1e-6
 * @source melinder-2010 table of coefficients
 */
export function liquidConductivity(liquid: Liquid, temperature: number): number {
  const glycol = glycolOf(liquid);
  if (!glycol) return waterConductivity(temperature);
  return glycolProperty(glycol.conductivity, glycol, liquid.massFraction, temperature);
}

/**
 * Temperature at which the first ice forms in the liquid.
 *
 * @param liquid record, mass fraction 0…0.6: the liquid
 * @returns °C: freezing point, 0 for water
 * @outside throws
 * @throws RangeError when the mass fraction of a glycol is not a number in 0…0.6
 * @example liquidFreezePoint({ substance: "propylene glycol", massFraction: 0.4 }) // -20.57 ± 0.01
 * @source melinder-2010 table of coefficients
 */
export function liquidFreezePoint(liquid: Liquid): number {
  const glycol = glycolOf(liquid);
  if (!glycol) return 0;
  return Math.min(0, glycolProperty(glycol.freezePoint, glycol, liquid.massFraction, glycol.temperature));
}

/**
 * Whether a liquid at a temperature lies within what the sources of its properties cover; outside they are extrapolated
 * or held, and whoever shows them should say so.
 *
 * @param liquid record, mass fraction 0…0.6: the liquid
 * @param temperature °C, any: temperature
 * @returns flag: true from the freezing point to 40 °C, for water from 0 to 120 °C
 * @outside not applicable
 * @throws RangeError when the mass fraction of a glycol is not a number in 0…0.6
 * @example liquidIsCovered({ substance: "ethylene glycol", massFraction: 0.3 }, 60) // false
 * @source melinder-2010 range of validity
 */
export function liquidIsCovered(liquid: Liquid, temperature: number): boolean {
  const hottest = liquid.substance === "water" ? HOTTEST_PUBLISHED_WATER : HOTTEST_PUBLISHED_GLYCOL;
  return temperature >= liquidFreezePoint(liquid) && temperature <= hottest;
}
