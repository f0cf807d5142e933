import type { FinnedBank } from "./finned-bank.ts";

/** One variable of a correlation's published range. */
export interface RangeLimit {
  readonly what: string;
  readonly low: number;
  readonly high: number;
  readonly value: (bank: FinnedBank, reynolds: number) => number;
}

/**
 * A limit of the Reynolds number with the collar diameter.
 *
 * @param low number, 0…50000: least
 * @param high number, 0…50000: most
 * @returns record: the limit
 * @outside keeps what is given
 * @example reynolds(300, 8000).value({}, 500) // 500
 * @source definition
 */
export function reynolds(low: number, high: number): RangeLimit {
  return { what: "Reynolds number", low, high, value: (_bank, number) => number };
}

/**
 * What makes limits of a figure of the bank.
 *
 * @param what text: the figure
 * @param value function: of the bank
 * @returns function: least and most to the limit
 * @example limitOf("rows", (bank) => bank.rows)(1, 6).value({ rows: 4 }) // 4
 * @source definition
 */
export function limitOf(what: string, value: (bank: FinnedBank) => number) {
  return (low: number, high: number): RangeLimit => ({ what, low, high, value });
}

/** Limits of the bank's own figures, m where they are lengths. */
export const rows = limitOf("rows", (bank) => bank.rows);
export const collar = limitOf("collar diameter, m", (bank) => bank.collarDiameter);
export const pitch = limitOf("fin pitch, m", (bank) => bank.finPitch);
export const across = limitOf("transverse pitch, m", (bank) => bank.transversePitch);
export const along = limitOf("longitudinal pitch, m", (bank) => bank.longitudinalPitch);
export const acrossTubes = limitOf(
  "transverse pitch over diameter",
  (bank) => bank.transversePitch / bank.collarDiameter,
);
export const alongTubes = limitOf(
  "longitudinal pitch over diameter",
  (bank) => bank.longitudinalPitch / bank.collarDiameter,
);
export const gapTubes = limitOf(
  "fin gap over diameter",
  (bank) => (bank.finPitch - bank.finThickness) / bank.collarDiameter,
);
