/**
 * A polynomial that stands in for a smooth function on an interval. Coefficients are for powers of
 * `x = (value − middle) × scale`, so that evaluation is one Horner chain.
 */
export interface Fit {
  readonly low: number;
  readonly high: number;
  readonly middle: number;
  readonly scale: number;
  readonly coefficients: Float64Array;
}

/**
 * Fits a smooth function by interpolation at Chebyshev points, which keeps the error within a small factor of the best
 * polynomial of that degree. Meant for equations that are too slow for the hot path; degrees up to about 14.
 *
 * @param f function: the smooth function to stand in for
 * @param low same unit as the argument of f, any: lower end of the interval
 * @param high same unit as the argument of f, above low: upper end of the interval
 * @param degree count, 1…16: degree of the polynomial
 * @returns record: the fit, for `evaluateFit`
 * @outside the polynomial extrapolates; its error grows fast beyond the interval
 * @throws RangeError when the interval is empty or the degree is not 1…16
 * @example evaluateFit(chebyshevFit(Math.exp, 0, 1, 10), 0.5) // 1.6487212707 ± 1e-10
 * @source boyd-2001 ch. 4
 */
export function chebyshevFit(f: (value: number) => number, low: number, high: number, degree: number): Fit {
  if (!(high > low)) throw new RangeError(`chebyshevFit: the interval ${low}…${high} is empty`);
  if (!(degree >= 1 && degree <= 16)) throw new RangeError(`chebyshevFit: degree ${degree} is not 1…16`);
  const middle = (low + high) / 2;
  const scale = 2 / (high - low);
  const count = degree + 1;
  const values = new Float64Array(count);
  for (let k = 0; k < count; k++) values[k] = f(middle + Math.cos((Math.PI * (k + 0.5)) / count) / scale);
  const coefficients = new Float64Array(count);
  // Powers of x of the Chebyshev polynomials T(j−1) and T(j), by their recurrence.
  let before = new Float64Array(count);
  let current = new Float64Array(count);
  before[1] = 1; // T(−1) = T(1) = x
  current[0] = 1;
  for (let j = 0; j < count; j++) {
    let weight = 0;
    for (let k = 0; k < count; k++) weight += values[k]! * Math.cos((Math.PI * j * (k + 0.5)) / count);
    weight *= (j === 0 ? 1 : 2) / count;
    const next = new Float64Array(count);
    for (let i = 0; i < count; i++) {
      coefficients[i]! += weight * current[i]!;
      next[i] = 2 * (i > 0 ? current[i - 1]! : 0) - before[i]!;
    }
    before = current;
    current = next;
  }
  return { low, high, middle, scale, coefficients };
}

/**
 * Value of a fit.
 *
 * @param fit record: a fit made by `chebyshevFit`
 * @param value same unit as the fitted argument, the fitted interval: where to evaluate
 * @returns same unit as the fitted function: value of the polynomial
 * @outside extrapolates the polynomial
 * @example evaluateFit(chebyshevFit((x) => x * x, 0, 2, 2), 1.5) // 2.25 ± 1e-12
 * @source boyd-2001 ch. 4
 */
export function evaluateFit(fit: Fit, value: number): number {
  const { coefficients } = fit;
  const x = (value - fit.middle) * fit.scale;
  let sum = 0;
  for (let i = coefficients.length - 1; i >= 0; i--) sum = sum * x + coefficients[i]!;
  return sum;
}
