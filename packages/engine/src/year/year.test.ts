import psychrolib from "psychrolib";
import { describe, expect, it } from "vitest";
import { filterLife } from "#component/filter-medium";
import { hourFigures } from "./hour-figures.ts";
import { sampleInput, someHours, usualSections } from "./sample-year.test-data.ts";
import { startSegment, stepSegment } from "./segment.ts";
import { segmentCount } from "./segment-count.ts";
import { yearImbalance } from "./totals.ts";
import { countFreezing, countWatches } from "./watch.ts";
import { mergeSegments, startYear, stepYear, type YearHours } from "./year-hours.ts";

psychrolib.SetUnitSystem(psychrolib.SI);

function solved(input: ReturnType<typeof sampleInput>): YearHours {
  const year = stepYear(startYear(input), Number.POSITIVE_INFINITY);
  if (year === undefined) throw new Error("not done");
  return year;
}

const sum = (list: ArrayLike<number>) => Array.from(list).reduce((total, value) => total + value, 0);
const year = solved(sampleInput(someHours(240)));
/** 9,000 scfm of 0.075 lb/ft³. */
const dryAir = 9000 * 0.075 * 0.45359237 * (1 / 60);

describe("a year of a constant-volume unit on outside air", () => {
  it("is solved in every hour, holds what is asked, and its energy balances in sum and in every hour", () => {
    expect(year.unsolved).toEqual([]);
    expect(year.misses).toEqual([]);
    expect(Math.abs(yearImbalance(year))).toBeLessThan(1e-9);
    year.lists.imbalance.forEach((gap, hour) => {
      expect(Math.abs(gap / year.lists.throughput[hour]!)).toBeLessThan(1e-9);
    });
    for (const flow of year.lists.dryAirFlow) expect(flow / dryAir).toBeCloseTo(1, 5);
  });

  it("takes the steam that degree-hours ask for, worked by hand, within 1 %", () => {
    // The coil has to give 58 °F less what the fan adds; 1006 + 1860 W is the specific heat of moist air by kg of dry air.
    const { plan, lists } = year;
    // Where the face dampers' leakage alone warms the air further, the set point is not held, and the hour does not count.
    const wanted = (58 - 32) / 1.8;
    let hand = 0;
    let metered = 0;
    for (let k = 0; k < plan.hours; k++) {
      if (lists.cooling[k] === 1 || Math.abs(lists.supplyDryBulb[k]! - wanted) > 0.01) continue;
      const heat = 1006 + 1860 * plan.humidityRatio[k]!;
      hand += dryAir * heat * Math.max(0, wanted - fanRise(k) - plan.weather.dryBulb[k]!);
      metered += lists.steamHeat[k]!;
    }
    expect(metered).toBeGreaterThan(0.9 * sum(lists.steamHeat));
    expect(metered / hand).toBeGreaterThan(0.99);
    expect(metered / hand).toBeLessThan(1.01);
  });

  it("takes the chilled water that the handbook's enthalpies ask for between the states of the air", () => {
    // The coil leaves 53 °F; how moist it leaves is the year's own figure, and has to be nearly saturated where it is wet
    // (90 to 100 %, common practice of deep coils). Enthalpies without enhancement are 0.3 % off: hence 1 %.
    const { plan, lists } = year;
    const leaving = (53 - 32) / 1.8;
    let hand = 0;
    let wet = 0;
    for (let k = 0; k < plan.hours; k++) {
      const air = plan.weather.dryBulb[k]!;
      if (lists.cooling[k] === 0 || air <= leaving) continue;
      const [ratio, after] = [plan.humidityRatio[k]!, lists.supplyHumidityRatio[k]!];
      const full = psychrolib.GetHumRatioFromRelHum(leaving, 1, plan.pressure[k]!);
      if (after < ratio) {
        wet++;
        expect(after / full).toBeGreaterThan(0.9);
        expect(after / full).toBeLessThan(1.01);
      }
      const fall = psychrolib.GetMoistAirEnthalpy(air, ratio) - psychrolib.GetMoistAirEnthalpy(leaving, after);
      hand += dryAir * (fall - (ratio - after) * 4186 * leaving);
    }
    expect(wet).toBeGreaterThan(10);
    expect(sum(lists.chilledWaterHeat) / hand).toBeGreaterThan(0.99);
    expect(sum(lists.chilledWaterHeat) / hand).toBeLessThan(1.01);
  });

  it("drains what the air loses, and nothing in winter", () => {
    const { plan, lists } = year;
    for (let k = 0; k < plan.hours; k++) {
      const lost = lists.dryAirFlow[k]! * (plan.humidityRatio[k]! - lists.supplyHumidityRatio[k]!);
      expect(lists.coilCondensate[k]).toBeCloseTo(lost, 9);
      if (plan.weather.dryBulb[k]! < 5) expect(lists.coilCondensate[k]).toBe(0);
    }
  });
});

