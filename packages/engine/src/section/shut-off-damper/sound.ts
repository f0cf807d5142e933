import type { SectionSound } from "../contract.ts";
import { damperSound, noSoundLoss } from "../flow-sound.ts";
import type { ShutOffDamperDesign } from "./design.ts";
import type { ShutOffDamperRating } from "./rate.ts";

/** Blades let sound through and make flow noise. */
export function shutOffDamperSound(design: ShutOffDamperDesign, rating: ShutOffDamperRating): SectionSound {
  const { bladeLoss, faceVelocity: velocity } = rating;
  const made = damperSound({ part: design.part, bladeLoss, velocity });
  return {
    downstream: noSoundLoss,
    upstream: noSoundLoss,
    ...(made === undefined ? {} : { made }),
    source: "common-practice all sound is taken to pass",
    certainty: "from memory",
  };
}
