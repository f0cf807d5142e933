import { describe, expect, it } from "vitest";
import { type Profile, readProfile } from "#rule/profile";
import { rules } from "#rule/rules";
import type { ChilledWaterCoilDesign } from "#section/chilled-water-coil/design";
import { shippedCatalogue } from "#section/shipped.test-data";
import { dutyText } from "./duty.test-data.ts";
import { relaxedLimitsOf, sizeLimitsOf } from "./size-limits.ts";
import { sizeUnit } from "./size-unit.ts";

const foot = 0.3048;
const fpm = foot / 60;

function profileOf(lines: string): Profile {
  const { profile, problems } = readProfile(`format: oncethrough profile 1\nprofile: trial\n${lines}`, rules);
  if (profile === undefined) throw new Error(JSON.stringify(problems));
  return profile;
}

const nothingOwn = profileOf("");

describe("an owner's profile", () => {
  it("tightens what a unit is sized to", () => {
    const own = profileOf("limits:\n  - { rule: cooling face velocity, limit: 350 fpm, reason: trial }\n");
    expect(sizeLimitsOf(nothingOwn).coolingVelocity / fpm).toBeCloseTo(500, 6);
    expect(sizeLimitsOf(own).coolingVelocity / fpm).toBeCloseTo(350, 6);
    // What an owner sets does not give way where room is short; what sources contradict one another about does.
    expect(relaxedLimitsOf(own).coolingVelocity / fpm).toBeCloseTo(350, 6);
    expect(relaxedLimitsOf(nothingOwn).coolingVelocity / fpm).toBeCloseTo(550, 6);
  });

  it("adds rules that do not count by default", () => {
    const own = profileOf("also:\n  - { rule: motors of an array, reason: trial }\n");
    expect(sizeLimitsOf(nothingOwn).arrayMotorPower).toBe(Number.POSITIVE_INFINITY);
    expect(sizeLimitsOf(own).arrayMotorPower / 745.7).toBeCloseTo(10, 6);
  });

  it("lets rules go, by leaving them out or by name", () => {
    const out = profileOf("without:\n  - { rule: steam coil rows, reason: trial }\n");
    const waived = profileOf("waivers:\n  - { rule: steam coil rows, by: the owner, reason: trial }\n");
    expect(sizeLimitsOf(nothingOwn).steamRows).toBe(2);
    for (const each of [out, waived]) expect(sizeLimitsOf(each).steamRows).toBe(4);
  });

  it("reaches the unit that is found", () => {
    const own = profileOf("limits:\n  - { rule: cooling face velocity, limit: 350 fpm, reason: trial }\n");
    const areaUnder = (profile: Profile) => {
      const text = dutyText({
        airflow: "6000 cfm",
        rest: "  limits: { shipping width: 12 ft, shipping height: 10 ft }\n",
      });
      const sizing = sizeUnit(text, shippedCatalogue, profile);
      if (sizing.outcome !== "unit") throw new Error(JSON.stringify(sizing));
      const coil = sizing.job.unit.sections.find(({ kind }) => kind === "chilled-water coil")!;
      return (coil.design as ChilledWaterCoilDesign).block.faceArea;
    };
    // 6000 cfm is 2.83 m³/s, and somewhat more as the air comes in.
    expect(2.83 / areaUnder(own)).toBeLessThan(350 * fpm);
    expect(areaUnder(nothingOwn)).toBeLessThan(areaUnder(own));
  });
});
