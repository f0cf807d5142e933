import { inOctaveBands } from "#component/sound-path";
import type { SectionSound } from "../contract.ts";
import { type DamperStream, damperSound, noSoundLoss } from "../flow-sound.ts";
import type { MixingBoxDesign } from "./design.ts";
import type { MixingBoxRating } from "./rate.ts";

/**
 * Sound that comes against the airflow is shared between the two dampers by the areas of their faces. Each damper makes
 * flow noise of its own.
 */
export function mixingBoxSound(design: MixingBoxDesign, rating: MixingBoxRating): SectionSound {
  const made = damperSound(outsideStream(design, rating), returnStream(design, rating));
  const passing = {
    downstream: noSoundLoss,
    upstream: noSoundLoss,
    ...(made === undefined ? {} : { made }),
    source: "ashrae-applications-noise-vibration branch by area",
    certainty: "from memory",
  } as const;
  const back = design.returnOpening?.part.area;
  if (back === undefined) return passing;
  const both = design.outside.area + back;
  const lossTo = (area: number) => inOctaveBands(() => 10 * Math.log10(both / area));
  return { ...passing, upstream: lossTo(design.outside.area), toReturn: lossTo(back) };
}

function outsideStream(design: MixingBoxDesign, rating: MixingBoxRating): DamperStream {
  return { part: design.outside, bladeLoss: rating.outsideBladeLoss, velocity: rating.outsideVelocity };
}

function returnStream({ returnOpening }: MixingBoxDesign, rating: MixingBoxRating): DamperStream | undefined {
  if (returnOpening === undefined) return undefined;
  return { part: returnOpening.part, bladeLoss: rating.returnBladeLoss, velocity: rating.returnVelocity };
}
