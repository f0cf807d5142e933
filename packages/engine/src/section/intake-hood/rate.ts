import { abruptExpansionLoss } from "#component/fitting-loss";
import { wireScreenPressureLoss } from "#component/wire-screen";
import { condensedWaterEnthalpy } from "#fluid/moist-air";
import { rainShareLifted, snowShareLifted } from "#fluid/precipitation";
import { type Air, createAir } from "../air.ts";
import { createSectionRating, recordAtRest } from "../base-rating.ts";
import type { SectionCondition, SectionRating } from "../contract.ts";
import { actualAirflow, airDensity, beginRating, endRating } from "../station.ts";
import type { IntakeHoodDesign } from "./design.ts";

/** A hood at a condition. */
export interface IntakeHoodRating extends SectionRating {
  /** m³/s and kg/m³ in the opening. */
  actualAirflow: number;
  density: number;
  /** m/s in the opening (upwards when it faces down) and in the throat. */
  openingVelocity: number;
  throatVelocity: number;
  /** Pa of total pressure: opening and turn, screen, widening into the cabinet. */
  turnLoss: number;
  screenLoss: number;
  expansionLoss: number;
  /** Share of the rain or snow at the opening that the air takes with it, and kg/s of it. */
  precipitationShare: number;
  precipitation: number;
}

const atRest = recordAtRest<IntakeHoodRating>({
  ...createSectionRating(),
  actualAirflow: 0,
  density: 0,
  openingVelocity: 0,
  throatVelocity: 0,
  turnLoss: 0,
  screenLoss: 0,
  expansionLoss: 0,
  precipitationShare: 0,
  precipitation: 0,
});

/** A record to be filled. */
export function createIntakeHoodRating(): IntakeHoodRating {
  return { ...atRest, entering: createAir(), leaving: createAir() };
}

/** Rates the hood: pressure, and what rain or snow comes in with the air. */
export function rateIntakeHood(
  design: IntakeHoodDesign,
  air: Air,
  { condition }: SectionCondition,
  out: IntakeHoodRating,
): void {
  beginRating(air, out);
  const flow = actualAirflow(air);
  const density = airDensity(air);
  const openingVelocity = flow / design.openingArea;
  const throatVelocity = flow / design.throatArea;
  out.actualAirflow = flow;
  out.density = density;
  out.openingVelocity = openingVelocity;
  out.throatVelocity = throatVelocity;
  out.faceVelocity = openingVelocity;
  out.turnLoss = design.lossCoefficient * 0.5 * density * openingVelocity * openingVelocity;
  out.screenLoss = wireScreenPressureLoss(design.screen, openingVelocity, density, air.dryBulb, design.cloggedShare);
  out.expansionLoss =
    abruptExpansionLoss(design.throatArea / design.cabinetArea) * 0.5 * density * throatVelocity * throatVelocity;
  out.totalPressureLoss = out.turnLoss + out.screenLoss + out.expansionLoss;
  takePrecipitation(design, air, condition.outdoor.rain, out);
  out.leaving.peakToMeanVelocity = Math.max(1, design.cabinetArea / design.throatArea);
  endRating(out, design.cabinetArea);
}

/** Seconds of an hour: a flux of water in kg/s m² is its depth in mm/s. */
const hour = 3600;

function takePrecipitation(design: IntakeHoodDesign, air: Air, flux: number, out: IntakeHoodRating): void {
  const isSnow = air.dryBulb < 0;
  out.precipitationShare =
    flux === 0
      ? 0
      : !design.facesDown
        ? 1
        : isSnow
          ? snowShareLifted(out.openingVelocity, out.density)
          : rainShareLifted(out.openingVelocity, flux * hour, out.density);
  out.precipitation = flux * design.openingArea * out.precipitationShare;
  out.waterToAir = out.precipitation;
  out.waterEnthalpyToAir = out.precipitation * condensedWaterEnthalpy(air.dryBulb);
  out.leaving.freeLiquid = air.freeLiquid + out.precipitation;
}
