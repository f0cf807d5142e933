import { cp, mkdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { shippedFolders } from "#files/shipped";
import { temporaryFolder } from "#files/temporary-folder.test-data";
import { readCsv } from "../air/read-csv.ts";
import { run } from "../run.ts";
import { takeoffSchema } from "../takeoff/takeoff-schema.ts";
import { keptStreams } from "../test-streams.test-data.ts";
import { trialJob } from "../trial-job.test-data.ts";
import type { PriceOutput } from "./price-output.ts";
import { priceSchema } from "./price-schema.ts";

async function command(words: readonly string[], job = trialJob) {
  const streams = keptStreams(job, { columns: 120 });
  const code = await run([words[0] ?? "", "-", ...words.slice(1)], streams);
  return { code, written: streams.written(), complained: streams.complained() };
}

describe("oncethrough price", () => {
  it("prints the price by section and says that its books are invented", async () => {
    const { code, written, complained } = await command(["price"]);
    expect(complained).toBe("");
    expect(code).toBe(0);
    for (const words of ["supply fan", "the unit as a whole", "margin, 20.0 % of the price", "invented"])
      expect(written).toContain(words);
    expect(written).not.toMatch(/undefined|NaN/);
    for (const line of written.split("\n")) expect(line.length, line).toBeLessThanOrEqual(120);
    expect((await command(["price", "--lines"])).written).toContain("shear and punch");
  });

  it("prints JSON as its schema says, and CSV whose costs add up to it", async () => {
    const output: PriceOutput = JSON.parse((await command(["price", "--json"])).written);
    const matches = new Ajv2020({ strict: false }).compile(priceSchema());
    expect(matches(output), JSON.stringify(matches.errors)).toBe(true);
    expect(matches({ ...output, price: output.price + 0.5 })).toBe(false);
    const csv = readCsv((await command(["price", "--csv"])).written);
    if (!csv.ok) throw new Error("no CSV");
    const costs = csv.rows.slice(1).map((row) => Math.round(100 * Number(row.cells.at(-1))));
    const counted = output.lines.reduce((sum, { cents }) => sum + cents, 0);
    expect(costs.reduce((sum, cents) => sum + cents, 0)).toBe(counted);
  });

  it("lists what has no price in the shop's own book, and then is not whole", async () => {
    const folder = await temporaryFolder();
    const text = await readFile(join(shippedFolders.shop, "prices.yaml"), "utf8");
    await writeFile(join(folder, "prices.yaml"), text.replace(/.*item: typical spring.*\n/, ""));
    const { code, written } = await command(["price", "--shop", folder]);
    expect(code).toBe(1);
    expect(written).toMatch(/not whole[\s\S]*without a price\n +supply fan: typical spring 2 in, 4 of it/);
    const empty = join(folder, "empty");
    await mkdir(empty);
    const none = await command(["price", "--shop", empty]);
    expect(none.code).toBe(2);
    expect(none.complained).toMatch(/none of prices\.yaml, rates\.yaml, stock\.yaml/);
    await cp(join(shippedFolders.shop, "stock.yaml"), join(empty, "stock.yaml"));
    await writeFile(join(empty, "rates.yaml"), "book: rates\nbasis: guesswork\n");
    const broken = await command(["price", "--shop", empty]);
    expect(broken.code).toBe(1);
    expect(broken.complained).toMatch(/rates\.yaml:2:\d+: .*basis/);
  });
});

describe("oncethrough takeoff", () => {
  it("prints four lists within 140 columns", async () => {
    const { code, written, complained } = await command(["takeoff"]);
    expect(complained).toBe("");
    expect(code).toBe(0);
    for (const words of ["parts", "cuts", "sheets", "bought", "typical spring 2 in", "galvanized steel"])
      expect(written).toContain(words);
    expect(written).not.toMatch(/undefined|NaN/);
  });

  it("prints JSON as its schema says and each list as CSV with as many cells as its header", async () => {
    const output = JSON.parse((await command(["takeoff", "--json"])).written);
    const matches = new Ajv2020({ strict: false }).compile(takeoffSchema());
    expect(matches(output), JSON.stringify(matches.errors)).toBe(true);
    expect(matches({ ...output, cuts: [{}] })).toBe(false);
    for (const list of ["parts", "cuts", "sheets", "bought"]) {
      const csv = readCsv((await command(["takeoff", "--csv", list])).written);
      if (!csv.ok) throw new Error(`no CSV of ${list}`);
      const [head, ...rows] = csv.rows;
      expect(rows.length).toBe(output[list].length);
      for (const row of rows) expect(row.cells.length).toBe(head?.cells.length);
    }
    expect((await command(["takeoff", "--csv", "nails"])).code).toBe(2);
  });
});
