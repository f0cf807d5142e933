import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import psychrolib from "psychrolib";
import { describe, expect, it } from "vitest";
import { temporaryFolder } from "#files/temporary-folder.test-data";
import { run } from "../run.ts";
import { keptStreams } from "../test-streams.test-data.ts";
import { type AirOutput, airSchema } from "./air-schema.ts";

async function air(words: readonly string[], input = "") {
  const streams = keptStreams(input);
  const code = await run(["air", ...words], streams);
  return { code, written: streams.written(), complained: streams.complained() };
}

async function airJson(words: readonly string[], input = ""): Promise<AirOutput> {
  const { written } = await air([...words, "--json"], input);
  const output = JSON.parse(written) as AirOutput;
  const matches = new Ajv2020().compile(airSchema());
  expect(matches(output), JSON.stringify(matches.errors)).toBe(true);
  return output;
}

describe("oncethrough air", () => {
  it("prints a state from two values in both systems", async () => {
    const { code, written, complained } = await air(["--dry-bulb", "95 °F", "--wet-bulb", "78 °F"]);
    expect(code).toBe(0);
    expect(complained).toBe("");
    expect(written).toMatch(/dry bulb +95\.0 °F +35\.0 °C +given/);
    expect(written).toMatch(/wet bulb +78\.0 °F +25\.6 °C +given/);
    expect(written).toMatch(/pressure +14\.696 psia/);
  });

  it("agrees with an independent library in its ideal relations", async () => {
    psychrolib.SetUnitSystem(psychrolib.SI);
    const [state] = (await airJson(["--dry-bulb", "35 °C", "--relative-humidity", "40 %", "--ideal"])).states;
    // Ideal relations: the same equations of the handbook, so that only the rounding of constants may differ.
    expect(state?.ideal?.humidityRatio).toBeCloseTo(psychrolib.GetHumRatioFromRelHum(35, 0.4, 101_325), 7);
    // The enhancement factor adds about half a percent of moisture near sea level.
    const enhanced = (state?.humidityRatio ?? 0) / (state?.ideal?.humidityRatio ?? 1);
    expect(enhanced).toBeGreaterThan(1.003);
    expect(enhanced).toBeLessThan(1.007);
  });

  it("takes the pressure from an altitude or as given", async () => {
    // Standard atmosphere at 5,000 ft: 12.228 psia (handbook table, 84.31 kPa).
    const [high] = (await airJson(["--dry-bulb", "70 °F", "--dew-point", "50 °F", "--altitude", "5000 ft"])).states;
    expect(high?.pressure).toBeCloseTo(84_307, -2);
    const [given] = (await airJson(["--dry-bulb", "70 °F", "--dew-point", "50 °F", "--pressure", "29.92 inHg"])).states;
    expect(given?.pressure).toBeCloseTo(101_320, -1);
    const both = await air([
      "--dry-bulb",
      "70 °F",
      "--dew-point",
      "50 °F",
      "--altitude",
      "0 ft",
      "--pressure",
      "1 atm",
    ]);
    expect(both.code).toBe(2);
    expect(both.complained).toContain("altitude");
    const sky = await air(["--dry-bulb", "70 °F", "--dew-point", "50 °F", "--altitude", "30000 ft"]);
    expect(sky.complained).toMatch(/altitude: "30000 ft".*50 to 110 kPa/);
  });

  it("says in a line what is wrong with a value or a pair", async () => {
    const cases: [string[], RegExp][] = [
      [["--dry-bulb", "95"], /dry bulb: .*has no unit; allowed: a temperature in/],
      [["--dry-bulb", "95 °F"], /1 value is given; allowed: two of dry bulb/],
      [[], /no value is given/],
      [["--dry-bulb", "95 °F", "--wet-bulb", "78 °F", "--enthalpy", "40 Btu/lb"], /3 values are given/],
      [["--dry-bulb", "60 °F", "--wet-bulb", "80 °F"], /dry bulb and wet bulb: .*above the dry bulb/],
      [["--dew-point", "50 °F", "--humidity-ratio", "53 gr/lb"], /dew point and humidity ratio/],
      [["--dry-bulb", "95 °F", "--relative-humidity", "5 psi"], /relative humidity: .*pressure/],
      [["--dry-bulb", "95 °F", "--csv", "x.csv"], /--csv and --dry-bulb exclude each other/],
      [["--csv", "/no/such/file.csv"], /\/no\/such\/file\.csv: there is no such file/],
    ];
    for (const [words, complaint] of cases) {
      const { code, written, complained } = await air(words);
      expect(code, words.join(" ")).toBe(2);
      expect(complained, words.join(" ")).toMatch(complaint);
      expect(complained.trimEnd(), words.join(" ")).not.toMatch(/\n/);
      expect(written).toBe("");
    }
  });
});

