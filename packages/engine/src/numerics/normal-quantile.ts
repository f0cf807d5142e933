import { errorFunction } from "./error-function.ts";

/**
 * Standard deviations below which a share of a normal distribution lies: Newton's method on the error function.
 *
 * @param share 1, 0.000001…0.999999: the share below
 * @returns 1: standard deviations from the mean
 * @outside clamps the share to its range
 * @example normalQuantile(0.975) // 1.959963985 ± 1e-8
 * @source abramowitz-stegun-1964 eq. 26.2.29
 */
export function normalQuantile(share: number): number {
  const wanted = Math.min(0.999999, Math.max(0.000001, share));
  let value = 0;
  for (let step = 0; step < 60; step++) {
    const below = (1 + errorFunction(value / Math.SQRT2)) / 2;
    const density = Math.exp(-(value * value) / 2) / Math.sqrt(2 * Math.PI);
    // Far out the curve is flat: a step is kept within one deviation.
    const change = Math.max(-1, Math.min(1, (wanted - below) / density));
    value += change;
    if (Math.abs(change) < 1e-12) break;
  }
  return value;
}
