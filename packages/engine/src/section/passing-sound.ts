import { incidentalSoundLoss } from "#standard/sound-path";
import type { SectionSound } from "./contract.ts";

/** Sound passes a finned coil and loses a little, the same both ways, whatever its rows. */
export function coilSound(): SectionSound {
  return passingSound(incidentalSoundLoss.coil);
}

/** Sound passes filter panels and loses a little, the same both ways. */
export function filterSound(): SectionSound {
  return passingSound(incidentalSoundLoss.filters);
}

function passingSound(loss: readonly number[]): SectionSound {
  return { downstream: loss, upstream: loss, source: incidentalSoundLoss.source, certainty: "from memory" };
}
