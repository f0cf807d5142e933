/** Least static deflection of a fan's springs, inches, for one range of speed. */
export interface SpringDeflectionRow {
  /** rev/min up to which the row holds. */
  readonly upTo: number;
  /** Slab on grade, floors spanning 20, 30 and 40 ft. */
  readonly inches: readonly [number, number, number, number];
}

/**
 * Least spring deflections of fans in the handbook's table on vibration: on a slab on grade and on floors spanning 20, 30
 * and 40 ft. Rows are recalled; the series 0.75 … 4.5 in and the rule for large motors were read.
 */
export const springDeflections = {
  rows: [
    { upTo: 300, inches: [2.5, 2.5, 3.5, 3.5] },
    { upTo: 500, inches: [0.75, 1.75, 2.5, 3.5] },
    { upTo: Number.POSITIVE_INFINITY, inches: [0.75, 1, 1.75, 2.5] },
  ] satisfies readonly SpringDeflectionRow[],
  /** Motors of this many hp and more take the next longer span, and at least this deflection (inches). */
  largeMotor: { horsepower: 60, deflection: 2.5 },
  source: "ashrae-applications-noise-vibration",
  certainty: "from memory",
} as const;

/** Floors of the table, stiffest first. */
export const floorSpans = ["slab on grade", "20 ft", "30 ft", "40 ft"] as const;

/** One of them. */
export type FloorSpan = (typeof floorSpans)[number];
