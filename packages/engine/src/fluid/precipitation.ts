import { standardAirDensity } from "#quantity/standard-air";
import { rainDrops, snowFallSpeed } from "#standard/precipitation";

/** Order of the gamma distribution of rain flux over size: mass goes with d³, fall speed with d^0.67, and one for the integral. */
const order = 4 + rainDrops.fallExponent;
/** Γ(order + 1), by Γ(x + 1) = x Γ(x) down to Γ(1.67) = 0.903296. */
const gammaOfNext = order * (order - 1) * (order - 2) * (order - 3) * 0.903_296_499_6;

/**
 * Fall speed of a rain drop in still air.
 *
 * @param diameter mm, 0.5…5: diameter of the sphere of equal volume
 * @param density kg/m³, 0.7…1.5: density of the air
 * @returns m/s: terminal velocity
 * @outside follows the same power; too fast below 0.3 mm and above 5 mm
 * @example rainFallSpeed(2, 1.2014) // 6.014 ± 0.001
 * @source atlas-ulbrich-1977 power law, density by foote-du-toit-1969
 */
export function rainFallSpeed(diameter: number, density: number): number {
  const { fallCoefficient, fallExponent, densityExponent } = rainDrops;
  return fallCoefficient * diameter ** fallExponent * (standardAirDensity / density) ** densityExponent;
}

/**
 * Share of the rain, by mass, that an upward stream of air lifts with it: the drops that fall more slowly than the air
 * rises. Drop sizes after Marshall and Palmer.
 *
 * @param upwardVelocity m/s, 0…12: velocity of the air, upwards
 * @param rainRate mm/h, 0.1…300: how hard it rains
 * @param density kg/m³, 0.7…1.5: density of the air
 * @returns share: 0…1 of the rain carried upwards
 * @outside 0 for air that does not rise; tends to 1 for fast air
 * @example rainShareLifted(2.5, 100, 1.2014) // 0.003254 ± 1e-5
 * @source derived-here from marshall-palmer-1948 and atlas-ulbrich-1977
 */
export function rainShareLifted(upwardVelocity: number, rainRate: number, density: number): number {
  if (!(upwardVelocity > 0)) return 0;
  const cut = (upwardVelocity / rainFallSpeed(1, density)) ** (1 / rainDrops.fallExponent);
  const slope = rainDrops.slopeCoefficient * Math.max(rainRate, 0.1) ** rainDrops.slopeExponent;
  return lowerGammaShare(slope * cut);
}

/** Regularised lower incomplete gamma function of `order`, by its series; 1 far out. */
function lowerGammaShare(x: number): number {
  if (x > 40) return 1;
  let term = 1;
  let sum = 1;
  for (let n = 1; n < 200 && term > 1e-16 * sum; n++) {
    term *= x / (order + n);
    sum += term;
  }
  return Math.min(1, (x ** order * Math.exp(-x) * sum) / gammaOfNext);
}

/**
 * Share of the snow, by mass, that an upward stream of air lifts with it; fall speeds taken as spread evenly between
 * the slowest and the fastest.
 *
 * @param upwardVelocity m/s, 0…12: velocity of the air, upwards
 * @param density kg/m³, 0.7…1.5: density of the air
 * @returns share: 0…1 of the snow carried upwards
 * @outside 0 below the slowest flakes, 1 above the fastest
 * @example snowShareLifted(1, 1.2014) // 0.5 ± 1e-4
 * @source locatelli-hobbs-1974 range of fall speeds, from memory; even spread derived-here
 */
export function snowShareLifted(upwardVelocity: number, density: number): number {
  const thin = (standardAirDensity / density) ** rainDrops.densityExponent;
  const slowest = snowFallSpeed.slowest * thin;
  const fastest = snowFallSpeed.fastest * thin;
  return Math.min(1, Math.max(0, (upwardVelocity - slowest) / (fastest - slowest)));
}
