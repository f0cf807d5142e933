/**
 * Shape of the curves of a backward-curved airfoil centrifugal fan, fitted to several fans by C. Wray (Lawrence
 * Berkeley National Laboratory) and published in the engineering reference of the EnergyPlus simulation engine.
 * x = log10(Eu / Eu at best static efficiency), Eu = static pressure · D⁴ / (density · flow²).
 * Efficiency over best efficiency is a skewed normal curve of x; flow coefficient over that at free delivery is a
 * sigmoid of x, `scale / (1 + exp((middle − x) / width))`, one to the right of best efficiency and one to the left.
 */
export const genericFanShape = {
  efficiency: { centre: -2.732094, width: 2.273014, growth: 0.196344, skew: 5.267518 },
  flowRight: { scale: 1.001423, middle: 0.123935, width: -0.476026 },
  flowLeft: { scale: 5.924993, middle: -1.91636, width: -0.851779 },
  /** Range of x over which the fit is used here; the published range is −4…5, but power turns implausible beyond −2. */
  smallest: -2,
  largest: 3,
  source: "energyplus-engineering-reference fan component model; curve coefficients in the input-output reference",
  certainty: "read",
} as const;
