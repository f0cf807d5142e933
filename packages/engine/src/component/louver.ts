import { choice, factor, flag, quantity } from "#form/field";
import { louverWaterTest, windDrivenRainClasses } from "#standard/louver-test";
import { defineFamily, type RecordHead } from "./family.ts";

/** Louver blades in their frame. */
export interface Louver {
  readonly head: RecordHead;
  /** Blades with a drain channel at their edge. */
  readonly drainable: boolean;
  /** m along the flow; m from blade to blade; degrees from horizontal. */
  readonly bladeDepth: number;
  readonly bladePitch: number;
  readonly bladeAngle: number;
  /** Free over gross area of the test sample, 48 × 48 in. */
  readonly freeAreaShare: number;
  /** m that one jamb or mullion side takes of the width, and that head and sill together take of the height. */
  readonly jambWidth: number;
  readonly headAndSill: number;
  /** m, widest louver made in one piece; wider ones get mullions. */
  readonly widestPiece: number;
  /** Total pressure lost over the velocity pressure in the free area. */
  readonly lossCoefficient: number;
  /** m/s in the free area at which water begins to come through. */
  readonly onsetVelocity: number;
  readonly windDrivenClass: "none" | "A" | "B" | "C" | "D";
  /** Free over clear area between the frame's members. */
  readonly clearShare: number;
}

const fields = {
  drainable: flag({ meaning: "Blades with a drain channel at their edge" }),
  bladeDepth: quantity("length", { meaning: "Depth of the louver along the flow", minimum: "2 in", maximum: "16 in" }),
  bladePitch: quantity("length", { meaning: "Blade to blade", minimum: "0.75 in", maximum: "12 in" }),
  bladeAngle: quantity("angle", { meaning: "Blade from horizontal", minimum: "10 deg", maximum: "60 deg" }),
  freeAreaShare: quantity("share", {
    meaning: "Free over gross area at 48 by 48 in",
    minimum: "15 %",
    maximum: "75 %",
  }),
  jambWidth: quantity("length", { meaning: "Width that one jamb takes", minimum: "0.5 in", maximum: "6 in" }),
  headAndSill: quantity("length", {
    meaning: "Height that head and sill with their closed blades take together",
    minimum: "1 in",
    maximum: "18 in",
  }),
  widestPiece: quantity("length", { meaning: "Widest louver in one piece", minimum: "24 in", maximum: "144 in" }),
  lossCoefficient: factor({ meaning: "Loss on the velocity in the free area", minimum: 0.5, maximum: 15 }),
  onsetVelocity: quantity("velocity", {
    meaning:
      "Velocity in the free area at which water begins to come through; 1250 fpm when none came to the test's end",
    minimum: "200 fpm",
    maximum: "1250 fpm",
  }),
  windDrivenClass: choice(["none", "A", "B", "C", "D"], {
    meaning: "Class of the wind-driven rain test",
    default: "none",
  }),
} as const;

/** The family `louver`. */
export const louverFamily = defineFamily({
  name: "louver",
  meaning: "Blades that keep rain out of an intake",
  fields,
  build: (values, head): Louver => {
    const side = louverWaterTest.sampleSide;
    const clear = (side - 2 * values.jambWidth) * (side - values.headAndSill);
    const clearShare = (values.freeAreaShare * side * side) / clear;
    if (!(clearShare < 1)) {
      throw new RangeError(
        "free area share: more than jambs, head and sill leave open at 48 by 48 in; lower it or the frame's widths",
      );
    }
    return { head, ...values, clearShare };
  },
});

/**
 * Area between the frame's members: what the wind-driven rain test calls the core.
 *
 * @param louver record: the louver
 * @param width m, 0.2…10: gross width
 * @param height m, 0.2…10: gross height
 * @returns m²: core area
 * @outside zero when the frame leaves nothing
 * @example louverCoreArea({ jambWidth: 0.05, headAndSill: 0.15, widestPiece: 1.83 }, 2, 1) // 1.53 ± 1e-9
 * @source derived-here frame geometry: each piece has two jambs
 */
export function louverCoreArea(
  louver: Pick<Louver, "jambWidth" | "headAndSill" | "widestPiece">,
  width: number,
  height: number,
): number {
  const pieces = Math.max(1, Math.ceil(width / louver.widestPiece - 1e-9));
  return Math.max(0, width - 2 * pieces * louver.jambWidth) * Math.max(0, height - louver.headAndSill);
}

/**
 * Free area of a louver of any size: the frame takes its fixed widths, the blades their share of the rest.
 *
 * @param louver record: the louver
 * @param width m, 0.2…10: gross width
 * @param height m, 0.2…10: gross height
 * @returns m²: free area
 * @outside zero when the frame leaves nothing
 * @example louverFreeArea({ jambWidth: 0.05, headAndSill: 0.15, widestPiece: 1.83, clearShare: 0.6 }, 2, 1) // 0.918 ± 1e-9
 * @source derived-here from the published share at 48 by 48 in (amca-500-l)
 */
export function louverFreeArea(
  louver: Pick<Louver, "jambWidth" | "headAndSill" | "widestPiece" | "clearShare">,
  width: number,
  height: number,
): number {
  return louver.clearShare * louverCoreArea(louver, width, height);
}

/**
 * Rain that comes through in still air: none up to the beginning of water penetration, then tenfold for each 15 % of
 * velocity more, in proportion to the rain.
 *
 * @param onsetVelocity m/s, above 0: free-area velocity at which penetration begins
 * @param freeVelocity m/s, 0…15: velocity in the free area
 * @param rain kg/s m², 0…0.1: rain onto the louver's face
 * @returns kg/s m²: water that comes through, per free area
 * @outside never more than the rain that falls on the face, which the caller takes care of
 * @example louverStillAirPenetration(5, 5.75, 0.0282) // 3.05e-5 ± 1e-7
 * @source amca-500-l definition of the beginning; the growth beyond it from-memory of published plots
 */
export function louverStillAirPenetration(onsetVelocity: number, freeVelocity: number, rain: number): number {
  const { beginning, duration, rain: testRain } = louverWaterTest;
  if (freeVelocity <= onsetVelocity) return 0;
  const excess = Math.min(12, (freeVelocity / onsetVelocity - 1) / 0.15);
  return (beginning / duration) * (10 ** excess - 1) * (rain / testRain);
}

/**
 * Share of wind-driven rain that a class lets through.
 *
 * @param windDrivenClass choice: `A`, `B`, `C`, `D` or `none`
 * @returns share: of the rain onto the core; all of it for an untested louver
 * @example windDrivenPassing("B") // 0.05 ± 1e-12
 * @source amca-500-l wind-driven rain classes
 */
export function windDrivenPassing(windDrivenClass: Louver["windDrivenClass"]): number {
  return windDrivenClass === "none" ? 1 : 1 - windDrivenRainClasses.rejection[windDrivenClass];
}
