import { metresPerInch } from "#quantity/inch-pound";
import { inBothUnits } from "../both-units.ts";
import { certifiedRangeNotes } from "../coil/certified-range.ts";
import { liquidCoilNotes } from "../coil/notes.ts";
import { fillingWater as noLiquid } from "../coil/parts.ts";
import type { Note, SectionCondition, Shortfall } from "../contract.ts";
import type { ChilledWaterCoilDesign } from "./design.ts";
import type { ChilledWaterCoilRating } from "./rate.ts";

/** K by which a set point counts as held. */
const held = 0.02;

/** The leaving dry bulb that the coil does not reach. */
export function coolingShortfalls(
  _: ChilledWaterCoilDesign,
  rating: ChilledWaterCoilRating,
  at: SectionCondition,
): readonly Shortfall[] {
  const wanted = at.operation.coolingLeaving;
  if (wanted === undefined || rating.leavingDryBulb <= wanted + held) return [];
  return [{ what: "dry bulb behind the cooling coil", quantity: "temperature", wanted, got: rating.leavingDryBulb }];
}

/** What a practitioner should see about a chilled-water coil's rating. */
export function coolingNotes(
  design: ChilledWaterCoilDesign,
  rating: ChilledWaterCoilRating,
  at: SectionCondition,
): readonly Note[] {
  const supply = at.condition.utilities.chilledWater;
  const liquid = supply?.liquid ?? noLiquid;
  const notes = liquidCoilNotes(design.block, liquid, supply, rating);
  if (rating.condensate > 0 && rating.carryOverShare > 1) {
    notes.push({
      what: `water is thrown: the flow peaks at ${Math.round(100 * rating.carryOverShare)} % of the velocity at which this coil sheds drops`,
      weight: "caution",
      source: "coil-guide-carry-over",
    });
  }
  if (rating.wetShare > 0 && rating.liquidEntering < 0) {
    notes.push({
      what: "the surface lies below 0 °C: frost grows, which this rating does not count",
      weight: "caution",
    });
  }
  if (rating.freezeMargin < 2 && rating.entering.coldestFilament < 2) {
    notes.push({
      what: "tubes can freeze: drain them, run the pump or use glycol while such air can reach the coil",
      weight: "caution",
    });
  }
  if (rating.fullFlowBasis === "highest velocity") {
    notes.push({
      what: "the rise asked for is not reached at this load or needs more than 2.4 m/s in the tubes: the flow of 2.4 m/s is taken as full",
      weight: "information",
    });
  }
  notes.push(...panNotes(design, rating));
  notes.push(...certifiedRangeNotes("cooling", rating, liquid));
  return notes;
}

/** m of fins above one pan: the closest that a public guide asks, and the most that the trade builds. */
const closestPans = 24 * metresPerInch;
const widestPans = 48 * metresPerInch;

/** How much of the coil drains into one pan, against what guides ask. */
function panNotes({ block, intermediatePans }: ChilledWaterCoilDesign, rating: ChilledWaterCoilRating): Note[] {
  const notes: Note[] = [];
  if (block.stacked > 1 && !intermediatePans) {
    notes.push({
      what: "water of the upper coils runs over the lower ones: there is no intermediate pan",
      weight: "caution",
      source: "cooling-coil-pan-practice",
    });
  }
  const { panPitch, condensate, filmLoading, filmShare } = rating;
  if (condensate > 0 && panPitch > closestPans * 1.001) {
    const tall = panPitch > widestPans * 1.001;
    const film = `${inBothUnits(filmLoading, "massFlow")} onto a metre of pan, a film of ${Math.round(100 * filmShare)} % of the gap between fins at their foot`;
    notes.push({
      what: `${inBothUnits(panPitch, "length")} of fins drain into one pan, ${film}; ${tall ? "the trade seldom builds more than 48 in. above a pan" : "guides ask for a pan every 24 to 48 in."}`,
      weight: tall ? "caution" : "information",
      source: "cooling-coil-pan-practice",
    });
  }
  return notes;
}
