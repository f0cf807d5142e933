import { louverStillAirPenetration, windDrivenPassing } from "#component/louver";
import { wireScreenPressureLoss } from "#component/wire-screen";
import { condensedWaterEnthalpy } from "#fluid/moist-air";
import { type Air, createAir } from "../air.ts";
import { createSectionRating, recordAtRest } from "../base-rating.ts";
import type { SectionCondition, SectionRating } from "../contract.ts";
import { actualAirflow, airDensity, beginRating, endRating } from "../station.ts";
import type { LouverDesign } from "./design.ts";

/** A louver at a condition. Three velocities, each with its own limits. */
export interface LouverRating extends SectionRating {
  actualAirflow: number;
  density: number;
  /** m/s: gross, between the frame's members, in the free area. */
  coreVelocity: number;
  freeVelocity: number;
  /** Onset of water penetration less the free-area velocity, over the onset; negative beyond it. */
  marginToOnset: number;
  /** Pa. */
  louverLoss: number;
  screenLoss: number;
  /** kg/s of rain or snow that comes through, and of free liquid caught and drained. */
  carriedIn: number;
  drained: number;
}

const atRest = recordAtRest<LouverRating>({
  ...createSectionRating(),
  actualAirflow: 0,
  density: 0,
  coreVelocity: 0,
  freeVelocity: 0,
  marginToOnset: 0,
  louverLoss: 0,
  screenLoss: 0,
  carriedIn: 0,
  drained: 0,
});

/** A record to be filled. */
export function createLouverRating(): LouverRating {
  return { ...atRest, entering: createAir(), leaving: createAir() };
}

/** Rates the louver: pressure on the free-area velocity, and the rain or snow that comes through. */
export function rateLouver(design: LouverDesign, air: Air, at: SectionCondition, out: LouverRating): void {
  beginRating(air, out);
  const flow = actualAirflow(air);
  const density = airDensity(air);
  const freeVelocity = flow / design.freeArea;
  out.actualAirflow = flow;
  out.density = density;
  out.faceVelocity = flow / design.faceArea;
  out.coreVelocity = flow / design.coreArea;
  out.freeVelocity = freeVelocity;
  out.marginToOnset = 1 - freeVelocity / design.louver.onsetVelocity;
  out.louverLoss = design.louver.lossCoefficient * 0.5 * density * freeVelocity * freeVelocity;
  out.screenLoss =
    design.screen === undefined
      ? 0
      : wireScreenPressureLoss(design.screen, out.faceVelocity, density, air.dryBulb, design.cloggedShare);
  out.totalPressureLoss = out.louverLoss + out.screenLoss;
  settleWater(design, air, at, out);
  out.leaving.peakToMeanVelocity = Math.max(1, design.cabinetArea / design.coreArea);
  endRating(out, design.cabinetArea);
}

/**
 * Rain onto the louver, and drops that a hood before it let through. Snow follows the air around the blades: all of it
 * comes through. The water that is caught leaves by the drain.
 */
function settleWater(design: LouverDesign, air: Air, { condition }: SectionCondition, out: LouverRating): void {
  const { rain, windSpeed } = condition.outdoor;
  const onFace = design.isExposed ? rain * design.faceArea : 0;
  const arriving = onFace + air.freeLiquid;
  const passing = air.dryBulb < 0 ? arriving : waterPassing(design, arriving, windSpeed, out.freeVelocity);
  out.carriedIn = Math.min(passing, arriving);
  out.drained = arriving - out.carriedIn;
  out.waterToAir = out.carriedIn - air.freeLiquid;
  out.waterEnthalpyToAir = out.waterToAir * condensedWaterEnthalpy(air.dryBulb);
  out.leaving.freeLiquid = out.carriedIn;
}

/** kg/s that come through by still air, or by wind where the louver is exposed and the wind blows; the larger. */
function waterPassing(design: LouverDesign, arriving: number, windSpeed: number, freeVelocity: number): number {
  const { onsetVelocity, windDrivenClass } = design.louver;
  const flux = arriving / design.faceArea;
  const stillAir = louverStillAirPenetration(onsetVelocity, freeVelocity, flux) * design.freeArea;
  if (!design.isExposed || !(windSpeed > 0)) return stillAir;
  return Math.max(stillAir, windDrivenPassing(windDrivenClass) * flux * design.coreArea);
}
