import { describe, expect, it } from "vitest";
import { dewPointFromHumidityRatio } from "#fluid/dew-point";
import type { LineItem } from "#section/display";
import { absolutePressure } from "#section/station";
import { airPath } from "./air-path.ts";
import { airwayAxis, axisPoint, axisPosition } from "./airway-axis.ts";
import { panelPoint } from "./profile-panel.ts";
import { profiles } from "./profiles.ts";
import { listText, sampleRating, sampleUnit } from "./sample-unit.test-data.ts";

const unit = sampleUnit();
const rating = sampleRating();
const axis = airwayAxis(unit, 800, 50);
const ghosts = [
  { words: "filters clean", rating: sampleRating(200) },
  { words: "at change-out", rating: sampleRating(420) },
];
const list = profiles(unit, rating, { axis, system: "si", ghosts });

function yAt(key: string, position: number): number {
  const { points } = list.items.find((item) => item.key === key) as LineItem;
  const x = axisPoint(axis, position);
  const index = points.findIndex((value, at) => at % 2 === 0 && Math.abs(value - x) < 1e-6);
  expect(index, `${key} at ${position} mm`).toBeGreaterThanOrEqual(0);
  return points[index + 1]!;
}

describe("the axis of the airway", () => {
  it("leads from millimetres to points and back, and fills the width", () => {
    expect(axisPosition(axis, axisPoint(axis, 1234))).toBeCloseTo(1234, 9);
    expect(axisPoint(axis, axis.to)).toBeCloseTo(800, 9);
    const low = airwayAxis(unit, 800, 50, 0.05);
    expect(low.scale).toBe(0.05);
    expect(axisPoint(low, low.to)).toBeCloseTo(800, 9);
  });
});

describe("profiles", () => {
  it("pass through the state of the air at every station, on the axis of the elevation", () => {
    const { temperature, moisture, pressure } = list.panels;
    for (const [index, section] of unit.sections.entries()) {
      const { leaving } = rating.sections[index]!;
      const end = 1000 * (section.start + section.layout.length);
      const dewPoint = dewPointFromHumidityRatio(leaving.humidityRatio, absolutePressure(leaving));
      expect(yAt("temperature-dry-bulb", end)).toBeCloseTo(panelPoint(temperature, leaving.dryBulb), 6);
      expect(yAt("temperature-dew-point", end)).toBeCloseTo(panelPoint(temperature, dewPoint), 6);
      expect(yAt("moisture-line", end)).toBeCloseTo(panelPoint(moisture, leaving.humidityRatio), 6);
      expect(yAt("pressure-line", end)).toBeCloseTo(panelPoint(pressure, leaving.staticPressure), 6);
    }
  });

  it("hold every curve inside its panel, ghosts included, with dew point never above dry bulb", () => {
    for (const item of list.items) {
      const panel = item.key.split("-")[0] as keyof typeof list.panels;
      if (item.shape !== "line" || item.key.includes("grid")) continue;
      const { top, bottom } = list.panels[panel];
      for (let index = 1; index < item.points.length; index += 2) {
        expect(item.points[index], item.key).toBeGreaterThanOrEqual(top - 1e-6);
        expect(item.points[index], item.key).toBeLessThanOrEqual(bottom + 1e-6);
      }
    }
    const above = (list.items.find((item) => item.key === "temperature-dry-bulb") as LineItem).points;
    const below = (list.items.find((item) => item.key === "temperature-dew-point") as LineItem).points;
    for (let index = 1; index < above.length; index += 2) {
      expect(above[index]!).toBeLessThanOrEqual(below[index]! + 1e-9);
    }
  });

  it("say what the coil takes out and the fan adds", () => {
    const texts = list.items.flatMap((item) => (item.shape === "text" ? [item.text] : []));
    // 9 kg/s × 8.4 g/kg = 0.0756 kg/s of condensate; the fan adds 1000 Pa.
    expect(texts).toContain("0.07560 kg/s of condensate");
    expect(texts).toContain("fan adds 1,000 Pa");
    expect(texts).toContain("at change-out");
  });

  it("stay as they were drawn", async () => {
    await expect(listText(list)).toMatchFileSnapshot("./profiles.list.txt");
  });
});

describe("an air path", () => {
  it("names the states that differ, and leaves out sections that change nothing", () => {
    expect(airPath(unit, rating).states.map((state) => state.name)).toEqual([
      "outside air",
      "mixed air",
      "after cooling coil",
      "after fan",
    ]);
  });
});
