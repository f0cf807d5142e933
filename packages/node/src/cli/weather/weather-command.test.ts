import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { temporaryFolder } from "#files/temporary-folder.test-data";
import { run } from "../run.ts";
import { keptStreams } from "../test-streams.test-data.ts";
import { weatherSchema } from "./weather-schema.ts";
import { yearText } from "./year-text.test-data.ts";

async function weather(words: readonly string[], text = yearText()) {
  const streams = keptStreams(text);
  const code = await run(["weather", "-", ...words], streams);
  return { code, written: streams.written(), complained: streams.complained() };
}

describe("oncethrough weather", () => {
  it("prints extremes and bins within 100 columns, and what was put right", async () => {
    const { code, written, complained } = await weather([]);
    expect(complained).toBe("");
    expect(code).toBe(0);
    for (const part of ["highest wet bulb", "mean", "below freezing", "the hour that begins with its time"]) {
      expect(written).toContain(part);
    }
    for (const line of written.split("\n")) expect(line.length, line).toBeLessThanOrEqual(100);
  });

  it("prints JSON as its schema says, with bins that add up to the year", async () => {
    const output = JSON.parse((await weather(["--json", "--units", "si"])).written);
    const matches = new Ajv2020({ strict: false }).compile(weatherSchema());
    expect(matches(output), JSON.stringify(matches.errors)).toBe(true);
    expect(output.bins.reduce((sum: number, { hours }: { hours: number }) => sum + hours, 0)).toBe(8760);
    expect(matches({ ...output, bins: [{}] })).toBe(false);
  });

  it("writes a picture", async () => {
    const path = join(await temporaryFolder(), "states.svg");
    expect((await weather(["--svg", path])).code).toBe(0);
    expect(await readFile(path, "utf8")).toMatch(/fill-opacity="0\.\d+"/);
  });

  it("refuses what is no year with file, line and reason", async () => {
    const cut = await weather([], yearText().split("\n").slice(0, 4000).join("\n"));
    expect(cut.code).toBe(1);
    expect(cut.complained).toMatch(/^-: the file covers \d+ of 8760 hours; needed: a whole calendar year/);
  });

  it("reads place names in the Latin script of old systems", async () => {
    const path = join(await temporaryFolder(), "old.csv");
    await writeFile(path, Buffer.from(`# S\u00e3o Bento\n${yearText()}`, "latin1"));
    const streams = keptStreams("");
    expect(await run(["weather", path], streams)).toBe(0);
  });
});
