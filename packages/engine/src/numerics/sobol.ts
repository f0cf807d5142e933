/** Primitive polynomials (degree, inner coefficients) and first direction numbers of dimensions 2 to 10. */
const directions: readonly { readonly degree: number; readonly inner: number; readonly first: readonly number[] }[] = [
  { degree: 1, inner: 0, first: [1] },
  { degree: 2, inner: 1, first: [1, 3] },
  { degree: 3, inner: 1, first: [1, 3, 1] },
  { degree: 3, inner: 2, first: [1, 1, 1] },
  { degree: 4, inner: 1, first: [1, 1, 3, 3] },
  { degree: 4, inner: 4, first: [1, 3, 5, 13] },
  { degree: 5, inner: 2, first: [1, 1, 5, 5, 17] },
  { degree: 5, inner: 4, first: [1, 1, 5, 5, 5] },
  { degree: 5, inner: 7, first: [1, 1, 7, 11, 19] },
];

/** Most dimensions for which numbers are given. */
export const mostSobolDimensions = directions.length + 1;

const bits = 32;

/** Direction numbers of a dimension as 32-bit fractions. */
function directionNumbers(dimension: number): Uint32Array {
  const numbers = new Uint32Array(bits);
  if (dimension === 0) {
    for (let bit = 0; bit < bits; bit++) numbers[bit] = 2 ** (bits - 1 - bit);
    return numbers;
  }
  const { degree, inner, first } = directions[dimension - 1]!;
  for (let bit = 0; bit < bits; bit++) {
    if (bit < degree) {
      numbers[bit] = first[bit]! * 2 ** (bits - 1 - bit);
      continue;
    }
    let value = numbers[bit - degree]! ^ (numbers[bit - degree]! >>> degree);
    for (let k = 1; k < degree; k++) if ((inner >> (degree - 1 - k)) & 1) value ^= numbers[bit - k]!;
    numbers[bit] = value >>> 0;
  }
  return numbers;
}

const known = Array.from({ length: mostSobolDimensions }, (_, dimension) => directionNumbers(dimension));

/**
 * One point of the Sobol sequence, in the order of the Gray code; any point can be asked for alone. With a seed all bits of
 * a dimension are flipped by the same random word, which keeps the evenness and moves the first point off the corner.
 *
 * @param index count, 0…4294967295: place in the sequence
 * @param dimensions count, 1…10: numbers of the point
 * @param seed count, 0…4294967295: 0 leaves the sequence as it is
 * @returns list: numbers of 0 (included) to 1 (not included)
 * @outside throws
 * @throws RangeError when index, dimensions or seed is out of range
 * @example sobolPoint(3, 2, 0)[0] // 0.25
 * @source joe-kuo-2008 direction numbers new-joe-kuo-6.21201
 */
export function sobolPoint(index: number, dimensions: number, seed: number): readonly number[] {
  if (!Number.isInteger(index) || index < 0 || index >= 2 ** bits) throw new RangeError(`sobolPoint: index ${index}`);
  if (!Number.isInteger(seed) || seed < 0 || seed >= 2 ** bits) throw new RangeError(`sobolPoint: seed ${seed}`);
  if (!Number.isInteger(dimensions) || dimensions < 1 || dimensions > mostSobolDimensions) {
    throw new RangeError(`sobolPoint: ${dimensions} dimensions; 1 to ${mostSobolDimensions} are given`);
  }
  const gray = (index ^ (index >>> 1)) >>> 0;
  return Array.from({ length: dimensions }, (_, dimension) => {
    let word = seed === 0 ? 0 : scrambled(seed, dimension);
    for (let bit = 0; bit < bits; bit++) if ((gray >>> bit) & 1) word ^= known[dimension]![bit]!;
    return (word >>> 0) / 2 ** bits;
  });
}

/** A word that looks random, from seed and dimension: the finishing steps of a 32-bit hash. */
function scrambled(seed: number, dimension: number): number {
  let word = (seed + Math.imul(dimension + 1, 0x9e3779b9)) >>> 0;
  word = Math.imul(word ^ (word >>> 16), 0x85ebca6b);
  word = Math.imul(word ^ (word >>> 13), 0xc2b2ae35);
  return (word ^ (word >>> 16)) >>> 0;
}
