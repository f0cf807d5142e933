import { type DryBulbBin, dryBulbBins } from "@oncethrough/engine/weather/bins";
import { hourName } from "@oncethrough/engine/weather/calendar";
import { type ExtremeHour, extremeHours, heatingDegreeHours } from "@oncethrough/engine/weather/extremes";
import type { HeaderDesign } from "@oncethrough/engine/weather/header-design";
import type { WeatherPlace, WeatherRepair, WeatherYear } from "@oncethrough/engine/weather/weather-year";

/** What `oncethrough weather --json` prints; the tables for people are printed from the same figures. All in SI. */
export interface WeatherOutput {
  readonly format: "oncethrough weather 1";
  readonly origin: WeatherYear["origin"];
  readonly place: WeatherPlace;
  readonly hours: number;
  readonly repairs: readonly WeatherRepair[];
  readonly notes: readonly string[];
  readonly extremes: readonly (ExtremeHour & { readonly time: string })[];
  readonly hoursBelowFreezing: number;
  /** K·h below the base (°C). */
  readonly degreeHours: { readonly base: number; readonly value: number };
  readonly bins: readonly BinOutput[];
  readonly headerDesign?: HeaderDesign;
}

/** A bin; means are left out where it holds no hours. */
export type BinOutput = Omit<DryBulbBin, "wetBulb" | "humidityRatio"> & {
  readonly wetBulb?: number;
  readonly humidityRatio?: number;
};

/** °C: base of the degree-hours, a usual temperature of preheated air, 55 °F. */
const base = 12.777_777_777_777_78;
/** Width and zero of the bins: 5 F° from 0 °F, or 2 K from 0 °C. */
const binsOf = { ip: { width: 5 / 1.8, zero: -160 / 9 }, si: { width: 2, zero: 0 } } as const;

/** The figures of a year of weather. */
export function weatherOutput(weather: WeatherYear, system: "ip" | "si"): WeatherOutput {
  const { width, zero } = binsOf[system];
  const output = {
    format: "oncethrough weather 1",
    origin: weather.origin,
    place: weather.place,
    hours: weather.hours,
    repairs: weather.repairs,
    notes: weather.notes,
    extremes: extremeHours(weather).map((each) => ({ ...each, time: hourName(each.hour, weather.hours) })),
    hoursBelowFreezing: weather.dryBulb.filter((air) => air < 0).length,
    degreeHours: { base, value: heatingDegreeHours(weather, base) },
    bins: dryBulbBins(weather, width, zero).map(({ wetBulb, humidityRatio, ...bin }) =>
      bin.hours === 0 ? bin : { ...bin, wetBulb, humidityRatio },
    ),
  } as const;
  return weather.design === undefined ? output : { ...output, headerDesign: weather.design };
}
