import { describe, expect, it } from "vitest";
import { rateAndCheck } from "../balance.test-data.ts";
import { sampleAir, sampleFrame, sampleSectionCondition } from "../sample.test-data.ts";
import { valuesOfText } from "../shipped.test-data.ts";
import { intakeHoodFields } from "./design.ts";
import { intakeHood } from "./kind.ts";

const design = (text: string) => intakeHood.prepare(valuesOfText(intakeHoodFields, text), sampleFrame);
const snow = { dryBulb: -8, humidityRatio: 0.0015, windSpeed: 5, rain: 5 / 3600 };

describe("intake hood", () => {
  it("has the pressure of a hand calculation", () => {
    const hood = design("projection: 1 m\nclogged share: 0 %\nloss coefficient: 1.2");
    const at = sampleSectionCondition();
    const out = rateAndCheck(intakeHood, hood, sampleAir(at.condition, 5), at);
    // 2.4 m² opening; density and volume by hand from the ideal gas at 34 °C and 17 g/kg (moist air of ASHRAE chapter 1).
    const humidity = out.entering.humidityRatio;
    const volume = (287.042 * 307.15 * (1 + 1.607858 * humidity)) / 101325;
    const velocity = (5 * volume) / 2.4;
    expect(out.openingVelocity).toBeCloseTo(velocity, 4);
    expect(out.turnLoss).toBeCloseTo(1.2 * 0.5 * ((1 + humidity) / volume) * velocity ** 2, 3);
    // Half-inch mesh of 1.6 mm wire: open share 0.764; Reynolds number of the openings above 400, so K = 0.52 (1 − α²)/α².
    expect(out.screenLoss / (out.turnLoss / 1.2)).toBeCloseTo((0.52 * (1 - 0.7638 ** 2)) / 0.7638 ** 2, 2);
  });

  it("keeps rain out at 500 fpm and lets snow in, as practice has it", () => {
    const hood = design("projection: 1 m");
    const rainy = sampleSectionCondition({
      outdoor: { dryBulb: 20, humidityRatio: 0.014, windSpeed: 0, rain: 100 / 3600 },
    });
    const inRain = rateAndCheck(intakeHood, hood, sampleAir(rainy.condition, 7.1), rainy);
    expect(inRain.openingVelocity).toBeGreaterThan(2.4);
    // Drops that fall more slowly than 500 fpm are drizzle: less than a hundredth of a storm's rain.
    expect(inRain.precipitationShare).toBeLessThan(0.01);
    const winter = sampleSectionCondition({ outdoor: snow });
    expect(rateAndCheck(intakeHood, hood, sampleAir(winter.condition, 7.1), winter).precipitationShare).toBe(1);
    // 90 fpm is below the slowest flakes.
    expect(rateAndCheck(intakeHood, hood, sampleAir(winter.condition, 1.4), winter).precipitationShare).toBe(0);
  });

  it("takes all that comes when it is open in front", () => {
    const at = sampleSectionCondition({ outdoor: snow });
    const out = rateAndCheck(intakeHood, design("opening: vertical"), sampleAir(at.condition, 6), at);
    expect(out.precipitation).toBeCloseTo((5 / 3600) * sampleFrame.width * sampleFrame.height, 9);
  });

  it.each([0.03, 0.3, 6, 9])("balances at %f kg/s", (flow) => {
    const at = sampleSectionCondition({ outdoor: snow });
    const narrow = design("width: 1.8 m\nthroat height: 1.5 m");
    const out = rateAndCheck(intakeHood, narrow, sampleAir(at.condition, flow), at);
    expect(out.expansionLoss).toBeGreaterThan(0);
    expect(out.leaving.peakToMeanVelocity).toBeCloseTo((2.4 * 2.2) / (1.8 * 1.5), 12);
  });

  it("refuses a hood wider than the cabinet, naming the field", () => {
    expect(() => design("width: 3 m")).toThrow(expect.objectContaining({ field: "width" }));
    expect(() => design("throat height: 3 m")).toThrow(expect.objectContaining({ field: "throatHeight" }));
  });
});
