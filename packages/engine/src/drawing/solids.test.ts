import { describe, expect, it } from "vitest";
import { arrangeRunning } from "#arrangement/weigh";
import { exampleJob, exampleNames } from "#arrangement/weigh.test-data";
import { type Solid, solidsOf } from "./solids.ts";

/** The box around a solid: least and greatest of x, y and z. */
function around(solid: Solid): readonly (readonly [number, number])[] {
  if (solid.shape === "box") {
    const { place, size } = solid;
    return [
      [place.x, place.x + size.x],
      [place.y, place.y + size.y],
      [place.z, place.z + size.z],
    ];
  }
  const own = solid.shape === "prism" ? ([solid.from, solid.to] as const) : undefined;
  const axes = ["x", "y", "z"] as const;
  let pair = 0;
  return axes.map((axis) => {
    if (solid.shape === "cylinder") {
      const half = axis === solid.axis ? solid.length / 2 : solid.radius;
      return [solid.centre[axis] - half, solid.centre[axis] + half];
    }
    if (axis === solid.axis) return own!;
    const offset = pair++;
    const values = solid.outline.filter((_, index) => index % 2 === offset);
    return [Math.min(...values), Math.max(...values)];
  });
}

describe.each(exampleNames)("solids of %s", (name) => {
  const { unit, duty, conditions } = exampleJob(name);
  const arrangement = arrangeRunning(unit, duty, conditions);
  const solids = solidsOf(arrangement);

  it("have keys apart and stand within the unit, each with volume", () => {
    expect(new Set(solids.map(({ key }) => key)).size).toBe(solids.length);
    const { place, size } = arrangement.whole;
    for (const solid of solids.filter(({ layer }) => layer !== "service space")) {
      around(solid).forEach(([low, high], index) => {
        const axis = (["x", "y", "z"] as const)[index]!;
        expect(high - low, solid.key).toBeGreaterThan(0);
        expect(low, solid.key).toBeGreaterThanOrEqual(place[axis] - 1e-6);
        expect(high, solid.key).toBeLessThanOrEqual(place[axis] + size[axis] + 1e-6);
      });
    }
  });

  it("leave walls open where doors stand in them", () => {
    const panels = solids.filter(({ kind }) => kind === "panel").map(around);
    for (const door of solids.filter(({ kind }) => kind === "door")) {
      const middle = around(door).map(([low, high]) => (low + high) / 2);
      const covering = panels.filter((box) =>
        box.every(([low, high], axis) => low < middle[axis]! && middle[axis]! < high),
      );
      expect(covering, door.key).toHaveLength(0);
    }
  });
});
