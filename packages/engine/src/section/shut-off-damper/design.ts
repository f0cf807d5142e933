import { wallOpeningLoss } from "#component/fitting-loss";
import { quantity, type ValuesOf } from "#form/field";
import { inBothUnits } from "../both-units.ts";
import { type Frame, SectionProblem } from "../contract.ts";
import { type DamperPart, damperPartFields, frameArea, prepareDamper } from "../damper-part.ts";

/** What a person writes about a shut-off damper. */
export const shutOffDamperFields = {
  ...damperPartFields,
  length: quantity("length", { meaning: "Length of the section", default: "12 in", minimum: "3 in", maximum: "6 ft" }),
} as const;

/** A shut-off damper ready to be rated. */
export interface ShutOffDamperDesign {
  readonly part: DamperPart;
  readonly wallLoss: number;
  readonly length: number;
  readonly cabinetArea: number;
}

/** Fits the damper to the cabinet. */
export function prepareShutOffDamper(values: ValuesOf<typeof shutOffDamperFields>, frame: Frame): ShutOffDamperDesign {
  const { length, ...damper } = values;
  const part = prepareDamper(damper, "", frame.width, frame.height);
  if (length < part.damper.frameDepth) {
    const depth = inBothUnits(part.damper.frameDepth, "length");
    throw new SectionProblem("length", "the damper is deeper than the section is long", `at least ${depth}`);
  }
  const cabinetArea = frameArea(frame);
  const ratio = part.area / cabinetArea;
  return { part, wallLoss: wallOpeningLoss(ratio, ratio), length, cabinetArea };
}
