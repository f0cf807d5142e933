import type { Loss } from "../loss.ts";
import { actualAirflow } from "../station.ts";
import type { DischargePlenumDesign } from "./design.ts";
import type { DischargePlenumRating } from "./rate.ts";

/** Spreading from the stream that comes, turn, edge of the duct. */
export function dischargePlenumLosses(design: DischargePlenumDesign, rating: DischargePlenumRating): readonly Loss[] {
  const { density, entryVelocity, plenumVelocity, ductVelocity } = rating;
  const losses: Loss[] = [
    {
      part: "spreading into the plenum",
      pressure: rating.expansionLoss,
      plane: "jet",
      area: entryVelocity > 0 ? actualAirflow(rating.entering) / entryVelocity : design.plenumArea,
      velocity: entryVelocity,
      density,
      source: "idelchik-handbook sudden expansion, Borda and Carnot",
    },
  ];
  if (design.turnLoss > 0) {
    losses.push({
      part: `turn ${design.direction}`,
      pressure: rating.turnLoss,
      plane: "plenum",
      area: design.plenumArea,
      velocity: plenumVelocity,
      density,
      source: "derived-here the plenum's velocity pressure is lost whole",
    });
  }
  losses.push({
    part: `${design.edge} edge of the duct`,
    pressure: rating.ductEntryLoss,
    plane: "duct",
    area: design.ductArea,
    velocity: ductVelocity,
    density,
    source: "rennels-hudson-2012 entrance, less what the plenum is larger by",
  });
  return losses;
}
