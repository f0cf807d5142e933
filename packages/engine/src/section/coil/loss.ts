import type { Loss } from "../loss.ts";
import { airDensity } from "../station.ts";
import type { CoilBlock } from "./block.ts";
import type { CoilAirFigures } from "./state.ts";

/** The finned core of a coil: dry, wet, and what of the two applies. */
export function coilLosses(design: { readonly block: CoilBlock }, rating: CoilAirFigures): readonly Loss[] {
  return [coreLoss(design.block, rating)];
}

/** The loss of the fins on the velocity in their face. */
export function coreLoss(block: CoilBlock, rating: CoilAirFigures): Loss {
  const { dryLoss, wetLoss, totalPressureLoss } = rating;
  const wetShare =
    wetLoss > dryLoss ? Math.min(1, Math.max(0, (totalPressureLoss - dryLoss) / (wetLoss - dryLoss))) : 0;
  const words = wetShare === 0 ? "fins dry" : wetShare === 1 ? "fins wet" : "fins partly wet";
  return {
    part: block.stacked === 1 ? words : `${block.stacked} coils, ${words}`,
    pressure: totalPressureLoss,
    plane: "face",
    area: block.faceArea,
    velocity: rating.faceVelocity,
    density: airDensity(rating.entering),
    source: "kays-london-1984 with the surface's friction factor",
    span: { of: "fins", least: dryLoss, most: wetLoss, share: wetShare },
  };
}
