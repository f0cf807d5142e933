import { describe, expect, it } from "vitest";
import { allowedByComponent, fanAllowanceVerdicts, fanDraw } from "#design/fan-power-allowance";
import { allowedFanPower, creditPower, fanPowerVerdict } from "#rule/energy/fan-power-limit";
import { type AllowanceRow, type FanPowerTable, fanPowerTables } from "#standard/fan-power-allowance";
import { createUnitRating, rateUnit } from "#unit/rate-unit";
import type { Unit } from "#unit/unit";
import { conditionOf, jobOf } from "./example-job.test-data.ts";

const hp = 745.699_871_582_27;
const cfm = 0.3048 ** 3 / 60;
const inchOfWater = 249.08891;

// Energy standard 90.1 as state energy codes print it: 20,000 cfm with variable flow may take 26.0 hp at the shafts, and
// for filters of MERV 13 and ducted laboratory exhaust (0.9 + 2.15) × 20,000 / 4131 = 14.8 hp more.
describe("fan power limit", () => {
  it("is the standard's for 20,000 cfm with its credits", () => {
    const flow = 20_000 * cfm;
    expect(allowedFanPower(flow, true).shaft / hp).toBeCloseTo(26, 9);
    expect(allowedFanPower(flow, false).shaft / hp).toBeCloseTo(18.8, 9);
    expect(allowedFanPower(flow, true).nameplate / hp).toBeCloseTo(30, 9);
    const credit = creditPower(0.9 * inchOfWater, flow) + creditPower(2.15 * inchOfWater, flow);
    expect(credit / hp).toBeCloseTo(14.8, 1);
  });

  it("takes the credits of the parts that a unit has", () => {
    const job = jobOf("large-vivarium");
    const condition = conditionOf(job, "wet-bulb-day-0.5");
    const rating = rateUnit(job.unit, condition, createUnitRating(job.unit, condition));
    const verdict = fanPowerVerdict(job.unit, rating, true);
    expect(verdict.credits.map((each) => each.name)).toEqual([
      "ducted exhaust of a laboratory or vivarium",
      "run-around loop, each air stream",
      "filters of MERV 13 to 15",
    ]);
    const cubicFeet = rating.supplyStandardAirflow / cfm;
    expect(verdict.shaftLimit / hp).toBeCloseTo(0.0013 * cubicFeet + (3.65 * cubicFeet) / 4131, 6);
  });

  it("deducts for a unit without cooling, as the editions of 2019 and 2022 do", () => {
    // PNNL building energy standards data, pressure drop adjustments: no central cooling device −0.6, sound attenuation
    // section 0.15 in. of water.
    const job = jobOf("high-country-soils-laboratory");
    const condition = conditionOf(job, "winter-0.5");
    const rating = rateUnit(job.unit, condition, createUnitRating(job.unit, condition));
    const bare = { ...job.unit, sections: job.unit.sections.filter(({ behaviour }) => behaviour.role !== "cooling") };
    const places = job.unit.sections.flatMap(({ behaviour }, index) => (behaviour.role === "cooling" ? [] : [index]));
    const less = { ...rating, sections: places.map((index) => rating.sections[index]!) };
    const flow = rating.supplyStandardAirflow / cfm;
    const limit = (unit: Unit, at: typeof rating) => fanPowerVerdict(unit, at, true).shaftLimit / hp;
    expect(limit(job.unit, rating) - limit(bare, less)).toBeCloseTo((0.6 * flow) / 4131, 9);
  });
});

describe("fan power by component", () => {
  const [standard, code] = fanPowerTables as [FanPowerTable, FanPowerTable];
  const watts = (table: FanPowerTable, rows: readonly AllowanceRow[], airflow: number, variable: boolean) =>
    rows.reduce((sum, row) => sum + allowedByComponent(table.rows[row]!, airflow * cfm, variable), 0);

  it("adds the rows that the open data set and a state energy code print, at the step of the airflow", () => {
    // WAC 51-11C-4038, table C403.8.1.1(1): base 0.453, filter of MERV 13 before the coils 0.114 and behind 0.188, wet
    // cooling coil 0.114 W/cfm for a variable-volume system between 5,000 and 10,000 cfm.
    const parts = ["base", "filterBefore", "filterBehind", "cooling"] as const;
    expect(watts(code, parts, 8000, true)).toBeCloseTo(8000 * (0.453 + 0.114 + 0.188 + 0.114), 6);
    expect(watts(code, ["base"], 5000, false)).toBeCloseTo(5000 * 0.232, 6);
    expect(watts(code, ["base"], 20_000, false)).toBeCloseTo(20_000 * 0.236, 6);
    // PNNL building energy standards data, 90.1-2025 table 6.5.3.1-1 above 10,000 cfm and 6.5.3.1-2 up to 5,000 cfm.
    expect(watts(standard, parts, 18_000, true)).toBeCloseTo(18_000 * (0.48 + 0.165 + 0.165 + 0.11), 6);
    expect(watts(standard, ["allOutdoor", "base"], 4000, false)).toBeCloseTo(4000 * (0.073 + 0.243), 6);
  });

  const job = jobOf("large-vivarium");
  const condition = conditionOf(job, "wet-bulb-day-0.5");
  const draw = fanDraw(job.unit, condition)!;
  const verdictsOf = (drawn: { readonly drawnClean: number; readonly drawnDirty: number }) =>
    fanAllowanceVerdicts(job.unit, { ...draw, ...drawn }, true).map(({ outcome, missing }) => ({ outcome, missing }));

  it("takes the rows of the parts that a unit has, a prefilter for itself", () => {
    const [first, second] = fanAllowanceVerdicts(job.unit, draw, true).map(({ taken }) =>
      taken.map(({ name }) => name),
    );
    expect(first!.filter((name) => name.includes("cooling coil"))).toHaveLength(1);
    expect(first).toContain("run-around coils");
    expect(first).toContain("filter not above MERV 12");
    expect(second).toContain("final filter of MERV 13 to 16 behind the coils");
    expect(second).not.toContain("run-around coils");
    expect(draw.drawnDirty).toBeGreaterThan(draw.drawnClean);
  });

  it("holds what is under it, exceeds where nothing more could be allowed, and names what is missing between", () => {
    const all = fanAllowanceVerdicts(job.unit, draw, true);
    expect(verdictsOf({ drawnClean: 0, drawnDirty: 0 }).map(({ outcome }) => outcome)).toEqual(["held", "held"]);
    const [over, unread] = verdictsOf({ drawnClean: 1e6, drawnDirty: 1e6 });
    expect(over!.outcome).toBe("exceeded");
    expect(unread).toEqual({ outcome: "cannot tell", missing: `its rows of ${code.notRead}` });
    const between = verdictsOf({ drawnClean: all[0]!.allowed - 1, drawnDirty: all[0]!.allowed + 1 })[0]!;
    expect(between.outcome).toBe("cannot tell");
    expect(between.missing).toContain("the filter loading at which it counts");
  });
});
