import { bladePassFrequency, fanSoundPower, sumOfLevels } from "#component/fan-sound";
import { octaveBands } from "#standard/fan-sound";
import { fanHousingAttenuation } from "#standard/sound-path";
import type { MadeSound, SectionSound } from "../contract.ts";
import { noSoundLoss } from "../flow-sound.ts";
import type { FanDesign } from "./design.ts";
import type { FanSectionRating } from "./rate.ts";

/**
 * Sound of all fans of the section together; undefined when they stand or add no pressure. The handbook method gives
 * inlet and outlet alike. It was made for housed fans: for plenum wheels no open source was found, so the same is taken
 * with a wider band.
 */
export function fanMadeSound(design: FanDesign, rating: FanSectionRating): MadeSound | undefined {
  if (rating.fanSpeed === 0 || rating.fanTotalPressure <= 0) return undefined;
  const tone = bladePassFrequency(design.wheel.blades, rating.fanSpeed);
  const share = rating.staticEfficiency / design.wheel.curve.bestEfficiency;
  const levels = octaveBands.map(
    (frequency) =>
      fanSoundPower(frequency, rating.flowPerFan, rating.fanTotalPressure, share, design.diameter, tone) +
      10 * Math.log10(rating.fansRunning),
  );
  return {
    downstream: levels,
    upstream: levels,
    inside: soundInCabinet(design, levels),
    tone,
    uncertainty: design.housed ? 5 : 8,
    source: "long-architectural-acoustics tables 13.5-13.8",
    certainty: design.housed
      ? "former handbook method; a band may be off by 5 dB either way, by 10 dB in bad cases"
      : "method of housed fans taken for plenum wheels, from memory that they are of like loudness",
  };
}

/** The cabinet around a housed fan holds what its inlets give off and what comes through its housing; around wheels, all. */
function soundInCabinet(design: FanDesign, levels: readonly number[]): readonly number[] {
  return levels.map((level, band) => {
    const kept = design.housed ? fanHousingAttenuation.decibels[band]! : 0;
    return sumOfLevels([level, level - kept]);
  });
}

/** Fans let through what sound comes to them, as nothing better is known, and make their own. */
export function fanSound(design: FanDesign, rating: FanSectionRating): SectionSound {
  const made = fanMadeSound(design, rating);
  return {
    downstream: noSoundLoss,
    upstream: noSoundLoss,
    ...(made === undefined ? {} : { made }),
    source: "common-practice all sound is taken to pass",
    certainty: "from memory",
  };
}
