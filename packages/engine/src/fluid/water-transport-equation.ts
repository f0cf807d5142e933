import { ZERO_CELSIUS } from "./saturation-equation.ts";
import type { WaterState } from "./water-equation.ts";

/** Critical temperature K, density kg/m³ and pressure Pa of water, and its gas constant J/kg K, as the releases fix them. */
const CRITICAL_TEMPERATURE = 647.096;
const CRITICAL_DENSITY = 322;
const CRITICAL_PRESSURE = 22.064e6;
const GAS_CONSTANT = 461.51805;

/**
 * Dynamic viscosity of water or steam, without the enhancement close to the critical point (industrial use).
 *
 * @param temperature °C, 0…900: temperature
 * @param density kg/m³, 0…1200: density
 * @returns Pa·s: dynamic viscosity
 * @outside the equation is extrapolated
 * @example waterViscosityEquation(25, 998) // 0.000889735100 ± 1e-12
 * @source iapws-r12-08 eq. 10, 11, 12
 */
export function waterViscosityEquation(temperature: number, density: number): number {
  const T = (temperature + ZERO_CELSIUS) / CRITICAL_TEMPERATURE;
  const rho = density / CRITICAL_DENSITY;
  const dilute = (100 * Math.sqrt(T)) / (1.67752 + 2.20462 / T + 0.6366564 / T ** 2 - 0.241605 / T ** 3);
  let sum = 0;
  for (const [i, j, h] of VISCOSITY_TERMS) sum += (1 / T - 1) ** i * (rho - 1) ** j * h;
  return 1e-6 * dilute * Math.exp(rho * sum);
}

/**
 * Thermal conductivity of water or steam.
 *
 * @param temperature °C, 0…900: temperature
 * @param density kg/m³, 0…1200: density
 * @param state record, of the same temperature and density: specific heats and compressibility for the enhancement towards the critical point, which is left out without it
 * @returns W/mK: thermal conductivity
 * @outside the equation is extrapolated
 * @example waterConductivityEquation(25, 998) // 0.607712868 ± 1e-9
 * @source iapws-r15-11 eq. 15 to 26
 */
export function waterConductivityEquation(temperature: number, density: number, state?: WaterState): number {
  const T = (temperature + ZERO_CELSIUS) / CRITICAL_TEMPERATURE;
  const rho = density / CRITICAL_DENSITY;
  const dilute =
    Math.sqrt(T) / (2.443221e-3 + 1.323095e-2 / T + 6.770357e-3 / T ** 2 - 3.454586e-3 / T ** 3 + 4.096266e-4 / T ** 4);
  let sum = 0;
  for (const [i, row] of CONDUCTIVITY_ROWS.entries()) {
    for (const [j, l] of row.entries()) sum += (1 / T - 1) ** i * (rho - 1) ** j * l;
  }
  const enhancement = state ? criticalEnhancement(temperature, T, rho, state) : 0;
  return 1e-3 * (dilute * Math.exp(rho * sum) + enhancement);
}

/** The enhancement, mW/mK: well below 1 % for liquid water at the temperatures of this trade. */
function criticalEnhancement(temperature: number, T: number, rho: number, state: WaterState): number {
  const zeta = (state.densityByPressure * CRITICAL_PRESSURE) / CRITICAL_DENSITY;
  const surplus = rho * (zeta - (referenceCompressibility(rho) * 1.5) / T);
  if (!(surplus > 0)) return 0;
  const y = (0.13 * (surplus / 0.06) ** (0.63 / 1.239)) / 0.4;
  if (y < 1.2e-7) return 0;
  const ratio = state.specificHeatAtConstantVolume / state.specificHeat;
  const z =
    (2 / (Math.PI * y)) *
    ((1 - ratio) * Math.atan(y) + ratio * y - (1 - Math.exp(-1 / (1 / y + y ** 2 / (3 * rho ** 2)))));
  const viscosity = waterViscosityEquation(temperature, rho * CRITICAL_DENSITY) * 1e6;
  return (177.8514 * rho * (state.specificHeat / GAS_CONSTANT) * T * z) / viscosity;
}

/** Reduced compressibility at 1.5 times the critical temperature (equation 25 and table 6 of the release). */
function referenceCompressibility(rho: number): number {
  const row = REFERENCE_ROWS.find((candidate) => rho <= candidate[0]!)!;
  let sum = 0;
  for (let i = 1; i < row.length; i++) sum += row[i]! * rho ** (i - 1);
  return 1 / sum;
}

const VISCOSITY_TERMS: readonly (readonly [number, number, number])[] = [
  [0, 0, 0.520094],
  [1, 0, 0.0850895],
  [2, 0, -1.08374],
  [3, 0, -0.289555],
  [0, 1, 0.222531],
  [1, 1, 0.999115],
  [2, 1, 1.88797],
  [3, 1, 1.26613],
  [5, 1, 0.120573],
  [0, 2, -0.281378],
  [1, 2, -0.906851],
  [2, 2, -0.772479],
  [3, 2, -0.489837],
  [4, 2, -0.25704],
  [0, 3, 0.161913],
  [1, 3, 0.257399],
  [0, 4, -0.0325372],
  [3, 4, 0.0698452],
  [4, 5, 0.00872102],
  [3, 6, -0.00435673],
  [5, 6, -0.000593264],
];

const CONDUCTIVITY_ROWS: readonly (readonly number[])[] = [
  [1.60397357, -0.646013523, 0.111443906, 0.102997357, -0.0504123634, 0.00609859258],
  [2.33771842, -2.78843778, 1.53616167, -0.463045512, 0.0832827019, -0.00719201245],
  [2.19650529, -4.54580785, 3.55777244, -1.40944978, 0.275418278, -0.0205938816],
  [-1.21051378, 1.60812989, -0.621178141, 0.0716373224, 0, 0],
  [-2.720337, 4.57586331, -3.18369245, 1.1168348, -0.19268305, 0.012913842],
];

/** Upper limit of reduced density, then six coefficients. */
const REFERENCE_ROWS: readonly (readonly number[])[] = [
  [
    0.310559006, 6.53786807199516, -5.61149954923348, 3.39624167361325, -2.27492629730878, 10.2631854662709,
    1.97815050331519,
  ],
  [
    0.776397516, 6.52717759281799, -6.30816983387575, 8.08379285492595, -9.82240510197603, 12.1358413791395,
    -5.54349664571295,
  ],
  [
    1.242236025, 5.35500529896124, -3.96415689925446, 8.91990208918795, -12.033872950579, 9.19494865194302,
    -2.16866274479712,
  ],
  [
    1.863354037, 1.55225959906681, 0.464621290821181, 8.93237374861479, -11.0321960061126, 6.1678099933336,
    -0.965458722086812,
  ],
  [
    Number.POSITIVE_INFINITY,
    1.11999926419994,
    0.595748562571649,
    9.8895256507892,
    -10.325505114704,
    4.66861294457414,
    -0.503243546373828,
  ],
];
