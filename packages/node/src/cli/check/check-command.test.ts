import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { run } from "../run.ts";
import { keptStreams } from "../test-streams.test-data.ts";
import { trialJob } from "../trial-job.test-data.ts";
import type { CheckOutput } from "./check-output.ts";
import { checkSchema } from "./check-schema.ts";

async function check(words: readonly string[], job = trialJob) {
  const streams = keptStreams(job, { columns: 140 });
  const code = await run(["check", "-", ...words], streams);
  return { code, written: streams.written(), complained: streams.complained() };
}

describe("oncethrough check", () => {
  it("prints findings by section with value, limit, margin and what to do", async () => {
    const { code, written, complained } = await check(["--all"]);
    expect(complained).toBe("");
    // The trial unit has no damper that shuts outside air off on a frosty day.
    expect(code).toBe(1);
    expect(written).toContain("rules of common practice");
    expect(written).toMatch(/FAIL +outside air shut off in a winter stop/);
    expect(written).toMatch(/FAIL +intake hood velocity +\d+ fpm +at most 500 fpm/);
    expect(written).not.toMatch(/undefined|NaN/);
  });

  it("prints JSON as its schema says, sorted by margin within each section", async () => {
    const { written } = await check(["--json"]);
    const output = JSON.parse(written) as CheckOutput;
    expect(new Ajv2020({ strict: true }).validate(checkSchema(), output)).toBe(true);
    expect(output.passes).toBe(false);
    expect(output.findings.length).toBeGreaterThan(20);
    for (const name of new Set(output.findings.map(({ section }) => section))) {
      const own = output.findings.filter(({ section, outcome }) => section === name && outcome === "pass");
      const margins = own.map(({ margin }) => margin ?? 0);
      expect(margins).toEqual([...margins].sort((a, b) => a - b));
    }
  });

  it("lets a rule go that the job waives by name, and says so", async () => {
    const waived = `${trialJob}waivers:\n  - { rule: outside air shut off in a winter stop, by: the owner, reason: it stands in a heated hall }\n`;
    const { written } = await check([], waived);
    expect(written).toMatch(/let go +outside air shut off/);
    expect(written).toContain("Let go by the owner: it stands in a heated");
  });

  it("answers a waiver of no rule and an unknown profile with place and what is allowed", async () => {
    const wrong = `${trialJob}waivers:\n  - { rule: outside air shut of in a winter stop, by: x, reason: y }\n`;
    const { code, complained } = await check([], wrong);
    expect(code).toBe(1);
    expect(complained).toContain('did you mean "outside air shut off in a winter stop"');
    const unknown = await check(["--profile", "strict once trough"]);
    expect(unknown.code).toBe(2);
    expect(unknown.complained).toContain('did you mean "strict once-through"');
    const own = await check([], trialJob.replace("  utilities: {}", "  utilities: {}\n  owner profile: nobody"));
    expect(own.complained).toContain("owner profile");
    expect(own.complained).toContain("common practice");
  });
});
