import type { Loss } from "../loss.ts";
import type { ShutOffDamperDesign } from "./design.ts";
import type { ShutOffDamperRating } from "./rate.ts";

/** Blades at their angle, and the wall around the damper. */
export function shutOffDamperLosses(design: ShutOffDamperDesign, rating: ShutOffDamperRating): readonly Loss[] {
  const { density, faceVelocity } = rating;
  const head = 0.5 * density * faceVelocity * faceVelocity;
  const face = { plane: "face", area: design.part.area, velocity: faceVelocity, density } as const;
  return [
    {
      part: "damper blades",
      pressure: rating.bladeLoss * head,
      ...face,
      source: "ashrae-825-rp exponential law with quadratics at the ends",
      bladeAngle: rating.bladeAngle,
    },
    {
      part: "wall around it",
      pressure: design.wallLoss * head,
      ...face,
      source: "idelchik-handbook sum of sudden contraction and sudden expansion",
    },
  ];
}
