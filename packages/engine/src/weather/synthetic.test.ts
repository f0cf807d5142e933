import { describe, expect, it } from "vitest";
import { extremeHours } from "./extremes.ts";
import { syntheticYear } from "./synthetic.ts";

describe("a synthetic year", () => {
  const days = {
    dryBulbDay: { dryBulb: 35, humidityRatio: 0.015 },
    wetBulbDay: { dryBulb: 31, humidityRatio: 0.0205 },
    dewPointDay: { dryBulb: 29, humidityRatio: 0.0215 },
    winter: { dryBulb: -10, humidityRatio: 0.0011 },
    pressure: 101_325,
  };
  const year = syntheticYear(days);

  it("reaches its design days and nothing beyond, and says what it is", () => {
    const [hottest, , wettest, , coldest] = extremeHours(year);
    expect(hottest?.dryBulb).toBeCloseTo(35, 9);
    expect(wettest?.humidityRatio).toBeCloseTo(0.0215, 3);
    expect(wettest?.humidityRatio).toBeLessThanOrEqual(0.0215);
    expect(coldest?.dryBulb).toBeCloseTo(-10, 1);
    expect(coldest?.dryBulb).toBeGreaterThanOrEqual(-10);
    expect(year.origin).toBe("synthetic");
    expect(year.notes.join()).toMatch(/synthetic/);
  });
});
