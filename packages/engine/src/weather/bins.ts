import { wetBulbsOf } from "./extremes.ts";
import type { WeatherYear } from "./weather-year.ts";

/** The hours of a year whose dry bulb lies in one range. */
export interface DryBulbBin {
  /** °C: from, included; to, not included. */
  readonly low: number;
  readonly high: number;
  readonly hours: number;
  /** Hours of the bin that end at 1…8, 9…16 and 17…24 o'clock. */
  readonly night: number;
  readonly day: number;
  readonly evening: number;
  /** Means over the bin: °C, kg/kg. */
  readonly wetBulb: number;
  readonly humidityRatio: number;
}

/**
 * Sorts the hours by dry bulb into bins of a width (K) whose edges are multiples of the width from `zero` (°C): 5 F° from
 * 0 °F gives the bins of the handbooks. Bins without hours between others are kept.
 */
export function dryBulbBins(weather: WeatherYear, width: number, zero: number): readonly DryBulbBin[] {
  const { dryBulb, humidityRatio, hours } = weather;
  const wetBulb = wetBulbsOf(weather);
  // A reading on an edge, to a millionth of a kelvin, belongs to the bin above, whatever its unit made of its last digits.
  const indexOf = (air: number) => Math.floor((air - zero) / width + 1e-6);
  let lowest = Number.POSITIVE_INFINITY;
  let highest = Number.NEGATIVE_INFINITY;
  for (const air of dryBulb) {
    lowest = Math.min(lowest, indexOf(air));
    highest = Math.max(highest, indexOf(air));
  }
  const sums = Array.from({ length: highest - lowest + 1 }, () => ({ parts: [0, 0, 0], wetBulb: 0, ratio: 0 }));
  for (let k = 0; k < hours; k++) {
    const sum = sums[indexOf(dryBulb[k]!) - lowest]!;
    sum.parts[Math.floor((k % 24) / 8)]!++;
    sum.wetBulb += wetBulb[k]!;
    sum.ratio += humidityRatio[k]!;
  }
  return sums.map(({ parts, wetBulb: wet, ratio }, index) => {
    const [night, day, evening] = parts as [number, number, number];
    const count = night + day + evening;
    const low = zero + (lowest + index) * width;
    return {
      low,
      high: low + width,
      hours: count,
      night,
      day,
      evening,
      wetBulb: count === 0 ? Number.NaN : wet / count,
      humidityRatio: count === 0 ? Number.NaN : ratio / count,
    };
  });
}
