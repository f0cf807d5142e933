import { describe, expect, it } from "vitest";
import { hoursOfLeapYear, hoursOfYear } from "./calendar.ts";
import { readWeather } from "./read-weather.ts";
import { sampleDryBulb, sampleEpw } from "./sample.test-data.ts";
import type { WeatherProblem, WeatherYear } from "./weather-year.ts";

function good(text: string, pressure?: number): WeatherYear {
  const reading = readWeather(text, pressure === undefined ? {} : { pressure });
  if (!reading.ok) throw new Error(`${reading.problem.line}: ${reading.problem.what}`);
  return reading.weather;
}

function refused(text: string): WeatherProblem {
  const reading = readWeather(text);
  if (reading.ok) throw new Error("the text was taken");
  expect(reading.problem.allowed).not.toBe("");
  return reading.problem;
}

const repairOf = (weather: WeatherYear, words: RegExp) => weather.repairs.find(({ what }) => words.test(what));

describe("an EPW file as it should be", () => {
  const weather = good(sampleEpw());

  it("gives a year of hours, the place, and nothing to repair", () => {
    expect(weather.hours).toBe(hoursOfYear);
    expect(weather.place.name).toBe("Harrow Point, Invented");
    expect(weather.place.station).toBe("012345");
    expect(weather.place.elevation).toBe(100);
    expect(weather.repairs).toEqual([]);
    expect(weather.dryBulb[4000]).toBeCloseTo(sampleDryBulb(4000), 1);
    expect(weather.pressure[0]).toBe(100_100);
    expect(weather.windSpeed[7]).toBe(3.5);
  });

  it.each(["\r\n", "\r"])("does not mind line ends %j, a byte-order mark, blank lines at the end", (lineEnd) => {
    const other = good(`\uFEFF${sampleEpw({ lineEnd })}${lineEnd}${lineEnd}\u001A`);
    expect(other.dryBulb).toEqual(weather.dryBulb);
    expect(other.repairs).toEqual([]);
  });

  it("takes minute 60 for the same hours as minute 0", () => {
    expect(good(sampleEpw({ minute: 60 })).dryBulb).toEqual(weather.dryBulb);
  });

  it("takes rows without their last columns", () => {
    const short = good(sampleEpw({ row: () => ({ length: 10 }) }));
    expect(short.dryBulb).toEqual(weather.dryBulb);
    expect(short.windSpeed[7]).toBe(0);
  });

  it("does not mind that months come from different years", () => {
    expect(good(sampleEpw({ row: (fields) => ({ 0: `${1980 + Number(fields[1])}` }) })).hours).toBe(8760);
  });
});

