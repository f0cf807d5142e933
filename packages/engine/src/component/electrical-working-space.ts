import { electricalWorkingSpace } from "#standard/electrical-working-space";

/**
 * Most voltage to ground that a system of this line voltage may have: a star of 208 V has its phase voltage, every other
 * system may be grounded at a corner and is taken at its line voltage.
 *
 * @param lineVoltage V, 100…1000: between phases
 * @returns V: to ground, at most
 * @outside the line voltage itself
 * @example voltageToGround(208) // 120.1 ± 0.1
 * @source derived-here phase voltage of a star with grounded neutral
 */
export function voltageToGround(lineVoltage: number): number {
  return lineVoltage > 150 && lineVoltage < 220 ? lineVoltage / Math.sqrt(3) : lineVoltage;
}

/**
 * Depth of the clear working space before electrical equipment.
 *
 * @param toGround V, 0…1000: voltage to ground
 * @param opposite choice: what stands opposite: 1 nothing live or grounded, 2 a grounded surface, 3 live parts
 * @returns m: depth
 * @outside above 1000 V the deepest row, which is not enough: high voltage has rules of its own
 * @example workingSpaceDepth(277, 2) / 0.3048 // 3.5 ± 1e-9
 * @source nfpa-70 table 110.26(A)(1)
 */
export function workingSpaceDepth(toGround: number, opposite: 1 | 2 | 3): number {
  const rows = electricalWorkingSpace.depths;
  return (rows.find(({ voltage }) => toGround <= voltage) ?? rows[rows.length - 1]!).depth[opposite];
}
