import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { temporaryFolder } from "#files/temporary-folder.test-data";
import { run } from "../run.ts";
import type { Streams } from "../session.ts";
import { keptStreams } from "../test-streams.test-data.ts";
import { trialJob } from "../trial-job.test-data.ts";
import { yearText } from "../weather/year-text.test-data.ts";
import type { YearOutput } from "./year-output.ts";
import { yearSchema } from "./year-schema.ts";

async function year(words: readonly string[], job = trialJob, changes: Partial<Streams> = {}) {
  const streams = keptStreams(job, { untilInterrupted: () => new Promise(() => {}), ...changes });
  const code = await run(["year", ...words, "--workers", "1"], streams);
  return { code, written: streams.written(), complained: streams.complained() };
}

async function weatherFile(text = yearText()) {
  const path = join(await temporaryFolder(), "year.csv");
  await writeFile(path, text);
  return path;
}

describe("oncethrough year", () => {
  it("prints a year within 100 columns", async () => {
    const { code, written, complained } = await year(["-", "--weather", await weatherFile()]);
    expect(complained).toBe("");
    expect(code).toBe(0);
    for (const part of [
      "fan electricity",
      "kWh",
      "present worth",
      "the fan runs 8760 of 8760 hours",
      "smallest margin",
    ]) {
      expect(written).toContain(part);
    }
    for (const line of written.split("\n")) expect(line.length, line).toBeLessThanOrEqual(125);
  });

  it("says synthetic where no file is given, prints JSON as its schema says, and its months add up", async () => {
    const { written, code } = await year(["-", "--json"]);
    expect(code).toBe(0);
    const output: YearOutput = JSON.parse(written);
    const matches = new Ajv2020({ strict: false }).compile(yearSchema());
    expect(matches(output), JSON.stringify(matches.errors)).toBe(true);
    expect(output.jobs[0]?.isSynthetic).toBe(true);
    expect(Math.abs(output.jobs[0]?.imbalance ?? 1)).toBeLessThan(1e-9);
    for (const { total, months } of output.jobs[0]?.totals ?? []) {
      expect(months.reduce((sum, month) => sum + month, 0) / total).toBeCloseTo(1, 12);
    }
    expect(matches({ ...output, jobs: [{}] })).toBe(false);
  });

  it("prints every hour as CSV", async () => {
    const { written } = await year(["-", "--hours"]);
    const lines = written.trim().split("\n");
    expect(lines).toHaveLength(8761);
    expect(lines[1]?.split(",").length).toBe(lines[0]?.split(",").length);
  });

  it("sets jobs side by side in one weather: in words, as CSV and as JSON, with what they differ by", async () => {
    const folder = await temporaryFolder();
    const dearer = join(folder, "b.yaml");
    // Twice the price of electricity, and prices that grow by 3 % at an interest of 3 %: each year counts as much as the first.
    const tariffs = "  tariffs: { electricity: 0.24 $/kWh, discount rate: 3 %, price growth: 3 %, years: 10 }\n";
    await writeFile(dearer, trialJob.replace(/^duty:\n/m, `duty:\n${tariffs}`));
    const { written, complained } = await year(["-", dearer]);
    expect(complained).toBe("");
    expect(written).toMatch(/side by side +standard input +b\n/);
    expect(written).toMatch(/b 10 years,\s+interest 3\.0 %,\s+prices\s+growing\s+3\.0 % a\s+year/);
    const { jobs, comparison }: YearOutput = JSON.parse((await year(["-", dearer, "--json"])).written);
    const electric = jobs.map(({ cost }) => cost.lines.find(({ name }) => name === "electricity")!.cost);
    expect(electric[1]! / electric[0]!).toBeCloseTo(2, 9);
    const worth = comparison.find(({ key }) => key === "presentWorth")!;
    expect(worth.currency).toBe("USD");
    expect(worth.values[1]! / jobs[1]!.cost.cost).toBeCloseTo(10, 9);
    const csv = (await year(["-", dearer, "--csv"])).written.trim().split("\n");
    expect(csv).toHaveLength(comparison.length + 1);
    expect(csv[0]).toContain("b.yaml");
  });

  it("chooses hours that stand for the year, and draws the unit within its tolerances, by words and as JSON", async () => {
    const asked = ["-", "--representative", "24", "--uncertain", "4", "--seed", "5"];
    const { written } = await year(asked);
    expect(written).toMatch(
      /24 hours stand for 8760; what they tell against all hours:\s+fan electricity [−+]\d\.\d %/,
    );
    expect(written).toMatch(/leaving air is held at an hour with probability \d+\.\d\d %/);
    expect(written).toContain("4 trials within tolerances, seed 5");
    const output: YearOutput = JSON.parse((await year([...asked, "--json"])).written);
    const matches = new Ajv2020({ strict: false }).compile(yearSchema());
    expect(matches(output), JSON.stringify(matches.errors)).toBe(true);
    expect(output.jobs[0]?.representative).toBeDefined();
    expect((await year(["-", "--representative", "3"])).complained).toMatch(/fewer than 12 hours tell nothing/);
  });

  it("writes pictures into a folder that it makes", async () => {
    const folder = join(await temporaryFolder(), "pictures");
    const { complained, code } = await year(["-", "--svg", folder]);
    expect(code).toBe(0);
    expect(complained).toContain("leaving-air.svg, coil-load.svg, freeze-margin.svg, load-duration.svg, states.svg");
    expect(await readFile(join(folder, "months.svg"), "utf8")).toMatch(/^<svg.*What a month costs, synthetic year/s);
  });

  it("refuses weather that is no year, and a job with errors, and presents no part as a year", async () => {
    const cut = await year(["-", "--weather", await weatherFile(yearText().split("\n").slice(0, 3000).join("\n"))]);
    expect(cut.code).toBe(1);
    expect(cut.complained).toMatch(/covers 2999 of 8760 hours/);
    expect(cut.written).toBe("");
    const wrong = await year(["-"], trialJob.replace("12,000 cfm", "12,000"));
    expect(wrong.code).toBe(1);
    expect(wrong.complained).toMatch(/no year; mend the text first/);
  });

  it("stops at Ctrl-C without presenting a part, and tells how far it is to a person who looks on", async () => {
    const soon = () => new Promise<void>((resolve) => setTimeout(resolve, 50));
    const { code, written, complained } = await year(["-"], trialJob, { untilInterrupted: soon, watched: true });
    expect(code).toBe(1);
    expect(written).toBe("");
    expect(complained).toMatch(/stopped; part of a year is no year/);
    const whole = await year(["-"], trialJob, { watched: true });
    expect(whole.complained).toMatch(/hour by hour: 50 %/);
    expect(whole.complained.split("\r").at(-1)).toBe("");
  });

  it.each(["0", "1.5", "many", "99"])("refuses --workers %s", async (count) => {
    const streams = keptStreams(trialJob);
    expect(await run(["year", "-", "--workers", count], streams)).toBe(2);
    expect(streams.complained()).toMatch(/--workers ".*" is no such number; allowed: a whole number from 1 to 24/);
  });
});
