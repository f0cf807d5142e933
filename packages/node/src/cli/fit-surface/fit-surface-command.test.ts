import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { readCatalogue } from "@oncethrough/engine/catalogue/read-catalogue";
import type { FinnedSurface } from "@oncethrough/engine/component/finned-surface/family";
import { describe, expect, it } from "vitest";
import { temporaryFolder } from "#files/temporary-folder.test-data";
import published from "../../../../../reference/cases/coil_cooling_cases.json" with { type: "json" };
import { run } from "../run.ts";
import { keptStreams } from "../test-streams.test-data.ts";

/** The sixteen points of elmahdy-mitalas-1977 as a shop would write them down. */
const header =
  "rows,entering dry bulb [°C],humidity ratio [kg/kg],dry air [kg/s],entering water [°C],water mass flow [kg/s],capacity [kW]";
const csv = [
  header,
  ...published.cases
    .filter(({ id }) => /^EM[48]/.test(id))
    .map((each) => {
      const { geometry, inputs, outputs } = each as never as Record<string, Record<string, number>>;
      const { T_air_in_C, W_in, m_air_kg_s, T_water_in_C, m_water_kg_s } = inputs!;
      return [geometry!.rows, T_air_in_C, W_in, m_air_kg_s, T_water_in_C, m_water_kg_s, outputs!.Q_total_kW].join(",");
    }),
].join("\n");
const same = "tubes per row=16; circuits=16; finned length=24 in; fins=11.8 per in";

async function fit(words: readonly string[], text = csv) {
  const streams = keptStreams(text);
  const code = await run(["fit-surface", "-", "--surface", "typical plain 5/8 in", "--same", same, ...words], streams);
  return { code, written: streams.written(), complained: streams.complained() };
}

describe("oncethrough fit-surface", () => {
  it("writes a record that the catalogue takes, a table of errors and a picture", async () => {
    const folder = await temporaryFolder();
    const [record, plot] = [join(folder, "fitted.yaml"), join(folder, "fit.svg")];
    const { code, written, complained } = await fit(["--name", "shop fin", "-o", record, "--plot", plot]);
    expect({ code, complained }).toEqual({ code: 0, complained: "" });
    expect(written).toMatch(/^air multiplier \d\.\d{3}, with 95 % confidence \d\.\d{3} to \d\.\d{3}$/m);
    expect(written.match(/^ *\d+ +[\d.,]+ +[+−]/gm)).toHaveLength(16);
    const catalogue = readCatalogue([{ path: record, text: await readFile(record, "utf8") }]);
    expect(catalogue.problems).toEqual([]);
    const surface = catalogue.component("finned surface", "shop fin") as FinnedSurface;
    expect(surface.heatFactor).toBeGreaterThan(1);
    expect(surface.head).toMatchObject({ basis: "tested", source: "test points standard input" });
    expect(surface.head.note).toMatch(/16 points, 1\d of them wet by it, starting from "typical plain/);
    expect(await readFile(plot, "utf8")).toMatch(/^<svg/);
  });

  it("says by line and column what is wrong", async () => {
    const bad = csv.replace("capacity [kW]", "capacity [kg]").replace("rows,", "row count,");
    expect((await fit([], bad)).complained).toMatch(/:1: row count: is not known/);
    expect((await fit([], bad)).complained).toMatch(/:1: capacity: "kg" is no unit of it/);
    const cell = csv.split("\n");
    cell[3] = cell[3]!.replace(/^8/, "eight");
    expect((await fit([], cell.join("\n"))).complained).toMatch(/^standard input:4: rows: "eight" is no such number/);
    expect((await fit([], csv.replace("entering water [°C]", "leaving water [°C]"))).complained).toContain(
      "entering water: is missing",
    );
    expect(await fit(["--fit", "fins"])).toMatchObject({ code: 2 });
    expect(await fit(["--surface", "nothing"])).toMatchObject({ code: 2 });
    expect((await fit(["--fit", "air,wet"], csv.split("\n").slice(0, 4).join("\n"))).complained).toMatch(
      /do not tell the .*multiplier; needed: fewer/,
    );
  });
});
