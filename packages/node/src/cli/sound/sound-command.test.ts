import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { run } from "../run.ts";
import { keptStreams } from "../test-streams.test-data.ts";
import { trialJob } from "../trial-job.test-data.ts";
import type { SoundOutput } from "./sound-output.ts";
import { soundSchema } from "./sound-schema.ts";

async function sound(words: readonly string[], job = trialJob) {
  const streams = keptStreams(job);
  const code = await run(["sound", "-", ...words], streams);
  return { code, written: streams.written(), complained: streams.complained() };
}

async function soundJson(words: readonly string[] = [], job = trialJob): Promise<SoundOutput> {
  return JSON.parse((await sound([...words, "--json"], job)).written);
}

const limited = trialJob.replace(
  "  utilities: {}",
  "  utilities: {}\n  sound limits: { intake: 130 dB, discharge: 60 dB }",
);

describe("oncethrough sound", () => {
  it("prints conditions, ways out and the way through the sections within 100 columns", async () => {
    const { code, written, complained } = await sound([]);
    expect(complained).toBe("");
    expect(code).toBe(0);
    expect(written).toMatch(/^T-1 · sound power/);
    for (const part of [
      "intake",
      "discharge",
      "casing",
      "end reflection",
      "filters takes",
      "inside supply fan",
      "test",
    ])
      expect(written).toContain(part);
    expect(written).not.toContain("return");
    expect(written).not.toContain("fan-stopped");
    for (const line of written.split("\n")) expect(line.length, line).toBeLessThanOrEqual(100);
  });

  it("prints JSON as its schema says, at the condition of the loudest discharge", async () => {
    const output = await soundJson();
    const matches = new Ajv2020({ strict: false }).compile(soundSchema());
    expect(matches(output), JSON.stringify(matches.errors)).toBe(true);
    expect(matches({ ...output, endReflection: [1] })).toBe(false);
    const chosen = output.conditions.find(({ condition }) => condition === output.condition)!;
    for (const { weighted } of output.conditions)
      expect(weighted.discharge!).toBeLessThanOrEqual(chosen.weighted.discharge! + 1e-9);
    // More resistance at the same flow asks for more of the fan: louder.
    const level = (key: string) => output.conditions.find(({ condition }) => condition === key)!.weighted.discharge!;
    expect(level("wet-bulb-day-1")).toBeGreaterThan(level("wet-bulb-day-0"));
  });

  it("holds the duty's limits against the figures and what they may be off by", async () => {
    const { outlets } = await soundJson([], limited);
    const outcomes = Object.fromEntries(outlets.map(({ name, outcome }) => [name, outcome]));
    expect(outcomes).toEqual({ intake: "held", discharge: "exceeded", casing: undefined });
    expect((await sound([], limited)).written).toMatch(/limit at the discharge: .* against 60 dB\(A\): exceeded/);
  });

  it("says what it has when nothing is heard, and refuses a condition that is not there", async () => {
    const still = await sound(["--condition", "fan-stopped-dampers-closed"]);
    const key = /allowed: (.*)/.exec((await sound(["--condition", "nowhere"])).complained)?.[1] ?? "";
    expect((await sound(["--condition", "nowhere"])).code).toBe(2);
    const stopped = key.split(", ").find((each) => each.includes("stopped"))!;
    const told = stopped === "fan-stopped-dampers-closed" ? still : await sound(["--condition", stopped]);
    expect(told.code).toBe(1);
    expect(told.complained).toContain("the fan stands");
  });
});
