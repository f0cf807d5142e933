/**
 * Constants of the fan energy index: the reference fan of AMCA 208, whose shaft power is
 * (flow + flow constant)·(pressure + pressure constant · density ratio) / (6343 · reference efficiency) in cfm, in.wg, hp.
 * The form with total pressure was read; the reference efficiency on static pressure is from memory.
 */
export const fanEnergyIndex = {
  flowConstant: 250,
  pressureConstant: 0.4,
  airPowerDivisor: 6343,
  totalEfficiency: 0.66,
  staticEfficiency: 0.6,
  /** Density of the reference, lb/ft³. */
  standardDensity: 0.075,
  transmission: { factor: 0.96, offset: 2.2, exponent: 0.05 },
  /** Polynomial of the reference motor's efficiency in log10(kW), highest power first, and its value above 185 kW. */
  motor: { coefficients: [-0.003812, 0.025834, -0.072577, 0.125559, 0.850274], above: 0.962, limit: 185 },
  source: "amca-208; form read in doe-measur",
} as const;
