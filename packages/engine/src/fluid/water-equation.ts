import { ZERO_CELSIUS } from "./saturation-equation.ts";

/** Specific gas constant of water, J/kg K, as fixed by the industrial formulation. */
const GAS_CONSTANT = 461.526;

/** What the industrial formulation gives for one state of water or steam. */
export interface WaterState {
  /** m³/kg */
  specificVolume: number;
  /** J/kg */
  enthalpy: number;
  /** J/kg K, at constant pressure */
  specificHeat: number;
  /** J/kg K, at constant volume */
  specificHeatAtConstantVolume: number;
  /** kg/m³ Pa: change of density with pressure at constant temperature */
  densityByPressure: number;
}

/** Exponents of pressure and temperature and the coefficient of each term. */
type Terms = readonly (readonly [number, number, number])[];

/** Dimensionless Gibbs energy γ(π, τ) and its derivatives. */
interface Gibbs {
  p: number;
  pp: number;
  t: number;
  tt: number;
  pt: number;
}

/**
 * Liquid water by region 1 of the industrial formulation.
 *
 * @param temperature °C, 0…350: temperature
 * @param pressure Pa, saturation pressure…100000000: absolute pressure
 * @returns record: volume, enthalpy, specific heats and compressibility
 * @outside the equation is extrapolated
 * @example liquidWater(26.85, 3e6).specificVolume // 0.00100215168 ± 1e-11
 * @source iapws-if97-2007 eq. 7, table 2
 */
export function liquidWater(temperature: number, pressure: number): WaterState {
  const T = temperature + ZERO_CELSIUS;
  const x = 7.1 - pressure / 16.53e6;
  const y = 1386 / T - 1.222;
  const g = { p: 0, pp: 0, t: 0, tt: 0, pt: 0 };
  for (const [i, j, n] of LIQUID_TERMS) {
    const xi = x ** i;
    const yj = y ** j;
    g.p -= (n * i * xi * yj) / x;
    g.pp += (n * i * (i - 1) * xi * yj) / (x * x);
    g.t += (n * j * xi * yj) / y;
    g.tt += (n * j * (j - 1) * xi * yj) / (y * y);
    g.pt -= (n * i * j * xi * yj) / (x * y);
  }
  return stateFromGibbs(T, pressure, 16.53e6, 1386 / T, g);
}

/**
 * Steam by region 2 of the industrial formulation.
 *
 * @param temperature °C, 0…800: temperature
 * @param pressure Pa, 0…saturation pressure: absolute pressure
 * @returns record: volume, enthalpy, specific heats and compressibility
 * @outside the equation is extrapolated
 * @example steamVapour(26.85, 3500).enthalpy // 2549911.45 ± 0.01
 * @source iapws-if97-2007 eq. 15, tables 10 and 11
 */
export function steamVapour(temperature: number, pressure: number): WaterState {
  const T = temperature + ZERO_CELSIUS;
  const pi = pressure / 1e6;
  const tau = 540 / T;
  const y = tau - 0.5;
  const g = { p: 1 / pi, pp: -1 / (pi * pi), t: 0, tt: 0, pt: 0 };
  for (const [, j, n] of VAPOUR_IDEAL_TERMS) {
    g.t += n * j * tau ** (j - 1);
    g.tt += n * j * (j - 1) * tau ** (j - 2);
  }
  for (const [i, j, n] of VAPOUR_TERMS) {
    const xi = pi ** i;
    const yj = y ** j;
    g.p += (n * i * xi * yj) / pi;
    g.pp += (n * i * (i - 1) * xi * yj) / (pi * pi);
    g.t += (n * j * xi * yj) / y;
    g.tt += (n * j * (j - 1) * xi * yj) / (y * y);
    g.pt += (n * i * j * xi * yj) / (pi * y);
  }
  return stateFromGibbs(T, pressure, 1e6, tau, g);
}

/** Properties from the Gibbs energy and its derivatives (tables 3 and 12 of the formulation). */
function stateFromGibbs(T: number, pressure: number, pressureUnit: number, tau: number, g: Gibbs): WaterState {
  const pi = pressure / pressureUnit;
  const specificVolume = (pi * g.p * GAS_CONSTANT * T) / pressure;
  const volumeByPressure = (g.pp * GAS_CONSTANT * T) / pressureUnit ** 2;
  return {
    specificVolume,
    enthalpy: tau * g.t * GAS_CONSTANT * T,
    specificHeat: -GAS_CONSTANT * tau * tau * g.tt,
    specificHeatAtConstantVolume: GAS_CONSTANT * (-tau * tau * g.tt + (g.p - tau * g.pt) ** 2 / g.pp),
    densityByPressure: -volumeByPressure / specificVolume ** 2,
  };
}

/**
 * Saturation pressure of water by region 4 of the industrial formulation.
 *
 * @param temperature °C, 0…373: temperature
 * @returns Pa: saturation pressure
 * @outside the equation is extrapolated
 * @example steamSaturationPressureEquation(226.85) // 2638897.76 ± 0.01
 * @source iapws-if97-2007 eq. 30, table 34
 */
export function steamSaturationPressureEquation(temperature: number): number {
  const n = SATURATION_COEFFICIENTS;
  const T = temperature + ZERO_CELSIUS;
  const theta = T + n[8]! / (T - n[9]!);
  const a = theta ** 2 + n[0]! * theta + n[1]!;
  const b = n[2]! * theta ** 2 + n[3]! * theta + n[4]!;
  const c = n[5]! * theta ** 2 + n[6]! * theta + n[7]!;
  return 1e6 * ((2 * c) / (-b + Math.sqrt(b * b - 4 * a * c))) ** 4;
}

