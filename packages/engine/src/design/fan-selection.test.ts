import { describe, expect, it } from "vitest";
import type { FanWheel } from "#component/fan-wheel";
import { prepareFan } from "#section/fan/design";
import { fanFields } from "#section/fan/fields";
import { fan } from "#section/fan/kind";
import { createFanRating } from "#section/fan/rate";
import { rateSection } from "#section/rate-section";
import { sampleAir, sampleSectionCondition } from "#section/sample.test-data";
import { shippedCatalogue, valuesOfText } from "#section/shipped.test-data";
import { type FanTask, selectFans } from "./fan-selection.ts";

const at = sampleSectionCondition();
const task: FanTask = {
  frame: { width: 3, height: 2.5, hand: "right" },
  air: sampleAir(at.condition, 9.8, { dryBulb: 12, humidityRatio: 0.008, staticPressure: -700, totalPressure: -696 }),
  at,
  rise: 1350,
  values: valuesOfText(fanFields, "diameter: 30 in\nmotor power: 25 hp"),
  wheels: shippedCatalogue.names("fan wheel").map((name) => shippedCatalogue.component("fan wheel", name) as FanWheel),
  counts: Array.from({ length: 12 }, (_, index) => index + 1),
  drives: ["belt", "direct"],
  pressureToPeak: 0.9,
};

describe("fan selection", () => {
  const { looked, candidates } = selectFans(task);

  it("looks at all and keeps what holds, least power first", () => {
    expect(looked).toBe(task.wheels.length * 21 * 12 * 2);
    expect(candidates.length).toBeGreaterThan(10);
    candidates.forEach((each, index) => {
      expect(each.pressureToPeak).toBeLessThanOrEqual(0.9);
      expect(each.flowToStable).toBeGreaterThanOrEqual(1);
      expect(each.electricPower).toBeGreaterThanOrEqual(candidates[index - 1]?.electricPower ?? 0);
    });
    expect(new Set(candidates.map((each) => each.wheel.arrangement)).size).toBeGreaterThan(1);
  });

  it("gives candidates that, built, add the pressure wanted without overloading their motors", () => {
    for (const each of candidates) {
      const { wheel, diameter, count, drive, motorPower } = each;
      const design = prepareFan(
        { ...task.values, wheel, diameter, count, drive, motorPower, class: each.class },
        task.frame,
      );
      const out = createFanRating();
      rateSection(fan, design, task.air, sampleSectionCondition({}, { fanSpeed: each.speed }), out);
      expect(Math.abs(out.totalPressureRise - task.rise)).toBeLessThan(1e-5 * task.rise);
      expect(out.electricPower).toBeCloseTo(each.electricPower, 6);
      expect(out.peakMotorLoad).toBeLessThanOrEqual(1 + 1e-9);
      expect(out.tipSpeedShare).toBeLessThanOrEqual(1 + 1e-9);
      const side = wheel.arrangement === "plenum wheel" ? 1 : wheel.housingWidth;
      expect(each.width).toBeGreaterThan(side * diameter);
      expect(each.width).toBeLessThanOrEqual(task.frame.width);
    }
  });

  it("finds nothing where nothing can be built", () => {
    expect(selectFans({ ...task, rise: 20_000 }).candidates).toEqual([]);
    expect(selectFans({ ...task, frame: { width: 0.5, height: 0.5, hand: "left" } }).candidates).toEqual([]);
  });
});
