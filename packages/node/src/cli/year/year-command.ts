import type { Duty } from "@oncethrough/engine/duty/duty";
import { sitePressure } from "@oncethrough/engine/duty/standard-conditions";
import type { Job } from "@oncethrough/engine/job/job";
import { readProfiles } from "@oncethrough/engine/rule/profile";
import { rules } from "@oncethrough/engine/rule/rules";
import type { WeatherYear } from "@oncethrough/engine/weather/weather-year";
import {
  measureRepresentative,
  type RepresentativeYear,
  representativeRange,
} from "@oncethrough/engine/year/representative";
import { syntheticYearOfDuty } from "@oncethrough/engine/year/synthetic-duty";
import type { Uncertainty } from "@oncethrough/engine/year/uncertainty";
import type { YearHours } from "@oncethrough/engine/year/year-hours";
import { readProfileFolders } from "#files/profile-folder";
import { mostWorkers, type PoolOptions, solveTrials, solveYears, YearStopped } from "#worker/year-pool";
import type { YearSetup } from "#worker/year-setup";
import { exitCode, UsageProblem } from "../exit-code.ts";
import { textInk } from "../ink.ts";
import { hasErrors, loadJob, problemLine, readCatalogueTexts } from "../job-source.ts";
import { chosenProfile } from "../profile-source.ts";
import { progressLine } from "../progress-line.ts";
import type { Style } from "../rate/rate-print.ts";
import { type Given, optionCount, optionFlag, optionText, printJson, type Streams, unitSystem } from "../session.ts";
import { loadWeather } from "../weather/weather-source.ts";
import { comparisonCsv, hoursCsv } from "./year-csv.ts";
import { type ToldYear, tellYear, yearOutput } from "./year-output.ts";
import { writePictures } from "./year-pictures.ts";
import { printComparison, printYear } from "./year-print.ts";

/** `oncethrough year`: the units of jobs through every hour of a weather file. */
export async function yearCommand(given: Given, streams: Streams): Promise<number> {
  if (given.operands.length === 0) throw new UsageProblem("a job file is missing");
  const workers = optionCount(given, "workers", mostWorkers);
  const jobs: JudgedJob[] = [];
  for (const operand of given.operands) {
    const loaded = await judgedJob({ ...given, operands: [operand] }, streams);
    if (loaded === undefined) return exitCode.found;
    jobs.push(loaded);
  }
  const weather = await weatherFor(given, streams, jobs[0]!.job.duty);
  if (weather === undefined) return exitCode.found;
  const catalogue = await readCatalogueTexts(given);
  const profiles = await readProfileFolders(optionText(given, "profiles"));
  const texts = jobs.map(({ text, profile }) => ({ text, profile }));
  const setup = { jobs: texts, catalogue, profiles, weather };
  const years = await watched(streams, workers, "hour by hour", (options) => solveYears(setup, options));
  if (years === undefined) return exitCode.found;
  const extra = await extrasOf(given, setup, years, workers, streams);
  if (extra === undefined) return exitCode.found;
  const told = jobs.map(({ name, job }, place) => ({
    ...tellYear(name, job, years[place]!),
    representative: extra.representative[place],
    uncertainty: extra.uncertainty[place],
  }));
  const folder = optionText(given, "svg");
  if (folder !== undefined) {
    const names = await writePictures(folder, told, unitSystem(given));
    streams.errors(`written to ${folder}: ${names.join(", ")}\n`);
  }
  printYears(told, weather, given, streams);
  return told.every(({ report }) => report.unsolved.length === 0) ? exitCode.fine : exitCode.found;
}

/** Hours in which trials are solved where their number is not given. */
const usualHours = 48;

/** Representative hours and trials, as far as they are asked for; undefined when the trials were stopped. */
async function extrasOf(
  given: Given,
  setup: YearSetup,
  years: readonly YearHours[],
  workers: number | undefined,
  streams: Streams,
): Promise<
  { readonly representative: readonly RepresentativeYear[]; readonly uncertainty: readonly Uncertainty[] } | undefined
> {
  const hours = optionCount(given, "representative", representativeRange.most);
  const trials = optionCount(given, "uncertain", 4096);
  const seed = optionCount(given, "seed", 2 ** 31) ?? 1;
  if (hours !== undefined && hours < representativeRange.fewest) {
    throw new UsageProblem(`--representative ${hours}: fewer than ${representativeRange.fewest} hours tell nothing`);
  }
  if (hours === undefined && trials === undefined) return { representative: [], uncertainty: [] };
  const representative = years.map((year) => measureRepresentative(year, hours ?? usualHours));
  if (trials === undefined) return { representative, uncertainty: [] };
  const asked = { count: trials, seed, hours: representative.map((each) => each.hours) };
  const uncertainty = await watched(streams, workers, "trials", (options) => solveTrials(setup, asked, options));
  return uncertainty && { representative, uncertainty };
}

/** A job that can be solved, and the name of the profile by which it is judged. */
interface JudgedJob {
  readonly name: string;
  readonly text: string;
  readonly job: Job;
  readonly profile: string;
}

/** Does work with its progress shown; Ctrl-C stops it, and then nothing is presented. */
async function watched<Result>(
  streams: Streams,
  workers: number | undefined,
  what: string,
  solve: (options: PoolOptions) => Promise<Result>,
): Promise<Result | undefined> {
  const stop = new AbortController();
  streams.untilInterrupted().then(() => stop.abort());
  const line = progressLine(streams, what);
  try {
    return await solve({ signal: stop.signal, progress: line.say, ...(workers === undefined ? {} : { workers }) });
  } catch (error) {
    if (!(error instanceof YearStopped)) throw error;
    line.clear();
    streams.errors("stopped; part of a year is no year, so there is none\n");
    return undefined;
  } finally {
    line.clear();
  }
}

/** The job that was given, and its owner's rules; undefined when its text has errors, which are told. */
async function judgedJob(given: Given, streams: Streams): Promise<JudgedJob | undefined> {
  const { name, text, reading, problems } = await loadJob(given, streams);
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
  return { name, text, job, profile: profile.name };
}

/** The weather file, or, without one, a year made up from the duty's design days. */
async function weatherFor(given: Given, streams: Streams, duty: Duty): Promise<WeatherYear | undefined> {
  const pressure = sitePressure(duty);
  const file = optionText(given, "weather");
  if (file === undefined) return syntheticYearOfDuty(duty);
  const loaded = await loadWeather(file, streams, { pressure });
  if ("weather" in loaded) return loaded.weather;
  streams.errors(`${loaded.refusal}\n`);
  return undefined;
}

function printYears(told: readonly ToldYear[], weather: WeatherYear, given: Given, streams: Streams): void {
  if (optionFlag(given, "json")) {
    printJson(streams, yearOutput(weather, told));
    return;
  }
  if (optionFlag(given, "csv") || optionFlag(given, "hours")) {
    streams.output(optionFlag(given, "hours") ? hoursCsv(told) : comparisonCsv(told));
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