/**
 * Saturation temperature of water by region 4 of the industrial formulation.
 *
 * @param pressure Pa, 612…22064000: absolute pressure
 * @returns °C: saturation temperature
 * @outside the equation is extrapolated
 * @example steamSaturationTemperatureEquation(1e5) // 99.605918611 ± 1e-6
 * @source iapws-if97-2007 eq. 31, table 34
 */
export function steamSaturationTemperatureEquation(pressure: number): number {
  const n = SATURATION_COEFFICIENTS;
  const beta = (pressure / 1e6) ** 0.25;
  const e = beta ** 2 + n[2]! * beta + n[5]!;
  const f = n[0]! * beta ** 2 + n[3]! * beta + n[6]!;
  const g = n[1]! * beta ** 2 + n[4]! * beta + n[7]!;
  const d = (2 * g) / (-f - Math.sqrt(f * f - 4 * e * g));
  const sum = n[9]! + d;
  return (sum - Math.sqrt(sum * sum - 4 * (n[8]! + n[9]! * d))) / 2 - ZERO_CELSIUS;
}

const SATURATION_COEFFICIENTS = [
  1167.0521452767, -724213.16703206, -17.073846940092, 12020.82470247, -3232555.0322333, 14.91510861353,
  -4823.2657361591, 405113.40542057, -0.23855557567849, 650.17534844798,
] as const;

const LIQUID_TERMS: Terms = [
  [0, -2, 0.14632971213167],
  [0, -1, -0.84548187169114],
  [0, 0, -3.756360367204],
  [0, 1, 3.3855169168385],
  [0, 2, -0.95791963387872],
  [0, 3, 0.15772038513228],
  [0, 4, -0.016616417199501],
  [0, 5, 0.00081214629983568],
  [1, -9, 0.00028319080123804],
  [1, -7, -0.00060706301565874],
  [1, -1, -0.018990068218419],
  [1, 0, -0.032529748770505],
  [1, 1, -0.021841717175414],
  [1, 3, -5.283835796993e-5],
  [2, -3, -0.00047184321073267],
  [2, 0, -0.00030001780793026],
  [2, 1, 4.7661393906987e-5],
  [2, 3, -4.4141845330846e-6],
  [2, 17, -7.2694996297594e-16],
  [3, -4, -3.1679644845054e-5],
  [3, 0, -2.8270797985312e-6],
  [3, 6, -8.5205128120103e-10],
  [4, -5, -2.2425281908e-6],
  [4, -2, -6.5171222895601e-7],
  [4, 10, -1.4341729937924e-13],
  [5, -8, -4.0516996860117e-7],
  [8, -11, -1.2734301741641e-9],
  [8, -6, -1.7424871230634e-10],
  [21, -29, -6.8762131295531e-19],
  [23, -31, 1.4478307828521e-20],
  [29, -38, 2.6335781662795e-23],
  [30, -39, -1.1947622640071e-23],
  [31, -40, 1.8228094581404e-24],
  [32, -41, -9.3537087292458e-26],
];

const VAPOUR_IDEAL_TERMS: Terms = [
  [0, 0, -9.6927686500217],
  [0, 1, 10.086655968018],
  [0, -5, -0.005608791128302],
  [0, -4, 0.071452738081455],
  [0, -3, -0.40710498223928],
  [0, -2, 1.4240819171444],
  [0, -1, -4.383951131945],
  [0, 2, -0.28408632460772],
  [0, 3, 0.021268463753307],
];

const VAPOUR_TERMS: Terms = [
  [1, 0, -0.0017731742473213],
  [1, 1, -0.017834862292358],
  [1, 2, -0.045996013696365],
  [1, 3, -0.057581259083432],
  [1, 6, -0.05032527872793],
  [2, 1, -3.3032641670203e-5],
  [2, 2, -0.00018948987516315],
  [2, 4, -0.0039392777243355],
  [2, 7, -0.043797295650573],
  [2, 36, -2.6674547914087e-5],
  [3, 0, 2.0481737692309e-8],
  [3, 1, 4.3870667284435e-7],
  [3, 3, -3.227767723857e-5],
  [3, 6, -0.0015033924542148],
  [3, 35, -0.040668253562649],
  [4, 1, -7.8847309559367e-10],
  [4, 2, 1.2790717852285e-8],
  [4, 3, 4.8225372718507e-7],
  [5, 7, 2.2922076337661e-6],
  [6, 3, -1.6714766451061e-11],
  [6, 16, -0.0021171472321355],
  [6, 35, -23.895741934104],
  [7, 0, -5.905956432427e-18],
  [7, 11, -1.2621808899101e-6],
  [7, 25, -0.038946842435739],
  [8, 8, 1.1256211360459e-11],
  [8, 36, -8.2311340897998],
  [9, 13, 1.9809712802088e-8],
  [10, 4, 1.0406965210174e-19],
  [10, 10, -1.0234747095929e-13],
  [10, 14, -1.0018179379511e-9],
  [16, 29, -8.0882908646985e-11],
  [16, 50, 0.10693031879409],
  [18, 57, -0.33662250574171],
  [20, 20, 8.9185845355421e-25],
  [20, 35, 3.0629316876232e-13],
  [20, 48, -4.2002467698208e-6],
  [21, 21, -5.9056029685639e-26],
  [22, 53, 3.7826947613457e-6],
  [23, 39, -1.2768608934681e-15],
  [24, 26, 7.3087610595061e-29],
  [24, 40, 5.5414715350778e-17],
  [24, 58, -9.436970724121e-7],
];
