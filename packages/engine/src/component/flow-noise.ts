import { metresPerFoot } from "#quantity/inch-pound";
import { damperFlowNoise, grilleFlowNoise } from "#standard/sound-path";
import { octaveBandOf } from "./fan-sound.ts";

/**
 * Share of a damper's face through which the air squeezes, as its loss tells it; for several blades.
 *
 * @param lossCoefficient factor, 0.01…1e7: total pressure lost over the velocity pressure in the face
 * @returns share: velocity in the face over that between the blades
 * @outside the same formula goes on
 * @example damperOpenShare(0.5) // 0.5858 ± 1e-4
 * @source reynolds-bledsoe-1991 blockage factor of multi-blade dampers
 */
export function damperOpenShare(lossCoefficient: number): number {
  // (√C − 1) / (C − 1), written so that it holds at C = 1 as well.
  return 1 / (Math.sqrt(lossCoefficient) + 1);
}

/**
 * Sound power that the air makes in a damper of several blades, in one octave band, sent each way.
 *
 * @param frequency Hz, 63…8000: middle of the band
 * @param lossCoefficient factor, 0.01…1e7: total pressure lost over the velocity pressure in the face
 * @param velocity m/s, 0.1…30: in the face
 * @param area m², 0.02…20: of the face
 * @param height m, 0.1…5: of the face across the blades' axes
 * @returns dB: sound power level re 1 pW
 * @outside the formula goes on; still air gives minus infinity
 * @example damperSoundPower(1000, 0.5, 20.32, 0.09290304, 0.3048) // 68.42 ± 0.01
 * @source reynolds-bledsoe-1991 dampers
 */
export function damperSoundPower(
  frequency: number,
  lossCoefficient: number,
  velocity: number,
  area: number,
  height: number,
): number {
  const squeezed = velocity / metresPerFoot / damperOpenShare(lossCoefficient);
  const feet = height / metresPerFoot;
  const strouhal = (frequency * feet) / squeezed;
  const { low, high, turn } = damperFlowNoise;
  const law = strouhal <= turn ? low : high;
  const spectrum = law.level - law.fall * Math.log10(strouhal);
  const size = 10 * Math.log10((area / metresPerFoot ** 2) * feet);
  return spectrum + 10 * Math.log10(frequency / 63) + 50 * Math.log10(squeezed) + size;
}

/**
 * Sound power that the air makes in the blades of a grille, in one octave band.
 *
 * @param frequency Hz, 63…8000: middle of the band
 * @param lossCoefficient factor, 0.5…200: pressure lost over the velocity pressure in the face
 * @param velocity m/s, 0.1…10: in the face, gross
 * @param area m², 0.01…30: of the face
 * @returns dB: sound power level re 1 pW
 * @outside the formula goes on; still air gives minus infinity
 * @example grilleSoundPower(250, 10, 2, 1) // 46.2 ± 0.1
 * @source long-architectural-acoustics eqs. 13.27-13.33, rectangular
 */
export function grilleSoundPower(frequency: number, lossCoefficient: number, velocity: number, area: number): number {
  const feetPerSecond = velocity / metresPerFoot;
  const squareFeet = area / metresPerFoot ** 2;
  const { level, peak, spectrum } = grilleFlowNoise;
  const whole = 10 * Math.log10(squareFeet) + 30 * Math.log10(lossCoefficient) + 60 * Math.log10(feetPerSecond) + level;
  const away = octaveBandOf(peak * feetPerSecond) - octaveBandOf(frequency);
  return whole + spectrum[0] + away * (spectrum[1] + away * spectrum[2]);
}
