/** How rain drops are spread over sizes and how fast drops and flakes fall, for what an intake lifts with it. */
export const rainDrops = {
  /** Number of drops falls as exp(−slope × diameter); slope in 1/mm = coefficient × (rain in mm/h)^exponent. */
  sizeSource: "marshall-palmer-1948",
  slopeCoefficient: 4.1,
  slopeExponent: -0.21,
  /** Fall speed in m/s = coefficient × (diameter in mm)^exponent, 0.5–5 mm, sea level. */
  fallSource: "atlas-ulbrich-1977",
  fallCoefficient: 3.78,
  fallExponent: 0.67,
  /** Fall speed goes with (air density)^−0.4. */
  densitySource: "foote-du-toit-1969",
  densityExponent: 0.4,
} as const;

/** m/s: fall speeds of unrimed flakes and aggregates lie between these. */
export const snowFallSpeed = {
  slowest: 0.5,
  fastest: 1.5,
  source: "locatelli-hobbs-1974",
  certainty: "from memory",
} as const;
