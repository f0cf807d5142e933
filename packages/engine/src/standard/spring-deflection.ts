/** Least static deflection of a fan's springs, inches, for one range of speed. */
export interface SpringDeflectionRow {
  /** rev/min up to which the row holds. */
  readonly upTo: number;
  readonly slab: number;
  readonly span20Feet: number;
  readonly span30Feet: number;
  readonly span40Feet: number;
}

/**
 * Least spring deflections of fans in the handbook's table on vibration: on a slab on grade and on floors spanning 20, 30
 * and 40 ft. Rows are recalled; the series 0.75 … 4.5 in and the rule for large motors were read.
 */
export const springDeflections = {
  rows: [
    { upTo: 300, slab: 2.5, span20Feet: 2.5, span30Feet: 3.5, span40Feet: 3.5 },
    { upTo: 500, slab: 0.75, span20Feet: 1.75, span30Feet: 2.5, span40Feet: 3.5 },
    { upTo: Number.POSITIVE_INFINITY, slab: 0.75, span20Feet: 1, span30Feet: 1.75, span40Feet: 2.5 },
  ] satisfies readonly SpringDeflectionRow[],
  /** Motors of this many hp and more take the next longer span, and at least this deflection (inches). */
  largeMotor: { horsepower: 60, deflection: 2.5 },
  source: "ashrae-applications-noise-vibration",
  certainty: "from memory",
} as const;
