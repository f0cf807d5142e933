import { factor, quantity } from "#form/field";
import { defineFamily, type RecordHead } from "./family.ts";

/** A panel of tubes that lets steam into the air. */
export interface SteamDispersion {
  readonly head: RecordHead;
  /** m. */
  readonly tubeDiameter: number;
  readonly tubeSpacing: number;
  /** Total pressure lost over the velocity pressure in the face. */
  readonly lossCoefficient: number;
  /** Share of the steam that condenses in the tubes; its heat warms the air, its water drains. */
  readonly condensingShare: number;
  /** Highest relative humidity that the air may leave with, so that the steam is taken up. */
  readonly highestRelativeHumidity: number;
  /** Intensity of turbulence behind the tubes, 0…1. */
  readonly turbulence: number;
}

const fields = {
  tubeDiameter: quantity("length", { meaning: "Outside diameter of the tubes", minimum: "0.5 in", maximum: "4 in" }),
  tubeSpacing: quantity("length", { meaning: "Tube to tube", minimum: "2 in", maximum: "36 in" }),
  lossCoefficient: factor({ meaning: "Loss on the face velocity", minimum: 0, maximum: 10 }),
  condensingShare: quantity("share", {
    meaning: "Share of the steam that condenses in the tubes",
    minimum: "0 %",
    maximum: "40 %",
  }),
  highestRelativeHumidity: quantity("share", {
    meaning: "Highest relative humidity that the air may leave with",
    minimum: "50 %",
    maximum: "98 %",
  }),
  turbulence: quantity("share", {
    meaning: "Intensity of turbulence behind the tubes, over the mean velocity",
    minimum: "2 %",
    maximum: "30 %",
  }),
} as const;

/** The family `steam dispersion`. */
export const steamDispersionFamily = defineFamily({
  name: "steam dispersion",
  meaning: "Tubes that let steam into the air",
  fields,
  build: (values, head): SteamDispersion => {
    if (!(values.tubeDiameter < values.tubeSpacing)) {
      throw new RangeError("tube diameter: must be smaller than the tube spacing");
    }
    return { head, ...values };
  },
});

/**
 * Length behind the tubes after which the steam of each tube has spread so far that its core is no longer oversaturated:
 * the plume of a line source, spreading with the turbulence.
 *
 * @param tubeSpacing m, 0.05…1: tube to tube
 * @param turbulence share, 0.02…0.3: intensity of turbulence
 * @param humidityGain kg/kg, at least 0: rise of the mean humidity ratio
 * @param humidityToSaturation kg/kg, above the gain: what the leaving air could have taken up before it is saturated
 * @returns m: absorption distance
 * @outside infinite when nothing more can be taken up
 * @example absorptionDistance(0.15, 0.08, 0.004, 0.008) // 0.374 ± 0.001
 * @source derived-here from the Gaussian plume of a line source
 */
export function absorptionDistance(
  tubeSpacing: number,
  turbulence: number,
  humidityGain: number,
  humidityToSaturation: number,
): number {
  if (!(humidityToSaturation > 0)) return Number.POSITIVE_INFINITY;
  return (tubeSpacing * humidityGain) / (Math.sqrt(2 * Math.PI) * turbulence * humidityToSaturation);
}
