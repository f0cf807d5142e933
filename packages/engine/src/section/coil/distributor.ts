import type { SteamDistributor } from "#component/coil/steam-distribution";
import { quantity, type ValuesOf } from "#form/field";
import { inBothUnits } from "../both-units.ts";
import { SectionProblem } from "../contract.ts";
import type { CoilBlock } from "./block.ts";

/** What a person writes about the tubes that spread steam inside a coil's tubes. */
export const distributorFields = {
  innerTube: quantity("length", {
    meaning:
      "Outside diameter of the inner, steam-distributing tubes; five eighths of the tubes around when left out, as the one published build of 1-in. tubes has it",
    optional: true,
    minimum: "1/4 in",
    maximum: "1-1/4 in",
  }),
  innerTubeWall: quantity("smallLength", {
    meaning: "Wall of the inner tubes; a published build of 1-in. tubes has 0.018 in",
    default: "0.018 in",
    minimum: "0.01 in",
    maximum: "0.1 in",
  }),
  orificePitch: quantity("length", {
    meaning: "Distance of the inner tubes' orifices; guides ask for 9 to 12 in",
    default: "9 in",
    minimum: "1 in",
    maximum: "48 in",
  }),
  orifice: quantity("smallLength", {
    meaning: "Diameter of an orifice of the inner tubes; the default is from memory, ask the coil's maker",
    default: "0.125 in",
    minimum: "0.02 in",
    maximum: "0.5 in",
  }),
} as const;

/** What the fields give: the tubes as they spread steam, and what they are built of, m. */
export interface InnerTubes {
  readonly distributor: SteamDistributor;
  readonly outsideDiameter: number;
  readonly wall: number;
  readonly orificePitch: number;
}

const boreShare = 5 / 8;
/** m around the inner tube for condensate to drain by. */
const leastGap = 0.001;

/**
 * The inner tubes of one coil of a block.
 *
 * @throws SectionProblem when they do not fit the tubes around, or have no bore
 */
export function prepareInnerTubes(values: ValuesOf<typeof distributorFields>, { coil }: CoilBlock): InnerTubes {
  const { tubeOutsideDiameter, tubeInsideDiameter } = coil.bank;
  const outsideDiameter = values.innerTube ?? boreShare * tubeOutsideDiameter;
  const most = tubeInsideDiameter - 2 * leastGap;
  if (outsideDiameter > most) {
    throw new SectionProblem(
      "innerTube",
      `an inner tube of ${inBothUnits(outsideDiameter, "length")} leaves condensate no way out of a bore of ${inBothUnits(tubeInsideDiameter, "length")}`,
      `at most ${inBothUnits(most, "length")}`,
    );
  }
  const bore = outsideDiameter - 2 * values.innerTubeWall;
  if (!(bore > values.orifice)) {
    throw new SectionProblem(
      "innerTubeWall",
      "the inner tube has no bore left for its orifices",
      "a thinner wall, a wider inner tube or smaller orifices",
    );
  }
  return {
    outsideDiameter,
    wall: values.innerTubeWall,
    orificePitch: values.orificePitch,
    distributor: {
      tubes: coil.rows * coil.tubesPerRow,
      length: coil.finnedLength,
      bore,
      orificeDiameter: values.orifice,
      orifices: Math.max(1, Math.round(coil.finnedLength / values.orificePitch)),
    },
  };
}
