import type { Condition } from "@oncethrough/engine/duty/condition";
import type { Job } from "@oncethrough/engine/job/job";
import type { WeatherYear } from "@oncethrough/engine/weather/weather-year";
import { conditionOfHour } from "@oncethrough/engine/year/hour-condition";
import type { HourLists } from "@oncethrough/engine/year/hour-figures";
import { planYear } from "@oncethrough/engine/year/plan";

/** Gives the condition of any hour of a solved year, with the coils set as they were in it. */
export function hourConditions(
  job: Job,
  weather: WeatherYear,
  cooling: HourLists["cooling"],
): (hour: number) => Condition {
  const plan = planYear({ unit: job.unit, duty: job.duty, weather });
  return (hour) => conditionOfHour(plan, hour, cooling[hour] === 1 ? "cooling" : "heating");
}

/** The hour that a key of a condition names; undefined for the conditions of the job. */
export function hourOfKey(key: string): number | undefined {
  const found = /^hour-(\d+)$/.exec(key)?.[1];
  return found === undefined ? undefined : Number(found);
}

/** The hour that lies at a point of a carpet, of which the left edge and the lowest row are given; kept inside the year. */
export function hourAt(
  {
    left,
    right,
    top,
    bottom,
  }: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number },
  x: number,
  y: number,
  hours: number,
): number {
  const days = Math.ceil(hours / 24);
  const day = Math.min(days - 1, Math.max(0, Math.floor(((x - left) / (right - left)) * days)));
  const hour = Math.min(23, Math.max(0, Math.floor(((bottom - y) / (bottom - top)) * 24)));
  return Math.min(hours - 1, 24 * day + hour);
}
