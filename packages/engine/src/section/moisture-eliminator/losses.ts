import { type Loss, recordSource } from "../loss.ts";
import type { MoistureEliminatorDesign } from "./design.ts";
import type { MoistureEliminatorRating } from "./rate.ts";

/** The bent blades. */
export function moistureEliminatorLosses(
  design: MoistureEliminatorDesign,
  rating: MoistureEliminatorRating,
): readonly Loss[] {
  return [
    {
      part: "eliminator blades",
      pressure: rating.totalPressureLoss,
      plane: "face",
      area: design.faceArea,
      velocity: rating.faceVelocity,
      density: rating.density,
      source: recordSource(design.eliminator.head),
    },
  ];
}
