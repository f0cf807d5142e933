import { chamberSoundLoss } from "#component/sound-path";
import type { SectionSound, SoundRoom } from "../contract.ts";
import type { DischargePlenumDesign } from "./design.ts";

/**
 * A chamber between the cabinet and the duct. The way in is its whole entry plane: taken from its middle to the middle
 * of the duct's opening.
 */
export function dischargePlenumSound(design: DischargePlenumDesign, room: SoundRoom): SectionSound {
  const { width, height } = room.frame;
  const { length, ductArea } = design;
  const straight = design.direction === "horizontal";
  const [along, across] = straight ? [length, 0] : [length / 2, height / 2];
  const angle = (Math.atan2(across, along) * 180) / Math.PI;
  const surface = 2 * (width * height + (width + height) * length);
  const loss = room.absorption.map((absorption) =>
    chamberSoundLoss(ductArea, surface, absorption, Math.hypot(along, across), angle),
  );
  return { downstream: loss, upstream: loss, source: "wells-1958", certainty: "published" };
}
