import { incidentalSoundLoss } from "#standard/sound-path";
import type { SectionRating, SectionSound } from "./contract.ts";
import { noSoundLoss } from "./flow-sound.ts";

/** Sound passes a finned coil and loses a little, the same both ways, whatever its rows. */
export function coilSound(_: unknown, { faceVelocity }: SectionRating): SectionSound {
  return passingSound(incidentalSoundLoss.coil, faceVelocity);
}

/** Sound passes filter panels and loses a little, the same both ways. */
export function filterSound(_: unknown, { faceVelocity }: SectionRating): SectionSound {
  return passingSound(incidentalSoundLoss.filters, faceVelocity);
}

/** All sound is taken to pass blades, tubes and lanes that the air meets at `velocity`; what they make is not told. */
export function openSound(velocity: number): SectionSound {
  return { ...passingSound(noSoundLoss, velocity), source: "common-practice all sound is taken to pass" };
}

function passingSound(loss: readonly number[], uncounted: number): SectionSound {
  const { source } = incidentalSoundLoss;
  return { downstream: loss, upstream: loss, uncounted, source, certainty: "from memory" };
}
