/**
 * Losses of a fan that stands otherwise than in its test. Coefficients of velocity pressure: those of the inlet belong
 * to the velocity in the wheel's inlet, those of the outlet to the velocity in the fan's outlet. All are recalled from
 * AMCA 201 and not re-read: they are shown with this mark and decide no verdict.
 */
export const fanSystemEffect = {
  /** Free distance in front of an inlet, in wheel diameters, against the coefficient of its velocity pressure. */
  inletClearance: [
    { diameters: 0.3, coefficient: 0.8 },
    { diameters: 0.4, coefficient: 0.53 },
    { diameters: 0.5, coefficient: 0.4 },
    { diameters: 0.75, coefficient: 0.22 },
    { diameters: 1, coefficient: 0 },
  ],
  /** Outlet without a straight duct (share 0), with 12, 25, 50 % and all of the effective duct length: by blast area ratio. */
  outlet: {
    effectiveShare: [0, 0.12, 0.25, 0.5, 1],
    rows: [
      { blastAreaRatio: 0.4, coefficients: [2, 1, 0.4, 0.18, 0] },
      { blastAreaRatio: 0.5, coefficients: [2, 1, 0.4, 0.18, 0] },
      { blastAreaRatio: 0.6, coefficients: [1, 0.67, 0.33, 0.14, 0] },
      { blastAreaRatio: 0.7, coefficients: [0.8, 0.4, 0.18, 0, 0] },
      { blastAreaRatio: 0.8, coefficients: [0.47, 0.22, 0.1, 0, 0] },
      { blastAreaRatio: 0.9, coefficients: [0.22, 0.18, 0, 0, 0] },
      { blastAreaRatio: 1, coefficients: [0, 0, 0, 0, 0] },
    ],
  },
  /** Effective duct length: this many equivalent diameters up to the velocity (m/s), one more for each step above. */
  effectiveDuct: { diameters: 2.5, upTo: 12.7, step: 5.08 },
  source: "amca-201",
  certainty: "from memory",
} as const;
