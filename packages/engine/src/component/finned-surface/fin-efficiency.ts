/**
 * Efficiency of a fin of constant thickness whose equivalent length is `length` (see `schmidtFinLength`): mean over
 * root difference of the driving potential.
 *
 * @param coefficient W/m²K, 1…2000: heat transfer coefficient on the fin; for a wet fin times the wet slope (see `wetSlope`)
 * @param conductivity W/m K, 10…400: of the fin
 * @param thickness m, 0.00005…0.001: of the fin
 * @param length m, 0.001…0.1: equivalent length of the fin
 * @returns share: 0…1
 * @outside tends to 1 for small and to 1/(m L) for large m L; keeps answering
 * @example finEfficiency(31.3516, 220, 0.0001651, 0.01633525) // 0.8703 ± 1e-4
 * @source schmidt-1949 tanh(mL)/(mL)
 */
export function finEfficiency(coefficient: number, conductivity: number, thickness: number, length: number): number {
  const x = Math.sqrt((2 * coefficient) / (conductivity * thickness)) * length;
  // Below 0.01 the series is exact to the last bit that matters, and 0/0 stays away.
  if (x < 0.01) return 1 - (x * x) / 3;
  const e = Math.exp(-2 * x);
  return (1 - e) / ((1 + e) * x);
}

/**
 * Efficiency of a finned surface as a whole: fins at their efficiency, the rounds between them at one.
 *
 * @param finShare share, 0…1: fin area over total outside area
 * @param efficiency share, 0…1: fin efficiency
 * @returns share: 0…1
 * @outside linear, keeps answering
 * @example surfaceEfficiency(0.9553, 0.870297) // 0.8761 ± 1e-4
 * @source definition area-weighted mean
 */
export function surfaceEfficiency(finShare: number, efficiency: number): number {
  return 1 - finShare * (1 - efficiency);
}
