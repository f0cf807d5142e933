import { fanSystemEffect } from "#standard/fan-system-effect";

/**
 * Loss of a fan inlet that stands too near to a wall or to the section before it, in velocity pressures of the inlet's
 * throat. Recalled values: shown with this mark, they decide no verdict.
 *
 * @param clearance 1, 0.3…1: free distance before the inlet over wheel diameter
 * @returns 1: coefficient of the velocity pressure in the inlet
 * @outside one diameter and more costs nothing; less than 0.3 rises with the inverse of the distance
 * @example inletEffectFromClearance(0.5) // 0.4
 * @source amca-201 inlet in a plenum or cabinet, from memory
 */
export function inletEffectFromClearance(clearance: number): number {
  const rows = fanSystemEffect.inletClearance;
  const first = rows[0];
  if (clearance <= first.diameters) return (first.coefficient * first.diameters) / Math.max(clearance, 0.02);
  for (let i = 1; i < rows.length; i++) {
    const high = rows[i]!;
    if (clearance > high.diameters) continue;
    const low = rows[i - 1]!;
    const share = (clearance - low.diameters) / (high.diameters - low.diameters);
    return low.coefficient + share * (high.coefficient - low.coefficient);
  }
  return 0;
}

/**
 * Straight duct behind a housed fan that its outlet needs for the profile to even out.
 *
 * @param area m², 0.01…10: outlet area
 * @param velocity m/s, 0…40: mean outlet velocity
 * @returns m: effective duct length
 * @outside the same formula goes on
 * @example effectiveDuctLength(Math.PI / 4, 15.24) // 3 ± 1e-9
 * @source amca-201 effective duct length, from memory
 */
export function effectiveDuctLength(area: number, velocity: number): number {
  const { diameters, upTo, step } = fanSystemEffect.effectiveDuct;
  return Math.sqrt((4 * area) / Math.PI) * (diameters + Math.max(velocity - upTo, 0) / step);
}

/**
 * Loss of a housed fan's outlet with less than its effective length of straight duct, in velocity pressures of the outlet.
 *
 * @param blastArea 1, 0.4…1: blast area over outlet area
 * @param share 1, 0…1: straight duct over effective duct length
 * @returns 1: coefficient of the velocity pressure in the outlet
 * @outside beyond the table its edge is held
 * @example outletEffectFromDuct(0.8, 0) // 0.47
 * @source amca-201 outlet ducts, from memory
 */
export function outletEffectFromDuct(blastArea: number, share: number): number {
  const { effectiveShare, rows } = fanSystemEffect.outlet;
  let above = 1;
  while (above < rows.length - 1 && rows[above]!.blastAreaRatio < blastArea) above++;
  const low = rows[above - 1]!;
  const high = rows[above]!;
  const weight = clamp((blastArea - low.blastAreaRatio) / (high.blastAreaRatio - low.blastAreaRatio));
  let column = 1;
  while (column < effectiveShare.length - 1 && effectiveShare[column]! < share) column++;
  const from = effectiveShare[column - 1]!;
  const along = clamp((share - from) / (effectiveShare[column]! - from));
  const at = (row: { readonly coefficients: readonly number[] }) =>
    row.coefficients[column - 1]! + along * (row.coefficients[column]! - row.coefficients[column - 1]!);
  return at(low) + weight * (at(high) - at(low));
}

function clamp(value: number): number {
  return Math.min(Math.max(value, 0), 1);
}
