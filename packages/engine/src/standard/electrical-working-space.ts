const foot = 0.3048;

/**
 * Clear working space before electrical equipment that may be worked on live, m. Depth by voltage to ground and by what
 * stands opposite: nothing live or grounded (1), a grounded surface such as a masonry wall (2), live parts (3).
 */
export const electricalWorkingSpace = {
  depths: [
    { voltage: 150, depth: { 1: 3 * foot, 2: 3 * foot, 3: 3 * foot } },
    { voltage: 600, depth: { 1: 3 * foot, 2: 3.5 * foot, 3: 4 * foot } },
    { voltage: 1000, depth: { 1: 3 * foot, 2: 4 * foot, 3: 5 * foot } },
  ],
  /** m: width, or that of the equipment where wider; height from the floor that a person stands on. */
  width: 0.762,
  height: 6.5 * foot,
  source: "nfpa-70 110.26(A), table 110.26(A)(1)",
  certainty: "from memory",
} as const;

/** Clear room before a service side, m; and before a door, so that a person stands beside the open leaf. */
export const serviceClearance = {
  level: 0.762,
  beside: 0.457,
  source: "international-mechanical-code 306.1",
  certainty: "from memory",
} as const;

/** m that a person needs beside a coil that is drawn out, over the coil's own length. */
export const coilPullAllowance = { length: 0.305, source: "common-practice" } as const;
