import { describe, expect, it } from "vitest";
import type { Damper } from "#component/damper";
import type { WireScreen } from "#component/wire-screen";
import { readCatalogue } from "./read-catalogue.ts";

const record = (name: string, wire = "0.063 in") => `  - name: ${name}
    typical: true
    basis: common practice
    source: common-practice
    date: 2026-11-25
    mesh pitch: 1/2 in
    wire diameter: ${wire}
`;
const screens = (...records: string[]) => `family: wire screen\nrecords:\n${records.join("")}`;

describe("catalogue", () => {
  it("turns records into components", () => {
    const catalogue = readCatalogue([{ path: "shipped.yaml", text: screens(record("half inch")) }]);
    expect(catalogue.problems).toEqual([]);
    expect(catalogue.names("wire screen")).toEqual(["half inch"]);
    const screen = catalogue.component("wire screen", "half inch") as WireScreen;
    // Open share of square mesh: the square of the open part of a pitch (geometry).
    expect(screen.openShare).toBeCloseTo((1 - 0.063 / 0.5) ** 2, 12);
    expect(screen.head).toMatchObject({ typical: true, note: "" });
  });

  it("lays a later file's record over the earlier one of the same name", () => {
    const catalogue = readCatalogue([
      { path: "shipped.yaml", text: screens(record("half inch"), record("other")) },
      { path: "shop.yaml", text: screens(record("half inch", "0.080 in")) },
    ]);
    const screen = catalogue.component("wire screen", "half inch") as WireScreen;
    expect(screen.wireDiameter).toBeCloseTo(0.08 * 0.0254, 12);
    expect(catalogue.origin("wire screen", "half inch")).toEqual({
      file: "shop.yaml",
      line: 3,
      replaces: ["shipped.yaml"],
    });
    expect(catalogue.names("wire screen")).toEqual(["half inch", "other"]);
  });

  it("keeps sound records beside one that has a problem, and names file, line and what is allowed", () => {
    const catalogue = readCatalogue([
      { path: "shop.yaml", text: screens(record("sound"), record("thick", "4 feet of wire")) },
    ]);
    expect(catalogue.names("wire screen")).toEqual(["sound"]);
    expect(catalogue.problems).toHaveLength(1);
    expect(catalogue.problems[0]).toMatchObject({ file: "shop.yaml", line: 16, field: "wire diameter" });
    expect(catalogue.problems[0]?.allowed).not.toBe("");
  });

  it("refuses figures that contradict one another", () => {
    const text = screens(record("closed", "6 mm").replace("1/2 in", "6.5 mm"));
    const [problem] = readCatalogue([{ path: "shop.yaml", text }]).problems;
    expect(problem?.problem).toMatch(/closed.*at least 5 %/);
  });

  it.each([
    ["no map", "just words", /no catalogue file/],
    ["nothing", "", /no catalogue file/],
    ["an unknown family", "family: wire sceen\nrecords: []", /not a family/],
    ["no family", "records: []", /missing/],
    ["no list", "family: wire screen\nrecords: 3", /no list/],
    ["a foreign name", "family: wire screen\nrecords: []\nshelf: 2", /shelf/],
    ["a name twice", screens(record("a"), record("a")), /twice/],
    ["bytes", "\u0000\u0001", /./],
  ])("says what is wrong with %s", (_, text, words) => {
    const { problems } = readCatalogue([{ path: "shop.yaml", text }]);
    expect(problems.length).toBeGreaterThan(0);
    expect(problems.map((each) => each.problem).join(" ")).toMatch(words);
    for (const each of problems) expect([each.file, each.line > 0, each.column > 0]).toEqual(["shop.yaml", true, true]);
  });

  it("proposes the family that was meant", () => {
    const [problem] = readCatalogue([{ path: "shop.yaml", text: "family: dampr\nrecords: []" }]).problems;
    expect(problem?.nearest).toBe("damper");
  });

  it("gives nothing for names that are not there", () => {
    const catalogue = readCatalogue([]);
    expect(catalogue.component("damper", "none") as Damper | undefined).toBeUndefined();
    expect(catalogue.component("no family", "none")).toBeUndefined();
    expect(catalogue.names("no family")).toEqual([]);
  });
});
