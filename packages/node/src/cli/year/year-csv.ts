import { calendarHour } from "@oncethrough/engine/weather/calendar";
import { hourFigures } from "@oncethrough/engine/year/hour-figures";
import { csvLine } from "../air/read-csv.ts";
import type { ToldYear } from "./year-output.ts";

/** Every hour of every job as CSV, in SI units, a freeze margin for each coil. */
export function yearCsv(years: readonly ToldYear[]): string {
  const coils = years[0]!.year.coils.map(({ section }) => `freeze margin of ${section}`);
  const head = ["job", "month", "day", "hour", "outdoorDryBulb", "outdoorHumidityRatio", ...hourFigures, ...coils];
  const rows = years.flatMap(({ name, year }) =>
    Array.from({ length: year.plan.hours }, (_, k) => {
      const { month, day, hour } = calendarHour(k, year.plan.hours);
      const outdoor = [year.plan.weather.dryBulb[k]!, year.plan.humidityRatio[k]!];
      const figures = hourFigures.map((figure) => year.lists[figure][k]!);
      const margins = year.freezeMargins.map((list) => list[k]!);
      const values = [...outdoor, ...figures, ...margins].map((value) =>
        Number.isFinite(value) ? String(Number(value.toPrecision(7))) : "",
      );
      return csvLine([name, String(month), String(day), String(hour), ...values]);
    }),
  );
  return [csvLine(head), ...rows].join("");
}
