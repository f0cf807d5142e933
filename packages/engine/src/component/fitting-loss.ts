import { abruptContractionFactor } from "#standard/fitting-loss";

/**
 * Loss of a stream that widens suddenly from a small area into a large one, on the velocity in the small area.
 *
 * @param areaRatio share, 0…1: small area over large area
 * @returns factor: total pressure lost over the velocity pressure in the small area
 * @outside ratios above 1 count as 1, below 0 as 0
 * @example abruptExpansionLoss(0.5) // 0.25
 * @source definition momentum balance of Borda and Carnot
 */
export function abruptExpansionLoss(areaRatio: number): number {
  const rest = 1 - Math.min(1, Math.max(0, areaRatio));
  return rest * rest;
}

/**
 * Loss of a stream that narrows suddenly from a large area into a small one with sharp edges, on the velocity in the
 * small area.
 *
 * @param areaRatio share, 0…1: small area over large area
 * @returns factor: total pressure lost over the velocity pressure in the small area
 * @outside ratios above 1 count as 1, below 0 as 0
 * @example abruptContractionLoss(0.5) // 0.25
 * @source idelchik-handbook sharp contraction at high Reynolds number, from memory
 */
export function abruptContractionLoss(areaRatio: number): number {
  return abruptContractionFactor.factor * (1 - Math.min(1, Math.max(0, areaRatio)));
}

/**
 * Loss of an opening in a wall between two wider spaces: narrowing before it, widening after it, on the velocity in the
 * opening.
 *
 * @param areaRatioBefore share, 0…1: opening over the area before it
 * @param areaRatioAfter share, 0…1: opening over the area after it
 * @returns factor: total pressure lost over the velocity pressure in the opening
 * @outside ratios above 1 count as 1, below 0 as 0
 * @example wallOpeningLoss(0.5, 0.5) // 0.5
 * @source idelchik-handbook sum of sudden contraction and sudden expansion
 */
export function wallOpeningLoss(areaRatioBefore: number, areaRatioAfter: number): number {
  return abruptContractionLoss(areaRatioBefore) + abruptExpansionLoss(areaRatioAfter);
}

/**
 * What is left of an uneven velocity after an even resistance across the stream (screen, filter, coil).
 *
 * @param peakToMean factor, 1…5: highest velocity over the mean before the resistance
 * @param lossCoefficient factor, at least 0: loss of the resistance on the mean velocity of the same area
 * @returns factor: highest velocity over the mean after it, at least 1
 * @outside small deviations are assumed; large ones are evened out more than said
 * @example peakToMeanAfterResistance(1.5, 4) // 1.0433 ± 0.0001
 * @source taylor-batchelor-1949 with the deflection 1.1/√(1 + K)
 */
export function peakToMeanAfterResistance(peakToMean: number, lossCoefficient: number): number {
  const deflection = Math.min(1, 1.1 / Math.sqrt(1 + lossCoefficient));
  const left = (1 + deflection - deflection * lossCoefficient) / (1 + deflection + lossCoefficient);
  return 1 + Math.max(0, peakToMean - 1) * Math.abs(left);
}

/**
 * Loss by wall friction of a smooth-walled box, on the velocity in its area.
 *
 * @param length m, at least 0: length along the flow
 * @param width m, above 0: clear width
 * @param height m, above 0: clear height
 * @returns factor: total pressure lost over the velocity pressure
 * @outside linear in length
 * @example boxFrictionLoss(1, 2, 2) // 0.01 ± 1e-9
 * @source common-practice Darcy friction factor of 0.02 for sheet-metal walls
 */
export function boxFrictionLoss(length: number, width: number, height: number): number {
  const hydraulicDiameter = (2 * width * height) / (width + height);
  return (frictionFactor * length) / hydraulicDiameter;
}

const frictionFactor = 0.02;
