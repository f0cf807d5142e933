import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { shippedProfile } from "#rule/base-unit.test-data";
import { checkUnit } from "#rule/check";
import { failsUnit } from "#rule/finding";
import { rules } from "#rule/rules";
import { sectionKinds } from "#section/kinds";
import { shippedCatalogue } from "#section/shipped.test-data";
import { createUnitRating, rateUnit } from "#unit/rate-unit";
import { notesOf, shortfallsOf, stationsOf, workingOf } from "#unit/report";
import type { Job } from "./job.ts";
import { readJob } from "./read-job.ts";

const folder = new URL("../../../../examples/", import.meta.url);
const names = readdirSync(folder).filter((name) => name.endsWith(".yaml"));

function jobOf(name: string): Job {
  const reading = readJob(readFileSync(new URL(name, folder), "utf8"), shippedCatalogue);
  expect(reading.problems).toEqual([]);
  return reading.job as Job;
}

describe.each(names)("the example %s", (name) => {
  const job = jobOf(name);

  it("is solved at every condition, and nothing that its duty asks is missed while the fan runs", () => {
    for (const condition of job.conditions) {
      const rating = rateUnit(job.unit, condition, createUnitRating(job.unit, condition));
      expect(rating.reason, condition.key).toBe("");
      expect(rating.solved, condition.key).toBe(true);
      if (condition.flow.mode === "fan stopped") continue;
      expect(shortfallsOf(job.unit, rating), condition.key).toEqual([]);
      expect(rating.supply.dryBulb).toBeGreaterThan(8);
      expect(rating.supply.dryBulb).toBeLessThan(22);
    }
  });

  it("passes the rules of its owner, but for what is let go by name", () => {
    const profile = shippedProfile(job.duty.ownerProfile ?? "");
    const { findings, unsolved } = checkUnit(job.unit, job.duty, job.conditions, rules, profile, job.waivers);
    expect(unsolved).toEqual([]);
    expect(findings.filter(failsUnit).map(({ entry, value }) => `${entry.section}: ${entry.rule.id} ${value}`)).toEqual(
      [],
    );
    for (const { by, reason } of job.waivers) expect(Math.min(by.length, reason.length)).toBeGreaterThan(3);
  });

  it("holds what common practice expects of such a machine on the wet-bulb day", () => {
    const condition = job.conditions.find(({ key }) => key === "wet-bulb-day-0.5");
    if (condition === undefined) throw new Error("no wet-bulb day");
    const rating = rateUnit(job.unit, condition, createUnitRating(job.unit, condition));
    // Common practice, no source: fans of such units add 3 to 9 in.wg, and take 0.5 to 2.5 W for every cfm.
    const wattsPerCubicFoot = rating.fanElectricPower / (rating.supplyStandardAirflow * 2118.88);
    expect(wattsPerCubicFoot).toBeGreaterThan(0.5);
    expect(wattsPerCubicFoot).toBeLessThan(2.5);
    for (const { air } of stationsOf(job.unit, rating)) {
      expect(Math.abs(air.staticPressure)).toBeLessThan(9 * 249.089);
    }
  });

  it("gives notes and the working of every section without a gap", () => {
    const condition = job.conditions[3];
    if (condition === undefined) throw new Error("no fourth condition");
    const rating = rateUnit(job.unit, condition, createUnitRating(job.unit, condition));
    for (const { what, section } of notesOf(job.unit, rating)) expect(what, section).not.toMatch(/undefined|NaN/);
    for (const section of job.unit.sections) {
      const lines = workingOf(job.unit, rating, section.name);
      expect(lines).toBeDefined();
      for (const line of lines ?? []) {
        const figure = (rating.sections[job.unit.sections.indexOf(section)] as unknown as Record<string, number>)[
          line.figure
        ];
        expect(line.result, `${section.name}: ${line.figure}`).toBeCloseTo(figure as number, 9);
        expect(line.source).not.toBe("");
      }
    }
  });
});

describe("the examples together", () => {
  it("are three, and use every kind of section but the special and what stands in its place", () => {
    expect(names).toHaveLength(3);
    const used = new Set(names.flatMap((name) => jobOf(name).unit.sections.map(({ kind }) => kind)));
    const unused = sectionKinds.map(({ name }) => name).filter((name) => !used.has(name));
    expect(unused).toEqual(["steam coil", "attenuator", "special"]);
  });
});
