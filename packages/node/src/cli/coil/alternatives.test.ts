import { readFile } from "node:fs/promises";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { readCsv } from "../air/read-csv.ts";
import { run } from "../run.ts";
import { keptStreams } from "../test-streams.test-data.ts";
import { alternativesSchema } from "./alternatives-schema.ts";

const folder = new URL("../../../../../examples/coils/", import.meta.url);
const limits =
  "\nlimits: { fewest rows: 6, most rows: 8, fewest fins: 10 per in, most fins: 12 per in, surfaces: [typical plain 5/8 in, typical wavy 5/8 in] }\n";
const cooling = (await readFile(new URL("cooling.yaml", folder), "utf8")) + limits;

async function alternatives(words: readonly string[], text = cooling) {
  const streams = keptStreams(text);
  const code = await run(["coil", "-", "--alternatives", ...words], streams);
  return { code, written: streams.written(), complained: streams.complained() };
}

describe("oncethrough coil --alternatives", () => {
  it("prints a table of at most 100 columns with the present coil marked", async () => {
    const { code, written, complained } = await alternatives(["--most", "5"]);
    expect({ code, complained }).toEqual({ code: 0, complained: "" });
    expect(written.match(/^● +plain 5\/8″ +8 +12/gm)).toHaveLength(1);
    expect(written).toContain("rates are invented");
    for (const line of written.split("\n")) expect(line.length, line).toBeLessThanOrEqual(100);
  });

  it("prints JSON as its schema says, and the same list as CSV", async () => {
    const { written } = await alternatives(["--json", "--most", "5", "--sort", "air"]);
    const matches = new Ajv2020({ strict: false }).compile(alternativesSchema());
    const output = JSON.parse(written);
    expect(matches(output), JSON.stringify(matches.errors)).toBe(true);
    const losses: number[] = output.candidates.map((each: { airPressureDrop: number }) => each.airPressureDrop);
    expect(losses).toHaveLength(5);
    expect(losses).toEqual([...losses].sort((a, b) => a - b));
    const csv = readCsv((await alternatives(["--csv", "--most", "5", "--sort", "air"])).written);
    expect(csv.ok && csv.rows.slice(1).map(({ cells }) => Number(cells[11]))).toEqual(
      losses.map((each) => Number(each.toPrecision(6))),
    );
  });

  it("finds heating coils, too", async () => {
    const heating = await readFile(new URL("heating.yaml", folder), "utf8");
    const { code, written } = await alternatives(["--json"], heating + limits.replace("6,", "1,").replace("8,", "2,"));
    expect(code).toBe(0);
    expect(JSON.parse(written).met).toBeGreaterThan(0);
  });

  it.each(["preheat.yaml", "recovery.yaml"])("finds coils on steam and of a loop, too: %s", async (file) => {
    const some = limits.replace("fewest rows: 6", "fewest rows: 1").replace(/, surfaces.*\]/, "");
    const text = (await readFile(new URL(file, folder), "utf8")) + some.replace("most rows: 8", "most rows: 6");
    const { code, written, complained } = await alternatives(["--json", "--most", "500"], text);
    expect({ code, complained }).toEqual({ code: 0, complained: "" });
    const output = JSON.parse(written);
    const matches = new Ajv2020({ strict: false }).compile(alternativesSchema());
    expect(matches(output), JSON.stringify(matches.errors)).toBe(true);
    expect(output.met).toBeGreaterThan(5);
    expect(output.present.present).toBe(true);
    expect(output.present.priceIndex).toBeCloseTo(100, 9);
    for (const { leavingDryBulb } of output.candidates) {
      expect(leavingDryBulb).toBeGreaterThan(output.wantedLeaving - 0.02);
    }
    const prices: number[] = output.candidates.map((each: { priceIndex: number }) => each.priceIndex);
    expect(prices).toEqual([...prices].sort((a, b) => a - b));
    const table = (await alternatives(["--most", "3"], text)).written;
    expect(table).toMatch(/^●/m);
    for (const line of table.split("\n")) expect(line.length, line).toBeLessThanOrEqual(120);
    const csv = readCsv((await alternatives(["--csv", "--most", "3"], text)).written);
    expect(csv.ok && csv.rows).toHaveLength(4);
  });

  it("shows a steam coil's surplus surface: more of it stalls, or opens its breaker, in colder air", async () => {
    const text = (await readFile(new URL("preheat.yaml", folder), "utf8")) + limits.replace(/fewest rows: 6.*\]/, "");
    const { written } = await alternatives(["--json", "--most", "500"], text);
    const found: Record<string, number>[] = JSON.parse(written).candidates;
    const alike = found.filter(({ surface, rows }) => surface === found[0]!.surface && rows === 1);
    expect(alike.length).toBeGreaterThan(4);
    const byFins = [...alike].sort((a, b) => a.fins! - b.fins!);
    for (let i = 1; i < byFins.length; i++) {
      expect(byFins[i]!.surplus!).toBeGreaterThan(byFins[i - 1]!.surplus!);
      expect(byFins[i]!.breakerAirTemperature!).toBeLessThanOrEqual(byFins[i - 1]!.breakerAirTemperature!);
    }
    expect(byFins.at(-1)!.breakerAirTemperature!).toBeLessThan(byFins[0]!.breakerAirTemperature! - 5);
  });

  it("says what is wrong", async () => {
    expect(await alternatives(["--most", "none"])).toEqual({
      code: 2,
      written: "",
      complained: expect.stringMatching(/--most "none"/),
    });
    const turned = cooling.replace("fewest rows: 6", "fewest rows: 9");
    expect((await alternatives([], turned)).complained).toMatch(/fewest rows: the lower limit is above/);
    const streams = keptStreams(cooling);
    expect(await run(["coil", "-", "--csv"], streams)).toBe(2);
    expect(streams.complained()).toContain("--csv goes with --alternatives");
  });
});
