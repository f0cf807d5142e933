import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { fanChartPoint, fanSystemCurves } from "#chart/fan-system";
import { shippedCatalogue } from "#section/shipped.test-data";
import { createUnitRating, rateUnit } from "#unit/rate-unit";
import { readJob } from "./read-job.ts";

const text = readFileSync(new URL("../../../../examples/marine-biology-wing.yaml", import.meta.url), "utf8");

it("a system curve passes through the rating at its loading, rises with the flow, and more with dirtier filters", () => {
  const { job } = readJob(text, shippedCatalogue);
  if (job === undefined) throw new Error("the example does not read");
  const condition = job.conditions.find(({ key }) => key === "wet-bulb-day-1");
  if (condition === undefined) throw new Error("no wet-bulb day");
  const point = fanChartPoint(job.unit, rateUnit(job.unit, condition, createUnitRating(job.unit, condition)));
  const curves = [...fanSystemCurves(job.unit, condition)];
  expect(curves.map((curve) => curve.words)).toEqual(["filters clean", "half loaded", "at change-out"]);
  const designPoints = curves.map(({ points }) => points.find(({ flow }) => Math.abs(flow / point!.flow - 1) < 0.02)!);
  expect(designPoints[2]!.staticPressure).toBeCloseTo(point!.staticPressure, 4);
  expect(designPoints[1]!.staticPressure).toBeLessThan(designPoints[2]!.staticPressure);
  expect(designPoints[0]!.staticPressure).toBeLessThan(designPoints[1]!.staticPressure);
  for (const { points } of curves) {
    for (const [index, each] of points.slice(1).entries()) {
      expect(each.staticPressure).toBeGreaterThan(points[index]!.staticPressure);
    }
  }
});
