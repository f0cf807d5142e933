import { type Air, createAir } from "../air.ts";
import { createSectionRating, recordAtRest } from "../base-rating.ts";
import type { SectionCondition, SectionRating } from "../contract.ts";
import { damperBladeLoss, damperTorque } from "../damper-part.ts";
import { actualAirflow, airDensity, beginRating, endRating } from "../station.ts";
import type { ShutOffDamperDesign } from "./design.ts";

/** A shut-off damper at a condition; closed, its loss is that of its leakage. */
export interface ShutOffDamperRating extends SectionRating {
  density: number;
  bladeAngle: number;
  bladeLoss: number;
  torque: number;
}

const atRest = recordAtRest<ShutOffDamperRating>({
  ...createSectionRating(),
  density: 0,
  bladeAngle: 0,
  bladeLoss: 0,
  torque: 0,
});

/** A record to be filled. */
export function createShutOffDamperRating(): ShutOffDamperRating {
  return { ...atRest, entering: createAir(), leaving: createAir() };
}

/** Rates the damper as it stands: closed when the unit's dampers are closed, else at its angle. */
export function rateShutOffDamper(
  design: ShutOffDamperDesign,
  air: Air,
  { operation }: SectionCondition,
  out: ShutOffDamperRating,
): void {
  beginRating(air, out);
  out.density = airDensity(air);
  out.faceVelocity = actualAirflow(air) / design.part.area;
  out.bladeAngle = operation.dampers === "closed" ? 0 : design.part.bladeAngle;
  out.bladeLoss = damperBladeLoss(design.part, out.bladeAngle);
  out.torque = damperTorque(design.part);
  out.totalPressureLoss = (out.bladeLoss + design.wallLoss) * 0.5 * out.density * out.faceVelocity * out.faceVelocity;
  out.leaving.peakToMeanVelocity = Math.max(1, design.cabinetArea / design.part.area);
  endRating(out, design.cabinetArea);
}
