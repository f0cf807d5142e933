/** Into how many runs of hours a year is cut, whoever solves them: so the answer does not depend on it. */
export const segmentCount = 24;
