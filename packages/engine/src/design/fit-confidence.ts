import type { LeastSquaresFit } from "#numerics/least-squares";

/** Bounds that hold a fitted multiplier with 95 % confidence, as far as the scatter of the points tells. */
export interface Bounds {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** The multipliers of a fit in their logarithms, each with its bounds by Student's distribution. */
export function boundsOf(fit: LeastSquaresFit): Bounds[] {
  const degrees = fit.residuals.length - fit.values.length;
  const variance = fit.residuals.reduce((sum, each) => sum + each * each, 0) / degrees;
  return fit.values.map((logarithm, i) => {
    const spread = Math.sqrt(variance * (fit.inverse?.[i]?.[i] ?? Number.POSITIVE_INFINITY));
    const halfWidth = studentFactor(degrees) * spread;
    const value = Math.exp(logarithm);
    return { value, low: value * Math.exp(-halfWidth), high: value * Math.exp(halfWidth) };
  });
}

/** Shares: root mean square, mean of sizes and largest of errors. */
export interface FitErrors {
  readonly scatter: number;
  readonly meanSize: number;
  readonly largest: number;
}

/** Errors of fitted over measured. */
export function errorsOf(points: readonly { readonly fitted: number; readonly measured: number }[]): FitErrors {
  const errors = points.map(({ fitted, measured }) => fitted / measured - 1);
  const sizes = errors.map(Math.abs);
  return {
    scatter: Math.sqrt(errors.reduce((sum, each) => sum + each * each, 0) / errors.length),
    meanSize: sizes.reduce((sum, each) => sum + each, 0) / sizes.length,
    largest: Math.max(...sizes),
  };
}

/** Two-sided 95 % points of Student's distribution by degrees of freedom, from memory; the next lower number stands. */
const student: readonly (readonly [number, number])[] = [
  [1, 12.71],
  [2, 4.303],
  [3, 3.182],
  [4, 2.776],
  [5, 2.571],
  [6, 2.447],
  [7, 2.365],
  [8, 2.306],
  [10, 2.228],
  [15, 2.131],
  [20, 2.086],
  [30, 2.042],
  [60, 2.0],
];

function studentFactor(degrees: number): number {
  return student.findLast(([at]) => at <= degrees)?.[1] ?? Number.POSITIVE_INFINITY;
}
