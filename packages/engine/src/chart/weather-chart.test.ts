import { describe, expect, it } from "vitest";
import type { LineItem } from "#section/display";
import { readWeather } from "#weather/read-weather";
import { sampleEpw } from "#weather/sample.test-data";
import { listText } from "./sample-unit.test-data.ts";
import { weatherChart } from "./weather-chart.ts";

const reading = readWeather(sampleEpw());
if (!reading.ok) throw new Error(reading.problem.what);
const list = weatherChart({ weather: reading.weather, system: "ip", width: 640, height: 480 });

describe("the states of a year", () => {
  it("are all in cells: their hours add up to the year", () => {
    const cells = list.items.filter((item): item is LineItem => item.key.startsWith("cell-"));
    expect(cells.length).toBeGreaterThan(20);
    expect(cells.reduce((sum, { label }) => sum + Number.parseInt(label ?? "", 10), 0)).toBe(8760);
    for (const { tone } of cells) expect(tone).toBeGreaterThan(0);
  });

  it("lie under the grid, with the hours that stand out above", () => {
    const keys = list.items.map(({ key }) => key);
    expect(keys.findLastIndex((key) => key.startsWith("cell-"))).toBeLessThan(keys.indexOf("saturation"));
    expect(list.items.filter(({ label }) => label === "highest dry bulb")).toHaveLength(1);
  });

  it("look as they did", async () => {
    await expect(listText(list)).toMatchFileSnapshot("weather-chart.list.txt");
  });
});
