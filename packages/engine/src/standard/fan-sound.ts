import { inch } from "./inch.ts";

/** Octave bands of fan sound, Hz. */
export const octaveBands = [63, 125, 250, 500, 1000, 2000, 4000, 8000] as const;

/**
 * Specific sound power of airfoil and backward-curved centrifugal fans, the former handbook method: Lw = specific +
 * 10 log10(cfm) + 20 log10(in.wg) + penalty off the best point. Read in an open acoustics library that quotes a textbook.
 * `specific` is in dB re 1 pW at 1 cfm and 1 in.wg, one for each octave band; `bladeIncrement` is added in the band that
 * holds the blade-passing frequency.
 */
export const fanSound = {
  large: { specific: [40, 40, 39, 34, 30, 23, 19, 17], bladeIncrement: 3 },
  small: { specific: [45, 45, 43, 39, 34, 28, 24, 19], bladeIncrement: 3 },
  /** Wheels of this diameter and more are large, m. */
  largeFrom: 36 * inch,
  source: "long-architectural-acoustics tables 13.5-13.8",
  certainty: "read",
} as const;

/** dB to add when static efficiency is less than a share of the best one. */
export const fanSoundPenalties: readonly { readonly fromShare: number; readonly decibels: number }[] = [
  { fromShare: 0.9, decibels: 0 },
  { fromShare: 0.85, decibels: 3 },
  { fromShare: 0.75, decibels: 6 },
  { fromShare: 0.65, decibels: 9 },
  { fromShare: 0.55, decibels: 12 },
  { fromShare: 0.5, decibels: 15 },
  { fromShare: 0, decibels: 16 },
];

/** A-weighting at the middle of each octave band. */
export const aWeighting = {
  decibels: [-26.2, -16.1, -8.6, -3.2, 0, 1.2, 1, -1.1],
  source: "iec-61672",
} as const;
