import type { Loss } from "../loss.ts";
import type { IntakeHoodDesign } from "./design.ts";
import type { IntakeHoodRating } from "./rate.ts";

/** Opening with its turn, bird screen, widening into the cabinet. */
export function intakeHoodLosses(design: IntakeHoodDesign, rating: IntakeHoodRating): readonly Loss[] {
  const { openingArea, throatArea, facesDown } = design;
  const { openingVelocity, throatVelocity, density } = rating;
  const opening = { area: openingArea, velocity: openingVelocity, density };
  return [
    {
      part: "bird screen",
      pressure: rating.screenLoss,
      plane: "approach",
      ...opening,
      source: "blevins-1984 round-edged wire screen",
    },
    {
      part: facesDown ? "opening and turn" : "opening",
      pressure: rating.turnLoss,
      plane: "opening",
      ...opening,
      source: design.lossSource,
    },
    {
      part: "widening into the cabinet",
      pressure: rating.expansionLoss,
      plane: "throat",
      area: throatArea,
      velocity: throatVelocity,
      density,
      source: "definition momentum balance of Borda and Carnot",
    },
  ];
}
