import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { readCatalogue } from "@oncethrough/engine/catalogue/read-catalogue";
import { fanPressureFromFlow, fanShaftPowerFromFlow } from "@oncethrough/engine/component/fan-performance";
import type { FanWheel } from "@oncethrough/engine/component/fan-wheel";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it, onTestFinished } from "vitest";
import { run } from "../run.ts";
import { keptStreams } from "../test-streams.test-data.ts";
import type { ImportFanOutput } from "./import-fan-output.ts";
import { importFanSchema } from "./import-fan-schema.ts";

// An invented test of a 30 in wheel; the slow speed follows the laws but for a percent.
const table = `flow [cfm],static pressure [in.wg],power [hp],speed [rpm],density [lb/ft3]
3000,5.10,5.6,1180,0.0742
5000,5.15,7.4,1180,0.0742
7000,5.02,9.1,1180,0.0742
9000,4.68,10.3,1180,0.0742
11000,4.05,11.0,1180,0.0742
13000,3.10,11.1,1180,0.0742
15000,1.85,10.5,1180,0.0742
5500,2.66,3.60,860,0.0742
7000,2.41,4.05,860,0.0742
9000,1.85,4.32,860,0.0742
`;

async function imported(text: string, words: readonly string[] = []) {
  const streams = keptStreams(text);
  const code = await run(["import-fan", "-", "--diameter", "30 in", ...words], streams);
  return { code, written: streams.written(), complained: streams.complained() };
}

describe("oncethrough import-fan", () => {
  it("prints a record that gives the tested figures back, and tells how the speeds scatter", async () => {
    const { code, written, complained } = await imported(table, ["--name", 'shop 30 in "A"']);
    expect(complained).toMatch(/10 tested points make/);
    expect(complained).toMatch(/860 rpm against 1,180 rpm by the fan laws/);
    expect(complained).not.toContain("stands out");
    expect(code).toBe(0);
    const catalogue = readCatalogue([{ path: "shop.yaml", text: written }]);
    expect(catalogue.problems).toEqual([]);
    const wheel = catalogue.component("fan wheel", 'shop 30 in "A"') as FanWheel;
    expect(wheel.head.basis).toBe("tested");
    const density = 0.0742 * 16.018463;
    const flow = 13000 * 0.000471947443;
    // 3.10 in.wg and 11.1 hp as tested: the row stands alone at its flow coefficient, printed to six digits.
    expect(fanPressureFromFlow(wheel.curve, 0.762, 1180 / 60, density, flow) / 249.08891).toBeCloseTo(3.1, 3);
    expect(fanShaftPowerFromFlow(wheel.curve, 0.762, 1180 / 60, density, flow) / 745.69987).toBeCloseTo(11.1, 3);
  });

  it("writes record and picture to files, and nothing over a record that is there", async () => {
    const folder = await mkdtemp(join(tmpdir(), "oncethrough-fan-"));
    onTestFinished(() => rm(folder, { recursive: true }));
    const [record, plot] = [join(folder, "shop.yaml"), join(folder, "shop.svg")];
    const odd = table.replace("11000,4.05,11.0", "11000,4.05,13.0");
    const first = await imported(odd, ["-o", record, "--plot", plot]);
    expect(first.complained).toBe("");
    expect(first.written).toMatch(/line 6 stands out and is kept: power \+/);
    expect(readCatalogue([{ path: record, text: await readFile(record, "utf8") }]).problems).toEqual([]);
    const svg = await readFile(plot, "utf8");
    expect(svg).toContain("line 6?");
    expect(svg.match(/<circle/g)?.length).toBeGreaterThan(20);
    const second = await imported(table, ["-o", record]);
    expect(second.code).toBe(2);
    expect(second.complained).toMatch(/is there already/);
  });

  it.each([
    [
      "a unit that is none of the column",
      table.replace("[in.wg]", "[rpm]"),
      /-:1:|standard input:1:.*"rpm" is no unit of static pressure; needed: a pressure/,
    ],
    ["an unknown column", table.replace("power [hp]", "pwr [hp]"), /:1:.*column "pwr \[hp\]" is not known/],
    ["a single point", table.split("\n").slice(0, 2).join("\n"), /:2: a single point of test; needed: 4 points/],
    [
      "pressure in pascals written as inches",
      table.replaceAll(/^(\d+),(\d)\.(\d+)/gm, (_, flow, whole, part) => `${flow},${whole}${part}.0`),
      /:2: static efficiency would be \d+ %: more air power/,
    ],
    ["negative power", table.replace("10.3", "-10.3"), /:5: shaft power is not above 0/],
    ["flow that turns around", table.replace("9000,4.68", "6000,4.68"), /:5: flow turns around/],
    ["no unit anywhere", table.replace("flow [cfm]", "flow"), /:2: flow: .*no unit.*; needed:/],
    ["no pressure", table.replace("static pressure [in.wg]", "density [lb/ft3]"), /:1: no column of pressure/],
  ])("refuses %s, with the row and what is needed", async (_, text, words) => {
    const { code, written, complained } = await imported(text);
    expect(complained).toMatch(words);
    expect(code).toBe(1);
    expect(written).toBe("");
  });

  it("tells the same to programs, and refusals too", async () => {
    const matches = new Ajv2020({ strict: false }).compile(importFanSchema());
    const good = JSON.parse((await imported(table, ["--json"])).written) as ImportFanOutput;
    expect(matches(good), JSON.stringify(matches.errors)).toBe(true);
    expect(good.test?.tested).toHaveLength(10);
    expect(good.problems).toEqual([]);
    expect(readCatalogue([{ path: "shop.yaml", text: good.record! }]).problems).toEqual([]);
    const bad = await imported(table.replace("10.3", "-10.3"), ["--json"]);
    const refused = JSON.parse(bad.written) as ImportFanOutput;
    expect(matches(refused), JSON.stringify(matches.errors)).toBe(true);
    expect(refused.problems.map(({ line }) => line)).toEqual([5]);
    expect(refused.record).toBeUndefined();
    expect(bad.code).toBe(1);
  });

  it("asks for what only the shop can know", async () => {
    const streams = keptStreams(table);
    expect(await run(["import-fan", "-"], streams)).toBe(2);
    expect(streams.complained()).toMatch(/--diameter is needed/);
    const plenum = await imported(table.replace("static pressure", "total pressure"), [
      "--like",
      "typical airfoil plenum wheel",
    ]);
    expect(plenum.code).toBe(2);
    expect(plenum.complained).toMatch(/no outlet of its own/);
  });
});
