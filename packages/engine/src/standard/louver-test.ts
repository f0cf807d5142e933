import { inch } from "./inch.ts";

/** What the still-air water test of louvers measures. */
export const louverWaterTest = {
  source: "amca-500-l",
  certainty: "read second-hand",
  /** m, width and height of the sample. */
  sampleSide: 48 * inch,
  /** kg/m² of free area collected in `duration`: the beginning of water penetration (0.01 oz/ft²). */
  beginning: (0.01 * 0.028349523125) / 0.09290304,
  /** s. */
  duration: 900,
  /** kg/s m² of rain that falls, 4 in/h. */
  rain: (4 * inch * 1000) / 3600,
  /** m/s of free-area velocity at which the test ends, 1250 fpm. */
  highestVelocity: 1250 * 0.00508,
} as const;

/** Classes of the wind-driven rain test: least share of the rain that is kept out. */
export const windDrivenRainClasses = {
  source: "amca-500-l",
  /** m/s of wind, 29 mph, with 3 in/h of rain. */
  windSpeed: 29 * 0.44704,
  /** m/s of core velocity at which the test ends, 689 fpm. */
  highestCoreVelocity: 689 * 0.00508,
  /** Class D is from memory, the others read second-hand. */
  rejection: { A: 0.99, B: 0.95, C: 0.8, D: 0.5 },
} as const;
