import { humidityRatioOfAirState } from "@oncethrough/engine/duty/air-state";
import type { Duty } from "@oncethrough/engine/duty/duty";
import { sitePressure } from "@oncethrough/engine/duty/standard-conditions";
import type { Job } from "@oncethrough/engine/job/job";
import { prepareJudge } from "@oncethrough/engine/rule/judge";
import { readProfiles } from "@oncethrough/engine/rule/profile";
import { rules } from "@oncethrough/engine/rule/rules";
import { syntheticYear } from "@oncethrough/engine/weather/synthetic";
import type { WeatherYear } from "@oncethrough/engine/weather/weather-year";
import { startYear, stepYear, type YearHours } from "@oncethrough/engine/year/year-hours";
import { readProfileFolders } from "#files/profile-folder";
import { exitCode, UsageProblem } from "../exit-code.ts";
import { textInk } from "../ink.ts";
import { hasErrors, loadJob, problemLine } from "../job-source.ts";
import { chosenProfile } from "../profile-source.ts";
import type { Style } from "../rate/rate-print.ts";
import { type Given, optionFlag, optionText, printJson, type Streams, unitSystem } from "../session.ts";
import { loadWeather } from "../weather/weather-source.ts";
import { yearCsv } from "./year-csv.ts";
import { type ToldYear, tellYear, yearOutput } from "./year-output.ts";
import { printComparison, printYear } from "./year-print.ts";

/** `oncethrough year`: the units of jobs through every hour of a weather file. */
export async function yearCommand(given: Given, streams: Streams): Promise<number> {
  if (given.operands.length === 0) throw new UsageProblem("a job file is missing");
  const jobs: { readonly name: string; readonly job: Job; readonly judge: ReturnType<typeof prepareJudge> }[] = [];
  for (const operand of given.operands) {
    const loaded = await judgedJob({ ...given, operands: [operand] }, streams);
    if (loaded === undefined) return exitCode.found;
    jobs.push(loaded);
  }
  const weather = await weatherFor(given, streams, jobs[0]!.job.duty);
  if (weather === undefined) return exitCode.found;
  const told: ToldYear[] = [];
  for (const { name, job, judge } of jobs) {
    const year = solveYear(job, weather, judge);
    told.push(tellYear(name, job, year));
  }
  printYears(told, weather, given, streams);
  return told.every(({ report }) => report.unsolved.length === 0) ? exitCode.fine : exitCode.found;
}

/** The job that was given, and its owner's rules; undefined when its text has errors, which are told. */
async function judgedJob(given: Given, streams: Streams) {
  const { name, reading, problems } = await loadJob(given, streams);
  const profiles = readProfiles(await readProfileFolders(optionText(given, "profiles")), rules);
  const wanted = { file: name, wanted: reading.job?.duty.ownerProfile, place: reading.places("duty.ownerProfile") };
  const { profile, problem } = chosenProfile(profiles, optionText(given, "profile"), wanted);
  const all = [...profiles.problems, ...problems, ...(problem === undefined ? [] : [problem])];
  for (const each of all) streams.errors(problemLine(each, textInk(streams.colour)));
  const { job } = reading;
  if (job === undefined || profile === undefined || hasErrors(all)) {
    streams.errors(`${name}: no year; mend the text first\n`);
    return undefined;
  }
  return { name, job, judge: prepareJudge(job.unit, job.duty, rules, profile, job.waivers) };
}

/** The weather file, or, without one, a year made up from the duty's design days. */
async function weatherFor(given: Given, streams: Streams, duty: Duty): Promise<WeatherYear | undefined> {
  const pressure = sitePressure(duty);
  const file = optionText(given, "weather");
  if (file === undefined) {
    const state = (air: Duty["winter"]) => ({
      dryBulb: air.dryBulb,
      humidityRatio: humidityRatioOfAirState(air, pressure),
    });
    const { dryBulbDay, wetBulbDay, dewPointDay } = duty.summer;
    return syntheticYear({
      dryBulbDay: state(dryBulbDay),
      wetBulbDay: state(wetBulbDay),
      dewPointDay: state(dewPointDay),
      winter: state(duty.winter),
      pressure,
    });
  }
  const loaded = await loadWeather(file, streams, { pressure });
  if ("weather" in loaded) return loaded.weather;
  streams.errors(`${loaded.refusal}\n`);
  return undefined;
}

function solveYear(job: Job, weather: WeatherYear, judge: ReturnType<typeof prepareJudge>): YearHours {
  const year = stepYear(startYear({ unit: job.unit, duty: job.duty, weather, judge }), Number.POSITIVE_INFINITY);
  if (year === undefined) throw new Error("the year did not end");
  return year;
}

function printYears(told: readonly ToldYear[], weather: WeatherYear, given: Given, streams: Streams): void {
  if (optionFlag(given, "json")) {
    printJson(streams, yearOutput(weather, told));
    return;
  }
  if (optionFlag(given, "csv")) {
    streams.output(yearCsv(told));
    return;
  }
  const style: Style = {
    system: unitSystem(given),
    ink: textInk(streams.colour),
    columns: Math.min(streams.columns, 120),
  };
  const parts = told.map((each) => printYear(each, weather.place.name, style));
  if (told.length > 1) parts.push(printComparison(told, style));
  streams.output(`${parts.join("\n\n\n")}\n`);
}
