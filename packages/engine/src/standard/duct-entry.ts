/**
 * Loss of a duct that begins flush in a plenum's wall, velocity pressures in the duct, by the rounding of its edge over
 * its diameter: Rennels' equation, worked with an open library of fluid mechanics.
 */
export const ductEntryLosses = {
  sharp: { coefficient: 0.57, rounding: 0 },
  rounded: { coefficient: 0.2029, rounding: 0.1 },
  "bell mouth": { coefficient: 0.1146, rounding: 0.2 },
  source: "rennels-hudson-2012",
  certainty: "computed",
} as const;
