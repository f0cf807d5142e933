import { weekdays } from "./calendar.ts";
import { type HeaderDesign, readHeaderDesign } from "./header-design.ts";
import { type RepairCount, type WeatherPlace, WeatherRefusal } from "./weather-year.ts";

/** What the eight records before the hours say. */
export interface EpwHeader {
  readonly place: WeatherPlace;
  readonly design: HeaderDesign | undefined;
  /** Whether 29 February counts; undefined where the record does not say. */
  readonly leapYear: boolean | undefined;
  readonly firstWeekday: number;
}

/** Keywords of the records, in their order; matched by how a line begins, since writers vary the end. */
const keywords = [
  "LOCATION",
  "DESIGN CONDITIONS",
  "TYPICAL/EXTREME PERIODS",
  "GROUND TEMPERATURES",
  "HOLIDAYS/DAYLIGHT SAVING",
  "COMMENTS 1",
  "COMMENTS 2",
  "DATA PERIODS",
] as const;
type Keyword = (typeof keywords)[number];
/** Without these a file cannot be understood. */
const needed: readonly Keyword[] = ["LOCATION", "DATA PERIODS"];

/** Reads the header from the lines before the first hour. Lines are split one by one: comments may hold open quotes. */
export function readEpwHeader(lines: readonly string[], repairs: RepairCount): EpwHeader {
  const found = new Map<Keyword, readonly string[]>();
  let last = -1;
  lines.forEach((line, index) => {
    if (line.trim() === "") return;
    const position = keywords.findIndex((keyword) => line.trimStart().toUpperCase().startsWith(keyword));
    const keyword = keywords[position];
    if (keyword === undefined) {
      repairs.add("header record without a known keyword, left out", index + 1);
      return;
    }
    if (position < last) repairs.add("header records out of order", index + 1);
    last = Math.max(last, position);
    found.set(keyword, line.split(","));
  });
  for (const keyword of keywords) {
    if (found.has(keyword)) continue;
    if (needed.includes(keyword)) {
      throw new WeatherRefusal(1, `the header has no record ${keyword}`, "the eight header records of an EPW file");
    }
    repairs.add(`header record ${keyword} missing`, 0);
  }
  checkPeriods(found.get("DATA PERIODS")!, lines.length);
  return {
    place: readPlace(found.get("LOCATION")!),
    design: readHeaderDesign(found.get("DESIGN CONDITIONS") ?? []),
    leapYear: readLeapYear(found.get("HOLIDAYS/DAYLIGHT SAVING")),
    firstWeekday: Math.max(0, weekdays.indexOf(readWeekday(found.get("DATA PERIODS")!))),
  };
}

function readPlace(fields: readonly string[]): WeatherPlace {
  const text = (index: number) => (fields[index] ?? "").trim();
  const number = (index: number) => {
    const value = Number(text(index));
    return text(index) === "" || !Number.isFinite(value) ? undefined : value;
  };
  const parts = [text(1), text(2), text(3)].filter((part) => part !== "" && part !== "-");
  return {
    name: parts.join(", "),
    source: text(4),
    station: text(5),
    latitude: number(6),
    longitude: number(7),
    timeZone: number(8),
    elevation: number(9),
  };
}

function readLeapYear(fields: readonly string[] | undefined): boolean | undefined {
  const word = (fields?.[1] ?? "").trim().toLowerCase();
  if (word === "yes") return true;
  return word === "no" ? false : undefined;
}

function readWeekday(fields: readonly string[]): (typeof weekdays)[number] {
  const word = (fields[4] ?? "").trim().toLowerCase();
  return weekdays.find((day) => day.toLowerCase() === word) ?? "Sunday";
}

/** One period of one record an hour is a year; the rows are counted as well, as headers are not always put right. */
function checkPeriods(fields: readonly string[], line: number): void {
  const periods = Number(fields[1]);
  const recordsPerHour = Number(fields[2]);
  if (recordsPerHour > 1) {
    throw new WeatherRefusal(line, `the file has ${recordsPerHour} records an hour`, "one record an hour");
  }
  if (periods > 1) throw new WeatherRefusal(line, `the file has ${periods} data periods`, "one period, a whole year");
}
