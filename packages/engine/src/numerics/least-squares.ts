/** What least squares came to. */
export interface LeastSquaresFit {
  readonly values: readonly number[];
  readonly residuals: readonly number[];
  /** Inverse of JᵀJ at the values; undefined where the residuals do not tell the values apart. */
  readonly inverse: readonly (readonly number[])[] | undefined;
  readonly converged: boolean;
}

/**
 * Values that make the sum of squared residuals least, by damped Gauss-Newton steps with slopes from differences. For few
 * values and residuals smooth in them.
 *
 * @param residualsOf function: residuals at given values, always as many
 * @param start list: where to begin
 * @param step any, above 0: difference in a value by which slopes are taken, in the values' own unit
 * @returns record: values, residuals, inverse of the normal matrix
 * @outside says so in `converged`
 * @example leastSquares(([a, b]) => [a + b - 3, a - b - 1, a - 2], [0, 0], 1e-6).values[0] // 2 ± 1e-6
 * @source from-memory Gauss-Newton steps with a damped diagonal
 */
export function leastSquares(
  residualsOf: (values: readonly number[]) => readonly number[],
  start: readonly number[],
  step: number,
): LeastSquaresFit {
  let values = [...start];
  let residuals = residualsOf(values);
  let damping = 1e-4;
  let converged = false;
  let normal = normalMatrix(residualsOf, values, residuals, step);
  for (let count = 0; count < 60 && !converged; count++) {
    const damped = normal.matrix.map((row, i) =>
      row.map((each, j) => (i === j ? each * (1 + damping) + 1e-300 : each)),
    );
    const inverse = inverted(damped);
    if (inverse === undefined) break;
    const move = inverse.map((row) => -row.reduce((sum, each, j) => sum + each * normal.gradient[j]!, 0));
    const trial = values.map((each, i) => each + move[i]!);
    const tried = residualsOf(trial);
    const isSmall = move.every((each) => Math.abs(each) < 1e-3 * step);
    if (squares(tried) <= squares(residuals)) {
      values = trial;
      residuals = tried;
      normal = normalMatrix(residualsOf, values, residuals, step);
      damping = Math.max(1e-9, damping / 10);
    } else damping *= 10;
    converged = isSmall || squares(residuals) < 1e-24 || damping > 1e8;
  }
  return { values, residuals, inverse: inverted(normal.matrix), converged };
}

function squares(residuals: readonly number[]): number {
  return residuals.reduce((sum, each) => sum + each * each, 0);
}

function normalMatrix(
  residualsOf: (values: readonly number[]) => readonly number[],
  values: readonly number[],
  residuals: readonly number[],
  step: number,
) {
  const slopes = values.map((_, j) => {
    const ahead = residualsOf(values.map((each, k) => (k === j ? each + step : each)));
    const behind = residualsOf(values.map((each, k) => (k === j ? each - step : each)));
    return ahead.map((each, i) => (each - behind[i]!) / (2 * step));
  });
  const product = (a: readonly number[], b: readonly number[]) => a.reduce((sum, each, i) => sum + each * b[i]!, 0);
  return {
    matrix: slopes.map((a) => slopes.map((b) => product(a, b))),
    gradient: slopes.map((a) => product(a, residuals)),
  };
}

/**
 * Inverse of a small symmetric positive matrix, by elimination.
 *
 * @param matrix list: its rows
 * @returns list: rows of the inverse; undefined where it is as good as singular
 * @outside undefined
 * @example inverted([[4, 2], [2, 3]])[0][0] // 0.375 ± 1e-12
 * @source definition Gauss and Jordan
 */
export function inverted(matrix: readonly (readonly number[])[]): number[][] | undefined {
  const size = matrix.length;
  const work = matrix.map((row, i) => [...row, ...row.map((_, j) => (i === j ? 1 : 0))]);
  for (let i = 0; i < size; i++) {
    const pivot = work[i]![i]!;
    if (!(pivot > 1e-10 * matrix[i]![i]!)) return undefined;
    work[i] = work[i]!.map((each) => each / pivot);
    for (let k = 0; k < size; k++) {
      if (k === i) continue;
      const share = work[k]![i]!;
      work[k] = work[k]!.map((each, j) => each - share * work[i]![j]!);
    }
  }
  return work.map((row) => row.slice(size));
}
