import { standardPressure } from "#fluid/atmosphere";
import type { QuantityKind } from "#quantity/kind";
import { unitOf } from "#quantity/parse";
import { siFromReading, type Unit } from "#quantity/unit";
import { daysOfMonth, hourIndex, hoursOfLeapYear, hoursOfYear } from "./calendar.ts";
import { createRawHours, type RawHours, settleHours } from "./raw-hours.ts";
import { RepairCount, WeatherRefusal, type WeatherYear } from "./weather-year.ts";

type Measured = "dryBulb" | "dewPoint" | "relativeHumidity" | "pressure" | "windSpeed";

/** Columns that count, by the words of their header; what stands in brackets after them is the unit. */
const columnWords: readonly { readonly name: Measured; readonly words: RegExp; readonly kind: QuantityKind }[] = [
  {
    name: "dryBulb",
    words: /^(outdoor )?(dry[ -]?bulb|air temperature|temperature)( temperature)?$/,
    kind: "temperature",
  },
  { name: "dewPoint", words: /^dew[ -]?point( temperature)?$/, kind: "temperature" },
  { name: "relativeHumidity", words: /^relative humidity|rh$/, kind: "share" },
  { name: "pressure", words: /^(station |barometric |absolute )*pressure$/, kind: "absolutePressure" },
  { name: "windSpeed", words: /^wind( speed)?$/, kind: "velocity" },
];
const timeWords = /^(time ?stamp|time|date ?time|date)$/;

interface Column {
  readonly name: Measured;
  readonly at: number;
  readonly unit: Unit;
}

/** Reads plain CSV: a header that names its columns, one row an hour. Throws `WeatherRefusal`. */
export function readCsvWeather(text: string, pressure: number | undefined): WeatherYear {
  const lines = text.split(/\r\n|\n|\r/);
  const head = lines.findIndex((line) => line.trim() !== "" && !line.startsWith("#"));
  const separator = separatorOf(lines[head]!);
  const { timeAt, columns } = readHead(cellsOf(lines[head]!, separator), head + 1);
  const repairs = new RepairCount();
  const rows = rowsOf(lines, head + 1, separator, timeAt);
  const hours = hoursOf(rows);
  const begins = !endsWithYear(rows);
  const raw = placeRows(rows, columns, hours, begins, repairs);
  const hasDewPoint = columns.some(({ name }) => name === "dewPoint");
  const settled = settleHours(raw, pressure ?? standardPressure(0), hasDewPoint ? undefined : "water", repairs);
  const clock = begins
    ? "a row is taken for the hour that begins with its time"
    : "a row is taken for the hour that ends with its time";
  const moisture = hasDewPoint
    ? []
    : ["relative humidities below 0 °C are taken over water, as weather services give them"];
  return {
    origin: "CSV",
    place: {
      name: "",
      source: "CSV",
      station: "",
      latitude: undefined,
      longitude: undefined,
      timeZone: undefined,
      elevation: undefined,
    },
    hours,
    ...settled,
    firstWeekday: weekdayOfNewYear(rows[0]!.year),
    repairs: repairs.list(),
    notes: [clock, ...moisture, ...settled.notes],
    design: undefined,
  };
}

function separatorOf(line: string): string {
  if (line.includes("\t")) return "\t";
  return line.includes(";") && !line.includes(",") ? ";" : ",";
}

function cellsOf(line: string, separator: string): readonly string[] {
  return line.split(separator).map((cell) =>
    cell
      .trim()
      .replace(/^"(.*)"$/, "$1")
      .trim(),
  );
}

function readHead(cells: readonly string[], line: number): { timeAt: number; columns: readonly Column[] } {
  const timeAt = cells.findIndex((cell) => timeWords.test(cell.toLowerCase()));
  const allowed = "a header such as: time, dry bulb (°F), dew point (°F) or relative humidity (%), pressure (inHg)";
  if (timeAt < 0) throw new WeatherRefusal(line, "the header names no column for the time", allowed);
  const columns = cells.flatMap((cell, at): readonly Column[] => {
    const [, words = "", spelled] = /^([^([]*?)\s*(?:[([]([^)\]]*)[)\]])?$/.exec(cell) ?? [];
    const known = columnWords.find((column) => column.words.test(words.toLowerCase()));
    if (known === undefined) return [];
    const unit = unitOf(spelled ?? (known.kind === "share" ? "%" : ""), known.kind);
    if (unit === undefined) {
      throw new WeatherRefusal(
        line,
        `the column "${cell}" has no unit that is known`,
        "its unit in brackets, `dry bulb (°F)`",
      );
    }
    return [{ name: known.name, at, unit }];
  });
  const has = (name: Measured) => columns.some((column) => column.name === name);
  if (!has("dryBulb")) throw new WeatherRefusal(line, "the header names no dry bulb", allowed);
  if (!has("dewPoint") && !has("relativeHumidity"))
    throw new WeatherRefusal(line, "the header names no moisture", allowed);
  return { timeAt, columns };
}

interface Row {
  readonly line: number;
  readonly year: number;
  /** h since the year 0 as the clock counts, and the minute. */
  readonly time: number;
  readonly minute: number;
  readonly date: { readonly month: number; readonly day: number };
  readonly cells: readonly string[];
}

const timePattern = /^(\d{4})-(\d{1,2})-(\d{1,2})[T ](\d{1,2})(?::(\d{2}))?(?::\d{2}(?:\.\d+)?)?(Z|[+-]\d{2}:?\d{2})?$/;

