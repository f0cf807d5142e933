import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { weighUnit } from "#arrangement/weigh";
import { exampleJob, exampleNames, handWorkedText, jobOf } from "#arrangement/weigh.test-data";
import { listText } from "#chart/sample-unit.test-data";
import type { DisplayItem, LineItem } from "#section/display";
import { spread } from "./connections.ts";
import { endViews } from "./end.ts";
import { listBox } from "./list-box.ts";
import { planView } from "./plan.ts";
import { shopElevation } from "./shop-elevation.ts";

/** Pairs of words that stand on one another by more than a hair. */
function clashes(items: readonly DisplayItem[], textScale: number): readonly string[] {
  const texts = items.filter((item) => item.shape === "text");
  const boxes = texts.map((item) => listBox([item], textScale));
  const hair = textScale;
  return texts.flatMap((item, index) =>
    texts.slice(index + 1).flatMap((other, later) => {
      const [one, two] = [boxes[index]!, boxes[index + 1 + later]!];
      const across = Math.min(one.right, two.right) - Math.max(one.left, two.left);
      const up = Math.min(one.high, two.high) - Math.max(one.low, two.low);
      return across > hair && up > hair ? [`${item.text} on ${other.text}`] : [];
    }),
  );
}

/** On which side of the line from a to b a point lies. */
function sideOf([ax = 0, ay = 0, bx = 0, by = 0]: readonly number[], x: number, y: number): number {
  return Math.sign((bx - ax) * (y - ay) - (by - ay) * (x - ax));
}

function cross(one: readonly number[], other: readonly number[]): boolean {
  const parts = (line: readonly number[], by: readonly number[]) =>
    sideOf(by, line[0]!, line[1]!) * sideOf(by, line[2]!, line[3]!);
  return parts(one, other) < 0 && parts(other, one) < 0;
}

describe("places in a row", () => {
  it("are moved apart to the gap and no more, in their order, about where they want to be", () => {
    expect(spread([0, 100, 200], 20)).toEqual([0, 100, 200]);
    expect(spread([50, 50, 50], 20)).toEqual([30, 50, 70]);
    // The pair at 0 and 10 stands about 5; the one at 40 is not touched.
    expect(spread([0, 10, 40], 20)).toEqual([-5, 15, 40]);
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 1000, noNaN: true }), { minLength: 1, maxLength: 30 }), (given) => {
        const wanted = given.sort((one, other) => one - other);
        const found = spread(wanted, 12);
        const sum = (values: readonly number[]) => values.reduce((all, each) => all + each, 0);
        expect(sum(found)).toBeCloseTo(sum(wanted), 6);
        found.slice(1).forEach((place, index) => {
          expect(place - found[index]!).toBeGreaterThan(12 - 1e-9);
        });
      }),
    );
  });
});

describe.each(exampleNames)("the views of %s", (name) => {
  const { unit, duty, conditions } = exampleJob(name);
  const weighing = weighUnit(unit, duty, conditions);
  const views = [shopElevation(unit, weighing), planView(unit, weighing), endViews(unit, weighing)];

  it("have keys apart, numbers that are numbers, and hold every line in their box", () => {
    for (const { title, items, box } of views) {
      expect(new Set(items.map(({ key }) => key)).size, title).toBe(items.length);
      for (const item of items) {
        const points = item.shape === "line" ? item.points : [item.x, item.y];
        points.forEach((value, index) => {
          const [low, size] = index % 2 === 0 ? [box.x, box.width] : [box.y, box.height];
          expect(value, `${title}: ${item.key}`).toBeGreaterThanOrEqual(low - 1e-6);
          expect(value, `${title}: ${item.key}`).toBeLessThanOrEqual(low + size + 1e-6);
        });
      }
    }
  });

  it.each(["ip", "si"] as const)("keep words apart, and leaders from crossing, in %s units", (system) => {
    const width = 1100;
    const drawn = [
      shopElevation(unit, weighing, { system, width }),
      planView(unit, weighing, { system, width }),
      endViews(unit, weighing, { system, width }),
    ];
    for (const { title, items, box } of drawn) {
      expect(clashes(items, box.width / width), title).toEqual([]);
      const leaders = items.filter((item): item is LineItem => /^connection .*leader$/.test(item.key));
      leaders.forEach(({ key, points }, index) => {
        const crossed = leaders.slice(index + 1).filter((other) => cross(points, other.points));
        expect(
          crossed.map((other) => other.key),
          key,
        ).toEqual([]);
      });
    }
  });

  it("measure the whole cabinet: length and width of the dimension lines are those of the job", () => {
    const plan = views[1]!;
    const line = (key: string) => (plan.items.find((item) => item.key === key) as LineItem).points;
    const panels = 2 * unit.casing.panelThickness;
    const [from = 0, , to = 0] = line("cabinet length");
    expect(to - from).toBeCloseTo(1000 * (unit.length + panels), 6);
    const [, low = 0, , high = 0] = line("cabinet width");
    expect(high - low).toBeCloseTo(1000 * (unit.frame.width + panels), 6);
  });
});

describe("the views of a small unit", () => {
  const { unit, duty, conditions } = jobOf(handWorkedText);
  const weighing = weighUnit(unit, duty, conditions);

  it("stay as they were drawn", async () => {
    await expect(listText(shopElevation(unit, weighing))).toMatchFileSnapshot("./shop-elevation.list.txt");
    await expect(listText(planView(unit, weighing))).toMatchFileSnapshot("./plan.list.txt");
    await expect(listText(endViews(unit, weighing))).toMatchFileSnapshot("./end.list.txt");
  });
});
