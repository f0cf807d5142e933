/** Unknowns, what is still wrong with them, and what is known of how they hang together. Owned by the caller. */
export interface QuasiNewton {
  /** The unknowns where the next values are wanted. */
  readonly at: Float64Array;
  /** Change of value i with unknown j, at i·n + j; set by the caller before the first step, improved by every step. */
  readonly slopes: Float64Array;
  /** Values and step of the last call. */
  readonly value: Float64Array;
  readonly step: Float64Array;
  /** Room for the elimination. */
  readonly work: Float64Array;
  /** Steps since the start. */
  steps: number;
}

/**
 * Room for as many unknowns as values.
 *
 * @param count count, 1…8: unknowns
 * @returns record: all zero
 * @outside works for more, at the cube of their number
 * @example createQuasiNewton(2).slopes.length // 4
 * @source definition
 */
export function createQuasiNewton(count: number): QuasiNewton {
  return {
    at: new Float64Array(count),
    slopes: new Float64Array(count * count),
    value: new Float64Array(count),
    step: new Float64Array(count),
    work: new Float64Array(count * (count + 1)),
    steps: 0,
  };
}

/**
 * One step towards the unknowns at which all values are zero. From the second step on the slopes are first corrected by
 * what the step before has shown (Broyden's update). The unknowns should be of one size.
 *
 * @param state record: `at` is where the values were found and is moved; set `steps` to 0 to start anew
 * @param value list: the values there
 * @param most same unit as the unknowns, above 0: longest change of one unknown; a longer step is shortened as a whole
 * @returns flag: false where the slopes do not determine the step; nothing is moved then
 * @outside a longest change of 0 moves nothing
 * @example (() => { const state = createQuasiNewton(1); state.at[0] = 3; state.slopes[0] = 2; quasiNewtonStep(state, [4], 10);
 *   return state.at[0]; })() // 1
 * @source broyden-1965
 */
export function quasiNewtonStep(state: QuasiNewton, value: ArrayLike<number>, most: number): boolean {
  const { at, slopes, value: before, step, work } = state;
  const n = at.length;
  if (state.steps > 0) correctSlopes(slopes, step, before, value);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) work[i * (n + 1) + j] = slopes[i * n + j]!;
    work[i * (n + 1) + n] = -value[i]!;
  }
  if (!eliminate(work, n)) return false;
  let longest = 0;
  for (let i = 0; i < n; i++) longest = Math.max(longest, Math.abs(work[i * (n + 1) + n]!));
  if (!Number.isFinite(longest)) return false;
  const share = longest > most ? most / longest : 1;
  for (let i = 0; i < n; i++) {
    step[i] = share * work[i * (n + 1) + n]!;
    before[i] = value[i]!;
    at[i]! += step[i]!;
  }
  state.steps++;
  return true;
}

/** Broyden's update: along the step the slopes become what was seen, across it they stay. */
function correctSlopes(slopes: Float64Array, step: Float64Array, before: Float64Array, value: ArrayLike<number>): void {
  const n = step.length;
  let square = 0;
  for (let j = 0; j < n; j++) square += step[j]! * step[j]!;
  if (square === 0) return;
  for (let i = 0; i < n; i++) {
    let told = 0;
    for (let j = 0; j < n; j++) told += slopes[i * n + j]! * step[j]!;
    const miss = (value[i]! - before[i]! - told) / square;
    for (let j = 0; j < n; j++) slopes[i * n + j]! += miss * step[j]!;
  }
}

/** Solves the n rows of n + 1 in place, the answers in the last column; false where a pivot vanishes. */
function eliminate(rows: Float64Array, n: number): boolean {
  const w = n + 1;
  for (let k = 0; k < n; k++) {
    let pivot = k;
    for (let i = k + 1; i < n; i++) {
      if (Math.abs(rows[i * w + k]!) > Math.abs(rows[pivot * w + k]!)) pivot = i;
    }
    const diagonal = rows[pivot * w + k]!;
    if (!(Math.abs(diagonal) > 1e-12)) return false;
    for (let j = k; j < w; j++) {
      const held = rows[pivot * w + j]! / diagonal;
      rows[pivot * w + j] = rows[k * w + j]!;
      rows[k * w + j] = held;
    }
    for (let i = 0; i < n; i++) {
      const share = rows[i * w + k]!;
      if (i === k || share === 0) continue;
      for (let j = k; j < w; j++) rows[i * w + j]! -= share * rows[k * w + j]!;
    }
  }
  return true;
}
