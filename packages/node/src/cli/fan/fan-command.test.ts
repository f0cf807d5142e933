import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it, onTestFinished } from "vitest";
import { run } from "../run.ts";
import { keptStreams } from "../test-streams.test-data.ts";
import { trialJob } from "../trial-job.test-data.ts";
import type { FanOutput } from "./fan-output.ts";
import { fanSchema } from "./fan-schema.ts";

async function fan(words: readonly string[], job = trialJob) {
  const streams = keptStreams(job);
  const code = await run(["fan", "-", ...words], streams);
  return { code, written: streams.written(), complained: streams.complained() };
}

async function fanJson(words: readonly string[] = []): Promise<FanOutput> {
  return JSON.parse((await fan([...words, "--json"])).written);
}

describe("oncethrough fan", () => {
  it("prints the fan, its points, sound and connection within 100 columns", async () => {
    const { code, written, complained } = await fan([]);
    expect(complained).toBe("");
    expect(code).toBe(0);
    expect(written).toMatch(/^T-1 · supply fan\n1 × 24/);
    for (const part of [
      "wet-bulb-day-0.5",
      "at wet-bulb-day-1",
      "sound power",
      "circuit ampacity at least",
      "licensed",
      "springs resonate at 133 rpm",
      "it is the only one",
      "B belts on",
      "fan power limit, variable flow of",
    ])
      expect(written).toContain(part);
    expect(written).not.toContain("fan-stopped");
    for (const line of written.split("\n")) expect(line.length, line).toBeLessThanOrEqual(100);
  });

  it("prints JSON as its schema says, alternatives and arithmetic included", async () => {
    const output = await fanJson(["--alternatives", "--working"]);
    const matches = new Ajv2020({ strict: false }).compile(fanSchema());
    expect(matches(output), JSON.stringify(matches.errors)).toBe(true);
    expect(matches({ ...output, sound: { ...output.sound, outlet: [1] } })).toBe(false);
    expect(output.working?.length).toBeGreaterThan(3);
    expect(output.alternatives?.looked).toBeGreaterThan(1000);
  });

  it("holds a declared rating beside ours, and says what differs at the condition", async () => {
    const declared = `      declared rating:
        number: R-17
        airflow: 12,000 cfm
        static pressure: 3 in.wg
        speed: 1,500 rpm
        shaft power: 9 hp
`;
    const job = trialJob.replace("      drive: belt\n", `      drive: belt\n${declared}`);
    const output: FanOutput = JSON.parse((await fan(["--json"], job)).written);
    const matches = new Ajv2020({ strict: false }).compile(fanSchema());
    expect(matches(output), JSON.stringify(matches.errors)).toBe(true);
    const [speed, power] = output.declared?.lines ?? [];
    expect(speed?.declared).toBe(25);
    // Air power of 12,000 cfm at 3 in.wg: 12,000 × 3 / 6343 hp, the constant of AMCA 208 for water of 4 °C.
    expect(output.declared?.lines.find((each) => each.what === "static efficiency")?.declared).toBeCloseTo(
      5.6756 / 9,
      3,
    );
    expect(speed?.difference).toBeCloseTo(25 / (speed?.ours ?? 0) - 1, 12);
    const { written } = await fan([], job);
    expect(written).toContain("declared rating R-17");
    expect(written).toMatch(/at this condition differ: .*density/s);
    const off = await fan([], job.replace("shaft power: 9 hp", "shaft power: 20 hp"));
    expect(off.written).toContain("beyond 7.5");
    expect(power?.quantity).toBe("shaftPower");
  });

  it("draws the fan chart, the point of the condition asked for in hand", async () => {
    const folder = await mkdtemp(join(tmpdir(), "oncethrough-fan-"));
    onTestFinished(() => rm(folder, { recursive: true }));
    const file = join(folder, "fan.svg");
    const { code } = await fan(["--condition", "winter-1", "--svg", file]);
    expect(code).toBe(0);
    const svg = await readFile(file, "utf8");
    for (const words of ["filters clean", "half loaded", "at change-out", "may surge"]) expect(svg).toContain(words);
    const { figures } = (JSON.parse((await fan(["--json"])).written) as FanOutput).points.find(
      ({ condition }) => condition === "winter-1",
    )!;
    // Pressure of the point in hand as the table has it: 249.089 Pa are one inch of water.
    expect(svg).toContain(`${(figures.staticPressure! / 249.088_91).toFixed(2)} in.wg`);
  });

  it("says what an array still moves with one fan out, dampers as built and the other way", async () => {
    const job = trialJob
      .replace("typical airfoil housed double inlet", "typical airfoil plenum wheel")
      .replace("diameter: 24 in", "diameter: 20 in\n      count: 4")
      .replace("drive: belt", "drive: direct")
      .replace("motor power: 20 hp", "motor power: 5 hp")
      .replace("  utilities: {}", "  redundancy: { airflow with one fan out: 99 % }\n  utilities: {}");
    const output: FanOutput = JSON.parse((await fan(["--json"], job)).written);
    const matches = new Ajv2020({ strict: false }).compile(fanSchema());
    expect(matches(output), JSON.stringify(matches.errors)).toBe(true);
    expect(output.oneFanOut.wanted).toBeCloseTo(0.99, 12);
    expect(output.oneFanOut.cases.map((each) => each.backdraftDampers)).toEqual([false, true]);
    for (const each of output.oneFanOut.cases) {
      expect(each.shareAtSameSpeed).toBeGreaterThan(0.5);
      expect(each.shareAtSameSpeed).toBeLessThan(1);
    }
    const { written } = await fan([], job);
    expect(written).toContain("the duty wants 99.0 %");
    expect(written).toContain("without backdraft dampers, as built");
    for (const line of written.split("\n")) expect(line.length, line).toBeLessThanOrEqual(100);
  });

  it("gives points that agree with one another and alternatives in order", async () => {
    const { points, alternatives, condition } = await fanJson(["--alternatives"]);
    const at = points.find((point) => point.condition === condition)?.figures ?? {};
    const clean = points.find((point) => point.condition === "wet-bulb-day-0")?.figures ?? {};
    // The same flow of air through filters at change-out asks for more pressure, speed and power than through clean ones.
    for (const figure of ["staticPressure", "fanSpeed", "electricPower"])
      expect(at[figure], figure).toBeGreaterThan(clean[figure] ?? Number.NaN);
    const powers = alternatives?.candidates.map((each) => each.electricPower) ?? [];
    expect(powers.length).toBeGreaterThan(0);
    expect(powers).toEqual([...powers].sort((a, b) => a - b));
    const { written } = await fan(["--alternatives", "--units", "si"]);
    expect(written).toContain("alternatives for this point");
  });

  it("says what is wrong with an unknown condition and a broken job", async () => {
    const unknown = await fan(["--condition", "monday"]);
    expect(unknown.code).toBe(2);
    expect(unknown.complained).toMatch(/"monday" is not a condition of this job; allowed: dry-bulb-day-0/);
    const broken = await fan([], trialJob.replace("diameter: 24 in", "diameter: 80 in"));
    expect(broken.code).toBe(1);
    expect(broken.complained).toMatch(/diameter.*12\.25 in to 73 in/);
    expect(broken.written).toBe("");
  });
});
