/** The step of 1, 2 or 5 times a power of ten that cuts `span` into about `count` pieces, and no fewer than half as many. */
export function niceStep(span: number, count: number): number {
  if (!(span > 0) || !(count > 0)) throw new RangeError(`a span of ${span} cannot be cut into ${count} pieces`);
  const rough = span / count;
  const power = 10 ** Math.floor(Math.log10(rough));
  const share = rough / power;
  // Limits are the geometric means of neighbouring steps, so that the chosen one is nearest by ratio.
  if (share < Math.SQRT2) return power;
  if (share < Math.sqrt(10)) return 2 * power;
  return share < Math.sqrt(50) ? 5 * power : 10 * power;
}

/** The multiples of `step` from `low` to `high`, both included when they are multiples. */
export function multiples(low: number, high: number, step: number): readonly number[] {
  const first = Math.ceil(low / step - 1e-9);
  const last = Math.floor(high / step + 1e-9);
  const values: number[] = [];
  for (let index = first; index <= last; index += 1) values.push(clean(index * step, step));
  return values;
}

/** A range grown to multiples of a nice step, with its ticks. */
export interface NiceRange {
  readonly low: number;
  readonly high: number;
  readonly step: number;
  readonly ticks: readonly number[];
}

/** Grows `low`…`high` to a nice range; a range without width is opened by `least`. */
export function niceRange(low: number, high: number, count: number, least: number): NiceRange {
  const middle = (low + high) / 2;
  const half = Math.max((high - low) / 2, least / 2);
  const step = niceStep(2 * half, count);
  const from = clean(Math.floor((middle - half) / step + 1e-9) * step, step);
  const to = clean(Math.ceil((middle + half) / step - 1e-9) * step, step);
  return { low: from, high: to, step, ticks: multiples(from, to, step) };
}

/** A tick's number as text, with as many decimals as its step needs and a true minus sign. */
export function tickText(value: number, step: number): string {
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  return value.toFixed(decimals).replace("-", "−");
}

/** Takes off the rounding noise of a product with a step. */
function clean(value: number, step: number): number {
  const decimals = Math.max(0, 2 - Math.floor(Math.log10(step)));
  return Number(value.toFixed(Math.min(decimals, 15))) + 0;
}
