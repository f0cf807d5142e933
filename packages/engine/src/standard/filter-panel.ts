import { inch } from "./inch.ts";

/** Standard filter panels by their nominal face, metres. Common practice of the trade, no source. */
export interface FilterPanelSize {
  readonly name: string;
  readonly width: number;
  readonly height: number;
}

/** The nominal faces that every maker of filters keeps; either side may stand up. */
export const filterPanelSizes: readonly FilterPanelSize[] = [
  { name: "24 × 24", width: 24 * inch, height: 24 * inch },
  { name: "12 × 24", width: 12 * inch, height: 24 * inch },
  { name: "20 × 24", width: 20 * inch, height: 24 * inch },
  { name: "20 × 20", width: 20 * inch, height: 20 * inch },
  { name: "16 × 20", width: 16 * inch, height: 20 * inch },
];

/** Nominal sides, inches. */
export const filterPanelSides = [12, 16, 20, 24] as const;
