import { type Loss, recordSource } from "../loss.ts";
import type { AttenuatorDesign } from "./design.ts";
import type { AttenuatorRating } from "./rate.ts";

/** The baffles, on the velocity between them. */
export function attenuatorLosses(design: AttenuatorDesign, rating: AttenuatorRating): readonly Loss[] {
  return [
    {
      part: `${design.baffles} baffles`,
      pressure: rating.totalPressureLoss,
      plane: "passage",
      area: design.passageArea,
      velocity: rating.passageVelocity,
      density: rating.density,
      source: recordSource(design.attenuator.head),
    },
  ];
}
