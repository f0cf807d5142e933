import type { CoilWork } from "./performance.ts";

/**
 * Empties the balance of the levels before a march: each level's liquid leaves as it came, and nothing moves with it yet.
 *
 * @param work record: room for the march
 * @param levels count, 1…400: levels of the coil
 * @outside levels beyond the room of `work` are left out, as typed arrays do
 * @example (() => { const w = { imbalance: new Float64Array(3), sensitivity: new Float64Array(3), elementSensitivity: new Float64Array(3),
 *   matrix: new Float64Array(4) }; clearBalance(w, 2); return w.matrix[2]; })() // -1
 * @source definition
 */
export function clearBalance(work: CoilWork, levels: number): void {
  work.imbalance.fill(0, 0, levels + 1);
  work.sensitivity.fill(0, 0, levels + 1);
  work.elementSensitivity.fill(0, 0, levels + 1);
  work.matrix.fill(0, 0, levels * levels);
  for (let l = 0; l < levels; l++) {
    work.matrix[l * levels + l] = 1;
    if (l > 0) work.matrix[l * levels + l - 1] = -1;
  }
}

/**
 * Adds the element in hand (heat and slopes in `work.element`) to its level's balance and to the matrix of the correction,
 * for the levels that the air has met so far.
 *
 * @param work record: room for the march
 * @param levels count, 1…400: levels of the coil
 * @param l count, 0…399: level of the element
 * @param first count, 0…399: first level whose leaving temperature the air knows of
 * @param end count, 0…399: the level after the last of them
 * @outside keeps answering
 * @example (() => { const w = { c: { liquidCapacity: 10, airCapacity: 5 }, element: { heat: 20, airSlope: 1, liquidSlope: 2 },
 *   imbalance: new Float64Array(3), sensitivity: new Float64Array(3), elementSensitivity: new Float64Array(3), matrix: new Float64Array(4) };
 *   addToBalance(w, 2, 1, 0, 1); return w.matrix[2]; })() // 0.2
 * @source derived-here derivative of each level's energy balance
 */
export function addToBalance(work: CoilWork, levels: number, l: number, first: number, end: number): void {
  const { c, element, sensitivity, elementSensitivity, matrix } = work;
  work.imbalance[l + 1]! -= element.heat / c.liquidCapacity;
  for (let j = first; j < end; j++) {
    // Change of this element's heat with the liquid leaving level j (index j + 1 of the temperatures).
    const change = element.airSlope * sensitivity[j]! - (j + 1 === l ? element.liquidSlope : 0);
    matrix[l * levels + j]! -= change / c.liquidCapacity;
    elementSensitivity[j]! -= change / c.airCapacity;
  }
}

/**
 * Behind a row: the air has mixed, and what its elements did to its sensitivity counts for the rows that follow.
 *
 * @param work record: room for the march
 * @param first count, 0…399: first level whose leaving temperature the air knows of
 * @param end count, 0…399: the level after the last of them
 * @outside keeps answering
 * @example (() => { const w = { sensitivity: [0.5], elementSensitivity: [0.25] }; passRow(w, 0, 1); return w.sensitivity[0]; })() // 0.75
 * @source definition
 */
export function passRow(work: CoilWork, first: number, end: number): void {
  const { sensitivity, elementSensitivity } = work;
  for (let j = first; j < end; j++) {
    sensitivity[j]! += elementSensitivity[j]!;
    elementSensitivity[j] = 0;
  }
}

/**
 * Completes the balance of the levels after a march: what the liquid's temperatures rise by, less what the heat says.
 *
 * @param work record: room for the march
 * @param levels count, 1…400: levels of the coil
 * @returns K: largest imbalance of a level
 * @outside keeps answering
 * @example largestImbalance({ liquid: [5, 8], imbalance: [0, -2] }, 1) // 1
 * @source definition
 */
export function largestImbalance(work: CoilWork, levels: number): number {
  const { liquid, imbalance } = work;
  let most = 0;
  for (let l = 1; l <= levels; l++) {
    imbalance[l]! += liquid[l]! - liquid[l - 1]!;
    most = Math.max(most, Math.abs(imbalance[l]!));
  }
  return most;
}
