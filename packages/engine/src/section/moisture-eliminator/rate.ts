import { peakToMeanAfterResistance } from "#component/fitting-loss";
import { eliminatorCapture, eliminatorCutSize, eliminatorVelocityLimit } from "#component/moisture-eliminator";
import { condensedWaterEnthalpy } from "#fluid/moist-air";
import { type Air, createAir } from "../air.ts";
import { createSectionRating, recordAtRest } from "../base-rating.ts";
import type { SectionCondition, SectionRating } from "../contract.ts";
import { actualAirflow, airDensity, beginRating, endRating } from "../station.ts";
import type { MoistureEliminatorDesign } from "./design.ts";

/** An eliminator at a condition. */
export interface MoistureEliminatorRating extends SectionRating {
  density: number;
  /** m/s above which caught water is torn off, at this density. */
  velocityLimit: number;
  /** Share of the carried drops caught, and kg/s of it. */
  capture: number;
  drained: number;
  /** m: drop of which half is caught. */
  cutSize: number;
}

const atRest = recordAtRest<MoistureEliminatorRating>({
  ...createSectionRating(),
  density: 0,
  velocityLimit: 0,
  capture: 0,
  drained: 0,
  cutSize: 0,
});

/** A record to be filled. */
export function createMoistureEliminatorRating(): MoistureEliminatorRating {
  return { ...atRest, entering: createAir(), leaving: createAir() };
}

/** Rates the eliminator: pressure, and the drops that it catches. */
export function rateMoistureEliminator(
  design: MoistureEliminatorDesign,
  air: Air,
  _: SectionCondition,
  out: MoistureEliminatorRating,
): void {
  beginRating(air, out);
  const { eliminator } = design;
  out.density = airDensity(air);
  out.faceVelocity = actualAirflow(air) / design.faceArea;
  out.velocityLimit = eliminatorVelocityLimit(eliminator.highestVelocity, out.density);
  out.capture = eliminatorCapture(eliminator, out.faceVelocity, out.density);
  out.cutSize = eliminatorCutSize(eliminator, out.faceVelocity);
  out.drained = out.capture * air.freeLiquid;
  out.waterToAir = -out.drained;
  out.waterEnthalpyToAir = -out.drained * condensedWaterEnthalpy(air.dryBulb);
  out.leaving.freeLiquid = air.freeLiquid - out.drained;
  out.totalPressureLoss = eliminator.lossCoefficient * 0.5 * out.density * out.faceVelocity * out.faceVelocity;
  const peak = peakToMeanAfterResistance(air.peakToMeanVelocity, eliminator.lossCoefficient);
  out.leaving.peakToMeanVelocity = Math.max(peak, design.cabinetArea / design.faceArea);
  endRating(out, design.cabinetArea);
}
