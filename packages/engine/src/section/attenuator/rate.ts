import { baffleFlowFactor, baffleInsertionLoss, baffleSelfNoise } from "#component/attenuator";
import { aWeighting, octaveBands } from "#standard/fan-sound";
import { baffleFlowNoise as flowNoiseLaw } from "#standard/sound-path";
import { type Air, createAir } from "../air.ts";
import { createSectionRating, recordAtRest } from "../base-rating.ts";
import type { MadeSound, SectionRating, SectionSound } from "../contract.ts";
import { absolutePressure, actualAirflow, airDensity, beginRating, endRating } from "../station.ts";
import type { AttenuatorDesign } from "./design.ts";

/** An attenuator at a condition. */
export interface AttenuatorRating extends SectionRating {
  actualAirflow: number;
  density: number;
  /** Pa, absolute. */
  pressure: number;
  /** m/s in the passages. */
  passageVelocity: number;
  /** dB in the band of 250 Hz, where lined baffles are asked for most, with the airflow. */
  lossAt250: number;
  /** dB(A) re 1 pW that the air makes in the passages, each way. */
  selfNoise: number;
}

const atRest = recordAtRest<AttenuatorRating>({
  ...createSectionRating(),
  actualAirflow: 0,
  density: 0,
  pressure: 0,
  passageVelocity: 0,
  lossAt250: 0,
  selfNoise: 0,
});

/** A record to be filled. */
export function createAttenuatorRating(): AttenuatorRating {
  return { ...atRest, entering: createAir(), leaving: createAir() };
}

/** Rates the baffles: their pressure. */
export function rateAttenuator(design: AttenuatorDesign, air: Air, out: AttenuatorRating): void {
  beginRating(air, out);
  out.actualAirflow = actualAirflow(air);
  out.density = airDensity(air);
  out.pressure = absolutePressure(air);
  out.faceVelocity = out.actualAirflow / design.cabinetArea;
  out.passageVelocity = out.actualAirflow / design.passageArea;
  out.totalPressureLoss = design.lossCoefficient * 0.5 * out.density * out.passageVelocity * out.passageVelocity;
  // Jets out of the passages even out within some passage widths; what is left of them is from common experience.
  out.leaving.peakToMeanVelocity = 1.2;
  endRating(out, design.cabinetArea);
}

/** Adds two figures of their sound. */
export function completeAttenuator(design: AttenuatorDesign, out: AttenuatorRating): void {
  out.lossAt250 = insertionLoss(design, out.passageVelocity, 2);
  out.selfNoise = weightedSelfNoise(design, out);
}

/** dB in a band; the velocity is negative against the sound. */
export function insertionLoss(design: AttenuatorDesign, velocity: number, band: number): number {
  const still = baffleInsertionLoss(design.attenuator, design.baffleLength, design.passageWidth, band);
  return still * baffleFlowFactor(velocity);
}

/** dB re 1 pW of the flow noise in a band, sent each way. */
function selfNoise(design: AttenuatorDesign, rating: AttenuatorRating, frequency: number): number {
  return baffleSelfNoise(rating.passageVelocity, design.passageArea, design.passageHeight, rating.pressure, frequency);
}

/** dB(A) of it; makes no list, as every condition asks for it. */
export function weightedSelfNoise(design: AttenuatorDesign, rating: AttenuatorRating): number {
  let sum = 0;
  for (let band = 0; band < octaveBands.length; band++) {
    sum += 10 ** ((selfNoise(design, rating, octaveBands[band]!) + aWeighting.decibels[band]!) / 10);
  }
  return 10 * Math.log10(sum);
}

/** Insertion loss both ways and flow noise. */
export function attenuatorSound(design: AttenuatorDesign, rating: AttenuatorRating): SectionSound {
  return {
    downstream: octaveBands.map((_, band) => insertionLoss(design, rating.passageVelocity, band)),
    upstream: octaveBands.map((_, band) => insertionLoss(design, -rating.passageVelocity, band)),
    ...(rating.passageVelocity > 0 ? { made: flowNoise(design, rating) } : {}),
    source: design.attenuator.head.source,
    certainty: design.attenuator.head.basis === "tested" ? "entered" : "from memory",
  };
}

function flowNoise(design: AttenuatorDesign, rating: AttenuatorRating): MadeSound {
  const levels = octaveBands.map((frequency) => selfNoise(design, rating, frequency));
  const { source, uncertainty } = flowNoiseLaw;
  return {
    downstream: levels,
    upstream: levels,
    inside: levels,
    uncertainty,
    source,
    certainty: "guideline's estimate of flow noise, from memory",
  };
}
