import { type FilterMedium, filterResistance } from "#component/filter-medium";
import { type Loss, recordSource } from "../loss.ts";
import type { FilterBankDesign } from "./design.ts";
import type { FilterBankRating } from "./rate.ts";

/** Way into the rack and out of it, prefilter, filter. */
export function filterBankLosses(design: FilterBankDesign, rating: FilterBankRating): readonly Loss[] {
  const { medium, prefilter, rack } = design;
  const gap: Loss = {
    part: rack === "angled" ? "gaps between the panels" : "sheet around the panels",
    pressure: rating.gapLoss,
    plane: "gap",
    area: design.gapArea,
    velocity: rating.gapVelocity,
    density: rating.density,
    source: "derived-here opening in a wall, and the turns into and out of leaning panels",
  };
  if (prefilter === undefined) return [gap, mediumLoss("filter", medium, design, rating)];
  return [gap, mediumLoss("prefilter", prefilter, design, rating), mediumLoss("filter", medium, design, rating)];
}

function mediumLoss(part: string, medium: FilterMedium, design: FilterBankDesign, rating: FilterBankRating): Loss {
  const { panelVelocity, density, dryBulb, loading } = rating;
  const at = (share: number) => filterResistance(medium, panelVelocity, share, density, dryBulb);
  return {
    part: `${part}, ${medium.style}, MERV ${medium.efficiencyClass}`,
    pressure: at(loading),
    plane: "face",
    area: design.panelArea,
    velocity: panelVelocity,
    density,
    source: recordSource(medium.head),
    span: { of: "filter", least: at(0), most: at(1), share: loading },
  };
}
