import { inch } from "./inch.ts";

/** Eight figures, one for each of the octave bands 63 … 8000 Hz. */
export type EightBands = readonly [number, number, number, number, number, number, number, number];

/** dB that sound loses in an unlined square turn, by frequency times width of the turn (Hz·m), up to the limit given. */
export const squareTurnLoss = {
  steps: [
    { below: 48, decibels: 0 },
    { below: 96, decibels: 1 },
    { below: 190, decibels: 5 },
    { below: 380, decibels: 8 },
    { below: 760, decibels: 4 },
    { below: Number.POSITIVE_INFINITY, decibels: 3 },
  ],
  source: "long-architectural-acoustics table 14.5",
  certainty: "read",
} as const;

/**
 * dB that sound loses in parts of an air handler which are there for another purpose, taken at the low side of what is
 * commonly found. Panels of filters of any depth; finned coils of any number of rows.
 */
export const incidentalSoundLoss: {
  readonly filters: EightBands;
  readonly coil: EightBands;
  readonly source: string;
  readonly certainty: string;
} = {
  filters: [0, 0, 1, 1, 2, 3, 4, 4],
  coil: [0, 0, 0, 1, 1, 2, 2, 3],
  source: "from-memory",
  certainty: "from memory",
};

/** Random-incidence absorption of the inside of walls: sheet metal, and mineral fibre of a thickness behind perforated metal. */
export const wallAbsorption: {
  readonly solid: EightBands;
  readonly perforated: readonly { readonly thickness: number; readonly share: EightBands }[];
  readonly source: string;
  readonly certainty: string;
} = {
  solid: [0.04, 0.04, 0.04, 0.05, 0.05, 0.05, 0.07, 0.07],
  perforated: [
    { thickness: inch, share: [0.02, 0.03, 0.22, 0.69, 0.91, 0.96, 0.99, 0.99] },
    { thickness: 2 * inch, share: [0.18, 0.22, 0.82, 0.99, 0.99, 0.99, 0.99, 0.99] },
    { thickness: 3 * inch, share: [0.48, 0.53, 0.99, 0.99, 0.99, 0.99, 0.99, 0.99] },
    { thickness: 4 * inch, share: [0.76, 0.84, 0.99, 0.99, 0.99, 0.99, 0.99, 0.97] },
  ],
  source: "ashrae-applications-noise-vibration",
  certainty: "from memory",
};

/**
 * Transmission loss of insulated double-wall panels of two thicknesses. Order of magnitude of what is printed for such
 * panels, not a test of one; the ends of the table, 63 and 8000 Hz, are carried on.
 */
export const panelTransmissionLoss: {
  readonly thin: { readonly thickness: number; readonly decibels: EightBands };
  readonly thick: { readonly thickness: number; readonly decibels: EightBands };
  readonly source: string;
  readonly certainty: string;
} = {
  thin: { thickness: 2 * inch, decibels: [14, 18, 22, 29, 38, 47, 52, 52] },
  thick: { thickness: 4 * inch, decibels: [16, 21, 28, 39, 48, 56, 58, 58] },
  source: "from-memory",
  certainty: "from memory",
};

/** Flow noise of baffles: level of the source term, dB, and the length that sets how it falls with frequency, m. */
export const baffleFlowNoise = {
  level: 58,
  length: 0.02,
  /** dB either way in a band. */
  uncertainty: 6,
  source: "iso-14163",
  certainty: "from memory",
} as const;

/** dB either way that a path of tabled losses adds to a fan's own uncertainty, and the walls of a casing. */
export const pathUncertainty = {
  airway: 3,
  casing: 6,
  source: "from-memory",
  certainty: "from memory",
} as const;

/**
 * Flow noise of coils, filters, eliminators and dispersion tubes, for which no open method was found: the trade holds that
 * up to this face velocity (500 fpm) it stays so many dB below the fan's sound in every band. m/s, dB.
 */
export const uncountedFlowNoise = {
  velocity: 2.54,
  below: 10,
  source: "common-practice",
  certainty: "from memory",
} as const;

/** dB that a fan's housing takes off what its shell radiates. */
export const fanHousingAttenuation: {
  readonly decibels: EightBands;
  readonly source: string;
  readonly certainty: string;
} = {
  decibels: [0, 0, 5, 10, 15, 20, 22, 25],
  source: "long-architectural-acoustics",
  certainty: "read",
};

/**
 * Flow noise of dampers with several blades: level and fall with the logarithm of the Strouhal number of the squeezed
 * stream, in feet and feet per second, on both sides of a turn.
 */
export const damperFlowNoise = {
  low: { level: -36.3, fall: 10.7 },
  high: { level: -1.1, fall: 35.9 },
  turn: 25,
  /** dB either way in a band: real dampers and other estimates lie so far apart. */
  uncertainty: 8,
  source: "reynolds-bledsoe-1991",
  certainty: "read",
} as const;

/** Flow noise of rectangular grilles, in feet and feet per second: level, Hz of the peak by velocity, shape by octaves from it. */
export const grilleFlowNoise = {
  level: -31.3,
  peak: 48.8,
  spectrum: [-11.82, -0.15, -1.13],
  /** dB either way in a band, for blades of an intake louver, for which the estimate was not made. */
  uncertainty: 10,
  source: "long-architectural-acoustics",
  certainty: "read",
} as const;
