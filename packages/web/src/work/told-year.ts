import { prepareJudge } from "@oncethrough/engine/rule/judge";
import { rules } from "@oncethrough/engine/rule/rules";
import type { WeatherYear } from "@oncethrough/engine/weather/weather-year";
import { syntheticYearOfDuty } from "@oncethrough/engine/year/synthetic-duty";
import { startYear, stepYear, type YearHours } from "@oncethrough/engine/year/year-hours";
import { reportYear, type YearReport } from "@oncethrough/engine/year/year-report";
import type { BookShelf } from "./book-shelf.ts";
import type { YearResult, YearTask } from "./task.ts";

/** Hours solved between two chances to stop: some tens of milliseconds. */
const hoursAtOnce = 40;

/** A year of the job, hour by hour, told as plain data. */
export function* tellYear(task: YearTask, shelf: BookShelf): Generator<number, YearResult> {
  const { job } = shelf.book(task.text);
  const { unit, duty, waivers, conditions } = job;
  const weather = task.weather === undefined ? syntheticYearOfDuty(duty) : shelf.weather(task.weather);
  const judge = prepareJudge(unit, duty, rules, shelf.profile(duty.ownerProfile), waivers);
  const run = startYear({ unit, duty, weather, judge });
  for (let done = 0; ; done += hoursAtOnce) {
    const year = stepYear(run, hoursAtOnce);
    if (year !== undefined) return plainYear(year, reportYear(year, conditions), weather);
    yield Math.min(0.99, done / weather.hours);
  }
}

function plainYear(year: YearHours, { findings, ...report }: YearReport, weather: WeatherYear): YearResult {
  const { plan, lists, unsolved } = year;
  return {
    place: weather.place.name,
    report,
    rules: findings.flatMap(({ entry, outcome, margin, at, missed }) =>
      outcome === "fail" && entry.waiver === undefined
        ? [{ rule: entry.rule.id, section: entry.section, margin, at, missed }]
        : [],
    ),
    year: {
      lists,
      unsolved,
      plan: {
        hours: plan.hours,
        humidityRatio: plan.humidityRatio,
        pressure: plan.pressure,
        weather: { dryBulb: weather.dryBulb, origin: weather.origin },
      },
    },
  };
}
