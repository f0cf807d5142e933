import { choice, factor, quantity, type ValuesOf } from "#form/field";
import { metresPerInch, wattsPerHorsepower } from "#quantity/inch-pound";
import { beltEfficiency } from "#standard/drive-losses";
import { defineFamily, type RecordHead } from "./family.ts";

/** Places in the published band of belt efficiency. */
export const beltBands = ["high", "medium", "low"] as const;
/** One of them. */
export type BeltBand = (typeof beltBands)[number];

const fields = {
  band: choice(beltBands, { meaning: "Place in the published band of belt efficiency", default: "medium" }),
  serviceFactor: factor({ meaning: "Rated belt power over motor power", default: 1.5, minimum: 1, maximum: 2.5 }),
  smallestSheave: quantity("length", { meaning: "Smallest pitch diameter that the belts take", default: "4.2 in" }),
  highestBeltSpeed: quantity("velocity", { meaning: "Highest rim speed", default: "6500 fpm" }),
} as const;

/** A V-belt drive. */
export interface BeltDrive extends ValuesOf<typeof fields> {
  readonly head: RecordHead;
}

/** V-belt drives. */
export const beltDriveFamily = defineFamily({
  name: "belt drive",
  meaning: "V-belt drive between motor and fan",
  fields,
  build: (values: ValuesOf<typeof fields>, head: RecordHead): BeltDrive => ({ ...values, head }),
});

/**
 * Efficiency of a V-belt drive at the power that it passes on.
 *
 * @param band choice, high, medium or low: place in the published band
 * @param power W, 224…149140: power at the fan's shaft
 * @returns 1: efficiency
 * @outside below 0.3 hp and above 200 hp the efficiency there is held
 * @example beltEfficiencyFromPower("medium", 10 * 745.7) // 0.9501 ± 5e-5
 * @source energyplus-engineering-reference fan component model, belt
 */
export function beltEfficiencyFromPower(band: BeltBand, power: number): number {
  const x = Math.log(Math.min(Math.max(power / wattsPerHorsepower, 0.3), 200));
  const c = beltEfficiency[band];
  return Math.exp(c[0] + x * (c[1] + x * (c[2] + x * (c[3] + x * c[4]))));
}

/** Two sheaves and what they give. */
export interface SheavePair {
  /** m, pitch diameter. */
  readonly motorSheave: number;
  readonly fanSheave: number;
  /** rev/s of the fan. */
  readonly fanSpeed: number;
  /** m/s at the rim. */
  readonly beltSpeed: number;
}

/** Pitch diameters, inches, that sheaves for B belts are commonly stocked in. */
const stockedSheaves = [
  3.4, 3.6, 3.8, 4, 4.2, 4.4, 4.6, 4.8, 5, 5.2, 5.4, 5.6, 5.8, 6, 6.2, 6.4, 6.6, 6.8, 7, 7.4, 8, 8.6, 9.4, 11, 12.4,
  13.6, 15.4, 16, 18.4, 20, 25, 30, 38,
].map((inches) => inches * metresPerInch);

/** m/s at which belts of section B pass on most, 4500 fpm, and share of the speed that a pair may miss without loss. */
const bestBeltSpeed = 22.86;
const freeError = 0.02;

/**
 * The pair of stocked sheaves for a fan speed, within the belt's limits: of those within 2 % the one whose belts run nearest
 * to 4500 fpm, where they pass on most; otherwise the pair that comes nearest to the speed.
 *
 * @param motorSpeed rev/s, 5…60: of the motor at full load
 * @param fanSpeed rev/s, 1…60: wanted
 * @param smallestSheave m, 0.05…0.5: least pitch diameter
 * @param highestBeltSpeed m/s, 5…40: at the rim
 * @returns record: the pair; undefined when no stocked pair comes within 5 %
 * @outside the same formula goes on
 * @example sheavePairFromSpeed(29.4, 20, 0.1, 33)?.fanSpeed // 20 ± 0.4
 * @source common-practice stocked sheaves
 */
export function sheavePairFromSpeed(
  motorSpeed: number,
  fanSpeed: number,
  smallestSheave: number,
  highestBeltSpeed: number,
): SheavePair | undefined {
  let best: SheavePair | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const motorSheave of stockedSheaves) {
    const beltSpeed = Math.PI * motorSheave * motorSpeed;
    if (motorSheave < smallestSheave || beltSpeed > highestBeltSpeed) continue;
    for (const fanSheave of stockedSheaves) {
      if (fanSheave < smallestSheave) continue;
      const speed = (motorSpeed * motorSheave) / fanSheave;
      const error = Math.abs(speed / fanSpeed - 1);
      if (error > 0.05) continue;
      // Any pair within 2 % goes before all others.
      const cost = error <= freeError ? Math.abs(beltSpeed / bestBeltSpeed - 1) : 1000 + error;
      if (cost > least) continue;
      least = cost;
      best = { motorSheave, fanSheave, fanSpeed: speed, beltSpeed };
    }
  }
  return best;
}
