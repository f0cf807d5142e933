import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { run } from "../run.ts";
import { keptStreams } from "../test-streams.test-data.ts";
import { trialJob } from "../trial-job.test-data.ts";
import type { ConditionOutput, RateOutput } from "./rate-output.ts";
import { rateSchema } from "./rate-schema.ts";

async function rate(words: readonly string[], job = trialJob, colour = false) {
  const streams = keptStreams(job, { colour });
  const code = await run(["rate", "-", ...words], streams);
  return { code, written: streams.written(), complained: streams.complained() };
}

async function rateJson(words: readonly string[] = [], job = trialJob): Promise<RateOutput> {
  return JSON.parse((await rate([...words, "--json"], job)).written);
}

function condition(output: RateOutput, key: string): ConditionOutput {
  const found = output.conditions.find((each) => each.key === key);
  if (found === undefined) throw new Error(`no condition ${key}`);
  return found;
}

describe("oncethrough rate", () => {
  it("lists every condition and prints one in full, within 100 columns and without colour", async () => {
    const { code, written, complained } = await rate([]);
    expect(complained).toBe("");
    expect(code).toBe(0);
    expect(written).toMatch(/^T-1 · Trial laboratory\n17 conditions, all solved; /);
    for (const key of [
      "dry-bulb-day-0",
      "winter-1",
      "minimum-flow-winter",
      "fan-stopped-dampers-closed",
      "own-mild-evening",
    ])
      expect(written).toMatch(new RegExp(`^ {2}${key} +[\\d,]+ +100\\.0`, "m"));
    expect(written).toMatch(/in full: \S+ \(.*\); others with --condition KEY/);
    for (const part of ["air behind", "sections", "fan point", "to mind"]) expect(written).toContain(`\n${part}`);
    expect(written).toMatch(/^outdoors +\d+\.\d/m);
    expect(written).not.toContain("\u001b");
    for (const line of written.split("\n")) expect(line.length, line).toBeLessThanOrEqual(100);
  });

  it("prints one condition by its key, in SI, the same figures as in JSON", async () => {
    const { written } = await rate(["--condition", "winter-0.5", "--units", "si"]);
    const { stations } = condition(await rateJson(["--condition", "winter-0.5"]), "winter-0.5");
    expect(written).not.toContain("dry-bulb-day");
    for (const { after, dryBulb, staticPressure } of stations) {
      const figures = new RegExp(`^${after} +(-?[\\d.]+) .* (-?[\\d,]+) +-?[\\d,]+ +\\S+ +[\\d.]+$`, "m").exec(written);
      expect(Number(figures?.[1]), after).toBeCloseTo(dryBulb, 1);
      expect(Math.abs(Number(figures?.[2]?.replace(",", "")) - staticPressure), after).toBeLessThan(0.51);
    }
  });

  it("prints JSON as its schema says, and the schema misses nothing", async () => {
    const matches = new Ajv2020({ strict: false }).compile(rateSchema());
    const output = await rateJson(["--working", "supply fan"]);
    expect(matches(output), JSON.stringify(matches.errors)).toBe(true);
    expect(matches({ ...output, extra: 1 })).toBe(false);
    const [first, ...rest] = output.conditions;
    const damaged = { ...first, sections: first?.sections.map((each) => ({ ...each, figures: { unheardOf: 1 } })) };
    expect(matches({ ...output, conditions: [damaged, ...rest] })).toBe(false);
  });

  it("gives figures that agree with one another", async () => {
    const output = await rateJson();
    for (const { key, solved, stations, supply, fan, sections } of output.conditions) {
      expect(solved, key).toBe(true);
      const last = stations.at(-1);
      // The supply is the last station.
      expect(last?.dryBulb, key).toBeCloseTo(supply.dryBulb, 9);
      expect(last?.airflow, key).toBeCloseTo(supply.actualAirflow, 9);
      // No water is added or taken: an indoor unit without coils, but for a trace that leaks in.
      expect(Math.abs(supply.humidityRatio - (stations[0]?.humidityRatio ?? 0)), key).toBeLessThan(2e-4);
      const fanHeat = sections.find((section) => section.kind === "fan")?.heatToAir ?? 0;
      expect(fanHeat, key).toBeLessThanOrEqual(fan.electricPower + 1e-6);
      expect(Math.abs(fan.externalStaticHeld - fan.externalStaticNeeded), key).toBeLessThan(
        key.startsWith("fan-stopped") ? 1e6 : 1,
      );
    }
    // Loaded filters take more pressure, so the same flow takes more speed and power.
    const [clean, loaded] = ["wet-bulb-day-0", "wet-bulb-day-1"].map((key) => condition(output, key).fan);
    expect(loaded?.speed).toBeGreaterThan(clean?.speed ?? 0);
    expect(loaded?.electricPower).toBeGreaterThan(clean?.electricPower ?? 0);
  });

  it("prints the arithmetic behind a section, every result from its own terms", async () => {
    const { written } = await rate(["--condition", "wet-bulb-day-1", "--working", "supply fan"]);
    expect(written).toMatch(/supply fan: how its figures came about\n\n {2}\S/);
    expect(written).toMatch(/^ {4}= \S.*\[[a-z0-9-]+.*\]$/m);
    const { working } = condition(
      await rateJson(["--condition", "wet-bulb-day-1", "--working", "supply fan"]),
      "wet-bulb-day-1",
    );
    expect(working?.section).toBe("supply fan");
    expect(working?.lines.length).toBeGreaterThan(0);
    for (const { terms, result } of working?.lines ?? [])
      for (const value of [result, ...terms.map((term) => term.value)]) expect(Number.isFinite(value)).toBe(true);
  });

  it("prints the pressure ledger, whose figures add up to the fan's as they are read", async () => {
    const words = ["--condition", "wet-bulb-day-1", "--ledger"];
    const { written } = await rate(words);
    const ledger = written.slice(written.indexOf("\npressure ledger"));
    for (const line of ledger.split("\n")) expect(line.length, line).toBeLessThanOrEqual(110);
    const figure = (name: string) => Number(new RegExp(`^${name} +(-?[\\d.]+)`, "m").exec(ledger)?.[1] ?? Number.NaN);
    const served = [
      "losses from intake to discharge",
      "duct system, static",
      "reserve",
      "velocity pressure at the end",
    ];
    const sum = served.reduce((total, name) => total + figure(name), 0);
    // Five figures, each rounded to a thousandth.
    expect(Math.abs(sum - figure("fan total pressure"))).toBeLessThan(0.0026);
    expect(ledger).toMatch(/\d clean, \d\.\d+ at change-out/);
    expect(ledger).toMatch(/sources: \[1\] \S/);
    const output = await rateJson(words);
    const matches = new Ajv2020({ strict: false }).compile(rateSchema());
    expect(matches(output), JSON.stringify(matches.errors)).toBe(true);
    const { sections, ledger: carried, filterStates } = condition(output, "wet-bulb-day-1");
    const taken = carried?.lines.filter((line) => line.isBeside === undefined) ?? [];
    for (const { name, totalPressureLoss } of sections) {
      const own = taken.filter((line) => line.section === name).reduce((total, line) => total + line.pressure, 0);
      expect(own, name).toBeCloseTo(totalPressureLoss, 6);
    }
    // At one flow, dust in the filters is all that changes; at change-out it is this very condition.
    const [clean, half, full] = filterStates ?? [];
    expect(full?.fanTotal).toBeCloseTo(carried?.fanTotal ?? 0, 4);
    const summed = half?.sections.reduce((total, each) => total + each.loss, 0);
    expect(summed).toBeCloseTo(half?.losses ?? Number.NaN, 6);
    expect(half?.losses).toBeGreaterThan(clean?.losses ?? Number.POSITIVE_INFINITY);
    expect(full?.losses).toBeGreaterThan(half?.losses ?? Number.POSITIVE_INFINITY);
    expect(ledger).toMatch(/^ +filters +in\.wg( +\d\.\d{3}){3}$/m);
  });

  it("fails only when told to when something is not met", async () => {
    const { written } = await rate(["--condition", "winter-0"]);
    expect(written).toMatch(/^not met\nunit +supply air colder than wanted: wanted 32\.0 °F, got 1\d\.\d °F$/m);
    expect((await rate(["--condition", "winter-0"])).code).toBe(0);
    expect((await rate(["--condition", "winter-0", "--strict"])).code).toBe(1);
    const met = await rate(["--condition", "dew-point-day-0", "--strict"]);
    expect(met.written).toContain("everything asked is met");
    expect(met.code).toBe(0);
  });

  it("names the keys and sections that there are", async () => {
    const key = await rate(["--condition", "wet-bulb-day"]);
    expect(key.code).toBe(2);
    expect(key.complained).toMatch(
      /^oncethrough: --condition "wet-bulb-day" .*did you mean "wet-bulb-day-0".*allowed: dry-bulb-day-0, [^\n]*\n$/,
    );
    const section = await rate(["--working", "suply fan"]);
    expect(section.code).toBe(2);
    expect(section.complained).toMatch(/did you mean "supply fan".*allowed: intake hood, filters/);
  });

  it("does not rate a job with errors, and says where they are", async () => {
    const { code, written, complained } = await rate([], trialJob.replace("24 in", "24 inn"));
    expect(code).toBe(1);
    expect(written).toBe("");
    expect(complained).toMatch(/^standard input:\d+:\d+: diameter: "inn" is not a unit.*; allowed: a length in /);
    expect(complained).toMatch(/\nstandard input: not solved; mend the text first\n$/);
  });

  it("uses colour for a person, beside words", async () => {
    const { written } = await rate(["--condition", "winter-0"], trialJob, true);
    expect(written).toContain("\u001b[31mnot met\u001b[39m");
    // biome-ignore lint/suspicious/noControlCharactersInRegex: colour codes begin with one
    const plain = written.replace(/\u001b\[\d+m/g, "");
    expect(plain).toBe((await rate(["--condition", "winter-0"])).written);
  });
});
