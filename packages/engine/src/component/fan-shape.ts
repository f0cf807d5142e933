import { errorFunction } from "#numerics/error-function";
import { genericFanShape } from "#standard/generic-fan-shape";

/**
 * Static efficiency over its best value, against where the fan works: the published skewed normal curve.
 *
 * @param place 1, -2…3: log10 of the Euler number over that at best static efficiency; negative to the right of it
 * @returns 1: efficiency over best efficiency, 0…1
 * @outside goes on falling towards zero
 * @example genericEfficiencyRatio(-0.5) // 0.80465 ± 5e-6
 * @source energyplus-engineering-reference fan component model
 */
export function genericEfficiencyRatio(place: number): number {
  const { centre, width, growth, skew } = genericFanShape.efficiency;
  const normal = (value: number) => (value - centre) / width;
  const upper = (z: number) => 1 + errorFunction(z / Math.SQRT2);
  const atBest = Math.exp(-0.5 * normal(0) ** 2) * upper(normal(0));
  return (Math.exp(-0.5 * normal(place) ** 2) * upper(normal(Math.exp(growth * place) * skew * place))) / atBest;
}

/**
 * Flow coefficient over that at best static efficiency: the two published sigmoids, the left one scaled by a thousandth
 * so that they meet at best efficiency.
 *
 * @param place 1, -2…3: log10 of the Euler number over that at best static efficiency
 * @returns 1: flow coefficient over that at best efficiency
 * @outside goes on towards free delivery or no flow
 * @example genericFlowRatio(-2) // 1.7507 ± 5e-4
 * @source energyplus-engineering-reference fan component model
 */
export function genericFlowRatio(place: number): number {
  const { flowRight, flowLeft } = genericFanShape;
  return place <= 0
    ? sigmoid(flowRight, place) / sigmoid(flowRight, 0)
    : sigmoid(flowLeft, place) / sigmoid(flowLeft, 0);
}

/**
 * Flow coefficient at free delivery over that at best static efficiency.
 *
 * @returns 1: the limit of `genericFlowRatio` where no pressure is left
 * @example genericFreeFlowRatio() // 1.7707 ± 5e-4
 * @source energyplus-engineering-reference fan component model
 */
export function genericFreeFlowRatio(): number {
  return genericFanShape.flowRight.scale / sigmoid(genericFanShape.flowRight, 0);
}

function sigmoid(of: { readonly scale: number; readonly middle: number; readonly width: number }, x: number): number {
  return of.scale / (1 + Math.exp((of.middle - x) / of.width));
}
