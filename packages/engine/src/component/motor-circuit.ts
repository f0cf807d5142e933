import { motorCircuit } from "#standard/overcurrent-size";

/**
 * Least ampacity of the wires to a group of motors: 125 % of the largest current and the sum of the others. A proposal:
 * the local electrical code and a licensed person decide.
 *
 * @param currents list, one or more: full-load currents, A
 * @returns A: minimum circuit ampacity
 * @outside the same formula goes on
 * @example minimumCircuitAmpacity([24, 24]) // 54
 * @source nfpa-70 430.24, from memory
 */
export function minimumCircuitAmpacity(currents: readonly number[]): number {
  return sumOf(currents) + (motorCircuit.ampacityShare - 1) * Math.max(...currents);
}

/**
 * Largest rating of the fuse or breaker that protects the wires to a group of motors: the standard size not above 250 % of
 * the largest current and the sum of the others, but none below the wires' least ampacity. A proposal: the local
 * electrical code and a licensed person decide.
 *
 * @param currents list, one or more: full-load currents, A
 * @returns A: maximum overcurrent protection
 * @outside the largest standard size above 2000 A
 * @example maximumOvercurrentProtection([28]) // 70
 * @source nfpa-70 430.52 and 430.62, from memory
 */
export function maximumOvercurrentProtection(currents: readonly number[]): number {
  const { sizes, breakerShare } = motorCircuit;
  const most = sumOf(currents) + (breakerShare - 1) * Math.max(...currents);
  const least = minimumCircuitAmpacity(currents);
  const largest = sizes.findLast((size) => size <= most * (1 + 1e-9)) ?? sizes[0];
  return largest >= least ? largest : (sizes.find((size) => size >= least) ?? sizes[sizes.length - 1]!);
}

/**
 * Largest trip current of a motor's overload protection. A proposal: the local electrical code and a licensed person decide.
 *
 * @param current A, above 0: full-load current
 * @param serviceFactor 1, 1…1.4: that counts at this supply
 * @returns A: overload trip, at most
 * @outside the same formula goes on
 * @example overloadTrip(28, 1.15) // 35
 * @source nfpa-70 430.32, from memory
 */
export function overloadTrip(current: number, serviceFactor: number): number {
  const { withServiceFactor, without } = motorCircuit.overloadShare;
  return current * (serviceFactor >= 1.15 ? withServiceFactor : without);
}

function sumOf(currents: readonly number[]): number {
  return currents.reduce((sum, each) => sum + each, 0);
}