describe("an EPW file with what may be put right", () => {
  it("puts a short gap between its neighbours and counts it", () => {
    const weather = good(sampleEpw({ row: (_, index) => (index >= 100 && index < 104 ? { 6: "99.9" } : undefined) }));
    expect(repairOf(weather, /dry bulb missing/)).toMatchObject({ count: 4, firstLine: 109 });
    const step = (weather.dryBulb[104]! - weather.dryBulb[99]!) / 5;
    for (let k = 0; k < 5; k++) expect(weather.dryBulb[100 + k]! - weather.dryBulb[99 + k]!).toBeCloseTo(step, 9);
  });

  it("closes a gap over the turn of the year", () => {
    const weather = good(sampleEpw({ row: (_, index) => (index < 2 || index > 8757 ? { 6: "99.90" } : undefined) }));
    expect(repairOf(weather, /dry bulb missing/)?.count).toBe(4);
    expect(weather.dryBulb.every((air) => Number.isFinite(air))).toBe(true);
  });

  it("takes moisture from the relative humidity where the dew point is missing", () => {
    // 70 % at the dry bulb of the hour, by Magnus' formula for water (WMO-No. 8) and an enhancement of 1.0045.
    const weather = good(sampleEpw({ row: (_, index) => (index === 4000 ? { 7: "99.9" } : undefined) }));
    const air = weather.dryBulb[4000]!;
    const vapour = 1.0045 * 0.7 * 611.2 * Math.exp((17.62 * air) / (243.12 + air));
    expect(weather.humidityRatio[4000]).toBeCloseTo((0.62198 * vapour) / (100_100 - vapour), 4);
    expect(repairOf(weather, /dew point missing/)).toMatchObject({ count: 1, firstLine: 4009 });
  });

  it("lowers a dew point above the dry bulb", () => {
    const weather = good(
      sampleEpw({
        row: (fields, index) => (index === 50 ? { 7: `${Number(fields[6]) + 1.9}` } : undefined),
      }),
    );
    expect(repairOf(weather, /dew point above/)).toMatchObject({ count: 1, firstLine: 59 });
  });

  it("takes a missing or senseless pressure from the elevation", () => {
    const weather = good(
      sampleEpw({
        row: (_, index) => (index === 3 ? { 9: "999999" } : index === 4 ? { 9: "100" } : undefined),
      }),
    );
    // ICAO standard atmosphere at 100 m: 100 129 Pa.
    expect(weather.pressure[3]).toBeCloseTo(100_129, -1);
    expect(repairOf(weather, /pressure missing/)?.count).toBe(2);
  });

  it("leaves out 29 February where the header has no leap year, and keeps it where it has", () => {
    const rows = { hours: hoursOfLeapYear };
    const dropped = good(sampleEpw({ ...rows, leap: "No" }));
    expect(dropped.hours).toBe(hoursOfYear);
    expect(repairOf(dropped, /29 February/)?.count).toBe(24);
    expect(good(sampleEpw({ ...rows, leap: "Yes" })).hours).toBe(hoursOfLeapYear);
    expect(good(sampleEpw({ ...rows, leap: "" })).hours).toBe(hoursOfLeapYear);
  });

  it("says which header records are missing or strange, and goes on", () => {
    const text = sampleEpw().replace("GROUND TEMPERATURES,0\n", "SOMETHING ELSE\n");
    const weather = good(text);
    expect(repairOf(weather, /GROUND TEMPERATURES missing/)?.count).toBe(1);
    expect(repairOf(weather, /without a known keyword/)?.firstLine).toBe(4);
  });

  it("tells from the file whether cold dew points are over water or ice", () => {
    const cold = (overWater: boolean) =>
      good(
        sampleEpw({
          row: (_, index) => {
            if (index >= 500) return undefined;
            // Saturation pressures of the Smithsonian Meteorological Tables, hPa: over water at −10, −20 °C 2.863, 1.254;
            // over ice 2.599, 1.032.
            const share = overWater ? 1.254 / 2.863 : 1.032 / 2.599;
            return { 6: "-10", 7: "-20", 8: `${(100 * share).toFixed(1)}` };
          },
        }),
      );
    const water = cold(true);
    const ice = cold(false);
    expect(water.notes.join()).toMatch(/over water/);
    expect(ice.notes.join()).toMatch(/over ice/);
    expect(water.humidityRatio[0]! / ice.humidityRatio[0]!).toBeCloseTo(1.254 / 1.032, 2);
  });

  it("notes single hours of impossible moisture", () => {
    const weather = good(sampleEpw({ row: (_, index) => (index === 5000 ? { 6: "32.3", 7: "32.3" } : undefined) }));
    expect(weather.notes.join()).toMatch(/28 Jul 09:00/);
  });
});

