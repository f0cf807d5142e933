/**
 * Newton step on the liquid temperatures: elimination with row exchange; the new temperatures are held between two ends.
 * Matrix and imbalance are used up.
 *
 * @param n count, 1…16: levels
 * @param matrix list: n × n, d imbalance of a level / d temperature leaving a level
 * @param imbalance list: K, of the levels from index 1
 * @param liquid list: °C, from the inlet at index 0; corrected in place
 * @param low °C, -60…200: no temperature goes below
 * @param high °C, -60…200: or above
 * @param step share, 0.1…1: how much of the step is taken
 * @outside keeps answering
 * @example (() => { const t = [5, 8, 9]; correctLiquid(2, [2, 1, 1, 3], [0, 4, 7], t, 0, 20, 1); return t[2]; })() // 7 ± 1e-12
 * @source definition Gaussian elimination
 */
export function correctLiquid(
  n: number,
  matrix: Float64Array,
  imbalance: Float64Array,
  liquid: Float64Array,
  low: number,
  high: number,
  step: number,
): void {
  for (let k = 0; k < n; k++) {
    let pivot = k;
    for (let i = k + 1; i < n; i++) {
      if (Math.abs(matrix[i * n + k]!) > Math.abs(matrix[pivot * n + k]!)) pivot = i;
    }
    if (pivot !== k) exchangeRows(matrix, imbalance, n, k, pivot);
    const diagonal = matrix[k * n + k]!;
    for (let i = k + 1; i < n; i++) {
      const share = matrix[i * n + k]! / diagonal;
      if (share === 0) continue;
      for (let j = k + 1; j < n; j++) matrix[i * n + j]! -= share * matrix[k * n + j]!;
      imbalance[i + 1]! -= share * imbalance[k + 1]!;
    }
  }
  for (let k = n - 1; k >= 0; k--) {
    let sum = imbalance[k + 1]!;
    for (let j = k + 1; j < n; j++) sum -= matrix[k * n + j]! * imbalance[j + 1]!;
    imbalance[k + 1] = sum / matrix[k * n + k]!;
    liquid[k + 1] = Math.min(high, Math.max(low, liquid[k + 1]! - step * imbalance[k + 1]!));
  }
}

function exchangeRows(matrix: Float64Array, right: Float64Array, n: number, a: number, b: number): void {
  for (let j = 0; j < n; j++) {
    const held = matrix[a * n + j]!;
    matrix[a * n + j] = matrix[b * n + j]!;
    matrix[b * n + j] = held;
  }
  const held = right[a + 1]!;
  right[a + 1] = right[b + 1]!;
  right[b + 1] = held;
}
