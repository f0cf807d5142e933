import { describe, expect, it } from "vitest";
import { group } from "#form/field";
import { readForm } from "#form/read";
import { valuesOfText } from "#section/shipped.test-data";
import { checkSchedule, isOccupied, resetValue, scheduleFields } from "./schedule.ts";
import { presentWorthFactor, tariffFields } from "./tariffs.ts";

const context = { component: () => undefined, componentNames: () => [] };
const problemsOf = (text: string) =>
  readForm(text, { schedule: group(scheduleFields, { meaning: "", check: checkSchedule }) }, context).problems;

describe("the schedule of a duty", () => {
  it("has a laboratory's defaults for everything", () => {
    const schedule = valuesOfText(scheduleFields, "{}");
    expect(schedule.occupiedFrom).toBe(7 * 3600);
    expect(schedule.unoccupiedFan).toBe("runs");
    const occupied = [0, 1, 2, 3, 4, 5, 6].map(
      (weekday) =>
        Array.from({ length: 24 }, (_, index) => isOccupied(schedule, weekday, index + 1)).filter(Boolean).length,
    );
    expect(occupied).toEqual([0, 12, 12, 12, 12, 12, 0]);
    // Hours are named by their end: 7 to 8 o'clock is hour 8.
    expect(isOccupied(schedule, 1, 7)).toBe(false);
    expect(isOccupied(schedule, 1, 8)).toBe(true);
    expect(isOccupied(schedule, 1, 19)).toBe(true);
    expect(isOccupied(schedule, 1, 20)).toBe(false);
  });

  it("resets between two points and holds beyond", () => {
    const points = { coldOutdoor: 0, whenCold: 15, warmOutdoor: 20, whenWarm: 11 };
    expect([-10, 0, 5, 20, 40].map((outdoor) => resetValue(points, outdoor))).toEqual([15, 15, 14, 11, 11]);
  });

  it("refuses hours that end before they begin, and a reset the wrong way round", () => {
    expect(problemsOf("schedule: { occupied from: 20 h, occupied to: 6 h }")[0]?.problem).toMatch(/end before/);
    const reversed = "{ cold outdoor: 60 °F, when cold: 50 °F, warm outdoor: 40 °F, when warm: 60 °F }";
    expect(problemsOf(`schedule:\n  supply reset: ${reversed}`)[0]?.problem).toMatch(/not above the cold end/);
  });
});

describe("tariffs", () => {
  it("take prices as people write them", () => {
    const tariffs = valuesOfText(tariffFields, "electricity: $0.10/kWh\nsteam: 12 $/1000 lb\nwater: $8/1000 gal");
    expect((tariffs.electricity * 3.6e6) / 100).toBeCloseTo(0.1, 12);
    expect((tariffs.steam * 453.59237) / 100).toBeCloseTo(12, 12);
    expect((tariffs.water * 3.785411784) / 100).toBeCloseTo(8, 12);
  });

  it.each([
    // Factors of uniform series, as every table of engineering economy has them; growing ones computed from the sum.
    [0.03, 0, 10, 8.5302],
    [0.05, 0, 15, 10.38],
    [0.07, 0, 25, 11.654],
    [0.05, 0.02, 10, 8.5559],
    [0.05, 0.02, 20, 14.959],
    [0.04, 0.04, 12, 12],
  ])("count later money at %f with growth %f over %i years", (rate, growth, years, factor) => {
    expect(presentWorthFactor(rate, growth, years) / factor).toBeCloseTo(1, 4);
  });
});
