import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { shippedCatalogue } from "#section/shipped.test-data";
import { readJob } from "./read-job.ts";

const sound = readFileSync(new URL("../../../../examples/marine-biology-wing.yaml", import.meta.url), "utf8");

/** A sound text with one piece replaced, as a hand would break it. */
function broken(piece: string, by: string): string {
  expect(sound.split(piece).length - 1, `"${piece}" stands in the example`).toBeGreaterThan(0);
  return sound.replace(piece, by);
}

function lineOf(text: string, piece: string): number {
  return text.slice(0, text.indexOf(piece)).split("\n").length;
}

interface Breakage {
  readonly what: string;
  readonly piece: string;
  readonly by: string;
  /** The text at whose line the problem has to be. */
  readonly at: string;
  readonly says: RegExp;
  readonly allows: RegExp;
}

const breakages: readonly Breakage[] = [
  {
    what: "a name with a typing error",
    piece: "outside air share: 85 %",
    by: "outside air shear: 85 %",
    at: "outside air shear",
    says: /not a name known here/,
    allows: /outside air share/,
  },
  {
    what: "a quantity without its unit",
    piece: "design: 18000 cfm",
    by: "design: 18000",
    at: "design: 18000",
    says: /unit/,
    allows: /cfm/,
  },
  {
    what: "a unit of another quantity",
    piece: "pressure: 2.5 in.wg",
    by: "pressure: 2.5 gpm",
    at: "2.5 gpm",
    says: /gpm/,
    allows: /in\.? ?w\.?g/,
  },
  {
    what: "a value beyond its range",
    piece: "outside air share: 85 %",
    by: "outside air share: 12 %",
    at: "outside air share: 12 %",
    says: /12 %|least|below|less/,
    allows: /30 %/,
  },
  {
    what: "a wet bulb above its dry bulb",
    piece: "{ dry bulb: 88 °F, wet bulb: 81 °F }",
    by: "{ dry bulb: 78 °F, wet bulb: 81 °F }",
    at: "{ dry bulb: 78 °F",
    says: /wet bulb is above the dry bulb/,
    allows: /at most the dry bulb/,
  },
  {
    what: "moisture given twice",
    piece: "{ dry bulb: 84 °F, dew point: 79.5 °F }",
    by: "{ dry bulb: 84 °F, dew point: 79.5 °F, relative humidity: 60 % }",
    at: "dry bulb: 84 °F",
    says: /given twice/,
    allows: /one of/,
  },
  {
    what: "a record that no catalogue has",
    piece: "medium: typical MERV 14 rigid 12 in",
    by: "medium: typical MERV 14 rigd 12 in",
    at: "medium: typical MERV 14 rigd",
    says: /typical MERV 14 rigd 12 in/,
    allows: /typical MERV 14 rigid 12 in/,
  },
  {
    what: "an unknown kind of section",
    piece: "kind: filter bank",
    by: "kind: filter bnak",
    at: "kind: filter bnak",
    says: /filter bnak/,
    allows: /filter bank/,
  },
  {
    what: "two sections of one name",
    piece: "name: filters",
    by: "name: louver",
    at: "name: louver",
    says: /two sections are called "louver"/,
    allows: /name/,
  },
  {
    what: "a damper wider than the cabinet",
    piece: "width: 60 in",
    by: "width: 160 in",
    at: "width: 160 in",
    says: /wider/,
    allows: /102/,
  },
  {
    what: "a second fan in the row",
    piece: "    - kind: discharge plenum\n",
    by: "    - kind: fan\n      name: second fan\n      diameter: 27 in\n      motor power: 30 hp\n    - kind: discharge plenum\n",
    at: "kind: fan\n      name: second fan",
    says: /a second fan/,
    allows: /one fan section/,
  },
  {
    what: "another layout of the file",
    piece: "format: oncethrough job 1",
    by: "format: oncethrough job 9",
    at: "format:",
    says: /not a layout/,
    allows: /oncethrough job 1/,
  },
  {
    what: "steam taken out of the duty",
    piece: "    steam: { pressure at coil: 12 psig, condensate return pressure: 0 psig, valve fails: open }\n",
    by: "",
    at: "kind: steam coil with face and bypass",
    says: /needs steam/,
    allows: /steam/,
  },
  {
    what: "supply air colder than the chilled water",
    piece: "coil leaving: 53 °F",
    by: "coil leaving: 43 °F",
    at: "coil leaving: 43 °F",
    says: /colder than the chilled water/,
    allows: /above the chilled-water supply/,
  },
];

describe("a job broken by hand", () => {
  it("is sound before it is broken", () => {
    const reading = readJob(sound, shippedCatalogue);
    expect(reading.problems).toEqual([]);
    expect(reading.job?.conditions).toHaveLength(16);
  });

  it.each(breakages)("$what", ({ piece, by, at, says, allows }) => {
    const text = broken(piece, by);
    const { job, problems } = readJob(text, shippedCatalogue);
    expect(job).toBeUndefined();
    const found = problems.find(({ line, problem, value, allowed, nearest }) => {
      const words = `${problem} ${value}`;
      return line === lineOf(text, at) && says.test(words) && allows.test(`${allowed} ${nearest ?? ""}`);
    });
    expect(found, JSON.stringify(problems, undefined, 1)).toBeDefined();
    expect(found?.column).toBeGreaterThan(0);
  });

  it("tells everything at once, in the order of the text", () => {
    const text = broken("design: 18000 cfm", "design: 18000")
      .replace("outside air share: 85 %", "outside air shear: 85 %")
      .replace("kind: filter bank", "kind: filter bnak");
    const { problems } = readJob(text, shippedCatalogue);
    expect(problems.length).toBeGreaterThanOrEqual(3);
    const lines = problems.map(({ line }) => line);
    expect([...lines].sort((a, b) => a - b)).toEqual(lines);
  });

  it("judges heating water by the loop's pressure at the site's altitude", () => {
    const mountain = readFileSync(
      new URL("../../../../examples/high-country-soils-laboratory.yaml", import.meta.url),
      "utf8",
    );
    const supplied = (supply: string) =>
      readJob(mountain.replace("supply: 150 °F", `supply: ${supply}`), shippedCatalogue);
    expect(supplied("200 °F").problems).toEqual([]);
    const [found] = supplied("240 °F").problems;
    expect(found?.problem).toMatch(/water boils at 23\d\.\d °F .* under the loop's 12\.0 psig/);
    expect(found?.line).toBe(lineOf(mountain, "supply: 150 °F"));
    expect(supplied("240 °F\n      pressure: 30 psig").problems).toEqual([]);
  });

  it.each(["", " \n", "\u0000\u0001binary", "[1, 2", "a: b: c: d", "- 1\n- 2\n", "\tkey: 1", "42"])(
    "does not throw for %j",
    (text) => {
      const { job, problems } = readJob(text, shippedCatalogue);
      expect(job).toBeUndefined();
      expect(problems.length).toBeGreaterThan(0);
      for (const { line, column, problem } of problems) {
        expect(line).toBeGreaterThan(0);
        expect(column).toBeGreaterThan(0);
        expect(problem).not.toBe("");
      }
    },
  );
});
