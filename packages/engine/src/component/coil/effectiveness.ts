/**
 * Effectiveness of a heat exchanger in counterflow.
 *
 * @param transferUnits ratio, 0…50: conductance over the smaller capacity
 * @param capacityRatio ratio, 0…1: smaller capacity over larger
 * @returns share: heat over the greatest that could pass
 * @outside keeps answering
 * @example counterflowEffectiveness(1.5, 0.5) // 0.690785 ± 1e-6
 * @example counterflowEffectiveness(3, 1) // 0.75
 * @source kays-london-1984 counterflow
 */
export function counterflowEffectiveness(transferUnits: number, capacityRatio: number): number {
  if (Math.abs(1 - capacityRatio) < 1e-9) return transferUnits / (1 + transferUnits);
  const left = Math.exp(-transferUnits * (1 - capacityRatio));
  return (1 - left) / (1 - capacityRatio * left);
}

/**
 * Effectiveness of a heat exchanger in crossflow with both streams unmixed, by the usual closed approximation.
 *
 * @param transferUnits ratio, 0…50: conductance over the smaller capacity
 * @param capacityRatio ratio, 0…1: smaller capacity over larger
 * @returns share: heat over the greatest that could pass
 * @outside keeps answering
 * @example crossflowEffectiveness(1.5, 0.5) // 0.662252 ± 1e-6
 * @source kays-london-1984 1 − exp((exp(−C NTU^0.78) − 1) NTU^0.22 / C)
 */
export function crossflowEffectiveness(transferUnits: number, capacityRatio: number): number {
  if (!(transferUnits > 0)) return 0;
  if (capacityRatio < 1e-9) return 1 - Math.exp(-transferUnits);
  const inner = Math.exp(-capacityRatio * transferUnits ** 0.78) - 1;
  return 1 - Math.exp((inner * transferUnits ** 0.22) / capacityRatio);
}

/**
 * Effectiveness of equal passes in series, in counterflow over all.
 *
 * @param pass share, 0…0.999999: effectiveness of one pass
 * @param capacityRatio ratio, 0…1: smaller capacity over larger
 * @param passes count, 1…64: passes
 * @returns share: heat over the greatest that could pass
 * @outside keeps answering
 * @example passesEffectiveness(crossflowEffectiveness(1.5 / 4, 0.5), 0.5, 4) // 0.680395 ± 1e-6
 * @source kays-london-1984 multipass overall counterflow
 */
export function passesEffectiveness(pass: number, capacityRatio: number, passes: number): number {
  if (Math.abs(1 - capacityRatio) < 1e-9) return (passes * pass) / (1 + (passes - 1) * pass);
  const left = ((1 - pass) / (1 - pass * capacityRatio)) ** passes;
  return (1 - left) / (1 - capacityRatio * left);
}
