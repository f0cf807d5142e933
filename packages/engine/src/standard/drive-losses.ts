/** Coefficients of a share of efficiency x ↦ a·x/(b + x) + c·x at one rated power. */
export interface PartLoadRow {
  readonly horsepower: number;
  readonly a: number;
  readonly b: number;
  readonly c: number;
}

/** Efficiency of four-pole motors over their best efficiency, against the share of rated shaft power. */
export const motorPartLoad = {
  rows: [
    { horsepower: 1, a: 1.092165, b: 0.08206, c: -0.0072 },
    { horsepower: 5, a: 1.223684, b: 0.08467, c: -0.135186 },
    { horsepower: 10, a: 1.146258, b: 0.045766, c: -0.110367 },
    { horsepower: 25, a: 1.137209, b: 0.050236, c: -0.08915 },
    { horsepower: 50, a: 1.088803, b: 0.029753, c: -0.064058 },
    { horsepower: 75, a: 1.07714, b: 0.029005, c: -0.04935 },
    { horsepower: 100, a: 1.035294, b: 0.012948, c: -0.024708 },
    { horsepower: 125, a: 1.030968, b: 0.010696, c: -0.023514 },
  ] satisfies readonly PartLoadRow[],
  source: "energyplus-engineering-reference fan component model, motor part load",
  certainty: "read",
} as const;

/** Efficiency of variable-frequency speed controls against the share of rated output power. */
export const speedControlEfficiency = {
  rows: [
    { horsepower: 3, a: 0.978856, b: 0.034247, c: -0.007862 },
    { horsepower: 5, a: 0.977485, b: 0.028413, c: -0.002733 },
    { horsepower: 10, a: 0.978715, b: 0.022227, c: 0.001941 },
    { horsepower: 20, a: 0.984973, b: 0.017545, c: -0.000475 },
    { horsepower: 30, a: 0.987405, b: 0.015536, c: -0.005937 },
    { horsepower: 50, a: 0.98791, b: 0.018376, c: -0.001692 },
    { horsepower: 60, a: 0.971904, b: 0.014537, c: 0.011849 },
    { horsepower: 75, a: 0.991874, b: 0.017897, c: -0.001301 },
    { horsepower: 100, a: 0.982384, b: 0.012598, c: 0.001405 },
    { horsepower: 200, a: 0.984476, b: 0.009828, c: -0.00456 },
  ] satisfies readonly PartLoadRow[],
  source: "energyplus-engineering-reference fan component model, variable-frequency drive",
  certainty: "read",
} as const;

/**
 * V-belt drives: natural logarithm of efficiency as a polynomial in the natural logarithm of the horsepower passed on;
 * the three curves are the upper edge, middle and lower edge of the band of the published chart.
 */
export const beltEfficiency = {
  high: [-0.06502, 0.02475, -0.006841, 0.0009383, -5.168e-5],
  medium: [-0.09504, 0.03415, -0.008897, 0.001159, -6.132e-5],
  low: [-0.1422, 0.05112, -0.01353, 0.001814, -9.909e-5],
  source: "energyplus-engineering-reference fan component model, belt; after amca-203",
  certainty: "read",
} as const;
