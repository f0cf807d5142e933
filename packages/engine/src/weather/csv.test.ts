import { describe, expect, it } from "vitest";
import { calendarHour } from "./calendar.ts";
import { readWeather } from "./read-weather.ts";
import { sampleDryBulb } from "./sample.test-data.ts";

const two = (value: number) => String(value).padStart(2, "0");

function sampleCsv(head: string, cells: (index: number) => string, year = 2023, hours = 8760): string[] {
  return [
    head,
    ...Array.from({ length: hours }, (_, index) => {
      const { month, day, hour } = calendarHour(index, hours);
      return `${year}-${two(month)}-${two(day)} ${two(hour - 1)}:00,${cells(index)}`;
    }),
  ];
}

const fahrenheit = (air: number) => (1.8 * air + 32).toFixed(2);
const plain = () =>
  sampleCsv(
    "time,dry bulb (°F),dew point (°F),pressure (inHg)",
    (k) => `${fahrenheit(sampleDryBulb(k))},${fahrenheit(sampleDryBulb(k) - 4)},29.5`,
  );

function read(lines: readonly string[]) {
  return readWeather(lines.join("\n"), { pressure: 95_000 });
}

describe("plain CSV", () => {
  it("reads columns by their names, in their units", () => {
    const reading = read(plain());
    if (!reading.ok) throw new Error(reading.problem.what);
    const { weather } = reading;
    expect(weather.dryBulb[4000]).toBeCloseTo(sampleDryBulb(4000), 2);
    // 29.5 inHg at 3386.389 Pa (NIST SP 811).
    expect(weather.pressure[0]).toBeCloseTo(99_898.5, 0);
    expect(weather.repairs).toEqual([]);
    // 1 January 2023 was a Sunday.
    expect(weather.firstWeekday).toBe(0);
  });

  it("names hours by their end where the file ends at midnight of the next year", () => {
    const lines = plain();
    const shifted = [lines[0]!, ...lines.slice(2), `2024-01-01 00:00,50,40,29.5`];
    const reading = read(shifted);
    if (!reading.ok) throw new Error(reading.problem.what);
    expect(reading.weather.dryBulb[0]).toBeCloseTo(sampleDryBulb(1), 2);
    expect(reading.weather.dryBulb[8759]).toBeCloseTo(10, 6);
  });

  it("fills short gaps, of cells and of rows, and counts them", () => {
    const lines = plain();
    lines[101] = lines[101]!.replace(/,.*/, ",,,");
    lines.splice(201, 3);
    const reading = read(lines);
    if (!reading.ok) throw new Error(reading.problem.what);
    expect(reading.weather.repairs.map(({ what, count }) => `${count} ${what}`)).toEqual([
      "3 rows missing",
      "4 dry bulb missing, put between its neighbours",
      "4 pressure missing or out of range, taken from the elevation",
      "4 moisture missing, put between its neighbours",
    ]);
  });

  it("takes relative humidity and the pressure of the site", () => {
    const reading = read(
      sampleCsv("time;dry bulb [°C];relative humidity [%]", (k) => `${sampleDryBulb(k)};60`).map((line) =>
        line.replace(",", ";"),
      ),
    );
    if (!reading.ok) throw new Error(reading.problem.what);
    expect(reading.weather.pressure[5]).toBe(95_000);
    expect(reading.weather.notes.join()).toMatch(/over water/);
  });

  it("keeps 29 February of a leap year, and takes a leap year without it", () => {
    const leap = sampleCsv("time,dry bulb (°C),dew point (°C)", (k) => `${sampleDryBulb(k)},0`, 2024, 8784);
    const whole = read(leap);
    const without = read(leap.filter((line) => !line.startsWith("2024-02-29")));
    if (!whole.ok || !without.ok) throw new Error("refused");
    expect(whole.weather.hours).toBe(8784);
    expect(without.weather.hours).toBe(8760);
    expect(without.weather.dryBulb[8759]).toBe(whole.weather.dryBulb[8783]);
  });

  it.each([
    ["no unit", sampleCsv("time,dry bulb,dew point (°C)", () => "1,0"), /no unit/],
    ["no time", ["a,b", "1,2"], /no column for the time/],
    ["no moisture", sampleCsv("time,dry bulb (°C)", () => "1"), /no moisture/],
    ["no rows", ["time,dry bulb (°C),dew point (°C)"], /no rows/],
    ["half a year", plain().slice(0, 4000), /covers 3999 of 8760/],
    ["two years", [...plain(), "2024-01-01 00:00,50,40,29.5", "2024-01-01 01:00,50,40,29.5"], /another year/],
    ["a wrong time", [plain()[0]!, "1/2/2023 1:00,50,40,29.5"], /is no time/],
    ["a day that is not", [plain()[0]!, "2023-02-29 01:00,50,40,29.5"], /is no time/],
    ["a word", plain().map((line, k) => (k === 9 ? line.replace(/,29.5/, ",high") : line)), /"high" is no number/],
    ["sub-hourly", plain().flatMap((line, k) => (k === 0 ? [line] : [line, line.replace(":00", ":30")])), /sub-hourly/],
    ["summer time", plain().flatMap((line, k) => (k === 7000 ? [line, line] : [line])), /stands twice/],
    ["shuffled", [plain()[0]!, ...plain().slice(1).reverse()], /out of order/],
  ])("refuses %s", (_, lines, words) => {
    const reading = read(lines);
    expect(reading.ok).toBe(false);
    if (!reading.ok) expect(reading.problem.what).toMatch(words);
  });
});