/** K that the fan adds, from its heat: all of the shaft's work stays in the air, whose specific heat is about 1010 J/kg K. */
function fanRise(hour: number): number {
  const { fanPower, dryAirFlow } = year.lists;
  const shaft = 0.87;
  return (shaft * fanPower[hour]!) / (dryAirFlow[hour]! * 1010);
}

describe("solving step by step", () => {
  const input = sampleInput(someHours(48));

  it("gives the same figures to the last digit, however the steps fall", () => {
    const whole = solved(input);
    const run = startYear(input);
    let steps = 0;
    let stepped = stepYear(run, 7);
    while (stepped === undefined) {
      stepped = stepYear(run, 7);
      steps++;
    }
    expect(steps).toBeGreaterThan(3);
    for (const name of hourFigures) expect(stepped.lists[name]).toEqual(whole.lists[name]);
  });

  it("gives the same figures from segments solved in any order, and refuses part of a year", () => {
    const whole = solved(input);
    const { plan } = whole;
    const results = Array.from({ length: segmentCount }, (_, index) => {
      const run = startSegment(plan, segmentCount - 1 - index);
      expect(stepSegment(run, 1000)).toBe(true);
      return run.result;
    });
    const merged = mergeSegments(plan, results);
    for (const name of hourFigures) expect(merged.lists[name]).toEqual(whole.lists[name]);
    expect(merged.freezeMargins).toEqual(whole.freezeMargins);
    expect(() => mergeSegments(plan, results.slice(1))).toThrow(/whole year/);
  });
});

describe("the schedule", () => {
  const duty = {
    "supply airflow": "{ design: 9000 scfm, minimum: 5000 scfm }",
    schedule: "{ occupied days: every day }",
  };

  it("gives the minimum airflow outside the occupied hours", () => {
    const { lists } = solved(sampleInput(someHours(48), duty));
    // Hours 8 to 19 of each day are occupied.
    const occupied = (k: number) => k % 24 >= 7 && k % 24 < 19;
    lists.dryAirFlow.forEach((flow, k) => {
      expect(flow / dryAir).toBeCloseTo(occupied(k) ? 1 : 5 / 9, 5);
    });
  });

  it("stops the fan where the schedule says so", () => {
    const stopping = { ...duty, schedule: "{ occupied days: every day, unoccupied fan: stops }" };
    const { lists } = solved(sampleInput(someHours(24), stopping));
    expect(sum(lists.running)).toBe(12);
    lists.fanPower.forEach((power, k) => {
      expect(power > 0).toBe(lists.running[k] === 1);
    });
  });

  it("moves set points by the outdoor air", () => {
    const reset =
      "{ winter supply reset: { cold outdoor: -40 °F, when cold: 66 °F, warm outdoor: 120 °F, when warm: 66 °F } }";
    const deeper = usualSections.map(([kind, text]) => [kind, text.replace("rows: 1", "rows: 2")] as const);
    const { lists } = solved(sampleInput(someHours(24, -12), { schedule: reset }, deeper));
    for (const supply of lists.supplyDryBulb) expect(supply).toBeCloseTo((66 - 32) / 1.8, 4);
  });
});

describe("filters over the year", () => {
  it("load with the dust that passes, and are changed when they are full", () => {
    const dusty = [
      ["filter bank", "medium: typical MERV 8 pleated 2 in\ndust concentration: 2000 µg/m³"],
      ...usualSections.slice(1),
    ] as const;
    const { plan } = startYear(sampleInput(someHours(480), {}, dusty));
    expect(plan.filterChanges.length).toBeGreaterThan(1);
    const [first, second] = plan.filterChanges as [number, number];
    for (let k = first + 1; k < second; k++) expect(plan.filterLoading[k]).toBeGreaterThan(plan.filterLoading[k - 1]!);
    expect(Math.max(...plan.filterLoading)).toBeLessThanOrEqual(1);
    // The life by the section's own words, at the velocity of summer air of 1.15 kg/m³; winter air is a tenth denser.
    const bank = plan.unit.sections[0]!.design as { medium: never; panelArea: number; dustConcentration: number };
    const life = filterLife(bank.medium, dryAir / 1.2 / bank.panelArea, bank.dustConcentration) / 3600;
    expect((second - first) / life).toBeGreaterThan(0.9);
    expect((second - first) / life).toBeLessThan(1.1);
  });
});

