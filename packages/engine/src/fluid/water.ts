import { chebyshevFit, evaluateFit, type Fit } from "#numerics/chebyshev";
import { liquidWater, type WaterState } from "./water-equation.ts";
import { waterConductivityEquation, waterViscosityEquation } from "./water-transport-equation.ts";

/** Pressure at which the properties are taken, Pa: keeps water liquid to 133 °C; another 300 kPa change density by 1.4e-4. */
export const WATER_PRESSURE = 300_000;

const COLDEST = 0;
const HOTTEST = 120;

/** The equations as polynomials over the whole range, made when the module is read; errors are bounded in the tests. */
const DENSITY: Fit = waterFit(10, (_t, state) => 1 / state.specificVolume);
const SPECIFIC_HEAT: Fit = waterFit(10, (_t, state) => state.specificHeat);
const ENTHALPY: Fit = waterFit(10, (_t, state) => state.enthalpy);
const LOGARITHM_OF_VISCOSITY: Fit = waterFit(10, (t, state) =>
  Math.log(waterViscosityEquation(t, 1 / state.specificVolume)),
);
const CONDUCTIVITY: Fit = waterFit(10, (t, state) => waterConductivityEquation(t, 1 / state.specificVolume, state));

function waterFit(degree: number, property: (temperature: number, state: WaterState) => number): Fit {
  return chebyshevFit((t) => property(t, liquidWater(t, WATER_PRESSURE)), COLDEST, HOTTEST, degree);
}

function held(fit: Fit, temperature: number): number {
  return evaluateFit(fit, Math.min(Math.max(temperature, COLDEST), HOTTEST));
}

/**
 * Density of liquid water at 300 kPa.
 *
 * @param temperature °C, 0…120: temperature
 * @returns kg/m³: density
 * @outside holds the value at 0 or 120 °C
 * @example waterDensity(20) // 998.30 ± 0.01
 * @source iapws-if97-2007 eq. 7
 */
export function waterDensity(temperature: number): number {
  return held(DENSITY, temperature);
}

/**
 * Specific heat of liquid water at 300 kPa.
 *
 * @param temperature °C, 0…120: temperature
 * @returns J/kg K: specific heat at constant pressure
 * @outside holds the value at 0 or 120 °C
 * @example waterSpecificHeat(20) // 4184.1 ± 0.5
 * @source iapws-if97-2007 eq. 7
 */
export function waterSpecificHeat(temperature: number): number {
  return held(SPECIFIC_HEAT, temperature);
}

/**
 * Dynamic viscosity of liquid water at 300 kPa.
 *
 * @param temperature °C, 0…120: temperature
 * @returns Pa·s: dynamic viscosity
 * @outside holds the value at 0 or 120 °C
 * @example waterViscosity(20) // 0.0010016 ± 1e-6
 * @source iapws-r12-08 eq. 10
 */
export function waterViscosity(temperature: number): number {
  return Math.exp(held(LOGARITHM_OF_VISCOSITY, temperature));
}

/**
 * Thermal conductivity of liquid water at 300 kPa.
 *
 * @param temperature °C, 0…120: temperature
 * @returns W/mK: thermal conductivity
 * @outside holds the value at 0 or 120 °C
 * @example waterConductivity(20) // 0.5981 ± 1e-4
 * @source iapws-r15-11 eq. 15
 */
export function waterConductivity(temperature: number): number {
  return held(CONDUCTIVITY, temperature);
}

/**
 * Enthalpy of liquid water at 300 kPa, zero for the liquid at the triple point as in the steam tables.
 *
 * @param temperature °C, 0…120: temperature
 * @returns J/kg: enthalpy
 * @outside continues with the specific heat at 0 or 120 °C
 * @example waterEnthalpy(20) // 84194 ± 15
 * @source iapws-if97-2007 eq. 7
 */
export function waterEnthalpy(temperature: number): number {
  const inside = Math.min(Math.max(temperature, COLDEST), HOTTEST);
  return evaluateFit(ENTHALPY, inside) + (temperature - inside) * evaluateFit(SPECIFIC_HEAT, inside);
}
