import { factor, group, list, quantity } from "#form/field";
import { baffleFlowNoise } from "#standard/sound-path";
import { defineFamily, type RecordHead } from "./family.ts";
import { abruptContractionLoss, abruptExpansionLoss } from "./fitting-loss.ts";

/** Baffles of mineral fibre side by side, with passages for the air between them. */
export interface Attenuator {
  readonly head: RecordHead;
  /** m: of a baffle, and of a passage, across the flow. */
  readonly baffleWidth: number;
  readonly passageWidth: number;
  /** Loss of the noses over that of blunt ones, of the tails likewise, and friction factor of the passages. */
  readonly noseFactor: number;
  readonly tailFactor: number;
  readonly frictionFactor: number;
  /** Rising lengths (m) with the insertion loss of each, dB in the octave bands 63 … 8000 Hz, in still air. */
  readonly lengths: readonly { readonly length: number; readonly insertionLoss: readonly number[] }[];
}

const fields = {
  baffleWidth: quantity("length", { meaning: "Width of a baffle", minimum: "2 in", maximum: "24 in" }),
  passageWidth: quantity("length", { meaning: "Width of a passage", minimum: "1.5 in", maximum: "24 in" }),
  noseFactor: factor({ meaning: "Loss of the noses over that of blunt ones", minimum: 0.02, maximum: 1 }),
  tailFactor: factor({ meaning: "Loss of the tails over that of blunt ones", minimum: 0.1, maximum: 1 }),
  frictionFactor: factor({ meaning: "Friction factor of the passages", minimum: 0.01, maximum: 0.1 }),
  lengths: list(
    group(
      {
        length: quantity("length", { meaning: "Length of the baffles", minimum: "1 ft", maximum: "16 ft" }),
        insertionLoss: list(factor({ meaning: "dB", minimum: 0, maximum: 60 }), {
          meaning: "Insertion loss in still air, dB in the octave bands 63, 125, … 8000 Hz",
          fewest: 8,
          most: 8,
        }),
      },
      { meaning: "A length that was tested or is known" },
    ),
    { meaning: "Insertion loss by length, rising", fewest: 1, most: 12 },
  ),
} as const;

/** The family `attenuator`. */
export const attenuatorFamily = defineFamily({
  name: "attenuator",
  meaning: "Sound-absorbing baffles across the airway",
  fields,
  build: (values, head): Attenuator => {
    values.lengths.forEach((each, index) => {
      const before = values.lengths[index - 1];
      if (before === undefined) return;
      if (!(each.length > before.length)) {
        throw new RangeError(`lengths: the ${index + 1}. must be longer than the one before`);
      }
      if (each.insertionLoss.some((loss, band) => loss < before.insertionLoss[band]!)) {
        throw new RangeError(`lengths: the ${index + 1}. takes less in a band than a shorter one`);
      }
    });
    return { head, ...values };
  },
});

/** m/s in air of about 20 °C. */
const speedOfSound = 343;

/**
 * Insertion loss of baffles in still air in one octave band: between the record's lengths in a straight line, below the
 * first in proportion. Passages wider than the record's lose in proportion, as the share of lined edge to area falls.
 *
 * @param attenuator record: the baffles
 * @param length m, 0…5: of the baffles
 * @param passageWidth m, 0.04…0.6: of the passages as built
 * @param band 1, 0…7: place of the band in the list 63 … 8000 Hz
 * @returns dB: insertion loss
 * @outside beyond the longest length of the record as there
 * @example baffleInsertionLoss({ passageWidth: 0.1, lengths: [{ length: 1, insertionLoss: [5, 9, 14, 22, 27, 24, 16, 11] }] }, 0.5, 0.125, 4) // 10.8 ± 1e-9
 * @source derived-here from piening-1937: loss goes with length and with lined edge over area
 */
export function baffleInsertionLoss(
  attenuator: Pick<Attenuator, "passageWidth" | "lengths">,
  length: number,
  passageWidth: number,
  band: number,
): number {
  const { lengths } = attenuator;
  const above = lengths.findIndex((each) => each.length >= length);
  const high = above === -1 ? lengths.at(-1)! : lengths[above]!;
  const low = above > 0 ? lengths[above - 1]! : undefined;
  const [from, at] = [low?.length ?? 0, Math.min(length, high.length)];
  const start = low?.insertionLoss[band] ?? 0;
  const straight = start + ((at - from) / (high.length - from)) * (high.insertionLoss[band]! - start);
  return straight * (attenuator.passageWidth / passageWidth);
}

/**
 * What moving air makes of an insertion loss: less when the sound goes with the air, more against it.
 *
 * @param velocity m/s, -60…60: of the air in the passages, positive where sound and air go the same way
 * @returns factor: on the insertion loss in still air
 * @outside the formula goes on
 * @example baffleFlowFactor(17.15) // 0.907 ± 0.0005
 * @source bies-hansen-engineering-noise-control attenuation of a lined duct over (1 + M)², from memory
 */
export function baffleFlowFactor(velocity: number): number {
  return 1 / (1 + velocity / speedOfSound) ** 2;
}

/**
 * Loss of baffles on the velocity in their passages: noses, friction, tails.
 *
 * @param attenuator record: the baffles
 * @param openShare share, 0.1…0.9: of the face that the passages leave open
 * @param length m, 0…5: of the baffles
 * @param passageWidth m, 0.04…0.6: of the passages as built
 * @returns factor: total pressure lost over the velocity pressure in the passages
 * @outside linear in length; shares beyond 0…1 count as those
 * @example baffleLossCoefficient({ noseFactor: 0.2, tailFactor: 1, frictionFactor: 0.03 }, 0.5, 2, 0.1) // 0.6 ± 1e-9
 * @source idelchik-handbook sharp contraction and sudden expansion with friction between; factors of the record
 */
export function baffleLossCoefficient(
  attenuator: Pick<Attenuator, "noseFactor" | "tailFactor" | "frictionFactor">,
  openShare: number,
  length: number,
  passageWidth: number,
): number {
  const friction = (attenuator.frictionFactor * length) / (2 * passageWidth);
  return (
    attenuator.noseFactor * abruptContractionLoss(openShare) +
    friction +
    attenuator.tailFactor * abruptExpansionLoss(openShare)
  );
}

/**
 * Sound power that the air makes in the passages of baffles, in one octave band, sent each way.
 *
 * @param velocity m/s, 0.5…40: in the passages
 * @param area m², 0.05…20: of all passages
 * @param size m, 0.1…5: largest side of a passage across the flow
 * @param pressure Pa, 50000…110000: absolute
 * @param frequency Hz, 31…16000: middle of the band
 * @returns dB: sound power level re 1 pW
 * @outside the formula goes on; still air gives minus infinity
 * @example baffleSelfNoise(10, 1, 2, 101325, 1000) // 34.33 ± 0.01
 * @source iso-14163 annex on flow noise, from memory
 */
export function baffleSelfNoise(
  velocity: number,
  area: number,
  size: number,
  pressure: number,
  frequency: number,
): number {
  const power = 10 * Math.log10(pressure * speedOfSound * area);
  const flow = 60 * Math.log10(velocity / speedOfSound);
  const low = 10 * Math.log10(1 + (speedOfSound / (2 * frequency * size)) ** 2);
  const high = 10 * Math.log10(1 + ((frequency * baffleFlowNoise.length) / velocity) ** 2);
  return baffleFlowNoise.level + power + flow + low - high;
}
