/**
 * Root of a continuous function between two values of opposite sign, by Brent's method: inverse quadratic or secant
 * steps while they do well, halving when they do not. Never leaves the bracket.
 *
 * @param f function: continuous, with opposite signs (or a zero) at the two ends
 * @param low same unit as the argument of f, any: one end of the bracket
 * @param high same unit as the argument of f, any: the other end of the bracket
 * @param tolerance same unit as the argument of f, 0 or more: half-width of the bracket that is good enough; 0 asks for the last bit
 * @returns same unit as the argument of f: the root
 * @outside throws
 * @throws RangeError when f has the same sign at both ends, or gives a value that is not a number
 * @example findRoot((x) => x * x - 2, 0, 2, 1e-12) // 1.41421356237 ± 1e-11
 * @source brent-1973 ch. 4
 */
export function findRoot(f: (value: number) => number, low: number, high: number, tolerance: number): number {
  // b is the best estimate, [b, c] brackets the root, a is the estimate before b.
  let a = low;
  let b = high;
  let fa = f(a);
  let fb = f(b);
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (!(fa * fb < 0)) {
    if (Math.sign(fa) * Math.sign(fb) !== -1) {
      throw new RangeError(`findRoot: no change of sign between ${low} (value ${fa}) and ${high} (value ${fb})`);
    }
  }
  let c = a;
  let fc = fa;
  let step = b - a;
  let stepBefore = step;
  for (let count = 0; count < 200; count++) {
    if (Math.sign(fb) === Math.sign(fc)) {
      c = a;
      fc = fa;
      step = b - a;
      stepBefore = step;
    }
    if (Math.abs(fc) < Math.abs(fb)) {
      a = b;
      b = c;
      c = a;
      fa = fb;
      fb = fc;
      fc = fa;
    }
    const enough = 2 * Number.EPSILON * Math.abs(b) + tolerance / 2;
    const half = (c - b) / 2;
    if (Math.abs(half) <= enough || fb === 0) return b;
    let quick = 0;
    if (Math.abs(stepBefore) >= enough && Math.abs(fa) > Math.abs(fb)) quick = quickStep(a, b, c, fa, fb, fc, half);
    // A quick step must stay well inside the bracket and shrink faster than halving would.
    const usable =
      quick !== 0 &&
      Math.sign(quick) === Math.sign(half) &&
      Math.abs(quick) < Math.min(1.5 * Math.abs(half) - enough / 2, Math.abs(stepBefore) / 2);
    stepBefore = usable ? step : half;
    step = usable ? quick : half;
    a = b;
    fa = fb;
    b += Math.abs(step) > enough ? step : Math.sign(half) * enough;
    fb = f(b);
    if (Number.isNaN(fb)) throw new RangeError(`findRoot: the function gives no number at ${b}`);
  }
  return b;
}

/** Secant step from two points, inverse quadratic step from three. */
function quickStep(a: number, b: number, c: number, fa: number, fb: number, fc: number, half: number): number {
  const s = fb / fa;
  if (a === c) return (2 * half * s) / (s - 1);
  const q = fa / fc;
  const r = fb / fc;
  const p = s * (2 * half * q * (q - r) - (b - a) * (r - 1));
  return -p / ((q - 1) * (r - 1) * (s - 1));
}
