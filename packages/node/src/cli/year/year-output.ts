import type { Job } from "@oncethrough/engine/job/job";
import { hourName } from "@oncethrough/engine/weather/calendar";
import type { WeatherYear } from "@oncethrough/engine/weather/weather-year";
import { compareYears } from "@oncethrough/engine/year/comparison";
import { meters } from "@oncethrough/engine/year/meter";
import type { RepresentativeYear } from "@oncethrough/engine/year/representative";
import type { Uncertainty } from "@oncethrough/engine/year/uncertainty";
import type { YearHours } from "@oncethrough/engine/year/year-hours";
import { reportYear, type YearReport } from "@oncethrough/engine/year/year-report";
import { siUnit } from "../figure-text.ts";

/** What `oncethrough year --json` prints; the tables for people are printed from the same figures. All in SI. */
export interface YearOutput {
  readonly format: "oncethrough year 1";
  readonly weather: { readonly origin: WeatherYear["origin"]; readonly name: string; readonly hours: number };
  readonly jobs: readonly JobYearOutput[];
  /** One figure of every job in the order of `jobs`; empty for a single job. */
  readonly comparison: readonly ComparisonOutput[];
}

/** A line of the comparison. */
export interface ComparisonOutput {
  readonly key: string;
  readonly name: string;
  /** SI; `cents` with a currency for money, left out where the jobs count in different ones. */
  readonly unit: string;
  readonly currency?: string;
  readonly values: readonly number[];
}

/** A year of one job. */
export interface JobYearOutput {
  readonly job: string;
  readonly tag: string;
  /** False where hours could not be solved: the sums are then not those of a whole year. */
  readonly isWhole: boolean;
  readonly isSynthetic: boolean;
  readonly runningHours: number;
  readonly notes: readonly string[];
  readonly totals: readonly TotalOutput[];
  readonly cost: YearReport["cost"];
  readonly filterChanges: readonly string[];
  readonly misses: readonly object[];
  readonly hoursMissed: number;
  readonly hoursRulesMissed: number;
  readonly freezing: readonly object[];
  readonly watches: readonly object[];
  readonly freezeTimes: readonly object[];
  readonly rules: readonly object[];
  readonly unsolved: readonly { readonly time: string; readonly reason: string }[];
  /** Energy that does not balance, as a share of what passed. */
  readonly imbalance: number;
  /** As far as they were asked for. */
  readonly representative?: object;
  readonly uncertainty?: object;
}

/** What a meter counted. */
export interface TotalOutput {
  readonly key: string;
  readonly name: string;
  readonly unit: string;
  readonly total: number;
  readonly months: readonly number[];
  readonly peak: number;
  readonly peakUnit: string;
  readonly peakTime: string;
  readonly peakOutdoor: { readonly dryBulb: number; readonly wetBulb: number; readonly dewPoint: number };
  readonly designPeak: number;
  readonly designCondition: string;
}

/** A year told, with what it was told from. */
export interface ToldYear {
  readonly name: string;
  readonly job: Job;
  readonly year: YearHours;
  readonly report: YearReport;
  /** As far as they were asked for. */
  readonly representative?: RepresentativeYear | undefined;
  readonly uncertainty?: Uncertainty | undefined;
}

/** Tells a solved year of a job. */
export function tellYear(name: string, job: Job, year: YearHours): ToldYear {
  return { name, job, year, report: reportYear(year, job.conditions) };
}

/** The years of several jobs on one weather file. */
export function yearOutput(weather: WeatherYear, told: readonly ToldYear[]): YearOutput {
  return {
    format: "oncethrough year 1",
    weather: { origin: weather.origin, name: weather.place.name, hours: weather.hours },
    jobs: told.map(jobOutput),
    comparison: told.length > 1 ? comparisonOutput(told) : [],
  };
}

