import type { QuantityKind } from "#quantity/kind";
import type { HourFigure } from "./hour-figures.ts";
import type { YearHours } from "./year-hours.ts";

/** A state of the machine that should not last: how many hours, when worst. */
export interface Watch {
  readonly name: string;
  readonly figure: HourFigure;
  readonly quantity: QuantityKind | "factor";
  readonly limit: number;
  readonly sense: "above" | "below";
  readonly source: string;
}

/** What is watched while the fan runs. */
export const watches: readonly Watch[] = [
  {
    name: "springs amplify: speed under √2 times their natural frequency",
    figure: "springRatio",
    quantity: "factor",
    limit: Math.SQRT2,
    sense: "below",
    source: "definition of transmissibility 1",
  },
  {
    name: "fan near instability: less than a tenth above its smallest steady flow",
    figure: "fanSteadiness",
    quantity: "factor",
    limit: 1.1,
    sense: "below",
    source: "common-practice",
  },
  {
    name: "cooling coil wet and above its carry-over velocity",
    figure: "carryOver",
    quantity: "share",
    limit: 1,
    sense: "above",
    source: "common-practice",
  },
  {
    name: "filters in air above 90 % relative humidity",
    figure: "filterHumidity",
    quantity: "share",
    limit: 0.9,
    sense: "above",
    source: "en-13053 second filter stage, as quoted by makers",
  },
];

/** What came of a watch. */
export interface WatchCount extends Watch {
  readonly hours: number;
  readonly worst: number;
  /** The worst hour; −1 where there is none. */
  readonly hour: number;
}

/** Counts the hours in which the fan runs and a watched figure is beyond its limit; 0 is no figure. */
export function countWatches({ lists, plan }: YearHours): readonly WatchCount[] {
  return watches.map((watch) => {
    const list = lists[watch.figure];
    const sign = watch.sense === "above" ? 1 : -1;
    let hours = 0;
    let hour = -1;
    for (let k = 0; k < plan.hours; k++) {
      const value = list[k]!;
      if (lists.running[k] === 0 || value === 0) continue;
      if (sign * (value - watch.limit) > 0) hours++;
      if (hour < 0 || sign * value > sign * list[hour]!) hour = k;
    }
    return { ...watch, hours, worst: hour < 0 ? 0 : list[hour]!, hour };
  });
}

/** How a coil stood to freezing over the year. */
export interface FreezeExposure {
  readonly section: string;
  readonly kind: string;
  /** Hours in which its coldest wall lies below freezing, the longest run of them and the hour in which that begins. */
  readonly hours: number;
  readonly longest: number;
  readonly longestFrom: number;
  /** Smallest margin, K, and its hour. */
  readonly margin: number;
  readonly hour: number;
}

/** Counts hours of freeze exposure for every coil. */
export function countFreezing({ coils, freezeMargins, plan }: YearHours): readonly FreezeExposure[] {
  return coils.map(({ section, kind }, index) => {
    const list = freezeMargins[index]!;
    let hours = 0;
    let run = 0;
    let longest = 0;
    let longestFrom = -1;
    let hour = 0;
    for (let k = 0; k < plan.hours; k++) {
      if (list[k]! < list[hour]!) hour = k;
      run = list[k]! < 0 ? run + 1 : 0;
      if (run > 0) hours++;
      if (run > longest) {
        longest = run;
        longestFrom = k - run + 1;
      }
    }
    return { section, kind, hours, longest, longestFrom, margin: list[hour]!, hour };
  });
}
