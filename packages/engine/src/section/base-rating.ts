import { createAir } from "./air.ts";
import type { SectionRating } from "./contract.ts";

/** What every rating begins with, to be spread into a kind's own record. */
export function createSectionRating(): SectionRating {
  return {
    entering: createAir(),
    leaving: createAir(),
    totalPressureLoss: 0,
    heatToAir: 0,
    waterToAir: 0,
    waterEnthalpyToAir: 0,
    faceVelocity: 0,
  };
}