describe("a throttled steam coil", () => {
  // A coil without vacuum breaker and drop leg, return at the atmosphere: what the relation of stall is about.
  const rest = "finned height: 30 in\nfinned length: 60 in\nvacuum breaker: no\ndrop leg: 0 in";
  const steam = (pressure: string, back: string) => ({
    utilities: `{ steam: { pressure at coil: ${pressure}, condensate return pressure: ${back} } }`,
    "set points": "{ coil leaving: 90 °F, winter supply: 54 °F }",
  });
  const exposed = (pressure: string, back = "0 psig", surface = "rows: 1\nfins: 8 per in") => {
    const sections = [["steam coil", `${surface}\n${rest}`], usualSections[3]] as const;
    const input = sampleInput(someHours(120, -12), steam(pressure, back), sections);
    const result = solved(input);
    return { result, freezing: countFreezing(result)[0]! };
  };

  it("is exposed in the frosty hours above its stall temperature, and in no other", () => {
    const { result, freezing } = exposed("15 psig");
    const stalled = result.lists.steamHeat.map((heat, k) => {
      // Effectiveness at constant airflow from the hour's own heat and steam: rise over steam less air (relation of stall).
      return heat > 0 && result.plan.weather.dryBulb[k]! < 0 && result.freezeMargins[0]![k]! < 0 ? 1 : 0;
    });
    expect(freezing.hours).toBe(sum(stalled));
    expect(freezing.hours).toBeGreaterThan(0);
    const frosty = Array.from(result.plan.weather.dryBulb).filter((air) => air < 0);
    expect(freezing.hours).toBeLessThan(frosty.length);
    // Those that are exposed are the milder ones of them.
    const coldestExposed = Math.min(...result.plan.weather.dryBulb.filter((_, k) => stalled[k] === 1));
    const warmestSafe = Math.max(...frosty.filter((air) => air < coldestExposed));
    expect(warmestSafe).toBeLessThan(coldestExposed);
  });

  it("is exposed where the relation of stall says so, from the effectiveness that the same coil shows with its valve open", () => {
    // Open all year: the set point is out of reach. Effectiveness is rise over steam less air; steam at 15 psig is 121.0 °C
    // (saturation at 204.8 kPa; 300 ft of altitude take 1.1 kPa off both pressures), and 99.7 °C drains to the atmosphere.
    const [steamTemperature, drain] = [120.9, 99.7];
    const sections = [["steam coil", `rows: 1\nfins: 8 per in\n${rest}`], usualSections[3]] as const;
    const open = { ...steam("15 psig", "0 psig"), "set points": "{ coil leaving: 90 °F, winter supply: 120 °F }" };
    const full = solved(sampleInput(someHours(120, -12), open, sections));
    const { result } = exposed("15 psig");
    const riseOf = ({ plan, lists }: YearHours, k: number) =>
      lists.steamHeat[k]! / (lists.dryAirFlow[k]! * (1006 + 1860 * plan.humidityRatio[k]!));
    let judged = 0;
    let stalled = 0;
    for (let k = 0; k < result.plan.hours; k++) {
      const air = result.plan.weather.dryBulb[k]!;
      if (air >= 0 || result.lists.steamHeat[k] === 0) continue;
      const effectiveness = riseOf(full, k) / (steamTemperature - air);
      const wanted = air + riseOf(result, k) / effectiveness;
      // Films change a little between open and throttled: within 3 K of the limit either may be right.
      if (Math.abs(wanted - drain) < 3) continue;
      judged++;
      if (wanted < drain) stalled++;
      expect(result.freezeMargins[0]![k]! < 0, `${air} °C, steam of ${wanted} °C wanted`).toBe(wanted < drain);
    }
    expect(stalled).toBeGreaterThan(5);
    expect(judged - stalled).toBeGreaterThan(5);
  });

  it("is exposed for more hours the more surface it has, and the higher the return: TV-15 and TV-16 by their order", () => {
    expect(exposed("15 psig", "0 psig", "rows: 1\nfins: 12 per in").freezing.hours).toBeGreaterThan(
      exposed("15 psig").freezing.hours,
    );
    expect(exposed("15 psig", "6 psig").freezing.hours).toBeGreaterThan(exposed("15 psig").freezing.hours);
  });
});

describe("what is watched", () => {
  it("counts hours beyond a limit while the fan runs, and the worst of them", () => {
    const lists = { ...year.lists, fanSteadiness: new Float64Array(year.plan.hours).fill(2) };
    lists.fanSteadiness.set([1.05, 0.9, 1.2], 10);
    const found = countWatches({ ...year, lists }).find(({ figure }) => figure === "fanSteadiness");
    expect(found).toMatchObject({ hours: 2, worst: 0.9, hour: 11 });
  });

  it("finds the longest run of freeze exposure", () => {
    const margins = new Float64Array(year.plan.hours).fill(5);
    margins.set([-1, -1, 2, -1, -3, -2, -1, 4, -1], 20);
    const found = countFreezing({ ...year, freezeMargins: [margins, margins] })[0];
    expect(found).toMatchObject({ hours: 7, longest: 4, longestFrom: 23, margin: -3, hour: 24 });
  });
});
