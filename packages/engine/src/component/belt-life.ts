import {
  metresPerInch as inch,
  metresPerSecondPerFpm,
  newtonsPerPound,
  wattsPerHorsepower,
} from "#quantity/inch-pound";
import { beltSectionB } from "#standard/belt-rating";

/**
 * Pitch length of an open belt over two sheaves.
 *
 * @param motorSheave m, 0.05…1.5: pitch diameter
 * @param fanSheave m, 0.05…1.5: pitch diameter
 * @param centreDistance m, above 0: between the shafts
 * @returns m: pitch length
 * @outside the same formula goes on
 * @example beltLengthFromCentres(7.4, 11, 42.4) // 113.8 ± 0.05
 * @source shigley-mechanical-engineering-design eq. 17-16a
 */
export function beltLengthFromCentres(motorSheave: number, fanSheave: number, centreDistance: number): number {
  const difference = fanSheave - motorSheave;
  return 2 * centreDistance + 0.5 * Math.PI * (motorSheave + fanSheave) + difference ** 2 / (4 * centreDistance);
}

/**
 * Arc in which the belt lies on the smaller sheave.
 *
 * @param motorSheave m, 0.05…1.5: pitch diameter
 * @param fanSheave m, 0.05…1.5: pitch diameter
 * @param centreDistance m, above 0: between the shafts
 * @returns rad: arc
 * @outside centres nearer than half the difference of the sheaves count as that
 * @example beltArc(7.4, 11, 42.4) // 3.057 ± 1e-3
 * @source shigley-mechanical-engineering-design eq. 17-1
 */
export function beltArc(motorSheave: number, fanSheave: number, centreDistance: number): number {
  return Math.PI - 2 * Math.asin(Math.min(Math.abs(fanSheave - motorSheave) / (2 * centreDistance), 1));
}

/**
 * Power that one belt of section B may pass on, for its small sheave, arc and length.
 *
 * @param motorSheave m, 0.05…1.5: pitch diameter
 * @param fanSheave m, 0.05…1.5: pitch diameter
 * @param centreDistance m, above 0: between the shafts
 * @param beltSpeed m/s, 1…33: at the rim
 * @returns W: power of one belt
 * @outside sheaves and speeds beyond the table take its ends
 * @example beltRating(7.4 * 0.0254, 11 * 0.0254, 42.4 * 0.0254, 3390 * 0.00508) / 745.7 // 4.88 ± 0.03
 * @source shigley-mechanical-engineering-design table 17-12, example 17-4, from memory
 */
export function beltRating(motorSheave: number, fanSheave: number, centreDistance: number, beltSpeed: number): number {
  const { rating, speedStep, arc, length, pitchOverInside } = beltSectionB;
  const small = Math.min(motorSheave, fanSheave) / inch;
  const columns = rating[0].horsepower.length;
  const column = Math.min(Math.max(beltSpeed / metresPerSecondPerFpm / speedStep - 1, 0), columns - 1);
  const left = Math.min(Math.floor(column), columns - 2);
  const atSpeed = (row: (typeof rating)[number]) => {
    const low = row.horsepower[left]!;
    return low + (column - left) * (row.horsepower[left + 1]! - low);
  };
  const above = rating.find((row) => row.diameter >= small) ?? rating[rating.length - 1]!;
  const below = rating.findLast((row) => row.diameter <= small) ?? rating[0];
  const span = above.diameter - below.diameter;
  const share = span > 0 ? (small - below.diameter) / span : 0;
  const table = atSpeed(below) + share * (atSpeed(above) - atSpeed(below));
  const degrees = (beltArc(motorSheave, fanSheave, centreDistance) * 180) / Math.PI;
  const arcFactor = arc[0] + degrees * (arc[1] + degrees * arc[2]);
  const inside = beltLengthFromCentres(motorSheave, fanSheave, centreDistance) / inch - pitchOverInside;
  const lengthFactor = length.find((each) => inside <= each.upTo)!.factor;
  return table * arcFactor * lengthFactor * wattsPerHorsepower;
}

/** What a belt of a running drive stands. */
export interface BeltRun {
  /** N, of one belt on its tight and its slack side. */
  readonly tightForce: number;
  readonly slackForce: number;
  /** N that this belt pulls on each shaft: what throws it outwards loads no bearing. */
  readonly shaftForce: number;
  /** Passes over the pair of sheaves until one in two belts has failed. */
  readonly passes: number;
  /** s of running that these passes last. */
  readonly life: number;
}

/**
 * Tensions in one belt of section B and how long it lasts: bending over each sheave adds to the tight side, and the sum's
 * power of eleven wears the cord.
 *
 * @param power W, above 0: passed on by this one belt
 * @param motorSheave m, 0.05…1.5: pitch diameter
 * @param fanSheave m, 0.05…1.5: pitch diameter
 * @param centreDistance m, above 0: between the shafts
 * @param beltSpeed m/s, above 0: at the rim
 * @returns record: tensions and life
 * @outside beyond 10⁹ passes the relation is not proved: read as `more than` those
 * @example beltRunFromPower(12.6 / 3 * 745.7, 7.4 * 0.0254, 11 * 0.0254, 42.4 * 0.0254, 3390 * 0.00508).tightForce / 4.448 // 62.8 ± 0.2
 * @source shigley-mechanical-engineering-design eq. 17-27, example 17-4, from memory
 */
export function beltRunFromPower(
  power: number,
  motorSheave: number,
  fanSheave: number,
  centreDistance: number,
  beltSpeed: number,
): BeltRun {
  const { friction, bending, centrifugal, fatigue } = beltSectionB;
  const away = centrifugal * (beltSpeed / metresPerSecondPerFpm / 1000) ** 2 * newtonsPerPound;
  const pull = power / beltSpeed;
  const grip = Math.exp(friction * beltArc(motorSheave, fanSheave, centreDistance));
  const tightForce = away + (pull * grip) / (grip - 1);
  const wear = (sheave: number) => {
    const tension = tightForce / newtonsPerPound + (bending * inch) / sheave;
    return (fatigue.tension / tension) ** -fatigue.exponent;
  };
  const passes = 1 / (wear(motorSheave) + wear(fanSheave));
  const length = beltLengthFromCentres(motorSheave, fanSheave, centreDistance);
  const slackForce = tightForce - pull;
  return {
    tightForce,
    slackForce,
    shaftForce: tightForce + slackForce - 2 * away,
    passes,
    life: (passes * length) / beltSpeed,
  };
}
