import { saturationHumidityRatio } from "#fluid/saturation";
import { calendarHour, hourIndex, hoursOfYear } from "./calendar.ts";
import type { WeatherYear } from "./weather-year.ts";

/** A state of outdoor air. */
export interface OutdoorState {
  /** °C, kg/kg. */
  readonly dryBulb: number;
  readonly humidityRatio: number;
}

/** The design days that a synthetic year has to reach. */
export interface SyntheticDays {
  readonly dryBulbDay: OutdoorState;
  readonly wetBulbDay: OutdoorState;
  readonly dewPointDay: OutdoorState;
  readonly winter: OutdoorState;
  /** Pa absolute, all year. */
  readonly pressure: number;
}

/** Index of the warmest day, 21 July, and of the hour (ending) of the day's highest temperature. */
const warmestDay = hourIndex({ month: 7, day: 21, hour: 1 }, hoursOfYear) / 24;
const warmestHour = 15;
/** K between the day's extremes in summer and in winter; common practice for inland places. */
const summerRange = 10;
const winterRange = 7;
/** Days in which the weather goes from dry heat to damp and back. */
const spell = 8;

/**
 * A year made from design days, for when no file is at hand: a yearly wave and a daily wave, and in summer spells from the
 * dry-bulb day's air to the dew-point day's and back, so that each design day occurs at least once and nothing is worse.
 * It is no climate: energy from it is a rough guess, and every result says *synthetic*.
 */
export function syntheticYear(days: SyntheticDays): WeatherYear {
  const hours = hoursOfYear;
  const dryBulb = new Float64Array(hours);
  const humidityRatio = new Float64Array(hours);
  for (let index = 0; index < hours; index++) {
    const day = Math.floor(index / 24);
    const { hour } = calendarHour(index, hours);
    const season = 0.5 + 0.5 * Math.cos((2 * Math.PI * (day - warmestDay)) / (hours / 24));
    const time = 0.5 + 0.5 * Math.cos((2 * Math.PI * (hour - warmestHour)) / 24);
    const summer = summerState(days, Math.abs((((day - warmestDay) % spell) + spell) % spell) / spell);
    const highest = days.winter.dryBulb + winterRange + season * (summer.dryBulb - days.winter.dryBulb - winterRange);
    const range = winterRange + season * (summerRange - winterRange);
    dryBulb[index] = highest - (1 - time) * range;
    const least = Math.log(Math.max(1e-5, days.winter.humidityRatio));
    const ratio = Math.exp(least + season * (Math.log(Math.max(1e-5, summer.humidityRatio)) - least));
    humidityRatio[index] = Math.min(ratio, saturationHumidityRatio(dryBulb[index]!, days.pressure));
  }
  return {
    origin: "synthetic",
    place: {
      name: "synthetic year from the design days",
      source: "",
      station: "",
      latitude: undefined,
      longitude: undefined,
      timeZone: undefined,
      elevation: undefined,
    },
    hours,
    dryBulb,
    humidityRatio,
    pressure: new Float64Array(hours).fill(days.pressure),
    windSpeed: new Float64Array(hours),
    firstWeekday: 0,
    repairs: [],
    notes: ["synthetic: made from the design days, not measured; for a first look only"],
    design: undefined,
  };
}

/** The air of a summer day's warmest hour: dry heat at the beginning of a spell, damp in its middle. */
function summerState(days: SyntheticDays, phase: number): OutdoorState {
  const way = 1 - Math.abs(2 * phase - 1);
  const [from, to, share] =
    way < 0.5
      ? ([days.dryBulbDay, days.wetBulbDay, 2 * way] as const)
      : ([days.wetBulbDay, days.dewPointDay, 2 * way - 1] as const);
  return {
    dryBulb: from.dryBulb + share * (to.dryBulb - from.dryBulb),
    humidityRatio: from.humidityRatio + share * (to.humidityRatio - from.humidityRatio),
  };
}
