/**
 * Loss of a screen of round wires on the approach velocity: K = β (1 − α²)/α², α the open share, β by the Reynolds
 * number of the wire spacing.
 */
export const wireScreenLoss = {
  source: "blevins-1984",
  certainty: "read second-hand",
  reynolds: [20, 30, 40, 60, 80, 100, 200, 400],
  beta: [1.3, 1.1, 0.95, 0.83, 0.75, 0.7, 0.6, 0.52],
  /** Open shares for which the fit is given. */
  lowestOpenShare: 0.05,
  highestOpenShare: 0.8,
} as const;
