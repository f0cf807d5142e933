/**
 * Loss coefficients of openings in the air path: Pa of total pressure over the velocity pressure in the named area.
 * Those marked from memory do not decide a verdict; a section lets the engineer enter a better figure.
 */
export interface FittingLoss {
  readonly coefficient: number;
  /** The area whose velocity the coefficient belongs to. */
  readonly area: string;
  readonly source: string;
  readonly certainty: "read" | "computed" | "from memory";
}

/** The openings that the sections use. */
export const fittingLosses = {
  /** Opening that faces down, thin lip, and the turn from it into the cabinet, without the bird screen. */
  downFacingHood: { coefficient: 1.2, area: "opening", source: "from-memory", certainty: "from memory" },
  /** Plain opening in a wall, no bell: Rennels' sharp-edged entrance. */
  flushEntry: { coefficient: 0.57, area: "opening", source: "rennels-hudson-2012", certainty: "computed" },
  /** All the velocity pressure of a stream that ends in a plenum. */
  abruptExit: { coefficient: 1, area: "opening", source: "definition", certainty: "read" },
} as const satisfies Record<string, FittingLoss>;

/** Sharp contraction: coefficient on the small area is this times (1 − small area / large area). */
export const abruptContractionFactor = { factor: 0.5, source: "idelchik-handbook", certainty: "from memory" } as const;
