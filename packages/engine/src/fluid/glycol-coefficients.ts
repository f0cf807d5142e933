/** Coefficients of one glycol: base concentration (% by mass) and temperature (°C), then 18 terms of each property. */
export interface GlycolCoefficients {
  readonly concentration: number;
  readonly temperature: number;
  readonly freezePoint: readonly number[]; // °C
  readonly density: readonly number[]; // kg/m³
  readonly specificHeat: readonly number[]; // J/kg K
  readonly conductivity: readonly number[]; // W/mK
  readonly viscosity: readonly number[]; // ln(mPa·s)
}

/** Melinder 2010, ethylene glycol in water; terms ordered as in `glycolProperty`. */
export const ETHYLENE_GLYCOL: GlycolCoefficients = {
  concentration: 30.8462,
  temperature: 31.728,
  freezePoint: [
    -15.25, -1.566e-6, -2.278e-7, 2.169e-9, -0.808, -1.339e-6, 2.047e-8, -2.717e-11, -0.01334, 6.322e-8, 2.373e-10,
    -2.183e-12, -7.293e-5, 1.764e-9, -2.442e-11, 1.006e-6, -7.662e-11, 1.14e-9,
  ],
  density: [
    1034, -0.4781, -0.002692, 4.725e-6, 1.311, -0.006876, 4.805e-5, 1.69e-8, 7.49e-5, 7.855e-5, -3.995e-7, 4.982e-9,
    -0.0001062, 1.229e-6, -1.153e-8, -9.623e-7, -7.211e-8, 4.891e-8,
  ],
  specificHeat: [
    3737, 2.93, -0.004675, -1.389e-5, -17.99, 0.1046, -0.0004147, 1.847e-7, -0.09933, 0.0003516, 5.109e-6, -7.138e-8,
    0.00261, -1.189e-6, -1.643e-7, 1.537e-5, -4.272e-7, -1.618e-6,
  ],
  conductivity: [
    0.472, 0.0008903, -1.058e-6, -2.789e-9, -0.004286, -1.473e-5, 1.059e-7, -1.142e-10, 1.747e-5, 6.814e-8, -3.612e-9,
    2.365e-12, 3.017e-8, -2.412e-9, 4.004e-11, -1.322e-9, 2.555e-11, 2.678e-11,
  ],
  viscosity: [
    0.4705, -0.0255, 0.0001782, -7.669e-7, 0.02471, -0.0001171, 1.052e-6, -1.634e-8, 3.328e-6, 1.086e-6, 1.051e-8,
    -6.475e-10, 1.659e-6, 3.157e-9, 4.063e-10, 3.089e-8, 1.831e-10, -1.865e-9,
  ],
};

/** Melinder 2010, propylene glycol in water; terms ordered as in `glycolProperty`. */
export const PROPYLENE_GLYCOL: GlycolCoefficients = {
  concentration: 30.7031,
  temperature: 32.7083,
  freezePoint: [
    -13.25, -3.82e-5, 7.865e-7, -1.733e-9, -0.6631, 6.774e-6, -6.242e-8, -7.819e-10, -0.01094, 5.332e-8, -4.169e-9,
    3.288e-11, -0.0002283, -1.131e-8, 1.918e-10, -3.409e-6, 8.035e-11, 1.465e-8,
  ],
  density: [
    1018, -0.5406, -0.002666, 1.347e-5, 0.7604, -0.00945, 5.541e-5, -1.343e-7, -0.002498, 2.7e-5, -4.018e-7, 3.376e-9,
    -0.000155, 2.829e-6, -7.175e-9, -1.131e-6, -2.221e-8, 2.342e-8,
  ],
  specificHeat: [
    3882, 2.699, -0.001659, -1.032e-5, -13.04, 0.0507, -4.752e-5, 1.522e-6, -0.1598, 9.534e-5, 1.167e-5, -4.87e-8,
    0.0003539, 3.102e-5, -2.95e-7, 5e-5, -7.135e-7, -4.959e-7,
  ],
  conductivity: [
    0.4513, 0.0007955, 3.482e-8, -5.966e-9, -0.004795, -1.678e-5, 8.941e-8, 1.493e-10, 2.076e-5, 1.563e-7, -4.615e-9,
    9.897e-12, -9.083e-8, -2.518e-9, 6.543e-11, -5.952e-10, -3.605e-11, 2.104e-11,
  ],
  viscosity: [
    0.6837, -0.03045, 0.0002525, -1.399e-6, 0.03328, -0.0003984, 4.332e-6, -1.86e-8, 5.453e-5, -8.6e-8, -1.593e-8,
    -4.465e-11, -3.9e-6, 1.054e-7, -1.589e-9, -1.587e-8, 4.475e-10, 3.564e-9,
  ],
};
