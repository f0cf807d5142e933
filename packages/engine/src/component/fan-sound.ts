import { cubicMetresPerSecondPerCfm, pascalsPerInchOfWater } from "#quantity/inch-pound";
import { aWeighting, fanSound, fanSoundPenalties, octaveBands } from "#standard/fan-sound";

/**
 * Frequency with which blades pass the cut-off.
 *
 * @param blades 1, 4…64: number of blades
 * @param speed rev/s, 0…60: of the wheel
 * @returns Hz: blade-passing frequency
 * @outside the same formula goes on
 * @example bladePassFrequency(10, 900 / 60) // 150
 * @source definition
 */
export function bladePassFrequency(blades: number, speed: number): number {
  return blades * speed;
}

/**
 * Octave band that holds a frequency.
 *
 * @param frequency Hz, 10…20000: of a tone
 * @returns 1: place of the band in the list 63 … 8000 Hz, counted from 0
 * @outside the first or last band
 * @example octaveBandOf(150) // 1
 * @source definition bands meet a root of two from their middle
 */
export function octaveBandOf(frequency: number): number {
  const place = octaveBands.findIndex((middle) => frequency < middle * Math.SQRT2);
  return place === -1 ? octaveBands.length - 1 : place;
}

/**
 * Sound power that a backward-curved or airfoil centrifugal fan gives off in its inlet or outlet, in one octave band, by
 * the former handbook method. Tests of real fans differ by 5 dB either way in a band, by 10 dB in bad cases.
 *
 * @param frequency Hz, 63…8000: in the octave band asked for
 * @param flow m³/s, 0.05…100: actual flow of one fan
 * @param pressure Pa, 50…4000: fan total pressure
 * @param efficiencyShare 1, 0…1: efficiency over its best value
 * @param diameter m, 0.1…3: of the wheel
 * @param bladePass Hz, 10…2000: blade-passing frequency
 * @returns dB: sound power level re 1 pW
 * @outside the formula goes on; a fan that moves nothing gives minus infinity
 * @example fanSoundPower(125, 20000 * 0.3048 ** 3 / 60, 4 * 249.08891, 0.95, 1, 150) // 98.05 ± 0.01
 * @source long-architectural-acoustics tables 13.5-13.8
 */
export function fanSoundPower(
  frequency: number,
  flow: number,
  pressure: number,
  efficiencyShare: number,
  diameter: number,
  bladePass: number,
): number {
  const band = octaveBandOf(frequency);
  const row = diameter >= fanSound.largeFrom - 1e-9 ? fanSound.large : fanSound.small;
  const cfm = flow / cubicMetresPerSecondPerCfm;
  const inches = pressure / pascalsPerInchOfWater;
  const penalty = fanSoundPenalties.find((each) => efficiencyShare >= each.fromShare)?.decibels ?? 16;
  const tone = octaveBandOf(bladePass) === band ? row.bladeIncrement : 0;
  return row.specific[band]! + 10 * Math.log10(cfm) + 20 * Math.log10(inches) + penalty + tone;
}

/**
 * Overall sound power of a backward-curved fan by another published method, to set beside the first.
 *
 * @param flow m³/s, 0.05…100: actual flow of one fan
 * @param pressure Pa, 50…4000: fan total pressure
 * @returns dB: sound power level re 1 pW, all bands, unweighted
 * @outside the formula goes on
 * @example fanSoundPowerOverall(16000 / 3600, 600) // 96.04 ± 0.01
 * @source vdi-2081 radial fan, backward-curved
 */
export function fanSoundPowerOverall(flow: number, pressure: number): number {
  return 34 + 10 * Math.log10(flow) + 20 * Math.log10(pressure);
}

/**
 * Sum of levels by energy: independent sources, or bands.
 *
 * @param levels list, any number: levels in dB
 * @returns dB: level of all together
 * @outside the same formula goes on
 * @example sumOfLevels([90, 90]) // 93.0103 ± 1e-4
 * @source definition
 */
export function sumOfLevels(levels: readonly number[]): number {
  return 10 * Math.log10(levels.reduce((sum, level) => sum + 10 ** (level / 10), 0));
}

/**
 * A-weighted sum of octave-band levels.
 *
 * @param levels list, eight: levels in the bands 63 … 8000 Hz, dB
 * @returns dB: A-weighted level
 * @outside the same formula goes on
 * @example weightedLevel([0, 0, 0, 0, 80, 0, 0, 0]) // 80 ± 0.01
 * @source iec-61672 A-weighting
 */
export function weightedLevel(levels: readonly number[]): number {
  return sumOfLevels(levels.map((level, band) => level + aWeighting.decibels[band]!));
}

/**
 * Sound that an opening sends back into the duct: end reflection.
 *
 * @param area m², 0.005…10: of the opening
 * @param frequency Hz, 31…16000: middle of the band
 * @param angle 1, 0.5…4: solid angle into which the opening radiates over π: 4 free, 2 flush in a wall, 1 at an edge, 0.5 in a corner
 * @returns dB: loss, at most 15
 * @outside the formula goes on, never above 15 dB
 * @example endReflection(Math.PI * 0.01, 125, 2) // 10.23 ± 0.06
 * @source vdi-2081 end reflection
 */
export function endReflection(area: number, frequency: number, angle: number): number {
  const wave = speedOfSound / (4 * Math.PI * frequency);
  return Math.min(10 * Math.log10(1 + (wave * wave * angle * Math.PI) / area), 15);
}

/** m/s in air of about 20 °C. */
const speedOfSound = 343;
