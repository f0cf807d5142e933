import { describe, expect, it } from "vitest";
import type { LineItem } from "#section/display";
import { listText } from "./sample-unit.test-data.ts";
import { sampleYearHours, sampleYearReport } from "./sample-year-hours.test-data.ts";
import { coilLoadCarpet, freezeMarginCarpet, leavingAirCarpet } from "./year-carpets.ts";
import { yearPictures } from "./year-pictures.ts";

const year = sampleYearHours();
const report = sampleYearReport(year);
const options = { year, system: "ip", width: 760 } as const;
const pictures = new Map(yearPictures(year, report, "ip", 760).map(({ key, list }) => [key, list]));

/** Area of the rectangles of a patch. */
function areaOf({ points, breaks }: LineItem): number {
  expect(points.length / 8 - 1).toBe(breaks?.length);
  let area = 0;
  for (let at = 0; at < points.length; at += 8)
    area += (points[at + 2]! - points[at]!) * (points[at + 1]! - points[at + 5]!);
  return area;
}

describe("carpets", () => {
  it.each([leavingAirCarpet(options), coilLoadCarpet(options), freezeMarginCarpet(options)])(
    "give every hour the room of an hour, and count it in the key: %#",
    (list) => {
      const { left, right, top, bottom } = list.frame;
      const cell = ((right - left) * (bottom - top)) / 8760;
      const patches = list.items.filter((item): item is LineItem => item.shape === "line" && item.breaks !== undefined);
      expect(patches.length).toBeGreaterThan(1);
      for (const patch of patches) {
        const count = list.items.find(({ key }) => key === `${patch.key}-count`);
        const told = count?.shape === "text" ? Number.parseInt(count.text, 10) : Number.NaN;
        // Edges are rounded to a hundredth of a point: a day is 1.4 pt wide.
        expect(Math.abs(areaOf(patch) / cell / told - 1)).toBeLessThan(0.02);
      }
    },
  );

  it("put an hour where its day and its time are, and mark what is not held", () => {
    const list = leavingAirCarpet(options);
    const missed = list.items.find((item): item is LineItem => item.key === "leaving-air-missed");
    const { left, right, bottom } = list.frame;
    // Nights of the first two weeks: days 0 to 14, hours 1 to 12 of the day, in the lower half.
    expect(missed?.ink).toBe("fail");
    expect(Math.min(...missed!.points.filter((_, at) => at % 2 === 0))).toBe(left);
    expect(missed!.points[2]).toBeCloseTo(left + (14 / 365) * (right - left), 1);
    expect(Math.max(...missed!.points.filter((_, at) => at % 2 === 1))).toBe(bottom);
  });

  it("say that a synthetic year is one", () => {
    const synthetic = {
      ...year,
      plan: { ...year.plan, weather: { ...year.plan.weather, origin: "synthetic" } },
    } as const;
    const made = yearPictures(synthetic, { ...report, isSynthetic: true }, "si", 760);
    for (const { key, list } of made) {
      const texts = list.items.flatMap((item) => (item.shape === "text" ? [item.text] : []));
      expect(
        texts.some((text) => text.endsWith("synthetic year")),
        key,
      ).toBe(true);
    }
  });
});

describe("load duration", () => {
  it("falls from the highest hour to the lowest, and ends where the load ends", () => {
    const list = pictures.get("load-duration")!;
    const curve = list.items.find((item): item is LineItem => item.key === "duration-steamHeat")!;
    const heights = curve.points.filter((_, at) => at % 2 === 1);
    for (const [at, height] of heights.entries()) if (at > 0) expect(height).toBeGreaterThanOrEqual(heights[at - 1]!);
    const used = year.lists.steamHeat.filter((heat) => heat > 0).length;
    const said = list.items.find(({ key }) => key === "duration-steamHeat-name");
    expect(said).toMatchObject({ text: `steam coils, ${used.toLocaleString("en-US")} h` });
  });
});

describe("months", () => {
  it("pile up what they cost", () => {
    const bars = pictures
      .get("months")!
      .items.filter((item): item is LineItem => item.key.startsWith("months-cost-") && item.key.endsWith("-2"));
    const heights = bars.map(({ points }) => points[1]! - points[5]!);
    // March: 800 for steam and 150 for chilled water.
    expect(heights[0]! / heights[1]!).toBeCloseTo(800 / 150, 6);
    expect(bars[0]!.points[5]).toBeCloseTo(bars[1]!.points[1]!, 9);
  });
});

describe("the pictures of a year", () => {
  it.each([...pictures.keys()])("look as they did: %s", async (key) => {
    await expect(listText(pictures.get(key)!)).toMatchFileSnapshot(`year-${key}.list.txt`);
  });
});