function rowsOf(lines: readonly string[], from: number, separator: string, timeAt: number): readonly Row[] {
  const rows: Row[] = [];
  for (let index = from; index < lines.length; index++) {
    const text = lines[index]!;
    if (text.trim() === "" || text.startsWith("#")) continue;
    const line = index + 1;
    const cells = cellsOf(text, separator);
    const written = cells[timeAt] ?? "";
    const found = timePattern.exec(written);
    const [year, month, day, hour, minute] = (found ?? []).slice(1, 6).map((part) => Number(part ?? 0)) as number[];
    const isTime = found !== null && month! >= 1 && month! <= 12 && day! >= 1 && hour! <= 24 && minute! < 60;
    const inLeapYear = isTime && isLeap(year!);
    if (!isTime || day! > daysOfMonth(month!, inLeapYear ? hoursOfLeapYear : hoursOfYear)) {
      throw new WeatherRefusal(line, `"${written}" is no time`, "year-month-day hour:minute, `2023-01-31 14:00`");
    }
    rows.push({
      line,
      year: year!,
      time: 24 * dayNumber(year!, month!, day!) + hour!,
      minute: minute!,
      date: { month: month!, day: day! },
      cells,
    });
  }
  if (rows.length === 0) throw new WeatherRefusal(from, "the file has a header and no rows", "a row for every hour");
  return rows;
}

const isLeap = (year: number) => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;

/** Days since 1 January of the year 1, by the calendar in use. */
function dayNumber(year: number, month: number, day: number): number {
  const before = year - 1;
  const years = 365 * before + Math.floor(before / 4) - Math.floor(before / 100) + Math.floor(before / 400);
  return years + hourIndex({ month, day, hour: 1 }, isLeap(year) ? hoursOfLeapYear : hoursOfYear) / 24;
}

/** 1 January of the year 1 was a Monday. */
function weekdayOfNewYear(year: number): number {
  return (dayNumber(year, 1, 1) + 1) % 7;
}

/** True where the last row is midnight after the year: rows are then named by the end of their hour. */
function endsWithYear(rows: readonly Row[]): boolean {
  const { year } = rows[0]!;
  const newYear = 24 * dayNumber(year, 1, 1);
  return rows[0]!.time > newYear && rows.at(-1)!.time === 24 * dayNumber(year + 1, 1, 1);
}

/** Hours of the year that the rows are of: 8784 where 29 February is among them. */
function hoursOf(rows: readonly Row[]): number {
  return rows.some(({ date }) => date.month === 2 && date.day === 29) ? hoursOfLeapYear : hoursOfYear;
}

function placeRows(
  rows: readonly Row[],
  columns: readonly Column[],
  hours: number,
  begins: boolean,
  repairs: RepairCount,
): RawHours {
  const raw = createRawHours(hours);
  const first = rows[0]!;
  const yearHours = isLeap(first.year) ? hoursOfLeapYear : hoursOfYear;
  const newYear = 24 * dayNumber(first.year, 1, 1);
  const skipsLeapDay = yearHours > hours;
  let before = Number.NEGATIVE_INFINITY;
  for (const row of rows) {
    if (row.minute !== first.minute) {
      throw new WeatherRefusal(
        row.line,
        "the minute changes from row to row: sub-hourly or irregular data",
        "one row an hour, all at the same minute",
      );
    }
    if (row.time <= before) {
      const words = row.time === before ? "an hour stands twice" : "the rows are out of order";
      throw new WeatherRefusal(row.line, words, "rows in order of time, on a clock without summer time");
    }
    before = row.time;
    let index = row.time - newYear - (begins ? 0 : 1);
    // A leap year's file that leaves out 29 February goes on with 1 March.
    if (skipsLeapDay && index >= 24 * 60) index -= 24;
    if (index >= hours) throw new WeatherRefusal(row.line, "the rows reach into another year", "one calendar year");
    raw.lines[index] = row.line;
    for (const { name, at, unit } of columns) raw[name][index] = read(row, name, at, unit, repairs);
  }
  checkCover(raw, hours, repairs);
  return raw;
}

function read(row: Row, name: Measured, at: number, unit: Unit, repairs: RepairCount): number {
  const text = row.cells[at] ?? "";
  if (text === "" || /^(na|nan|null|m|-+)$/i.test(text)) return Number.NaN;
  const value = Number(text);
  if (!Number.isFinite(value)) {
    throw new WeatherRefusal(row.line, `"${text}" is no number`, "a number, or nothing where the value is missing");
  }
  const inSi = siFromReading(value, unit);
  if (name !== "relativeHumidity" || inSi <= 1) return inSi;
  repairs.add("relative humidity above 100 %, taken as 100 %", row.line);
  return 1;
}

/** Rows that are missing are gaps like empty cells; a file that is mostly missing is part of a year. */
function checkCover(raw: RawHours, hours: number, repairs: RepairCount): void {
  const missing = raw.lines.filter((line) => line === 0).length;
  if (missing === 0) return;
  if (missing > 0.02 * hours) {
    throw new WeatherRefusal(
      0,
      `the file covers ${hours - missing} of ${hours} hours`,
      "a whole calendar year, gaps of a few hours excepted",
    );
  }
  repairs.add("rows missing", 0, missing);
}
