import { mkdtemp, readFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { run } from "../run.ts";
import { keptStreams } from "../test-streams.test-data.ts";
import { trialJob } from "../trial-job.test-data.ts";
import { drawSchema } from "./draw-schema.ts";

async function draw(words: readonly string[], job = trialJob) {
  const streams = keptStreams(job);
  const code = await run(["draw", "-", ...words], streams);
  return { code, written: streams.written(), complained: streams.complained() };
}

describe("oncethrough draw", () => {
  it("writes SVG to standard output, or to a file", async () => {
    const { code, written } = await draw([]);
    expect(code).toBe(0);
    expect(written).toMatch(/^<svg .*width="1100"/);
    const file = join(await mkdtemp(join(tmpdir(), "draw-")), "side.svg");
    const kept = await draw(["--svg", file, "--width", "800"]);
    expect(kept.written).toBe("");
    expect(kept.complained).toBe(`written to ${file}\n`);
    expect(await readFile(file, "utf8")).toMatch(/^<svg .*width="800"/);
  });

  it("prints the display list and the solids as its schema says", async () => {
    const output = JSON.parse((await draw(["--json", "--solids"])).written);
    const matches = new Ajv2020({ strict: false }).compile(drawSchema());
    expect(matches(output), JSON.stringify(matches.errors)).toBe(true);
    expect(matches({ ...output, solids: [{ shape: "sphere" }] })).toBe(false);
    expect(output.solids.length).toBeGreaterThan(20);
  });

  it("says what a view or a width may be, and draws no broken job", async () => {
    expect((await draw(["--view", "above"])).complained).toMatch(/above.*side/);
    const narrow = await draw(["--width", "10"]);
    expect(narrow.code).toBe(2);
    expect(narrow.complained).toMatch(/300 to 20000/);
    const broken = await draw([], trialJob.replace("diameter: 24 in", "diameter: 80 in"));
    expect(broken.code).toBe(1);
    expect(broken.complained).toMatch(/not drawn/);
  });
});
