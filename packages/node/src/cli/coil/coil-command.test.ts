import { readdir, readFile } from "node:fs/promises";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { run } from "../run.ts";
import { keptStreams } from "../test-streams.test-data.ts";
import type { CoilOutput } from "./coil-output.ts";
import { coilSchema } from "./coil-schema.ts";

const folder = new URL("../../../../../examples/coils/", import.meta.url);
const examples = (await readdir(folder)).filter((name) => name.endsWith(".yaml"));
const cooling = await readFile(new URL("cooling.yaml", folder), "utf8");

async function coil(words: readonly string[] = [], text = cooling) {
  const streams = keptStreams(text);
  const code = await run(["coil", "-", ...words], streams);
  return { code, written: streams.written(), complained: streams.complained() };
}

async function coilJson(text = cooling): Promise<CoilOutput> {
  const { written, complained } = await coil(["--json", "--working"], text);
  expect(complained).toBe("");
  return JSON.parse(written);
}

describe("oncethrough coil", () => {
  it("prints totals, the air before and behind, every figure and the arithmetic", async () => {
    const { code, written, complained } = await coil(["--working"]);
    expect(complained).toBe("");
    expect(code).toBe(0);
    expect(written).toMatch(/^chilled-water coil\ntakes [\d,.]+ MBH · condensate /);
    expect(written).toMatch(/^dry bulb +98\.0 °F +\d\d\.\d °F$/m);
    expect(written).toMatch(/^wet bulb +82\.0 °F +\d\d\.\d °F$/m);
    expect(written).toMatch(/^entering water +44\.0 °F$/m);
    expect(written).toContain("how the figures came about");
    for (const line of written.split("\n")) expect(line.length, line).toBeLessThanOrEqual(130);
  });

  it.each(examples)("rates examples/coils/%s, in JSON as its schema says", async (name) => {
    const matches = new Ajv2020({ strict: false }).compile(coilSchema());
    const text = await readFile(new URL(name, folder), "utf8");
    const output = await coilJson(text);
    expect(matches(output), JSON.stringify(matches.errors)).toBe(true);
    expect(Math.abs(output.totalHeat)).toBeGreaterThan(0);
    expect((await coil([], text)).written).not.toContain("not met");
  });

  it("gives what the trade knows of such a coil", async () => {
    // Eight rows, 12 fins per inch, 400 to 450 fpm, 44 °F water rising 12 °F: 98/82 °F air leaves near 53 °F
    // (a fact of the trade, common practice, no published source; ±2 °F covers the range of makes).
    const output = await coilJson();
    expect(output.leaving.dryBulb).toBeGreaterThan((51 - 32) / 1.8);
    expect(output.leaving.dryBulb).toBeLessThan((55 - 32) / 1.8);
  });

  it("closes its own balances", async () => {
    const { dryAirFlow, entering, leaving, totalHeat, condensate, condensateHeat } = await coilJson();
    expect(dryAirFlow * (leaving.enthalpy - entering.enthalpy)).toBeCloseTo(totalHeat - condensateHeat, 3);
    expect(dryAirFlow * (entering.humidityRatio - leaving.humidityRatio)).toBeCloseTo(condensate, 9);
  });

  it("takes a face velocity or the airflow that it means, standard or actual", async () => {
    const standard = await coilJson();
    // 425 fpm through 60 in × 96 in = 40 ft²: 17,000 scfm.
    expect(standard.standardAirflow / 0.000471947443).toBeCloseTo(17_000, 0);
    const byFlow = await coilJson(cooling.replace("face velocity: 425 fpm", "airflow: 17,000 cfm"));
    expect(byFlow.totalHeat).toBeCloseTo(standard.totalHeat, 0);
    const actual = await coilJson(cooling.replace("basis: standard", "basis: actual"));
    expect(actual.actualAirflow / 0.000471947443).toBeCloseTo(17_000, 0);
    expect(actual.dryAirFlow).toBeLessThan(standard.dryAirFlow);
    const high = await coilJson(cooling.replace("basis: standard", "basis: actual\n  altitude: 6000 ft"));
    expect(high.dryAirFlow).toBeLessThan(actual.dryAirFlow);
  });

  it("holds a leaving temperature, or says by how much it does not", async () => {
    const held = await coil([], cooling.replace("basis: standard", "basis: standard\n  leaving: 60 °F"));
    expect(held.written).toMatch(/^dry bulb +98\.0 °F +60\.0 °F$/m);
    expect(held.written).not.toContain("not met");
    const missed = await coil([], cooling.replace("basis: standard", "basis: standard\n  leaving: 46 °F"));
    expect(missed.written).toMatch(/not met: .*wanted 46\.0 °F, got 5\d\.\d °F/);
    expect((await coil()).written).not.toContain("not met");
  });

  it("says at its place what is wrong with a file", async () => {
    const cases: [string, string, RegExp][] = [
      [
        "kind: chilled-water coil",
        "kind: chilled water coil",
        /^standard input:4:\d+: kind: .*did you mean "chilled-water coil"/,
      ],
      [
        "  finned height: 60 in\n",
        "",
        /the size of the coil is not given.*allowed: `finned height` and `finned length`/,
      ],
      ["  face velocity: 425 fpm\n", "", /neither airflow nor face velocity is given/],
      ["rise: 12 F°", "drop: 12 F°", /a cooling coil warms its water.*`rise` instead of `drop`/],
      [", rise: 12 F°", "", /neither rise, drop nor flow is given/],
      ["water: {", "#water: {", /a chilled-water coil needs `water`, which is not given; allowed: a group `water`/],
      ["kind: chilled-water coil", "kind: steam coil", /a steam coil needs `steam`|not a name known here/],
      ["wet bulb: 82 °F", "wet bulb: 99 °F", /the wet bulb is above the dry bulb/],
      ["rows: 8", "rows: 80", /^standard input:6:\d+: rows: /],
      ["98 °F", "98", /^standard input:13:\d+: dry bulb: "98" has no unit/],
    ];
    for (const [was, is, says] of cases) {
      expect(cooling).toContain(was);
      const { code, written, complained } = await coil([], cooling.replace(was, is));
      expect(code, is).toBe(1);
      expect(complained, is).toMatch(says);
      expect(written, is).toBe("");
    }
  });
});
