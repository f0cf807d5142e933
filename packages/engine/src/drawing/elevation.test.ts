import { describe, expect, it } from "vitest";
import { arrangeUnit } from "#arrangement/arrange";
import { runningAt, sampleTask } from "#arrangement/arrange.test-data";
import { airwayAxis } from "#chart/airway-axis";
import { listText, sampleUnit } from "#chart/sample-unit.test-data";
import { textWidth } from "#chart/text-size";
import type { LineItem, TextItem } from "#section/display";
import { dimensionText } from "./dimension-chain.ts";
import { elevation } from "./elevation.ts";

const unit = sampleUnit();
const axis = airwayAxis(unit, 800, 50);
const running = runningAt(unit, -800, 1200, 0.02);
const arrangement = arrangeUnit(unit, sampleTask, running);
const list = elevation(unit, arrangement, { axis, system: "si", picked: "fan" });
const lineOf = (key: string) => list.items.find((item) => item.key === key) as LineItem;

describe("the elevation of a unit", () => {
  it("places every section's picture at its start, the hood before the outer skin", () => {
    expect(lineOf("fan line").points).toEqual([1400, 0, 4000, 1000]);
    expect(lineOf("cooling coil line").points).toEqual([1200, 0, 1400, 1000]);
    // A hood of 1 m ends at the outer skin, 50 mm before the clear frame.
    expect(lineOf("intake hood line").points).toEqual([-1050, 0, -50, 1000]);
  });

  it("chains the lengths without gap from the hood to the end of the cabinet", () => {
    const chain = unit.sections.map((section) => lineOf(`length-${section.name}`).points);
    for (const [index, points] of chain.slice(1).entries()) expect(points[0]).toBeCloseTo(chain[index]![2]!, 9);
    expect(chain.at(-1)![2]).toBe(4000);
    const figures = list.items.filter((item): item is TextItem => item.key.endsWith("-figure"));
    expect(figures.map((item) => item.text)).toEqual(["1000", "1200", "200", "2600"]);
  });

  it("opens the wall where air passes, and nowhere else", () => {
    const walls = list.items.filter((item) => /^casing\//.test(item.key)) as LineItem[];
    const covers = (x: number, y: number) =>
      walls.some(({ points }) => {
        const [left = 0, low = 0, right = 0, , , high = 0] = points;
        return left <= x && x <= right && low <= y && y <= high;
      });
    expect(covers(500, 2025)).toBe(false);
    expect(covers(900, 2025)).toBe(true);
    expect(covers(500, -25)).toBe(true);
    expect(covers(-25, 1000)).toBe(false);
    expect(covers(4025, 1000)).toBe(false);
    expect(covers(4025, 1900)).toBe(true);
  });

  it("keeps the names of narrow sections from standing on one another", () => {
    const names = list.items.filter(
      (item): item is TextItem => /^name-.*(?<!leader)$/.test(item.key) && item.shape === "text",
    );
    expect(names).toHaveLength(4);
    for (const one of names) {
      for (const other of names) {
        if (one === other || one.y !== other.y) continue;
        const room = (textWidth(one.text, "small") + textWidth(other.text, "small")) / 2 / axis.scale;
        expect(Math.abs(one.x - other.x), `${one.text} and ${other.text}`).toBeGreaterThan(room);
      }
    }
  });

  it("has a roof outdoors and none indoors, and marks what is picked", () => {
    expect(lineOf("roof-sheet")).toBeDefined();
    const indoors = arrangeUnit(unit, { ...sampleTask, placement: "indoor" }, running);
    expect(elevation(unit, indoors, { axis }).items.some((item) => item.key.startsWith("roof"))).toBe(false);
    expect(list.items.find((item) => item.key === "name-fan")?.ink).toBe("choice");
    expect(list.items.find((item) => item.key === "name-cooling coil")?.ink).toBe("outline");
  });

  it("holds everything in its box, with keys apart", () => {
    const keys = list.items.map((item) => item.key);
    expect(new Set(keys).size).toBe(keys.length);
    const { x, y, width, height } = list.box;
    for (const item of list.items) {
      const points = item.shape === "line" ? item.points : [item.x, item.y];
      for (let index = 0; index < points.length; index += 2) {
        expect(points[index], item.key).toBeGreaterThanOrEqual(x);
        expect(points[index], item.key).toBeLessThanOrEqual(x + width);
        expect(points[index + 1], item.key).toBeGreaterThanOrEqual(y);
        expect(points[index + 1], item.key).toBeLessThanOrEqual(y + height);
      }
    }
  });

  it("stays as it was drawn", async () => {
    await expect(listText(list)).toMatchFileSnapshot("./elevation.list.txt");
  });
});

describe("lengths as the shop reads them", () => {
  it("are whole millimetres, or inches with eighths", () => {
    expect(dimensionText(1.3716, "ip")).toBe("54″");
    expect(dimensionText(0.0889, "ip")).toBe("3½″");
    expect(dimensionText(0.009525, "ip")).toBe("⅜″");
    expect(dimensionText(0, "ip")).toBe("0″");
    expect(dimensionText(1.2345, "si")).toBe("1235");
  });
});
