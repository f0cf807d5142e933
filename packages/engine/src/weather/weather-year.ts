import type { HeaderDesign } from "./header-design.ts";

/** Where hours come from. */
export type WeatherOrigin = "EPW" | "CSV" | "synthetic";

/** A year of outdoor air, hour by hour. Lists have one entry for each hour; the clock is standard time all year. */
export interface WeatherYear {
  readonly origin: WeatherOrigin;
  readonly place: WeatherPlace;
  /** 8760, or 8784 where the file is one of a leap year. */
  readonly hours: number;
  /** °C. */
  readonly dryBulb: Float64Array;
  /** kg/kg. */
  readonly humidityRatio: Float64Array;
  /** Pa absolute, at the station. */
  readonly pressure: Float64Array;
  /** m/s; 0 where nothing is said. */
  readonly windSpeed: Float64Array;
  /** Weekday of 1 January: 0 Sunday … 6 Saturday. Nominal in typical years. */
  readonly firstWeekday: number;
  /** What had to be put right, with how often; empty for a clean file. */
  readonly repairs: readonly WeatherRepair[];
  /** What a reader of results should know about the hours. */
  readonly notes: readonly string[];
  /** Design conditions of the file's header; they are no statistics of its hours. */
  readonly design: HeaderDesign | undefined;
}

/** Where the hours were taken, as far as the file says. */
export interface WeatherPlace {
  readonly name: string;
  readonly source: string;
  readonly station: string;
  /** Degrees north and east, h from Greenwich, m; undefined where nothing is said. */
  readonly latitude: number | undefined;
  readonly longitude: number | undefined;
  readonly timeZone: number | undefined;
  readonly elevation: number | undefined;
}

/** Something that was put right. */
export interface WeatherRepair {
  /** `dew point above the dry bulb, lowered to it`. */
  readonly what: string;
  readonly count: number;
  /** Line of the file where it first occurs, from 1; 0 where it has none. */
  readonly firstLine: number;
}

/** A year of weather, or why the text is none. */
export type WeatherReading =
  | { readonly ok: true; readonly weather: WeatherYear }
  | { readonly ok: false; readonly problem: WeatherProblem };

/** Why a text is refused. */
export interface WeatherProblem {
  /** From 1; 0 where the whole text is meant. */
  readonly line: number;
  readonly what: string;
  readonly allowed: string;
}

/** Thrown inside the readers; `readWeather` turns it into a reading. */
export class WeatherRefusal extends Error {
  readonly problem: WeatherProblem;
  constructor(line: number, what: string, allowed: string) {
    super(what);
    this.name = "WeatherRefusal";
    this.problem = { line, what, allowed };
  }
}

/** Counts what is put right. */
export class RepairCount {
  readonly #found = new Map<string, { count: number; firstLine: number }>();

  /** Notes one more of its kind. */
  add(what: string, line: number, count = 1): void {
    const known = this.#found.get(what);
    if (known === undefined) this.#found.set(what, { count, firstLine: line });
    else known.count += count;
  }

  /** All kinds, in the order in which they were met. */
  list(): readonly WeatherRepair[] {
    return [...this.#found].map(([what, { count, firstLine }]) => ({ what, count, firstLine }));
  }
}
