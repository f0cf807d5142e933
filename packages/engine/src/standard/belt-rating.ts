/**
 * Classical V-belts of section B: power that one belt passes on, tension it takes, passes it lasts. Recalled from a
 * textbook that quotes the makers' association; shown with this mark.
 */
export const beltSectionB = {
  /** Pitch diameter of the small sheave, inches, and hp of one belt at 1000 … 5000 fpm. */
  rating: [
    { diameter: 4.2, horsepower: [1.07, 1.58, 1.68, 1.26, 0.22] },
    { diameter: 4.6, horsepower: [1.27, 1.99, 2.29, 2.08, 1.24] },
    { diameter: 5, horsepower: [1.44, 2.33, 2.8, 2.76, 2.1] },
    { diameter: 5.4, horsepower: [1.59, 2.62, 3.24, 3.34, 2.82] },
    { diameter: 5.8, horsepower: [1.72, 2.87, 3.61, 3.85, 3.45] },
    { diameter: 6.2, horsepower: [1.82, 3.09, 3.94, 4.28, 4] },
    { diameter: 6.6, horsepower: [1.92, 3.29, 4.23, 4.67, 4.48] },
    { diameter: 7, horsepower: [2.01, 3.46, 4.49, 5.01, 4.9] },
  ],
  /** fpm between the columns. */
  speedStep: 1000,
  /** Factor for the arc on the small sheave, a polynomial in its degrees. */
  arc: [0.143543, 0.007468, -0.000015052],
  /** Factor for the belt's inside length, inches, up to each. */
  length: [
    { upTo: 47, factor: 0.85 },
    { upTo: 61, factor: 0.9 },
    { upTo: 76.5, factor: 0.95 },
    { upTo: 101, factor: 1 },
    { upTo: 124, factor: 1.05 },
    { upTo: 151, factor: 1.1 },
    { upTo: 187, factor: 1.15 },
    { upTo: Number.POSITIVE_INFINITY, factor: 1.2 },
  ],
  /** Pitch length less inside length, inches. */
  pitchOverInside: 1.8,
  /** Effective friction in the wedge of the groove, per radian. */
  friction: 0.5123,
  /** lbf·in: bending tension is this over the sheave's diameter. */
  bending: 576,
  /** lbf at 1000 fpm, with the square of speed. */
  centrifugal: 0.965,
  /** lbf and exponent of the tension that 10⁸ to 10⁹ passes over a sheave stand. */
  fatigue: { tension: 1193, exponent: 10.926 },
  /** Passes beyond which the relation is not proved. */
  provedPasses: 1e9,
  source: "shigley-mechanical-engineering-design",
  certainty: "from memory",
} as const;
