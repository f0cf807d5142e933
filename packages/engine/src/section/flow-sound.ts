import { sumOfLevels } from "#component/fan-sound";
import { damperSoundPower, grilleSoundPower } from "#component/flow-noise";
import { inOctaveBands } from "#component/sound-path";
import { damperFlowNoise, grilleFlowNoise } from "#standard/sound-path";
import type { MadeSound } from "./contract.ts";
import type { DamperPart } from "./damper-part.ts";

/** A damper and the air in it. */
export interface DamperStream {
  readonly part: DamperPart;
  readonly bladeLoss: number;
  /** m/s in the face, whichever way. */
  readonly velocity: number;
}

/** Flow noise of a damper, dB re 1 pW in the octave bands; undefined in still air. */
function damperLevels({ part, bladeLoss, velocity }: DamperStream): readonly number[] | undefined {
  const speed = Math.abs(velocity);
  if (speed === 0) return undefined;
  return inOctaveBands((frequency) => damperSoundPower(frequency, bladeLoss, speed, part.area, part.height));
}

/** Flow noise of dampers that open into one room: the outside one sends it back to the intake, the other to the return opening. */
export function damperSound(across: DamperStream, back?: DamperStream): MadeSound | undefined {
  const own = damperLevels(across);
  const returned = back === undefined ? undefined : damperLevels(back);
  if (own === undefined) return undefined;
  const both = returned === undefined ? own : own.map((level, band) => sumOfLevels([level, returned[band]!]));
  return {
    downstream: both,
    upstream: own,
    inside: both,
    ...(returned === undefined ? {} : { toReturn: returned }),
    uncertainty: damperFlowNoise.uncertainty,
    source: damperFlowNoise.source,
    certainty: "handbook estimate of flow noise; real dampers lie 8 dB either way in a band",
  };
}

/** Flow noise of an intake's blades, each way; undefined in still air. */
export function bladeSound(lossCoefficient: number, velocity: number, area: number): MadeSound | undefined {
  if (!(velocity > 0)) return undefined;
  const levels = inOctaveBands((frequency) => grilleSoundPower(frequency, lossCoefficient, velocity, area));
  return {
    downstream: levels,
    upstream: levels,
    inside: levels,
    uncertainty: grilleFlowNoise.uncertainty,
    source: `${grilleFlowNoise.source} eqs. 13.27-13.33`,
    certainty: "estimate for grilles taken for the blades of a louver; 10 dB either way in a band",
  };
}

/** Sound that passes without loss a section that makes some itself. */
export const noSoundLoss: readonly number[] = inOctaveBands(() => 0);
