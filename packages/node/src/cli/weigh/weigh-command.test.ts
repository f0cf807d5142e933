import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { run } from "../run.ts";
import { keptStreams } from "../test-streams.test-data.ts";
import { trialJob } from "../trial-job.test-data.ts";
import type { WeighOutput } from "./weigh-output.ts";
import { weighSchema } from "./weigh-schema.ts";

const wet = trialJob
  .replace("utilities: {}", "utilities: { chilled water: { supply: 44 °F, rise: 12 F° } }")
  .replace("set points: { supply: 95 °F,", "set points: { coil leaving: 60 °F,")
  .replace(
    "    - kind: fan\n",
    "    - kind: chilled-water coil\n      name: cooling coil\n      rows: 4\n    - kind: fan\n",
  );

async function weigh(words: readonly string[], job = wet) {
  const streams = keptStreams(job);
  const code = await run(["weigh", "-", ...words], streams);
  return { code, written: streams.written(), complained: streams.complained() };
}

describe("oncethrough weigh", () => {
  it("prints masses, lifting with its caution, trap, panels and springs within 100 columns", async () => {
    const { code, written, complained } = await weigh([]);
    expect(complained).toBe("");
    expect(code).toBe(0);
    for (const words of ["the whole", "lugs carry", "qualified riggers", "trap of", "panels of", "springs", "leakage"])
      expect(written).toContain(words);
    expect(written).not.toMatch(/undefined|NaN|Infinity/);
    for (const line of written.split("\n")) expect(line.length, line).toBeLessThanOrEqual(100);
  });

  it("prints JSON as its schema says, every part included, whose leaves weigh what the unit weighs", async () => {
    const output: WeighOutput = JSON.parse((await weigh(["--json", "--parts"])).written);
    const matches = new Ajv2020({ strict: false }).compile(weighSchema());
    expect(matches(output), JSON.stringify(matches.errors)).toBe(true);
    expect(matches({ ...output, dry: { mass: "heavy" } })).toBe(false);
    const leaves = (output.parts ?? []).filter((part) => part.kind !== "assembly");
    const sum = leaves.reduce((all, part) => all + part.mass, 0);
    expect(sum / output.dry.mass).toBeCloseTo(1, 9);
    expect(output.cautions.lifting).toMatch(/local codes/);
  });

  it("tells parts by themselves on request, and says when a trap does not fit under the rail", async () => {
    const { written } = await weigh(["--parts", "--units", "si"]);
    expect(written).toMatch(/main drain pan +stainless steel 304/);
    const low = await weigh([], wet.replace("height: 72 in }", "height: 72 in, rail height: 4 in }"));
    expect(low.written).toContain("too low");
    const none = await weigh([], wet.replace("height: 72 in }", "height: 72 in, rail height: 0 in }"));
    expect(none.written).toContain("no rail, no lugs");
  });

  it("weighs no broken job", async () => {
    const broken = await weigh([], wet.replace("diameter: 24 in", "diameter: 80 in"));
    expect(broken.code).toBe(1);
    expect(broken.written).toBe("");
    expect(broken.complained).toMatch(/not weighed/);
  });
});