/** The figures of the jobs, line by line, in SI. */
export function comparisonOutput(told: readonly ToldYear[]): readonly ComparisonOutput[] {
  return compareYears(told.map(({ report }) => report)).map(({ key, name, measure, currency, values }) => ({
    key,
    name,
    unit: measure === "count" ? "1" : measure === "money" ? "cents" : siUnit(measure),
    ...(currency === undefined ? {} : { currency }),
    values,
  }));
}

function jobOutput({ name, job, report, representative, uncertainty }: ToldYear): JobYearOutput {
  const { hours } = report;
  const time = (hour: number) => hourName(hour, hours);
  return {
    job: name,
    tag: job.tag,
    isWhole: report.unsolved.length === 0,
    isSynthetic: report.isSynthetic,
    runningHours: report.runningHours,
    notes: report.notes,
    totals: report.totals.map(({ key, peakHour, monthPeaks: _, outdoor, ...each }) => {
      const meter = meters.find((one) => one.key === key)!;
      return {
        key,
        name: meter.name,
        unit: siUnit(meter.total),
        ...each,
        peakUnit: siUnit(meter.rate),
        peakTime: time(peakHour),
        peakOutdoor: outdoor,
      };
    }),
    cost: report.cost,
    filterChanges: report.filterChanges.map(time),
    misses: report.misses.map(({ hour, quantity, ...each }) => ({ ...each, unit: siUnit(quantity), time: time(hour) })),
    hoursMissed: report.hoursMissed,
    hoursRulesMissed: report.hoursRulesMissed,
    freezing: report.freezing.map(({ hour, longestFrom, margin, ...each }) => ({
      ...each,
      ...(longestFrom < 0 ? {} : { longestFrom: time(longestFrom) }),
      ...(Number.isFinite(margin) ? { margin, time: time(hour) } : {}),
    })),
    watches: report.watches.map(({ name: watched, hours: count, limit, sense, worst, hour, source }) => ({
      name: watched,
      hours: count,
      sense,
      limit,
      source,
      ...(hour < 0 ? {} : { worst, time: time(hour) }),
    })),
    freezeTimes: report.freezeTimes.map(({ hour, firstIce, solid, ...each }) => ({
      ...each,
      time: time(hour),
      ...(Number.isFinite(firstIce) ? { firstIce, solid } : {}),
    })),
    rules: report.findings.map(({ entry, outcome, value, limit, margin, at, missed, told, thin }) => ({
      section: entry.section,
      rule: entry.rule.id,
      outcome,
      thin,
      unit: entry.rule.quantity === "flag" ? "1" : siUnit(entry.rule.quantity),
      ...(Number.isNaN(margin) ? {} : { value, limit, margin }),
      ...(at < 0 ? {} : { time: time(at) }),
      missed,
      told,
    })),
    unsolved: report.unsolved.map(({ hour, reason }) => ({ time: time(hour), reason })),
    imbalance: report.imbalance,
    ...(representative === undefined ? {} : { representative: representativeOutput(representative, hours) }),
    ...(uncertainty === undefined ? {} : { uncertainty: uncertaintyOutput(uncertainty) }),
  };
}

function representativeOutput({ hours, errors, missedHours }: RepresentativeYear, length: number): object {
  return {
    hours: hours.map(({ hour, weight }) => ({ time: hourName(hour, length), hour, weight })),
    errors: errors.map((each) => ({ ...each, unit: siUnit(meters.find(({ key }) => key === each.key)!.total) })),
    missedHours,
  };
}

function uncertaintyOutput({ rules, totals, freezeMargin, ...rest }: Uncertainty): object {
  return {
    ...rest,
    totals: totals.map(({ key, spread }) => ({
      key,
      unit: siUnit(meters.find((each) => each.key === key)!.total),
      ...spread,
    })),
    ...(Number.isFinite(freezeMargin.high) ? { freezeMargin } : {}),
    rules: rules.map(({ entry, missed, spread }) => ({
      section: entry.section,
      rule: entry.rule.id,
      missed,
      ...spread,
    })),
  };
}
