import { dewPointFromHumidityRatio } from "#fluid/dew-point";
import { enthalpyFromHumidityRatio } from "#fluid/moist-air";
import { wetBulbFromHumidityRatio } from "#fluid/wet-bulb";
import type { WeatherYear } from "./weather-year.ts";

/** An hour that stands out, with its state. */
export interface ExtremeHour {
  /** `highest wet bulb`. */
  readonly what: string;
  readonly hour: number;
  /** °C, °C, °C, kg/kg, J/kg, Pa. */
  readonly dryBulb: number;
  readonly wetBulb: number;
  readonly dewPoint: number;
  readonly humidityRatio: number;
  readonly enthalpy: number;
  readonly pressure: number;
}

/** The hours of a year that stand out: hottest, coldest, wettest, of most enthalpy, driest. */
export function extremeHours(weather: WeatherYear): readonly ExtremeHour[] {
  const { dryBulb, humidityRatio, hours } = weather;
  const wetBulb = wetBulbsOf(weather);
  const enthalpy = new Float64Array(hours).map((_, k) => enthalpyFromHumidityRatio(dryBulb[k]!, humidityRatio[k]!));
  const hourOf = (what: string, values: Float64Array, sign: 1 | -1): ExtremeHour => {
    let found = 0;
    for (let k = 1; k < hours; k++) if (sign * values[k]! > sign * values[found]!) found = k;
    return stateAt(weather, found, what);
  };
  return [
    hourOf("highest dry bulb", dryBulb, 1),
    hourOf("highest wet bulb", wetBulb, 1),
    hourOf("highest humidity ratio", humidityRatio, 1),
    hourOf("highest enthalpy", enthalpy, 1),
    hourOf("lowest dry bulb", dryBulb, -1),
    hourOf("lowest humidity ratio", humidityRatio, -1),
  ];
}

/** °C of every hour. */
export function wetBulbsOf({ dryBulb, humidityRatio, pressure }: WeatherYear): Float64Array {
  return dryBulb.map((air, k) => wetBulbFromHumidityRatio(air, humidityRatio[k]!, pressure[k]!));
}

/** The state of one hour, under a name. */
export function stateAt({ dryBulb, humidityRatio, pressure }: WeatherYear, hour: number, what: string): ExtremeHour {
  const [air, ratio, total] = [dryBulb[hour]!, humidityRatio[hour]!, pressure[hour]!];
  return {
    what,
    hour,
    dryBulb: air,
    wetBulb: wetBulbFromHumidityRatio(air, ratio, total),
    dewPoint: Math.min(air, dewPointFromHumidityRatio(ratio, total)),
    humidityRatio: ratio,
    enthalpy: enthalpyFromHumidityRatio(air, ratio),
    pressure: total,
  };
}

/** Kelvin-hours that the outdoor air lies below `base` (°C). */
export function heatingDegreeHours({ dryBulb }: WeatherYear, base: number): number {
  return dryBulb.reduce((sum, air) => sum + Math.max(0, base - air), 0);
}