describe("an EPW file that is refused", () => {
  const lines = sampleEpw().split("\n");

  it.each([
    ["empty", "", 0, /empty/],
    ["an archive", "PK\u0003\u0004\u0014\u0000\u0006\u0000", 0, /ZIP/],
    ["no text", "\u0001\u0002\u0003\u0000abc\u0007", 0, /no text/],
    ["a header alone", lines.slice(0, 8).join("\n"), 8, /no hours/],
    ["records that run together", sampleEpw({ lineEnd: " " }), 1, /no line ends/],
    ["cut off inside a row", lines.slice(0, 5000).join("\n").concat("\n1999,7,28"), 5001, /breaks off after/],
    ["cut off behind a row", lines.slice(0, 5000).join("\n"), 5000, /4992 rows are no whole year/],
    ["sub-hourly by its header", sampleEpw({ periods: "1,4" }), 8, /4 records an hour/],
    ["several periods", sampleEpw({ periods: "2,1" }), 8, /2 data periods/],
    ["no location", lines.slice(1).join("\n"), 0, /names no column|no record/],
    ["no data periods", lines.filter((line) => !line.startsWith("DATA")).join("\n"), 1, /DATA PERIODS/],
  ])("%s", (_, text, line, words) => {
    const problem = refused(text);
    expect(problem.what).toMatch(words);
    if (line > 0) expect(problem.line).toBe(line);
  });

  it("sub-hourly by its rows", () => {
    const rows = lines.slice(8, -1).flatMap((row) => [row.replace(/^(.*?,.*?,.*?,.*?),0/, "$1,30"), row]);
    expect(refused([...lines.slice(0, 8), ...rows].join("\n")).what).toMatch(/sub-hourly/);
  });

  it("two years", () => {
    const problem = refused([...lines.slice(0, -1), ...lines.slice(8)].join("\n"));
    expect(problem.what).toMatch(/more than one year/);
    expect(problem.line).toBe(8769);
  });

  it("shuffled rows", () => {
    const shuffled = [...lines];
    [shuffled[300], shuffled[400]] = [shuffled[400]!, shuffled[300]!];
    const problem = refused(shuffled.join("\n"));
    expect(problem).toMatchObject({ line: 301 });
    expect(problem.what).toMatch(/out of order: hour 9 of 1\/17 stands where hour 5 of 1\/13/);
  });

  it("a missing row, a doubled row, a row that is none", () => {
    expect(refused(lines.filter((_, index) => index !== 2000).join("\n")).what).toMatch(/missing or out of order/);
    expect(refused([...lines.slice(0, 2001), ...lines.slice(2000)].join("\n")).what).toMatch(/stands twice/);
    expect(refused([...lines.slice(0, 2000), "hello", ...lines.slice(2001)].join("\n")).line).toBe(2001);
  });

  it("a long gap, too many gaps", () => {
    const long = sampleEpw({
      row: (_, index) => (index >= 60 && index < 67 ? { 6: "99.9" } : undefined),
    });
    expect(refused(long).what).toBe("dry bulb is missing for 7 hours in a row, from the hour that ends 3 Jan 13:00");
    const many = sampleEpw({ row: (_, index) => (index % 40 === 0 ? { 6: "99.9" } : undefined) });
    expect(refused(many).what).toMatch(/missing for 219 of 8760/);
  });
});

describe("design conditions of the header", () => {
  // Two layouts that circulate, with invented values: the later one has one more field under Heating.
  const heating = "12,-11.8,-9.4,-17.5,0.9,-9.8,-15.1,1.1,-7.3,11.1,2.7,10.2,2.6,3.7,330";
  const cooling =
    "7,11.3,34.1,23.9,32.7,23.4,31.3,22.8,25.6,31.2,24.9,30.1,24.2,29,4.4,200,24.2,19.2,28.3,23.4,18.3,27.5,22.8,17.7,26.9,79.3,31.2,76.2,30.1,73.4,29,688";
  it.each([
    `1,tables of 2009,,Heating,${heating},Cooling,${cooling}`,
    `1,tables of 2021,,Heating,${heating},0.4,Cooling,${cooling}`,
  ])("finds them by words: %s", (design) => {
    expect(good(sampleEpw({ design })).design).toMatchObject({
      heatingDryBulb: -11.8,
      humidificationDewPoint: -17.5,
      dryBulbDay: { dryBulb: 34.1, wetBulb: 23.9 },
      wetBulbDay: { dryBulb: 31.2, wetBulb: 25.6 },
      dewPointDay: { dryBulb: 28.3, dewPoint: 24.2 },
    });
  });

  it("has none where the header has none", () => {
    expect(good(sampleEpw()).design).toBeUndefined();
  });
});
