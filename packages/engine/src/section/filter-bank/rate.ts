import {
  bypassFlow,
  cleanResistanceAtRated,
  dustResistanceAtRated,
  filterLife,
  filterResistance,
} from "#component/filter-medium";
import { peakToMeanAfterResistance } from "#component/fitting-loss";
import { type Air, createAir } from "../air.ts";
import { createSectionRating, recordAtRest } from "../base-rating.ts";
import type { SectionCondition, SectionRating } from "../contract.ts";
import { actualAirflow, airDensity, beginRating, endRating } from "../station.ts";
import type { FilterBankDesign } from "./design.ts";

/** A filter bank at a condition. */
export interface FilterBankRating extends SectionRating {
  actualAirflow: number;
  density: number;
  /** °C, for the viscosity. */
  dryBulb: number;
  loading: number;
  /** m/s: on the panels' faces (without bypass), in the medium, in the section, in the gaps between panels. */
  panelVelocity: number;
  mediaVelocity: number;
  sectionVelocity: number;
  gapVelocity: number;
  /** Pa: through the filters at this loading, clean and at change-out at this flow, and of gaps and turns. */
  filterLoss: number;
  cleanLoss: number;
  changeOutLoss: number;
  gapLoss: number;
  /** Share of the flow that passes beside the panels. */
  bypassShare: number;
  /** h from clean to change-out in steady service at this flow. */
  lifeHours: number;
  /** Of the rack: panels; m² of their faces, of their medium and of sheet beside them. */
  panelCount: number;
  panelArea: number;
  mediaArea: number;
  blankArea: number;
}

const atRest = recordAtRest<FilterBankRating>({
  ...createSectionRating(),
  actualAirflow: 0,
  density: 0,
  dryBulb: 0,
  loading: 0,
  panelVelocity: 0,
  mediaVelocity: 0,
  sectionVelocity: 0,
  gapVelocity: 0,
  filterLoss: 0,
  cleanLoss: 0,
  changeOutLoss: 0,
  gapLoss: 0,
  bypassShare: 0,
  lifeHours: 0,
  panelCount: 0,
  panelArea: 0,
  mediaArea: 0,
  blankArea: 0,
});

/** A record to be filled. */
export function createFilterBankRating(): FilterBankRating {
  return { ...atRest, entering: createAir(), leaving: createAir() };
}

/** Pa through prefilter and filter at a velocity on the panels' faces. */
export function filterLossAt(
  design: FilterBankDesign,
  panelVelocity: number,
  loading: number,
  density: number,
  dryBulb: number,
): number {
  const main = filterResistance(design.medium, panelVelocity, loading, density, dryBulb);
  if (design.prefilter === undefined) return main;
  return main + filterResistance(design.prefilter, panelVelocity, loading, density, dryBulb);
}

/** Rates the bank at the condition's filter loading. */
export function rateFilterBank(
  design: FilterBankDesign,
  air: Air,
  { condition }: SectionCondition,
  out: FilterBankRating,
): void {
  beginRating(air, out);
  const flow = actualAirflow(air);
  const density = airDensity(air);
  const loading = condition.filterLoading;
  const through = flowThroughPanels(design, flow, loading, density, air.dryBulb, out.bypassShare);
  out.actualAirflow = flow;
  out.density = density;
  out.dryBulb = air.dryBulb;
  out.loading = loading;
  out.panelVelocity = through / design.panelArea;
  out.mediaVelocity = through / design.mediaArea;
  out.sectionVelocity = flow / design.sectionArea;
  out.gapVelocity = flow / design.gapArea;
  out.faceVelocity = out.panelVelocity;
  out.filterLoss = filterLossAt(design, out.panelVelocity, loading, density, air.dryBulb);
  out.gapLoss = design.gapLossCoefficient * 0.5 * density * out.gapVelocity * out.gapVelocity;
  out.totalPressureLoss = out.filterLoss + out.gapLoss;
  out.bypassShare = 1 - through / flow;
  const velocityPressure = 0.5 * density * out.sectionVelocity * out.sectionVelocity;
  const lossCoefficient = out.totalPressureLoss / velocityPressure;
  out.leaving.peakToMeanVelocity = peakToMeanAfterResistance(air.peakToMeanVelocity, lossCoefficient);
  endRating(out, design.sectionArea);
}

/** Adds what the rack is, and how it does over its life, at the flow of the rating. */
export function completeFilterBank(design: FilterBankDesign, _: SectionCondition, out: FilterBankRating): void {
  const { panelVelocity, density, dryBulb } = out;
  out.cleanLoss = filterLossAt(design, panelVelocity, 0, density, dryBulb);
  out.changeOutLoss = filterLossAt(design, panelVelocity, 1, density, dryBulb);
  out.lifeHours = filterLife(design.prefilter ?? design.medium, panelVelocity, design.dustConcentration) / 3600;
  out.panelCount = design.panelCount;
  out.panelArea = design.panelArea;
  out.mediaArea = design.mediaArea;
  out.blankArea = design.blankArea;
}

/**
 * m³/s through the panels, so that the crack beside them takes the rest at the same pressure: by Newton's steps from a share
 * that leaks, such as the last rating's.
 */
function flowThroughPanels(
  design: FilterBankDesign,
  flow: number,
  loading: number,
  density: number,
  dryBulb: number,
  leaking: number,
): number {
  const { medium, prefilter, crackArea, panelArea } = design;
  if (crackArea === 0 || flow === 0) return flow;
  const clean = cleanResistanceAtRated(medium, density, dryBulb);
  const dust = dustResistanceAtRated(medium, loading, dryBulb);
  const cleanBefore = prefilter === undefined ? 0 : cleanResistanceAtRated(prefilter, density, dryBulb);
  const dustBefore = prefilter === undefined ? 0 : dustResistanceAtRated(prefilter, loading, dryBulb);
  const { ratedVelocity, exponent } = medium;
  const { ratedVelocity: ratedBefore, exponent: exponentBefore } = prefilter ?? medium;
  let through = (leaking > 0 && leaking < 1 ? 1 - leaking : 1) * flow;
  for (let count = 0; count < 100; count++) {
    const velocity = through / panelArea;
    const own = velocity / ratedVelocity;
    const before = velocity / ratedBefore;
    const byMedium = clean * own ** exponent;
    const byPrefilter = cleanBefore === 0 ? 0 : cleanBefore * before ** exponentBefore;
    const byDust = dust * own + dustBefore * before;
    const resistance = byMedium + byPrefilter + byDust;
    const beside = bypassFlow(crackArea, resistance, density);
    // What the crack takes less what is left for it, and how that rises with the logarithm of the flow through the panels.
    const excess = beside - (flow - through);
    if (Math.abs(excess) <= 1e-14 * flow) break;
    const rise = (exponent * byMedium + exponentBefore * byPrefilter + byDust) / resistance;
    through = Math.max(1e-3 * through, through - excess / (1 + (0.5 * beside * rise) / through));
  }
  return through;
}
