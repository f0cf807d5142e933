/** A table of pairs with its slopes, ready for `interpolate`. */
export interface Table {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly slope: Float64Array;
}

/**
 * Prepares a table for monotone cubic interpolation: between two entries the curve never leaves their range, so a table
 * that rises gives a curve that rises. Slopes by the weighted harmonic mean of Fritsch and Butland.
 *
 * @param x list, strictly rising: the arguments
 * @param y list, as long as x: the values
 * @returns record: the table, for `interpolate`
 * @outside throws
 * @throws RangeError when there are fewer than two pairs, lengths differ, a value is not finite or x does not rise
 * @example interpolate(monotoneTable([0, 1, 2], [0, 1, 4]), 1) // 1
 * @source fritsch-butland-1984 eq. 5
 */
export function monotoneTable(x: readonly number[], y: readonly number[]): Table {
  const count = x.length;
  if (count < 2) throw new RangeError(`monotoneTable: ${count} pairs; at least two are needed`);
  if (y.length !== count) throw new RangeError(`monotoneTable: ${count} arguments but ${y.length} values`);
  for (let i = 0; i < count; i++) {
    if (!Number.isFinite(x[i]) || !Number.isFinite(y[i])) {
      throw new RangeError(`monotoneTable: pair ${i + 1} is (${x[i]}, ${y[i]}); finite numbers are needed`);
    }
    if (i > 0 && !(x[i]! > x[i - 1]!)) {
      throw new RangeError(`monotoneTable: argument ${i + 1} (${x[i]}) does not rise above ${x[i - 1]}`);
    }
  }
  const slope = new Float64Array(count);
  const secant = (i: number) => (y[i + 1]! - y[i]!) / (x[i + 1]! - x[i]!);
  for (let i = 1; i < count - 1; i++) {
    const before = secant(i - 1);
    const after = secant(i);
    if (before * after <= 0) continue;
    const left = x[i]! - x[i - 1]!;
    const right = x[i + 1]! - x[i]!;
    const weight = (left + 2 * right) / (3 * (left + right));
    slope[i] = (before * after) / (weight * after + (1 - weight) * before);
  }
  slope[0] = endSlope(secant(0), slope[1]!);
  slope[count - 1] = endSlope(secant(count - 2), slope[count - 2]!);
  if (count === 2) slope.fill(secant(0));
  return { x: Float64Array.from(x), y: Float64Array.from(y), slope };
}

/** Slope at an end that makes the end piece as straight as it can be without losing monotony. */
function endSlope(secant: number, inner: number): number {
  const slope = (3 * secant - inner) / 2;
  if (slope * secant <= 0) return 0;
  return Math.abs(slope) > 3 * Math.abs(secant) ? 3 * secant : slope;
}

/**
 * Value of a monotone table.
 *
 * @param table record: made by `monotoneTable`
 * @param value same unit as the arguments, the table's range: where to read
 * @returns same unit as the values: the interpolated value
 * @outside holds the first or last value; who needs to know compares with the ends of `table.x`
 * @example interpolate(monotoneTable([0, 1, 3], [2, 4, 8]), 2) // 6 ± 1e-12
 * @source fritsch-butland-1984 eq. 5
 */
export function interpolate(table: Table, value: number): number {
  const { x, y, slope } = table;
  const last = x.length - 1;
  if (value <= x[0]!) return y[0]!;
  if (value >= x[last]!) return y[last]!;
  let low = 0;
  let high = last;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (x[middle]! <= value) low = middle;
    else high = middle;
  }
  const width = x[high]! - x[low]!;
  const s = (value - x[low]!) / width;
  const rest = 1 - s;
  return (
    rest * rest * ((1 + 2 * s) * y[low]! + s * width * slope[low]!) +
    s * s * ((3 - 2 * s) * y[high]! - rest * width * slope[high]!)
  );
}
