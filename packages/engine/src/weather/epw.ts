import { standardPressure } from "#fluid/atmosphere";
import { calendarHour, hourIndex, hourName, hoursOfLeapYear, hoursOfYear } from "./calendar.ts";
import { type EpwHeader, readEpwHeader } from "./epw-header.ts";
import { createRawHours, type RawHours, settleHours } from "./raw-hours.ts";
import { RepairCount, WeatherRefusal, type WeatherYear } from "./weather-year.ts";

/** How a row of hours begins: year, month, day, hour. */
const rowBegins = /^\s*\d{1,4}\s*,\s*\d{1,2}\s*,\s*\d{1,2}\s*,\s*\d{1,2}\s*,/;
/** Columns by index. Values from `missing` up count as missing, by the file's own dictionary. */
const columns = {
  dryBulb: { at: 6, missing: 99.9, low: -70, high: 70 },
  dewPoint: { at: 7, missing: 99.9, low: -70, high: 70 },
  relativeHumidity: { at: 8, missing: 999, low: 0, high: 110 },
  pressure: { at: 9, missing: 999_999, low: 31_000, high: 120_000 },
  windSpeed: { at: 21, missing: 999, low: 0, high: 99 },
} as const;
type ColumnName = keyof typeof columns;
const columnNames = Object.keys(columns) as ColumnName[];
/** Columns that a row needs: up to the pressure. */
const leastColumns = 10;

/** True where a text begins as an EPW file does. */
export function looksLikeEpw(text: string): boolean {
  return /^\s*LOCATION\s*,/i.test(text);
}

/** Reads an EPW file: one year of one record an hour. Throws `WeatherRefusal`. */
export function readEpw(text: string): WeatherYear {
  const lines = text.split(/\r\n|\n|\r/);
  const firstRow = lines.findIndex((line) => rowBegins.test(line));
  if (firstRow < 0) throw noRows(lines);
  const repairs = new RepairCount();
  const header = readEpwHeader(lines.slice(0, firstRow), repairs);
  const rows = rowsOf(lines, firstRow);
  const kept = withoutLeapDay(rows, header, repairs);
  const raw = readRows(kept, hoursFor(kept, header), repairs);
  const elevation = header.place.elevation ?? 0;
  const settled = settleHours(raw, standardPressure(elevation), undefined, repairs);
  return {
    origin: "EPW",
    place: header.place,
    hours: raw.dryBulb.length,
    ...settled,
    firstWeekday: header.firstWeekday,
    repairs: repairs.list(),
    design: header.design,
  };
}

function noRows(lines: readonly string[]): WeatherRefusal {
  if (lines.length < 3) {
    return new WeatherRefusal(1, "the file has no line ends: its records run together", "one record on each line");
  }
  return new WeatherRefusal(lines.length, "the file has a header and no hours", "8760 rows after the header");
}

interface Row {
  readonly line: number;
  readonly month: number;
  readonly day: number;
  readonly hour: number;
  readonly minute: number;
  readonly fields: readonly string[];
}

function rowsOf(lines: readonly string[], firstRow: number): readonly Row[] {
  const rows: Row[] = [];
  for (let index = firstRow; index < lines.length; index++) {
    const text = lines[index]!;
    // Blank lines at the end, and the end-of-file sign of old systems.
    if (text.trim() === "" || text === "\u001A") continue;
    const line = index + 1;
    const fields = text.split(",");
    const [month, day, hour, minute] = [1, 2, 3, 4].map((at) => Number(fields[at])) as [number, number, number, number];
    const isDate = month >= 1 && month <= 12 && day >= 1 && day <= 31 && hour >= 0 && hour <= 24;
    if (fields.length < leastColumns || !isDate || !rowBegins.test(text)) {
      const isLast = lines.slice(index + 1).every((rest) => rest.trim() === "");
      if (isLast) throw truncated(rows, line);
      throw new WeatherRefusal(line, "this is no row of hours", "year, month, day, hour, minute, flags, then values");
    }
    if (hour < 1) throw new WeatherRefusal(line, "an hour 0", "hours 1 to 24, each named by its end");
    rows.push({ line, month, day, hour, minute, fields });
  }
  return rows;
}

