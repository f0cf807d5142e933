/**
 * Standard wheel diameters of centrifugal fans, inches: the preferred numbers of AMCA 99, about 1.1 apart.
 */
export const standardFanDiameters = {
  inches: [
    10.5, 12.25, 13.5, 15, 16.5, 18.25, 20, 22.25, 24.5, 27, 30, 33, 36.5, 40.25, 44.5, 49, 54.25, 60, 66, 73, 80.75,
  ],
  source: "amca-99 preferred wheel diameters",
  certainty: "from memory",
} as const;
