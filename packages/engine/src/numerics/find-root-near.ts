/** Where a root was last, and how steep the function is there: the start of the next search. Owned by the caller. */
export interface RootGuess {
  at: number;
  slope: number;
}

/** Steps after which a start that does not lead to the root is given up. */
const mostSteps = 9;

/**
 * Root of a function that is known to rise (or to fall), from a start nearby: secant steps, the first with the slope of the
 * guess. Of two searches that follow one another the second takes two or three evaluations. Gives NaN where the steps do
 * not lead to a root at which the function runs the way that the guess says: then a search between two ends has to find it.
 *
 * @param f function: smooth near the root; the last evaluation is at the root given back
 * @param guess record: start and slope, both finite; receives root and slope there
 * @param low same unit as the argument of f, any: no evaluation below
 * @param high same unit as the argument of f, above low: or above
 * @param tolerance same unit as the value of f, above 0: value that counts as zero
 * @returns same unit as the argument of f: the root, or NaN
 * @outside a guess outside the ends, or without a slope, gives NaN without evaluation
 * @example findRootNear((x) => x * x - 2, { at: 1.4, slope: 2 }, 0, 2, 1e-10) // 1.41421356 ± 1e-8
 * @source definition secant method
 */
export function findRootNear(
  f: (value: number) => number,
  guess: RootGuess,
  low: number,
  high: number,
  tolerance: number,
): number {
  let at = guess.at;
  let { slope } = guess;
  if (!(at >= low && at <= high) || !Number.isFinite(slope) || slope === 0) return Number.NaN;
  const direction = Math.sign(slope);
  let value = f(at);
  for (let count = 0; Math.abs(value) > tolerance; count++) {
    const next = Math.min(high, Math.max(low, at - value / slope));
    if (next === at || count === mostSteps) return Number.NaN;
    const nextValue = f(next);
    // A step so small that both values are near the tolerance tells nothing of the slope.
    const seen = (nextValue - value) / (next - at);
    if (Math.abs(value) > 30 * tolerance) {
      if (Math.sign(seen) !== direction || !Number.isFinite(seen)) return Number.NaN;
      slope = seen;
    }
    at = next;
    value = nextValue;
  }
  guess.at = at;
  guess.slope = slope;
  return at;
}