function truncated(rows: readonly Row[], line: number): WeatherRefusal {
  const last = rows.at(-1);
  const where = last === undefined ? "" : ` after ${last.month}/${last.day} hour ${last.hour}`;
  return new WeatherRefusal(
    line,
    `the file breaks off${where}: ${rows.length} whole rows`,
    "a whole year of 8760 rows",
  );
}

const isLeapDay = (row: Row) => row.month === 2 && row.day === 29;

/** Rows of 29 February count only where the header says so; where it is silent they count in a file of 8784 rows. */
function withoutLeapDay(rows: readonly Row[], header: EpwHeader, repairs: RepairCount): readonly Row[] {
  const leapRows = rows.filter(isLeapDay);
  const counts = header.leapYear ?? rows.length === hoursOfLeapYear;
  if (leapRows.length === 0 || counts) return rows;
  repairs.add("rows of 29 February left out: the header has no leap year", leapRows[0]!.line, leapRows.length);
  return rows.filter((row) => !isLeapDay(row));
}

function hoursFor(rows: readonly Row[], header: EpwHeader): number {
  const isLeap = header.leapYear !== false && rows.some(isLeapDay);
  return isLeap ? hoursOfLeapYear : hoursOfYear;
}

/** Puts the rows into hours; they have to be one whole year in order. */
function readRows(rows: readonly Row[], hours: number, repairs: RepairCount): RawHours {
  checkOrder(rows, hours);
  const raw = createRawHours(hours);
  rows.forEach((row, index) => {
    raw.lines[index] = row.line;
    for (const name of columnNames) {
      const value = columnValue(row.fields, name);
      raw[name][index] = name === "relativeHumidity" ? Math.min(1, value / 100) : value;
      if (name === "relativeHumidity" && value > 100) {
        repairs.add("relative humidity above 100 %, taken as 100 %", row.line);
      }
    }
  });
  return raw;
}

function columnValue(fields: readonly string[], name: ColumnName): number {
  const { at, missing, low, high } = columns[name];
  const text = (fields[at] ?? "").trim();
  const value = text === "" ? Number.NaN : Number(text);
  return value < missing && value >= low && value <= high ? value : Number.NaN;
}

/** What is wrong with rows that are not one year in order, told by its likely cause. */
function checkOrder(rows: readonly Row[], hours: number): void {
  const allowed = "1 January hour 1 to 31 December hour 24, one row an hour, in order";
  for (let index = 0; index < Math.min(rows.length, hours); index++) {
    const row = rows[index]!;
    const expected = calendarHour(index, hours);
    if (row.month === expected.month && row.day === expected.day && row.hour === expected.hour) {
      if (row.minute === rows[0]!.minute) continue;
      throw new WeatherRefusal(row.line, "the minute changes from row to row", "one minute for all rows");
    }
    const before = rows[index - 1];
    const words = `hour ${row.hour} of ${row.month}/${row.day} stands where hour ${expected.hour} of ${expected.month}/${expected.day} should`;
    const repeats = before !== undefined && before.hour === row.hour && before.day === row.day;
    if (repeats && before.minute !== row.minute) {
      throw new WeatherRefusal(row.line, "several rows for one hour: sub-hourly data", "one row an hour");
    }
    const cause = repeats ? "an hour stands twice" : likelyCause(rows, index, hours);
    throw new WeatherRefusal(row.line, `${cause}: ${words}`, allowed);
  }
  const last = rows.at(-1);
  if (rows.length < hours) {
    const end = last === undefined ? "" : `: the last is ${hourName(hourIndex(last, hours), hours)}`;
    throw new WeatherRefusal(last?.line ?? 0, `${rows.length} rows are no whole year${end}`, `${hours} rows`);
  }
  if (rows.length > hours) {
    const next = rows[hours]!;
    const words = rows.length >= 2 * hoursOfYear ? "the file holds more than one year" : "rows follow after the year";
    throw new WeatherRefusal(next.line, `${words}: ${rows.length} rows`, `${hours} rows`);
  }
}

function likelyCause(rows: readonly Row[], index: number, hours: number): string {
  if (index === 0) return "the rows do not begin on 1 January";
  const all = new Set(rows.map((row) => 10_000 * row.month + 100 * row.day + row.hour));
  return all.size === hours && rows.length === hours ? "the rows are out of order" : "rows are missing or out of order";
}
