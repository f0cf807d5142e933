import { describe, expect, it } from "vitest";
import { dryBulbBins } from "./bins.ts";
import { hourIndex, hourName } from "./calendar.ts";
import { extremeHours, heatingDegreeHours } from "./extremes.ts";
import { readWeather } from "./read-weather.ts";
import { sampleEpw } from "./sample.test-data.ts";

const text = sampleEpw();
const reading = readWeather(text);
if (!reading.ok) throw new Error(reading.problem.what);
const { weather } = reading;

describe("bins of dry bulb", () => {
  const bins = dryBulbBins(weather, 5 / 1.8, -17.777_777_777_777_78);

  it("hold the hours that an independent count of the text finds, by the column's own tenths", () => {
    // Counted from the text alone, in whole tenths of a degree so that no edge is a matter of rounding.
    const counted = new Map<number, number>();
    for (const line of text.split("\n").slice(8, -1)) {
      const tenths = Math.round(10 * Number(line.split(",")[6]));
      const bin = Math.floor((tenths * 18 + 3200) / 500);
      counted.set(bin, (counted.get(bin) ?? 0) + 1);
    }
    expect(bins.map(({ hours }) => hours)).toEqual(
      [...counted.keys()].sort((a, b) => a - b).map((bin) => counted.get(bin)),
    );
    expect(bins.reduce((sum, { hours }) => sum + hours, 0)).toBe(8760);
  });

  it("split the day into three", () => {
    expect(bins.reduce((sum, { night }) => sum + night, 0)).toBe(2920);
    for (const bin of bins) expect(bin.night + bin.day + bin.evening).toBe(bin.hours);
  });

  it("have a wet bulb below their upper edge", () => {
    for (const { wetBulb, high } of bins) expect(wetBulb).toBeLessThan(high);
  });
});

describe("extremes and degree-hours", () => {
  it("find the hottest and the coldest hour of the text", () => {
    const column = text
      .split("\n")
      .slice(8, -1)
      .map((line) => Number(line.split(",")[6]));
    const [hottest, , , , coldest] = extremeHours(weather);
    expect(hottest?.dryBulb).toBe(Math.max(...column));
    expect(coldest?.dryBulb).toBe(Math.min(...column));
    expect(heatingDegreeHours(weather, 10)).toBeCloseTo(
      column.reduce((sum, air) => sum + Math.max(0, 10 - air), 0),
      6,
    );
  });

  it("names an hour by its end", () => {
    expect(hourName(hourIndex({ month: 2, day: 28, hour: 24 }, 8760), 8760)).toBe("28 Feb 24:00");
  });
});
