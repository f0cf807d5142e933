import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { dryBulbBins } from "./bins.ts";
import { extremeHours } from "./extremes.ts";
import { readWeather } from "./read-weather.ts";

/** Weather files at hand, when the environment names their folder; they are no part of the project. */
const folder = process.env.ONCETHROUGH_WEATHER;
const files = folder === undefined ? [] : readdirSync(folder).filter((name) => /\.epw$/i.test(name));

describe("real weather files", () => {
  it.skipIf(files.length > 0)("are SKIPPED: ONCETHROUGH_WEATHER names no folder with .epw files", ({ skip }) => skip());

  it.each(files)("%s is read whole, and agrees with a plain count of its columns", (name) => {
    const text = readFileSync(join(folder!, name), "latin1");
    const reading = readWeather(text);
    if (!reading.ok) throw new Error(`line ${reading.problem.line}: ${reading.problem.what}`);
    const { weather } = reading;
    const rows = text
      .split(/\r?\n/)
      .filter((line) => /^\d{4},/.test(line))
      .map((line) => line.split(","));
    expect(weather.hours).toBe(rows.length);
    const dryBulbs = rows.map((row) => Number(row[6]));
    expect(extremeHours(weather)[0]?.dryBulb).toBe(Math.max(...dryBulbs));
    expect(dryBulbs.filter((air) => air < 0).length).toBe(weather.dryBulb.filter((air) => air < 0).length);
    const bins = dryBulbBins(weather, 5 / 1.8, -160 / 9);
    for (const { low, high, hours } of bins) {
      const [from, to] = [low, high].map((edge) => Math.round(180 * edge + 3200));
      expect(hours).toBe(
        dryBulbs.filter((air) => Math.round(10 * air) * 18 + 3200 >= from! && Math.round(10 * air) * 18 + 3200 < to!)
          .length,
      );
    }
    for (let k = 0; k < weather.hours; k++) {
      const dew = Number(rows[k]![7]);
      // Above freezing humidity ratio and dew point say the same, by the Magnus formula within 0.3 %.
      if (dew < 0.5 || dew > dryBulbs[k]!) continue;
      const vapour = 611.2 * Math.exp((17.62 * dew) / (243.12 + dew)) * 1.0045;
      expect(weather.humidityRatio[k]! / ((0.621945 * vapour) / (Number(rows[k]![9]) - vapour))).toBeCloseTo(1, 2);
    }
  });
});
