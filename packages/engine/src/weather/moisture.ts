import { humidityRatioFromRelativeHumidity } from "#fluid/moist-air";
import { enhancementFactor, MASS_RATIO, saturationHumidityRatio, saturationPressure } from "#fluid/saturation";
import { saturationPressureOverWater } from "#fluid/saturation-equation";

/** What dew point and relative humidity below 0 °C refer to. Files do not say; above 0 °C there is no difference. */
export type MoistureReference = "water" | "ice";

/** °C below which the two references are far enough apart to be told. */
const coldEnough = -5;
/** Hours that are needed to tell. */
const leastHours = 24;
/** How much better one reference has to fit. */
const clearly = 0.7;

/**
 * Tells from the file itself what its dew points below freezing refer to: by which of the two they agree better with the
 * relative humidities beside them. Where that is not clear they are taken as frost points, over ice.
 */
export function dewPointReference(
  dryBulb: Float64Array,
  dewPoint: Float64Array,
  relativeHumidity: Float64Array,
): { readonly reference: MoistureReference; readonly note: string | undefined } {
  let count = 0;
  let overWater = 0;
  let overIce = 0;
  let hasCold = false;
  for (let k = 0; k < dryBulb.length; k++) {
    const [air, dew, share] = [dryBulb[k]!, dewPoint[k]!, relativeHumidity[k]!];
    if (dew < 0) hasCold = true;
    if (!(air < coldEnough && dew > -60 && dew <= air && share > 0 && share <= 1)) continue;
    count++;
    overWater += Math.abs(saturationPressureOverWater(dew) / saturationPressureOverWater(air) - share);
    overIce += Math.abs(saturationPressure(dew) / saturationPressure(air) - share);
  }
  if (!hasCold) return { reference: "ice", note: undefined };
  if (count >= leastHours && overWater < clearly * overIce) {
    return { reference: "water", note: told("water", count) };
  }
  if (count >= leastHours && overIce < clearly * overWater) return { reference: "ice", note: told("ice", count) };
  return {
    reference: "ice",
    note: "the file does not tell whether its dew points below 0 °C are over water or over ice; they are taken as frost points, over ice, which is the drier reading",
  };
}

function told(reference: MoistureReference, count: number): string {
  return `dew points below 0 °C are taken over ${reference}: so they agree with the relative humidities of ${count} cold hours`;
}

/** kg/kg from the dew point (°C), or, where there is none, from the relative humidity (share). */
export function moistureFrom(
  dryBulb: number,
  dewPoint: number,
  relativeHumidity: number,
  pressure: number,
  reference: MoistureReference,
): number {
  if (!Number.isNaN(dewPoint)) {
    if (dewPoint >= 0 || reference === "ice") return saturationHumidityRatio(Math.max(dewPoint, -100), pressure);
    const vapour = saturationPressureOverWater(dewPoint) * enhancementFactor(Math.max(dewPoint, -100), pressure);
    return (MASS_RATIO * vapour) / (pressure - vapour);
  }
  const share = Math.min(1, Math.max(0, relativeHumidity));
  if (dryBulb >= 0 || reference === "ice") return humidityRatioFromRelativeHumidity(dryBulb, share, pressure);
  const vapour = share * saturationPressureOverWater(dryBulb) * enhancementFactor(dryBulb, pressure);
  return (MASS_RATIO * vapour) / (pressure - vapour);
}
