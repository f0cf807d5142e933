import { calendarHour } from "@oncethrough/engine/weather/calendar";
import { hourFigures } from "@oncethrough/engine/year/hour-figures";
import { csvLine } from "../air/read-csv.ts";
import { comparisonOutput, type ToldYear } from "./year-output.ts";

/** The figures of every job side by side as CSV, in SI units. */
export function comparisonCsv(years: readonly ToldYear[]): string {
  const head = csvLine(["figure", "unit", ...years.map(({ name }) => name)]);
  const lines = comparisonOutput(years).map(({ name, unit, currency, values }) =>
    csvLine([
      name,
      unit === "cents" ? `cents ${currency ?? "of each job's currency"}` : unit,
      ...values.map(numberText),
    ]),
  );
  return [head, ...lines].join("");
}

/** Every hour of every job as CSV, in SI units, a freeze margin for each coil that any of them has. */
export function hoursCsv(years: readonly ToldYear[]): string {
  const coils = [...new Set(years.flatMap(({ year }) => year.coils.map(({ section }) => section)))];
  const names = coils.map((section) => `freeze margin of ${section}`);
  const head = ["job", "month", "day", "hour", "outdoorDryBulb", "outdoorHumidityRatio", ...hourFigures, ...names];
  const rows = years.flatMap(({ name, year }) => {
    const margins = coils.map((wanted) => year.freezeMargins[year.coils.findIndex((coil) => coil.section === wanted)]);
    return Array.from({ length: year.plan.hours }, (_, k) => {
      const { month, day, hour } = calendarHour(k, year.plan.hours);
      const outdoor = [year.plan.weather.dryBulb[k]!, year.plan.humidityRatio[k]!];
      const figures = hourFigures.map((figure) => year.lists[figure][k]!);
      const values = [...outdoor, ...figures, ...margins.map((list) => list?.[k] ?? Number.NaN)].map(numberText);
      return csvLine([name, String(month), String(day), String(hour), ...values]);
    });
  });
  return [csvLine(head), ...rows].join("");
}

/** Seven digits; empty for what is no number. */
function numberText(value: number): string {
  return Number.isFinite(value) ? String(Number(value.toPrecision(7))) : "";
}
