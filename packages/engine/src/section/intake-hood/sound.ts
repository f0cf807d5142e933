import { inOctaveBands, squareTurnSoundLoss } from "#component/sound-path";
import { squareTurnLoss } from "#standard/sound-path";
import type { SectionSound } from "../contract.ts";
import type { IntakeHoodDesign } from "./design.ts";

/** A hood that is open underneath turns sound by a right angle; its depth is the width of the turn. */
export function intakeHoodSound(design: IntakeHoodDesign): SectionSound {
  const loss = inOctaveBands((frequency) => (design.facesDown ? squareTurnSoundLoss(design.projection, frequency) : 0));
  return {
    downstream: loss,
    upstream: loss,
    openingArea: design.openingArea,
    source: squareTurnLoss.source,
    certainty: "published",
  };
}
