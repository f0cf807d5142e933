import { type Air, createAir } from "../air.ts";
import { createSectionRating, recordAtRest } from "../base-rating.ts";
import type { SectionRating } from "../contract.ts";
import { actualAirflow, airDensity, beginRating, endRating } from "../station.ts";
import type { DischargePlenumDesign } from "./design.ts";

/** What a discharge plenum reports. */
export interface DischargePlenumRating extends SectionRating {
  density: number;
  /** m/s as the stream enters (a fan's outlet, or the cabinet), in the plenum, in the duct. */
  entryVelocity: number;
  plenumVelocity: number;
  ductVelocity: number;
  /** Pa of total pressure. */
  expansionLoss: number;
  turnLoss: number;
  ductEntryLoss: number;
  /** Pa in the duct's opening: what is left for the duct system. */
  ductStaticPressure: number;
}

const atRest = recordAtRest<DischargePlenumRating>({
  ...createSectionRating(),
  density: 0,
  entryVelocity: 0,
  plenumVelocity: 0,
  ductVelocity: 0,
  expansionLoss: 0,
  turnLoss: 0,
  ductEntryLoss: 0,
  ductStaticPressure: 0,
});

/** A record for a discharge plenum. */
export function createDischargePlenumRating(): DischargePlenumRating {
  return { ...atRest, entering: createAir(), leaving: createAir() };
}

/**
 * The stream spreads from the velocity at which it comes to that of the plenum (Borda and Carnot), turns where the duct
 * leaves up or down, and speeds up again into the duct.
 */
export function rateDischargePlenum(design: DischargePlenumDesign, air: Air, out: DischargePlenumRating): void {
  beginRating(air, out);
  const flow = actualAirflow(out.entering);
  out.density = airDensity(out.entering);
  const dynamic = Math.max(air.totalPressure - air.staticPressure, 0);
  out.entryVelocity = Math.sqrt((2 * dynamic) / out.density);
  out.plenumVelocity = flow / design.plenumArea;
  out.ductVelocity = flow / design.ductArea;
  out.faceVelocity = out.plenumVelocity;
  out.expansionLoss = 0.5 * out.density * Math.max(out.entryVelocity - out.plenumVelocity, 0) ** 2;
  out.turnLoss = design.turnLoss * 0.5 * out.density * out.plenumVelocity ** 2;
  out.ductEntryLoss = design.entryLoss * 0.5 * out.density * out.ductVelocity ** 2;
  out.totalPressureLoss = out.expansionLoss + out.turnLoss + out.ductEntryLoss;
  // Behind an edge the profile is uneven for some diameters by common experience; a bell mouth leaves it flat.
  out.leaving.peakToMeanVelocity = design.edge === "bell mouth" ? 1.05 : 1.2;
  endRating(out, design.ductArea);
  out.ductStaticPressure = out.leaving.staticPressure;
}
