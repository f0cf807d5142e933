import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { spliceEdit } from "#form/splice";
import type { Job } from "#job/job";
import { checkUnit } from "#rule/check";
import { failsUnit } from "#rule/finding";
import { type Profile, readProfiles } from "#rule/profile";
import { rules } from "#rule/rules";
import { shippedCatalogue } from "#section/shipped.test-data";
import { createUnitRating, rateUnit } from "#unit/rate-unit";
import { shortfallsOf } from "#unit/report";
import type { Contradiction, Way } from "./contradiction.ts";
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

function contradicted(text: string): readonly Contradiction[] {
  const sizing = sizeUnit(text, shippedCatalogue, commonPractice);
  if (sizing.outcome !== "contradiction") throw new Error(sizing.outcome);
  return sizing.contradictions;
}

/** The duty with a way out taken. */
function changed(text: string, { path, value, also = [] }: Way): string {
  return [{ path, value }, ...also].reduce((duty, change) => {
    const splice = spliceEdit(duty, change.path, change.value);
    if (!splice.ok) throw new Error(change.path);
    return splice.text;
  }, text);
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

/** Rules that the finished job does not keep, judged anew. */
function against(job: Job, profile: Profile): readonly string[] {
  const { findings, unsolved } = checkUnit(job.unit, job.duty, job.conditions, rules, profile, job.waivers);
  const failing = findings.filter(failsUnit).map(({ entry, value }) => `${entry.section}: ${entry.rule.id} ${value}`);
  return [...failing, ...unsolved.map(({ reason }) => reason)];
}

/** Duties of every climate, height and size, for every owner. */
const dutiesAtRandom = fc
  .record({
    airflow: fc.constantFrom(1500, 3000, 6000, 9000, 14000, 20000, 30000, 45000, 70000),
    share: fc.integer({ min: 70, max: 100 }),
    winter: fc.integer({ min: -35, max: 55 }),
    wetBulb: fc.integer({ min: 55, max: 82 }),
    over: fc.integer({ min: 3, max: 30 }),
    leaving: fc.integer({ min: 46, max: 58 }),
    static: fc.constantFrom("0.8 in.wg", "1.5 in.wg", "2.5 in.wg", "4 in.wg"),
    water: fc.constantFrom("40 °F", "42 °F", "45 °F"),
    altitude: fc.constantFrom("0 ft", "1200 ft", "5000 ft", "8000 ft"),
    minimum: fc.constantFrom(1, 0.8, 0.6, 0.5),
    limits: fc.constantFrom(
      "{}",
      "{ length: 36 ft }",
      "{ width: 9 ft, height: 9 ft }",
      "{ length: 45 ft, shipping width: 11 ft, shipping height: 10 ft }",
    ),
    sound: fc.constantFrom("{}", "{ discharge: 90 dB }", "{ intake: 80 dB }"),
    corrosion: fc.constantFrom("C2", "C3", "C5"),
    snow: fc.constantFrom("none", "light", "heavy"),
    placement: fc.constantFrom("indoor", "roof"),
    profile: fc.constantFrom(...byName.keys()),
  })
  .map((given) => ({
    profile: given.profile,
    airflow: `${given.airflow} cfm, minimum: ${Math.round(given.airflow * given.minimum)} cfm`,
    share: `${given.share} %`,
    winter: `${given.winter} °F`,
    wetBulb: given.wetBulb,
    dryBulb: given.wetBulb + given.over,
    setPoints: { "coil leaving": `${given.leaving} °F` },
    staticPressure: given.static,
    water: given.water,
    altitude: `${given.altitude}, corrosion class: ${given.corrosion}, snow: ${given.snow}, placement: ${given.placement}`,
    rest: `  limits: ${given.limits}\n  sound limits: ${given.sound}\n`,
  }));

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
    const wide = dutyText({ rest: "  limits: { shipping width: 12 ft }\n" });
    const text = `${wide}\nunit:\n  casing:\n    width: 120 in # the old curb\n    panel thickness: 4 in\n`;
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
    const text = dutyText({ setPoints });
    const [contradiction] = contradicted(text);
    expect(contradiction!.words).toContain(words);
    expect(contradiction!.nearest).toHaveLength(ways);
    for (const way of contradiction!.nearest) expect(missed(sized(changed(text, way)))).toEqual([]);
  });

  it("answers an airflow that no cabinet on the road takes with a road, and with an airflow, that do", () => {
    const text = dutyText({ airflow: "45000 cfm" });
    const [contradiction] = contradicted(text);
    expect(contradiction!.words).toContain("no cross-section");
    expect(contradiction!.nearest.map(({ path }) => path)).toEqual([
      "duty.limits.shippingWidth",
      "duty.supplyAirflow.design",
    ]);
    for (const way of contradiction!.nearest) expect(missed(sized(changed(text, way)))).toEqual([]);
  });

  it.each([
    ["no chilled water", (text: string) => text.replace(/ {4}chilled water:.*\n/, ""), "no chilled water"],
    ["no heat", (text: string) => text.replace(/ {4}steam:.*\n/, ""), "neither steam nor hot water"],
    [
      "return air of which nothing is said",
      (text: string) => text.replace(/ {2}return air:\n.*\n.*\n/, "").replace("share: 100 %", "share: 80 %"),
      "nothing is said of that air",
    ],
    ["a site too short", (text: string) => `${text}  limits: { length: 14 ft }\n`, "length"],
    ["a site too low", (text: string) => `${text}  limits: { height: 4 ft }\n`, "no cross-section"],
  ])("answers %s with a duty that works", (_, change, words) => {
    const text = change(dutyText());
    const [contradiction] = contradicted(text);
    expect(contradiction!.words).toContain(words);
    expect(contradiction!.nearest.length).toBeGreaterThan(0);
    for (const way of contradiction!.nearest) expect(missed(sized(changed(text, way)))).toEqual([]);
  });

  it("answers also where a fan of the search is so small that it would heat the air beyond any unit's", () => {
    const text = dutyText({
      airflow: "14000 cfm, minimum: 11200 cfm",
      share: "98 %",
      winter: "-4 °F",
      wetBulb: 68,
      dryBulb: 82,
      setPoints: { "coil leaving": "49 °F" },
      water: "42 °F",
      altitude: "0 ft, corrosion class: C5, snow: light, placement: roof",
      rest: "  limits: { length: 36 ft }\n",
    });
    const sizing = sizeUnit(text, shippedCatalogue, byName.get("low pressure drop laboratory")!);
    expect(sizing.outcome).toBe("contradiction");
  });

  it("answers two contradictions at once with a duty that has neither", () => {
    const text = dutyText({ setPoints: { "coil leaving": "43 °F", "winter minimum dew point": "62 °F" } });
    const contradictions = contradicted(text);
    expect(contradictions).toHaveLength(2);
    expect(contradictions[0]!.nearest.length).toBeGreaterThan(0);
    for (const way of contradictions[0]!.nearest) expect(missed(sized(changed(text, way)))).toEqual([]);
  });

  it("names what is assumed, what moves price or risk most first", () => {
    const { questions } = sized(dutyText());
    const at = (path: string) => questions.findIndex((each) => each.path === path);
    expect(at("duty.utilities.steam.condensateReturnPressure")).toBeGreaterThanOrEqual(0);
    expect(at("duty.stackHeight")).toBeGreaterThan(at("duty.utilities.steam.condensateReturnPressure"));
  });

  it.each(examples.flatMap((name) => [...byName.keys()].map((profile) => [name, profile] as const)))(
    "gives the duty of %s a unit that keeps the rules of %s, or words with duties that work",
    (name, profileName) => {
      const sizing = sizeUnit(dutyAlone(example(name)), shippedCatalogue, byName.get(profileName)!);
      if (sizing.outcome === "unit") expect(against(sizing.job, byName.get(profileName)!)).toEqual([]);
      else if (sizing.outcome !== "contradiction") throw new Error(JSON.stringify(sizing.problems));
      else expect(sizing.contradictions[0]!.nearest.length, sizing.contradictions[0]!.words).toBeGreaterThan(0);
    },
    600_000,
  );

  it("gives a unit that holds its duty and its owner's rules, or says what stands in the way, for duties at random", () => {
    fc.assert(
      fc.property(dutiesAtRandom, ({ profile, ...changes }) => {
        const sizing = sizeUnit(dutyText(changes), shippedCatalogue, byName.get(profile)!);
        if (sizing.outcome === "unit") {
          expect(missed(sizing)).toEqual([]);
          expect(against(sizing.job, byName.get(profile)!)).toEqual([]);
        } else if (sizing.outcome === "contradiction") {
          expect(sizing.contradictions.length).toBeGreaterThan(0);
          for (const { words } of sizing.contradictions) expect(words).toMatch(/\w+ \w+/);
          const [{ nearest, why }] = sizing.contradictions as readonly [Contradiction];
          expect(nearest.length > 0 || why !== undefined).toBe(true);
        } else throw new Error(`a sound duty was not read: ${JSON.stringify(sizing.problems)}`);
      }),
      { numRuns: Number(process.env.ONCETHROUGH_DUTIES ?? 8), seed: Number(process.env.ONCETHROUGH_SEED ?? 20261125) },
    );
  }, 3_600_000);
});
