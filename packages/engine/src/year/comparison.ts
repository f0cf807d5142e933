import type { QuantityKind } from "#quantity/kind";
import { failsUnit } from "#rule/finding";
import { type MeterKey, meters } from "./meter.ts";
import type { YearReport } from "./year-report.ts";

/** A line of a comparison: one figure of every job, the first one's first. */
export interface ComparisonLine {
  readonly key: string;
  readonly name: string;
  /** How it is measured; money in cents of the line's currency, hours and rules counted. */
  readonly measure: QuantityKind | "count";
  /** Of money only; undefined where the jobs count in different currencies, which are then not to be compared. */
  readonly currency?: string;
  /** The meter of an energy or of a mass. */
  readonly meter?: MeterKey;
  readonly values: readonly number[];
}

/** Years of several jobs in one weather, figure by figure: energy, peaks, cost, carbon, present worth, hours. */
export function compareYears(reports: readonly YearReport[]): readonly ComparisonLine[] {
  const currencies = new Set(reports.map(({ cost }) => cost.currency));
  const currency = currencies.size === 1 ? { currency: [...currencies][0]! } : {};
  const line = (
    key: string,
    name: string,
    measure: ComparisonLine["measure"],
    value: (report: YearReport) => number,
    rest: Partial<ComparisonLine> = {},
  ): ComparisonLine => ({ key, name, measure, values: reports.map(value), ...rest });
  const counted = meters.filter(({ key }) => reports.some(({ totals }) => totals.some((each) => each.key === key)));
  const of = (report: YearReport, key: MeterKey) => report.totals.find((each) => each.key === key);
  const most = (counts: readonly { readonly hours: number }[]) => Math.max(0, ...counts.map(({ hours }) => hours));
  return [
    ...counted.map(({ key, name, total }) =>
      line(key, name, total, (report) => of(report, key)?.total ?? 0, { meter: key }),
    ),
    ...counted
      .filter(({ rate }) => rate === "power" || rate === "electricPower")
      .map(({ key, name, rate }) =>
        line(`${key}Peak`, `${name}, highest hour`, rate, (report) => of(report, key)?.peak ?? 0, { meter: key }),
      ),
    line("cost", "cost of a year", "money", ({ cost }) => cost.cost, currency),
    line("presentWorth", "present worth of running", "money", ({ cost }) => cost.presentWorth, currency),
    line("carbon", "carbon dioxide of a year", "mass", ({ cost }) => cost.carbon),
    line("missedHours", "hours with something asked and not held", "count", ({ hoursMissed }) => hoursMissed),
    line("freezeHours", "hours of freeze exposure, worst coil", "count", ({ freezing }) => most(freezing)),
    line("rulesMissed", "rules missed in some hour", "count", ({ findings }) => findings.filter(failsUnit).length),
    line("filterChanges", "filter changes", "count", ({ filterChanges }) => filterChanges.length),
  ];
}
