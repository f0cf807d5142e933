import type { SectionSound } from "../contract.ts";
import { bladeSound, noSoundLoss } from "../flow-sound.ts";
import type { LouverDesign } from "./design.ts";
import type { LouverRating } from "./rate.ts";

/** Blades of sheet metal let sound through and make flow noise. */
export function louverSound(design: LouverDesign, rating: LouverRating): SectionSound {
  const { freeVelocity, faceVelocity } = rating;
  const onFace = faceVelocity > 0 ? design.louver.lossCoefficient * (freeVelocity / faceVelocity) ** 2 : 0;
  const made = bladeSound(onFace, faceVelocity, design.faceArea);
  return {
    downstream: noSoundLoss,
    upstream: noSoundLoss,
    ...(made === undefined ? {} : { made }),
    ...(design.isExposed ? { openingArea: design.faceArea } : {}),
    source: "common-practice all sound is taken to pass",
    certainty: "from memory",
  };
}
