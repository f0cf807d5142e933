import { mkdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { temporaryFolder } from "#files/temporary-folder.test-data";
import { run } from "../run.ts";
import { keptStreams } from "../test-streams.test-data.ts";
import { trialJob } from "../trial-job.test-data.ts";
import { readSchema } from "./read-schema.ts";

async function read(job: string, words: readonly string[] = []) {
  const streams = keptStreams(job);
  const code = await run(["read", "-", ...words], streams);
  return { code, written: streams.written(), complained: streams.complained() };
}

/** The line, from 1, on which a piece of a text begins. */
function lineOf(text: string, piece: string): number {
  return text.slice(0, text.indexOf(piece)).split("\n").length;
}

/** A fault put into the trial job by hand: what stood there, what stands there now, where the message points, what it says. */
type Broken = readonly [was: string, is: string, at: string, says: RegExp];

const broken: readonly Broken[] = [
  ["design: 12,000 cfm", "design: 12,000", "12,000\n", /design: "12,000" has no unit; allowed: an airflow in cfm/],
  [
    "altitude: 20 ft",
    "altitude: 20 psi",
    "20 psi",
    /altitude: "psi" is a unit of .* not of length.*; allowed: a length/,
  ],
  [
    "supply airflow:",
    "suply airflow:",
    "suply",
    /"suply airflow" is not a name known here.*did you mean "supply airflow"\?/,
  ],
  ["kind: filter bank", "kind: filter bnak", "filter bnak", /"filter bnak".*did you mean "filter bank"\?/],
  [
    "typical MERV 8 pleated 2 in",
    "typical MERV 9 pleated 2 in",
    "typical MERV 9",
    /no filter medium called.*did you mean "typical MERV 8 pleated 2 in"\?/,
  ],
  [
    "minimum: 6,000 cfm",
    "minimum: 16,000 cfm",
    "16,000 cfm",
    /minimum airflow is above the design airflow.*; allowed: at most/,
  ],
  ["wet bulb: 77 °F", "wet bulb: 97 °F", "97 °F", /wet bulb is above the dry bulb/],
  [
    "placement: indoor",
    "placement: cellar",
    "cellar",
    /"cellar" is not one of the choices; allowed: roof, ground or indoor/,
  ],
  [
    "  external static: { pressure: 2 in.wg }\n",
    "",
    "duty:\n",
    /"external static" is missing; allowed: a group with pressure/,
  ],
  [
    "    design: 12,000 cfm",
    "\tdesign: 12,000 cfm",
    "\tdesign",
    /a tab stands where lines are moved in.*; allowed: spaces/,
  ],
  [
    "name: filters",
    "name: supply fan",
    "supply fan\n      wheel",
    /two sections are called "supply fan"; allowed: a `name` for each/,
  ],
  [
    "oncethrough job 1",
    "oncethrough job 9",
    "oncethrough job 9",
    /not a layout that this version reads; allowed: `oncethrough job 1`/,
  ],
  ["width: 84 in", "width: 84 in, depth: 2 m", "depth", /"depth" is not a name known here.*; allowed: width, height/],
  ["    - kind: fan\n", "    - kind: access\n", "wheel: typical", /"wheel" is not a name known here.*\(access\)/],
];

describe("oncethrough read", () => {
  it("says that a job has no errors, and what it holds", async () => {
    const { code, written } = await read(trialJob);
    expect(code).toBe(0);
    expect(written).toMatch(/^standard input: no errors, 4 sections, 17 conditions, \d+ defaults\n$/);
  });

  it.each(broken)("finds %j turned into %j", async (was, is, at, says) => {
    expect(trialJob).toContain(was);
    const text = trialJob.replace(was, () => is);
    const { code, written } = await read(text);
    expect(code).toBe(1);
    const line = written.split("\n").find((each) => says.test(each));
    expect(line, written).toBeDefined();
    expect(line).toMatch(/^standard input:\d+:\d+: /);
    expect(line).toMatch(new RegExp(`^standard input:${lineOf(text, at)}:`));
    expect(written).toMatch(/standard input: \d+ errors?\n$/);
  });

  it("lists all errors at once, in the order of the text", async () => {
    const text = trialJob.replace("20 ft", "20 fet").replace("77 °F", "77").replace("20 hp", "20 horses");
    const { written } = await read(text);
    const lines = written.trimEnd().split("\n");
    expect(lines).toHaveLength(4);
    const rows = lines.slice(0, 3).map((line) => Number(line.split(":")[1]));
    expect(rows).toEqual([...rows].sort((one, other) => one - other));
    expect(lines[3]).toBe("standard input: 3 errors");
  });

  it("lists every default under its group, as it would be written", async () => {
    const { written } = await read(trialJob, ["--defaults"]);
    expect(written).toMatch(/^duty, site\n(?: {2}.*\n)*? {2}corrosion class: C3 +Corrosivity of the air/m);
    expect(written).toMatch(/^unit, sections, 2 \(filters\)\n(?: {2}.*\n)*? {2}rack: flat /m);
    for (const line of written.split("\n")) expect(line.length, line).toBeLessThanOrEqual(100);
  });

  it("prints JSON as its schema says", async () => {
    const matches = new Ajv2020({ strict: false }).compile(readSchema());
    for (const text of [trialJob, trialJob.replace("20 ft", "20 fet"), "a: [", "- 1"]) {
      const { written } = await read(text, ["--json"]);
      expect(matches(JSON.parse(written)), JSON.stringify(matches.errors)).toBe(true);
    }
    expect(JSON.parse((await read("a: [", ["--json"])).written)).toMatchObject({ sound: false });
  });

  it("lays a shop's records over the shipped ones, with the same checks", async () => {
    const folder = join(await temporaryFolder(), "shop");
    await mkdir(folder);
    const shop = trialJob.replace("typical MERV 8 pleated 2 in", "shop pleat");
    expect((await read(shop)).code).toBe(1);
    const source = await import("node:fs/promises").then(({ readFile }) =>
      readFile(new URL("../../../../../catalogue/filter-medium.yaml", import.meta.url), "utf8"),
    );
    const own = source.replace("name: typical MERV 8 pleated 2 in", "name: shop pleat");
    await writeFile(join(folder, "filters.yaml"), own);
    expect((await read(shop, ["--catalogue", folder])).written).toMatch(/no errors/);
    await writeFile(join(folder, "filters.yaml"), own.replace(/panel depth: .*/, "panel depth: deep"));
    const { code, written } = await read(shop, ["--catalogue", folder]);
    expect(code).toBe(1);
    expect(written).toMatch(/filters\.yaml:\d+:\d+: panel depth: /);
  });
});
