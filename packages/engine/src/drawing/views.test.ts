import { describe, expect, it } from "vitest";
import { weighUnit } from "#arrangement/weigh";
import { exampleJob, exampleNames } from "#arrangement/weigh.test-data";
import type { LineItem } from "#section/display";
import { endViews } from "./end.ts";
import { planView } from "./plan.ts";
import { shopElevation } from "./shop-elevation.ts";

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
