/**
 * Error function, by the series of positive terms 2/√π · e^(−x²) · Σ 2ⁿ x^(2n+1) / (1·3·5…(2n+1)).
 *
 * @param value 1, any: the argument
 * @returns 1: erf of the argument, −1…1
 * @outside beyond ±6 the result is ±1, which it is to the last bit
 * @example errorFunction(0.5) // 0.5204998778130465 ± 1e-14
 * @source abramowitz-stegun-1964 eq. 7.1.6
 */
export function errorFunction(value: number): number {
  const x = Math.abs(value);
  if (x > 6) return Math.sign(value);
  let term = x;
  let sum = x;
  for (let n = 1; term > sum * 1e-17; n++) {
    term *= (2 * x * x) / (2 * n + 1);
    sum += term;
  }
  return (Math.sign(value) * 2 * Math.exp(-x * x) * sum) / Math.sqrt(Math.PI);
}
