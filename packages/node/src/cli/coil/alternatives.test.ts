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
    const { written } = await alternatives(["--json", "--most", "7", "--sort", "air"]);
    const matches = new Ajv2020({ strict: false }).compile(alternativesSchema());
    const output = JSON.parse(written);
    expect(matches(output), JSON.stringify(matches.errors)).toBe(true);
    const losses: number[] = output.candidates.map((each: { airPressureDrop: number }) => each.airPressureDrop);
    expect(losses).toHaveLength(7);
    expect(losses).toEqual([...losses].sort((a, b) => a - b));
    const csv = readCsv((await alternatives(["--csv", "--most", "7", "--sort", "air"])).written);
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

  it("says what is wrong", async () => {
    const preheat = await readFile(new URL("preheat.yaml", folder), "utf8");
    expect(await alternatives([], preheat)).toEqual({
      code: 2,
      written: "",
      complained: expect.stringMatching(/steam coil; allowed/),
    });
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
