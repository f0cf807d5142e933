import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Profile, readProfiles } from "#rule/profile";
import { rules } from "#rule/rules";
import { shippedCatalogue } from "#section/shipped.test-data";
import { createUnitRating, rateUnit } from "#unit/rate-unit";
import { shortfallsOf } from "#unit/report";
import { dutyAlone, dutyText } from "./duty.test-data.ts";
import { type Sizing, sizeUnit } from "./size-unit.ts";

const examples = ["marine-biology-wing", "high-country-soils-laboratory", "large-vivarium"] as const;

const profiles = new URL("../../../../profiles/", import.meta.url);
const byName = readProfiles(
  readdirSync(profiles).map((path) => ({ path, text: readFileSync(new URL(path, profiles), "utf8") })),
  rules,
).byName;
const commonPractice = byName.get("common practice") as Profile;

const example = (name: string) => readFileSync(new URL(`../../../../examples/${name}.yaml`, import.meta.url), "utf8");

function sized(text: string): Sizing & { readonly outcome: "unit" } {
  const sizing = sizeUnit(text, shippedCatalogue, commonPractice);
  if (sizing.outcome !== "unit") throw new Error(JSON.stringify(sizing));
  return sizing;
}

/** Everything missed while the fan runs, at every condition. */
function missed({ job }: Sizing & { readonly outcome: "unit" }): readonly string[] {
  return job.conditions.flatMap((condition) => {
    const rating = rateUnit(job.unit, condition, createUnitRating(job.unit, condition));
    if (!rating.solved) return [`${condition.name}: ${rating.reason}`];
    return rating.operation.fansRunning
      ? shortfallsOf(job.unit, rating).map(({ what }) => `${condition.name}: ${what}`)
      : [];
  });
}

describe("sizeUnit", () => {
  it.each(examples)("sizes a unit for the duty of %s that holds all that is asked while its fan runs", (name) => {
    const sizing = sized(dutyAlone(example(name)));
    expect(missed(sizing)).toEqual([]);
    expect(sizing.choices.length).toBeGreaterThan(10);
    for (const { of, chosen, because } of sizing.choices) expect(`${of}${chosen}${because}`).not.toContain("undefined");
  });

  it("leaves the duty's bytes as they were and writes the unit behind them", () => {
    const text = dutyText();
    expect(sized(text).text.startsWith(text.trimEnd())).toBe(true);
  });

  it("gives the same job again", () => {
    expect(sized(dutyText()).text).toBe(sized(dutyText()).text);
  });

  it("keeps what the duty file fixes", () => {
    const text = `${dutyText()}\nunit:\n  casing:\n    width: 120 in # the old curb\n    panel thickness: 4 in\n`;
    const sizing = sized(text);
    expect(sizing.text).toContain("width: 120 in # the old curb");
    expect(sizing.job.unit.frame.width).toBeCloseTo(120 * 0.0254, 9);
    expect(sizing.job.unit.casing.panelThickness).toBeCloseTo(4 * 0.0254, 9);
    expect(missed(sizing)).toEqual([]);
  });

  it("keeps the sections that the duty file names, in their order, with what it fixes of each", () => {
    const names = [
      "intake hood",
      "louver",
      "shut-off damper",
      "filter bank",
      "steam coil with face and bypass",
      "access",
    ];
    const coil = "    - kind: chilled-water coil\n      rows: 10\n      surface: typical plain 5/8 in\n";
    const rest = ["access", "fan", "discharge plenum"].map(
      (kind, index) => `    - kind: ${kind}\n      name: last ${index}\n`,
    );
    const text = `${dutyText()}\nunit:\n  sections:\n${names.map((kind) => `    - kind: ${kind}\n`).join("")}${coil}${rest.join("")}`;
    const sizing = sized(text);
    expect(sizing.job.unit.sections.map(({ kind }) => kind)).toEqual([
      ...names,
      "chilled-water coil",
      "access",
      "fan",
      "discharge plenum",
    ]);
    expect(sizing.text).toContain("rows: 10");
    expect(missed(sizing)).toEqual([]);
  });

  it.each([
    ["leaving air below the chilled water", { "coil leaving": "43 °F" }, "water that cools it arrives", 2],
    [
      "a dew point that the coil's air cannot have",
      { "coil leaving": "60 °F", "maximum dew point": "50 °F" },
      "dew point",
      2,
    ],
  ])("answers %s with the contradiction and duties that work", (_, setPoints, words, ways) => {
    const sizing = sizeUnit(dutyText({ setPoints }), shippedCatalogue, commonPractice);
    if (sizing.outcome !== "contradiction") throw new Error(sizing.outcome);
    expect(sizing.contradictions[0]!.words).toContain(words);
    expect(sizing.contradictions[0]!.nearest).toHaveLength(ways);
  });

  it("names what is assumed, what moves price or risk most first", () => {
    const { questions } = sized(dutyText());
    const at = (path: string) => questions.findIndex((each) => each.path === path);
    expect(at("duty.utilities.steam.condensateReturnPressure")).toBeGreaterThanOrEqual(0);
    expect(at("duty.stackHeight")).toBeGreaterThan(at("duty.utilities.steam.condensateReturnPressure"));
  });

  it("gives a unit that holds its duty, or says what stands in the way, for duties at random", () => {
    const duty = fc.record({
      airflow: fc.integer({ min: 2000, max: 60000 }),
      share: fc.constantFrom(70, 80, 90, 100),
      winter: fc.integer({ min: -25, max: 45 }),
      wetBulb: fc.integer({ min: 62, max: 82 }),
      over: fc.integer({ min: 3, max: 25 }),
      leaving: fc.integer({ min: 44, max: 60 }),
      static: fc.constantFrom("1 in.wg", "2.5 in.wg", "4 in.wg"),
      water: fc.constantFrom("42 °F", "45 °F"),
      altitude: fc.constantFrom("0 ft", "5000 ft"),
    });
    fc.assert(
      fc.property(duty, (given) => {
        const text = dutyText({
          airflow: `${given.airflow} cfm`,
          share: `${given.share} %`,
          winter: `${given.winter} °F`,
          wetBulb: given.wetBulb,
          dryBulb: given.wetBulb + given.over,
          setPoints: { "coil leaving": `${given.leaving} °F` },
          staticPressure: given.static,
          water: given.water,
          altitude: given.altitude,
        });
        const sizing = sizeUnit(text, shippedCatalogue, commonPractice);
        if (sizing.outcome === "unit") expect(missed(sizing)).toEqual([]);
        else if (sizing.outcome === "no unit") expect(sizing.obstacles.length).toBeGreaterThan(0);
        else if (sizing.outcome === "contradiction") expect(sizing.contradictions.length).toBeGreaterThan(0);
        else throw new Error(`a sound duty was not read: ${JSON.stringify(sizing.problems)}`);
      }),
      { numRuns: Number(process.env.ONCETHROUGH_DUTIES ?? 20), seed: 20261125 },
    );
  }, 600_000);
});
