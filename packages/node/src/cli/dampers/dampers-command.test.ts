import { readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { run } from "../run.ts";
import { keptStreams } from "../test-streams.test-data.ts";
import { trialJob } from "../trial-job.test-data.ts";
import type { DampersOutput } from "./dampers-output.ts";
import { dampersSchema } from "./dampers-schema.ts";

/** A shipped example with hand-set dampers and return air. */
const marine = readFileSync(new URL("../../../../../examples/marine-biology-wing.yaml", import.meta.url), "utf8");

async function dampers(words: readonly string[], job = marine) {
  const streams = keptStreams(job);
  const code = await run(["dampers", "-", ...words], streams);
  return { code, written: streams.written(), complained: streams.complained() };
}

describe("oncethrough dampers", () => {
  it("prints dampers, what they leak, the angles proposed and the shares, within 100 columns", async () => {
    const { code, written, complained } = await dampers([]);
    expect(complained).toBe("");
    expect(code).toBe(0);
    expect(written).toMatch(/^MA-2 · dampers at wet-bulb-day-0\.5\n\d\d\.\d % outside air/);
    for (const part of [
      "authority",
      "when closed",
      "of outside air",
      "intake in the lee",
      "blades locked by hand do not close",
      "end switch",
      "licensed",
    ])
      expect(written).toContain(part);
    for (const line of written.split("\n")) expect(line.length, line).toBeLessThanOrEqual(100);
  });

  it("prints JSON as its schema says, and figures that agree with the dampers' own", async () => {
    const output: DampersOutput = JSON.parse((await dampers(["--json"])).written);
    const matches = new Ajv2020({ strict: false }).compile(dampersSchema());
    expect(matches(output), JSON.stringify(matches.errors)).toBe(true);
    expect(matches({ ...output, dampers: [{ ...output.dampers[0], closed: {} }] })).toBe(false);
    expect(output.shares?.[0]?.share).toBeCloseTo(output.outsideAirShare, 9);
    // The job asks for 85 %; the proposal holds it to the last digit that is printed.
    expect(output.proposal?.wantedShare).toBe(0.85);
    expect(output.proposal?.share).toBeCloseTo(0.85, 3);
    for (const { closed } of output.dampers) expect(closed.leakageShare).toBeLessThan(0.05);
  });

  it("says so where there is no damper, and what is wrong with a condition", async () => {
    expect((await dampers([], trialJob)).written).toContain("the unit has no damper");
    const unknown = await dampers(["--condition", "monday"]);
    expect(unknown.code).toBe(2);
    expect(unknown.complained).toMatch(/"monday" is not a condition of this job; allowed: dry-bulb-day-0/);
  });
});
