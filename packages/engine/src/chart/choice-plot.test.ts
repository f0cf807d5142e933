import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type ChoicePoint, choicePlot } from "./choice-plot.ts";
import { listText } from "./sample-unit.test-data.ts";

/** Pa and W; invented. */
const points: readonly ChoicePoint[] = [
  { key: "a", name: "six rows", x: 120, y: 400_000 },
  { key: "b", name: "eight rows", x: 160, y: 440_000 },
  { key: "c", name: "eight rows, close fins", x: 240, y: 455_000 },
  { key: "d", name: "eight rows, copper", x: 165, y: 430_000 },
  { key: "e", name: "nearly as d", x: 165.1, y: 430_010 },
];
const present = { key: "p", name: "as it is", x: 200, y: 410_000 };
const options = {
  title: "Alternatives",
  points,
  present,
  x: { name: "air pressure drop", quantity: "pressureDifference", better: "less" },
  y: { name: "capacity", quantity: "power", better: "more" },
  system: "si",
  width: 480,
  height: 360,
} as const;

describe("a plot of alternatives", () => {
  const plot = choicePlot(options);

  it("joins what nothing beats in both figures, and draws points that would cover one another once", () => {
    expect(plot.placed.filter((each) => each.isBest).map((each) => each.key)).toEqual(["a", "b", "c"]);
    expect(plot.placed.map((each) => each.key)).toEqual(["a", "b", "d", "c"]);
    expect(plot.placed[0]?.words).toBe("six rows: 120 Pa, 400.0 kW");
  });

  it("puts points where their figures are: a middle value lies in the middle, in either system", () => {
    for (const system of ["ip", "si"] as const) {
      const { place } = choicePlot({ ...options, system });
      const [one, other] = [place({ ...present, x: 100, y: 4e5 }), place({ ...present, x: 300, y: 5e5 })];
      const middle = place({ ...present, x: 200, y: 4.5e5 });
      expect(middle.x).toBeCloseTo((one.x + other.x) / 2, 9);
      expect(middle.y).toBeCloseTo((one.y + other.y) / 2, 9);
      expect(other.x).toBeGreaterThan(one.x);
      expect(other.y).toBeLessThan(one.y);
    }
  });

  it("turns the best round where less is better of both", () => {
    const { placed } = choicePlot({ ...options, y: { ...options.y, better: "less" } });
    expect(placed.filter((each) => each.isBest).map((each) => each.key)).toEqual(["a"]);
  });

  it("keeps every point on the page, and finds as best exactly what no other beats", () => {
    const figure = fc.double({ min: 1, max: 1000, noNaN: true });
    fc.assert(
      fc.property(fc.array(fc.tuple(figure, figure), { minLength: 1, maxLength: 60 }), (pairs) => {
        const cloud = pairs.map(([x, y], index) => ({ key: String(index), name: "", x, y: 1000 * y }));
        const { placed, box } = choicePlot({ ...options, points: cloud, present: undefined });
        for (const each of placed) {
          expect(each.x).toBeGreaterThanOrEqual(0);
          expect(each.x).toBeLessThanOrEqual(box.width);
          expect(each.y).toBeGreaterThanOrEqual(0);
          expect(each.y).toBeLessThanOrEqual(box.height);
          const own = cloud[Number(each.key)]!;
          const isBeaten = cloud.some((other) => other.x < own.x && other.y > own.y);
          if (each.isBest) expect(isBeaten).toBe(false);
        }
        const leastDrop = Math.min(...cloud.map((each) => each.x));
        expect(placed.some((each) => each.isBest && cloud[Number(each.key)]!.x === leastDrop)).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  it("has nothing to show without points, and says so", () => {
    expect(() => choicePlot({ ...options, points: [], present: undefined })).toThrow(/nothing to plot/);
    expect(choicePlot({ ...options, points: [] }).items.some((item) => item.key === "present")).toBe(true);
  });

  it("stays as it was drawn", async () => {
    await expect(listText(plot)).toMatchFileSnapshot("./choice-plot.list.txt");
  });
});
