import { describe, expect, it } from "vitest";
import { planYear } from "./plan.ts";
import { representativeHours, solveRepresentative, weightedSum } from "./representative.ts";
import { sampleInput, someHours } from "./sample-year.test-data.ts";
import { type Draw, drawOf, planWithDraw, tolerances } from "./tolerance.ts";
import { mergeTrials, solveTrial, spreadOf } from "./uncertainty.ts";
import { startYear, stepYear } from "./year-hours.ts";

const input = sampleInput(someHours(360));
const plan = planYear(input);
const hours = representativeHours(plan, 40);
const sum = (list: ArrayLike<number>) => Array.from(list).reduce((total, value) => total + value, 0);

describe("hours that stand for a year", () => {
  it("stand for every hour once, hold the coldest and the warmest, and are the same each time", () => {
    expect(hours).toHaveLength(40);
    expect(sum(hours.map(({ weight }) => weight))).toBeCloseTo(360, 5);
    const air = Array.from(plan.weather.dryBulb);
    const chosen = hours.map(({ hour }) => air[hour]);
    expect(chosen).toContain(Math.min(...air));
    expect(chosen).toContain(Math.max(...air));
    expect(representativeHours(planYear(input), 40)).toEqual(hours);
  });

  it("tell the mean of the outdoor air within 0.2 K, and what the year uses within a few per cent", () => {
    const mean = sum(hours.map(({ hour, weight }) => weight * plan.weather.dryBulb[hour]!)) / 360;
    // Cells are cut until none scatters by more than a few kelvin, and each is told by its middle.
    expect(Math.abs(mean - sum(plan.weather.dryBulb) / 360)).toBeLessThan(0.2);
    const whole = stepYear(startYear(input), Number.POSITIVE_INFINITY)!;
    const solved = solveRepresentative(plan, hours);
    for (const figure of ["steamHeat", "chilledWaterHeat", "fanPower"] as const) {
      expect(Math.abs(weightedSum(solved, figure) / sum(whole.lists[figure]) - 1), figure).toBeLessThan(0.04);
    }
  });

  it("keep the year's degree-hours, which are what heat and cold go by, and give no hour a weight below zero", () => {
    // Of 40 hours four for each sum: all sums are met, to the rounding of the search.
    const { winterSupply, coilLeaving } = plan.duty.setPoints;
    const cold = (hour: number) => Math.max(0, winterSupply - plan.weather.dryBulb[hour]!);
    const warm = (hour: number) => Math.max(0, plan.weather.dryBulb[hour]! - coilLeaving!);
    const every = Array.from({ length: plan.hours }, (_, hour) => hour);
    for (const degrees of [cold, warm]) {
      const told = sum(hours.map(({ hour, weight }) => weight * degrees(hour)));
      expect(told / sum(every.map(degrees))).toBeCloseTo(1, 6);
    }
    for (const { weight } of hours) expect(weight).toBeGreaterThan(0);
  });

  it("are as many as there are different hours, and no more", () => {
    const flat = {
      ...input.weather,
      dryBulb: input.weather.dryBulb.map(() => 10),
      humidityRatio: input.weather.humidityRatio.map(() => 0.005),
    };
    const few = representativeHours(planYear({ ...input, weather: flat }), 200);
    expect(sum(few.map(({ weight }) => weight))).toBe(360);
  });
});

const draws = (changes: Partial<Draw>): Draw => ({
  coilHeat: 1,
  coilFriction: 1,
  fanPressure: 1,
  fanPower: 1,
  fouling: 1,
  filters: plan.duty.schedule.filterLoadingAtStart,
  chilledWater: 0,
  heating: 0,
  ...changes,
});
const used = (draw: Draw, figure: "fanPower" | "chilledWaterHeat" | "steamHeat") =>
  weightedSum(solveRepresentative(planWithDraw(plan, draw), hours), figure);

describe("a unit within its tolerances", () => {
  it("is the unit itself where nothing is off", () => {
    const own = weightedSum(solveRepresentative(plan, hours), "fanPower");
    expect(used(draws({}), "fanPower") / own).toBeCloseTo(1, 9);
  });

  it("takes more power where coils resist more or the fan takes more, by as much as that asks", () => {
    const usual = used(draws({}), "fanPower");
    // Shaft power is 3 % more at the same flow and pressure; losses of belt and motor that do not grow with it keep
    // electricity below that.
    const more = used(draws({ fanPower: 1.03 }), "fanPower") / usual;
    expect(more).toBeGreaterThan(1.02);
    expect(more).toBeLessThan(1.03);
    expect(used(draws({ coilFriction: 1.2 }), "fanPower")).toBeGreaterThan(1.01 * usual);
    expect(used(draws({ filters: 1 }), "fanPower")).not.toBe(usual);
  });

  it("draws from the middle what the job says, and from the ends what the words say", () => {
    const middle = drawOf(tolerances.map(() => 0.5));
    expect(middle).toMatchObject({
      coilHeat: 1,
      coilFriction: 1,
      fouling: 1,
      filters: 0.5,
      chilledWater: 0,
      heating: 0,
    });
    expect(drawOf(tolerances.map(() => 0.975)).coilHeat).toBeCloseTo(1.098, 3);
    expect(drawOf(tolerances.map(() => 0)).fanPressure).toBe(0.95);
  });
});

describe("trials", () => {
  const few = hours.slice(0, 12);
  const trials = Array.from({ length: 8 }, (_, trial) => solveTrial(plan, few, 3, trial));

  it("say the same in whatever order they come, and are not told where one is missing", () => {
    const merged = mergeTrials(plan, few, 3, trials);
    expect(mergeTrials(plan, few, 3, trials.toReversed())).toEqual(merged);
    expect(merged.trials).toBe(8);
    expect(merged.heldShare).toBeGreaterThan(0);
    expect(merged.heldShare).toBeLessThanOrEqual(1);
    for (const { spread } of merged.totals) expect(spread.low).toBeLessThan(spread.high);
    expect(() => mergeTrials(plan, few, 3, trials.slice(1))).toThrow(/missing/);
  });

  it("are the same for the same seed, and others for another", () => {
    expect(solveTrial(plan, few, 3, 5)).toEqual(trials[5]);
    expect(solveTrial(plan, few, 4, 5).draw).not.toEqual(trials[5]!.draw);
  });

  it("are told by middle and ends", () => {
    expect(spreadOf([5, 1, 4, 2, 3])).toEqual({ low: 1.2, middle: 3, high: 4.8 });
    expect(spreadOf([Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY]).middle).toBe(Number.POSITIVE_INFINITY);
  });
});
