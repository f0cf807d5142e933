/** Nominal full-load efficiency of one motor rating, percent, by number of poles. */
export interface MotorEfficiencyRow {
  readonly horsepower: number;
  readonly enclosed: PoleRow;
  readonly open: PoleRow;
}

/** 2, 4, 6 and 8 poles in this order. */
export type PoleRow = readonly [number, number, number, number];

/**
 * Nominal full-load efficiencies that 10 CFR 431.25 asks of general-purpose motors of 60 Hz (NEMA Premium): percent, for
 * 2, 4, 6 and 8 poles. Read, except the column of 8 poles above 30 hp, which is from memory.
 */
export const motorEfficiencies: readonly MotorEfficiencyRow[] = [
  { horsepower: 1, enclosed: [77, 85.5, 82.5, 75.5], open: [77, 85.5, 82.5, 75.5] },
  { horsepower: 1.5, enclosed: [84, 86.5, 87.5, 78.5], open: [84, 86.5, 86.5, 77] },
  { horsepower: 2, enclosed: [85.5, 86.5, 88.5, 84], open: [85.5, 86.5, 87.5, 86.5] },
  { horsepower: 3, enclosed: [86.5, 89.5, 89.5, 85.5], open: [85.5, 89.5, 88.5, 87.5] },
  { horsepower: 5, enclosed: [88.5, 89.5, 89.5, 86.5], open: [86.5, 89.5, 89.5, 88.5] },
  { horsepower: 7.5, enclosed: [89.5, 91.7, 91, 86.5], open: [88.5, 91, 90.2, 89.5] },
  { horsepower: 10, enclosed: [90.2, 91.7, 91, 89.5], open: [89.5, 91.7, 91.7, 90.2] },
  { horsepower: 15, enclosed: [91, 92.4, 91.7, 89.5], open: [90.2, 93, 91.7, 90.2] },
  { horsepower: 20, enclosed: [91, 93, 91.7, 90.2], open: [91, 93, 92.4, 91] },
  { horsepower: 25, enclosed: [91.7, 93.6, 93, 90.2], open: [91.7, 93.6, 93, 91] },
  { horsepower: 30, enclosed: [91.7, 93.6, 93, 91.7], open: [91.7, 94.1, 93.6, 91.7] },
  { horsepower: 40, enclosed: [92.4, 94.1, 94.1, 91.7], open: [92.4, 94.1, 94.1, 91.7] },
  { horsepower: 50, enclosed: [93, 94.5, 94.1, 92.4], open: [93, 94.5, 94.1, 92.4] },
  { horsepower: 60, enclosed: [93.6, 95, 94.5, 92.4], open: [93.6, 95, 94.5, 93] },
  { horsepower: 75, enclosed: [93.6, 95.4, 94.5, 93.6], open: [93.6, 95, 94.5, 94.1] },
  { horsepower: 100, enclosed: [94.1, 95.4, 95, 93.6], open: [93.6, 95.4, 95, 94.1] },
  { horsepower: 125, enclosed: [95, 95.4, 95, 94.1], open: [94.1, 95.4, 95, 94.1] },
  { horsepower: 150, enclosed: [95, 95.8, 95.8, 94.1], open: [94.1, 95.8, 95.4, 94.1] },
  { horsepower: 200, enclosed: [95.4, 96.2, 95.8, 94.5], open: [95, 95.8, 95.4, 94.1] },
];
