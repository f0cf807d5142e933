import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { readProfiles } from "#rule/profile";
import { rules } from "#rule/rules";
import type { ChilledWaterCoilDesign } from "#section/chilled-water-coil/design";
import type { DamperPart } from "#section/damper-part";
import type { DischargePlenumDesign } from "#section/discharge-plenum/design";
import type { IntakeHoodDesign } from "#section/intake-hood/design";
import { shippedCatalogue } from "#section/shipped.test-data";
import { sizeUnit } from "./size-unit.ts";

const root = new URL("../../../../", import.meta.url);
const duty = readFileSync(new URL("examples/duties/harbour-aquarium.yaml", root), "utf8");
const profiles = readdirSync(new URL("profiles", root)).map((path) => ({
  path,
  text: readFileSync(new URL(`profiles/${path}`, root), "utf8"),
}));
const profile = readProfiles(profiles, rules).byName.get("common practice")!;
const inch = 0.0254;
const foot = 0.3048;
const fpm = foot / 60;
const cfm = foot ** 3 / 60;

/** The hand-worked sizing of docs/methods/sizing.md, in plain arithmetic; moist air by the ideal-gas relation written out. */
describe("the sizing worked by hand in docs/methods/sizing.md", () => {
  const sizing = sizeUnit(duty, shippedCatalogue, profile);
  if (sizing.outcome !== "unit") throw new Error(JSON.stringify(sizing));
  const { unit } = sizing.job;
  const design = <Design>(kind: string) => unit.sections.find((section) => section.kind === kind)!.design as Design;

  const dryAir = ((12000 * 0.075) / 60) * 0.45359237;
  // 111.9 gr/lb at 91/76 °F; 30 ft of altitude.
  const humidity = 111.9 / 7000;
  const pressure = 101220;
  const volume = (at: number) => (287.042 * (32.778 + 273.15) * (1 + 1.607858 * humidity)) / at;
  const largest = dryAir * volume(pressure - 500);

  it("has 6.804 kg/s of dry air and 12 890 cfm at most before the coil", () => {
    expect(dryAir).toBeCloseTo(6.804, 3);
    // Half a per cent: the humidity ratio is read to four digits.
    expect(largest / cfm / 12890).toBeCloseTo(1, 2);
  });

  const faceOf = (heightInches: number) => {
    const room = (heightInches * inch - 0.21) / 2 - 2 * 0.038;
    return 2 * Math.floor(room / 0.0381) * 0.0381 * (84 * inch - 0.23);
  };

  it("takes 84 × 78 in. with two coils, because 84 × 72 in. would throw water", () => {
    const allowed = (550 * 0.9 * fpm) / 1.19;
    expect(largest / faceOf(72)).toBeGreaterThan(allowed);
    expect(largest / faceOf(78)).toBeLessThan(allowed);
    expect(unit.frame.width / inch).toBeCloseTo(84, 6);
    expect(unit.frame.height / inch).toBeCloseTo(78, 6);
    const { block } = design<ChilledWaterCoilDesign>("chilled-water coil");
    expect(block.stacked).toBe(2);
    expect(block.faceArea).toBeCloseTo(faceOf(78), 3);
  });

  it("gives the damper 1500 fpm and the discharge 1800 fpm, cut to two inches", () => {
    const damper = design<{ readonly part: DamperPart }>("shut-off damper").part;
    const up = (metres: number) => Math.ceil(metres / inch / 2 - 1e-6) * 2;
    expect(damper.width / inch).toBeCloseTo(78, 6);
    expect(damper.height / inch).toBeCloseTo(up(largest / (1500 * fpm) / (78 * inch)), 6);
    const { outletWidth, outletHeight } = design<DischargePlenumDesign>("discharge plenum");
    const area = largest / (1800 * fpm);
    expect(outletHeight / inch).toBeCloseTo(up(Math.sqrt(area / 1.7)), 6);
    expect(outletWidth / inch).toBeCloseTo(up(area / Math.sqrt(area / 1.7)), 6);
  });

  it("lets air rise into the hood at 500 fpm, 8 % more on clean filters", () => {
    const outdoors = dryAir * volume(pressure);
    const deep = (1.08 * outdoors) / (500 * fpm) / (84 * inch) / inch;
    expect(deep).toBeCloseTo(47.5, 0);
    expect(design<IntakeHoodDesign>("intake hood").projection / inch).toBeCloseTo(Math.ceil(deep / 2) * 2, 6);
  });

  it("makes the rail as high as the trap for 2.31 in.wg of suction asks", () => {
    const depth = 2.31 + 1 + (2.31 + 1) / 2 + 1.315;
    const rail = depth + (0.01 + 0.025) / inch;
    expect(unit.casing.railHeight / inch).toBeCloseTo(Math.ceil(rail), 6);
  });
});