const pairs = `name,dry bulb [°F],Wet-Bulb (°F),relative humidity,altitude [ft]
day,95,78,,0
room,70,,50 %,5000
odd,21 °C,15 °C,,
`;

describe("oncethrough air --csv", () => {
  it("answers every row, units from the header or the cell, from a file or standard input", async () => {
    const output = await airJson(["--csv", "-"], pairs);
    expect(output.problems).toEqual([]);
    expect(output.states.map((state) => [state.row, state.name])).toEqual([
      [2, "day"],
      [3, "room"],
      [4, "odd"],
    ]);
    expect(output.states[0]?.dryBulb).toBeCloseTo(35, 9);
    expect(output.states[1]?.relativeHumidity).toBe(0.5);
    expect(output.states[1]?.pressure).toBeLessThan(85_000);
    expect(output.states[2]?.dryBulb).toBe(21);
    const path = join(await temporaryFolder(), "pairs.csv");
    await writeFile(path, pairs);
    expect(await airJson(["--csv", path])).toEqual(output);
    const { written } = await air(["--csv", path]);
    expect(written).toMatch(/row +name +dry bulb/);
    expect(written).toMatch(/^ {2}2 {2}day +95\.0 +78\.0/m);
    expect(Math.max(...written.split("\n").map((line) => line.length))).toBeLessThanOrEqual(100);
  });

  it("names row and column of what cannot be answered, and answers the rest", async () => {
    const broken = `${pairs}hot,x,70,,\nwet,60,80,,\nfew,70,,,\nmany,70,60,,,,\n`;
    const { code, written, complained } = await air(["--csv", "-", "--units", "si"], broken);
    expect(code).toBe(1);
    expect(complained.trimEnd().split("\n")).toEqual([
      expect.stringMatching(/^row 5, dry bulb: .*does not begin with a number/),
      expect.stringMatching(/^row 6, dry bulb and wet bulb: .*above the dry bulb/),
      expect.stringMatching(/^row 7, 1 value is given/),
      expect.stringMatching(/^row 8, 7 cells stand under 5 column names/),
    ]);
    expect(written).toMatch(/^ {2}2 {2}day +35\.0 +25\.6/m);
    expect(written).toMatch(/^ {2}5 {2}hot +–/m);
  });

  it("answers in CSV that it reads again, row beside row", async () => {
    const { written, code } = await air(["--csv", "-", "--output", "csv"], `${pairs}hot,x,70,,\n`);
    expect(code).toBe(1);
    const lines = written.trimEnd().split("\n");
    expect(lines).toHaveLength(5);
    expect(lines[0]).toMatch(/^name,dry bulb \[°F\],wet bulb \[°F\]/);
    expect(lines[4]).toMatch(/^hot,,,/);
    const two = lines.slice(0, 4).map((line) => line.split(",").slice(0, 3).join(","));
    const again = await airJson(["--csv", "-"], `${two.join("\n")}\n`);
    expect(again.states[0]?.humidityRatio).toBeCloseTo(
      (await airJson(["--csv", "-"], pairs)).states[0]?.humidityRatio ?? 0,
      8,
    );
  });

  it("says what is wrong with a header", async () => {
    const cases: [string, RegExp][] = [
      [
        "dry bulb [°F],wet blub [°F]\n1,2\n",
        /^row 1, .*"wet blub" is not known; did you mean "wet bulb"\?.*allowed: dry bulb/,
      ],
      [
        "dry bulb [psi],wet bulb [°F]\n1,2\n",
        /^row 1, dry bulb: .*"psi" is not a unit of this column; allowed: a temperature/,
      ],
      ["dry bulb [°F],dry bulb [°C]\n1,2\n", /^row 1, dry bulb: the column stands twice/],
      ["dry bulb [°F],wet bulb [°F]\n", /no row follows the header/],
      ['dry bulb,wet bulb\n"1,2\n', /^row 2, a quote/],
    ];
    for (const [text, complaint] of cases) {
      const { code, complained } = await air(["--csv", "-"], text);
      expect(code, text).toBe(1);
      expect(complained, text).toMatch(complaint);
    }
    const nothing = await air(["--csv", "-"], "");
    expect(nothing.code).toBe(2);
    expect(nothing.complained).toBe("oncethrough: standard input: it is empty\n");
  });
});
