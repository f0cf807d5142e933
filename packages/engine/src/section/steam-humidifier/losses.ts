import { type Loss, recordSource } from "../loss.ts";
import type { SteamHumidifierDesign } from "./design.ts";
import type { SteamHumidifierRating } from "./rate.ts";

/** The dispersion tubes. */
export function steamHumidifierLosses(design: SteamHumidifierDesign, rating: SteamHumidifierRating): readonly Loss[] {
  return [
    {
      part: "dispersion tubes",
      pressure: rating.totalPressureLoss,
      plane: "face",
      area: design.faceArea,
      velocity: rating.faceVelocity,
      density: rating.density,
      source: recordSource(design.dispersion.head),
    },
  ];
}
