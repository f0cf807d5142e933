import { abruptContractionLoss, wallOpeningLoss } from "#component/fitting-loss";
import { choice, group, quantity, type ValuesOf } from "#form/field";
import { fittingLosses } from "#standard/fitting-loss";
import { inBothUnits } from "../both-units.ts";
import { type Frame, SectionProblem } from "../contract.ts";
import { type DamperPart, damperPartFields, frameArea, prepareDamper } from "../damper-part.ts";

const returnFields = {
  ...damperPartFields,
  place: choice(["top", "bottom", "side"], { meaning: "Where the return air comes in", default: "top" }),
} as const;

/** What a person writes about a mixing box. */
export const mixingBoxFields = {
  outsideAir: group(damperPartFields, { meaning: "The outside-air damper, across the cabinet" }),
  returnAir: group(returnFields, {
    meaning: "The return-air opening and its damper; left out for pure outside air",
    optional: true,
  }),
  control: choice(["hand set", "actuated"], {
    meaning: "Blades locked by hand at their angles, or driven by an actuator that holds the wanted share",
    default: "hand set",
  }),
  mixingEffectiveness: quantity("share", {
    meaning: "One less the spread of temperature left behind the box over the spread before it",
    default: "60 %",
    minimum: "0 %",
    maximum: "100 %",
  }),
  length: quantity("length", { meaning: "Length of the box", default: "54 in", minimum: "6 in", maximum: "20 ft" }),
} as const;

/** The return opening in place. */
export interface ReturnOpening {
  readonly part: DamperPart;
  readonly place: "top" | "bottom" | "side";
  /** Loss of entering the box, and of leaving it backwards, on the velocity in the damper's face. */
  readonly inwardLoss: number;
  readonly outwardLoss: number;
}

/** A mixing box ready to be rated. */
export interface MixingBoxDesign {
  readonly outside: DamperPart;
  /** Loss of the wall around the outside damper, on the velocity in its face. */
  readonly wallLoss: number;
  readonly returnOpening: ReturnOpening | undefined;
  readonly hasReturn: boolean;
  readonly control: "hand set" | "actuated";
  readonly mixingEffectiveness: number;
  readonly length: number;
  readonly cabinetArea: number;
}

/** Fits the dampers to the cabinet. */
export function prepareMixingBox(values: ValuesOf<typeof mixingBoxFields>, frame: Frame): MixingBoxDesign {
  const outside = prepareDamper(values.outsideAir, "outsideAir", frame.width, frame.height);
  const cabinetArea = frameArea(frame);
  const { returnAir } = values;
  const returnOpening = returnAir === undefined ? undefined : prepareReturn(returnAir, frame, values.length);
  if (values.length < outside.damper.frameDepth) {
    const depth = inBothUnits(outside.damper.frameDepth, "length");
    throw new SectionProblem("length", "the outside-air damper is deeper than the box is long", `at least ${depth}`);
  }
  const ratio = outside.area / cabinetArea;
  return {
    outside,
    wallLoss: wallOpeningLoss(ratio, ratio),
    returnOpening,
    hasReturn: returnOpening !== undefined,
    control: values.control,
    mixingEffectiveness: values.mixingEffectiveness,
    length: values.length,
    cabinetArea,
  };
}

function prepareReturn(values: ValuesOf<typeof returnFields>, frame: Frame, length: number): ReturnOpening {
  const along = values.place === "side" ? frame.height : length;
  const across = values.place === "side" ? length : frame.width;
  const part = prepareDamper(values, "returnAir", across, along);
  return {
    part,
    place: values.place,
    inwardLoss: fittingLosses.abruptExit.coefficient,
    outwardLoss: abruptContractionLoss(0),
  };
}
