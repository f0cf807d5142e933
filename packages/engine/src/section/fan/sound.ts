import { bladePassFrequency, fanSoundPower } from "#component/fan-sound";
import { octaveBands } from "#standard/fan-sound";
import type { FanDesign } from "./design.ts";
import type { FanSectionRating } from "./rate.ts";

/** Sound power of all fans of a section together, dB re 1 pW in the octave bands 63 … 8000 Hz. */
export interface FanSectionSound {
  readonly inlet: readonly number[];
  readonly outlet: readonly number[];
  /** Hz. */
  readonly bladePass: number;
  /** dB either way in a band. */
  readonly uncertainty: number;
  readonly source: string;
  /** Said beside every figure made from it. */
  readonly certainty: string;
}

/**
 * Sound of the fans at a rating; undefined when they stand or add no pressure. The handbook method gives inlet and outlet
 * alike. It was made for housed fans: for plenum wheels no open source was found, so the same is taken with a wider band.
 */
export function fanSectionSound(design: FanDesign, rating: FanSectionRating): FanSectionSound | undefined {
  if (rating.fanSpeed === 0 || rating.fanTotalPressure <= 0) return undefined;
  const bladePass = bladePassFrequency(design.wheel.blades, rating.fanSpeed);
  const share = rating.staticEfficiency / design.wheel.curve.bestEfficiency;
  const levels = octaveBands.map(
    (frequency) =>
      fanSoundPower(frequency, rating.flowPerFan, rating.fanTotalPressure, share, design.diameter, bladePass) +
      10 * Math.log10(rating.fansRunning),
  );
  return {
    inlet: levels,
    outlet: levels,
    bladePass,
    uncertainty: design.housed ? 5 : 8,
    source: "long-architectural-acoustics tables 13.5-13.8",
    certainty: design.housed
      ? "former handbook method; a band may be off by 5 dB either way, by 10 dB in bad cases"
      : "method of housed fans taken for plenum wheels, from memory that they are of like loudness",
  };
}
