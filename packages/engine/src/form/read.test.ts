import fc from "fast-check";
import { describe, expect, expectTypeOf, it } from "vitest";
import { factor, list } from "./field.ts";
import { problemText } from "./problem.ts";
import { context, fields, soundText, wheels } from "./read.test-data.ts";
import { readForm } from "./read.ts";

const read = (source: string) => readForm(source, fields, context);

describe("a sound text", () => {
  const reading = read(soundText);

  it("gives values of the fields' types", () => {
    expect(reading.problems).toEqual([]);
    if (!reading.ok) throw new Error("has problems");
    const { values } = reading;
    expectTypeOf(values.supplyAirflow).toEqualTypeOf<number>();
    expectTypeOf(values.share).toEqualTypeOf<number | undefined>();
    const fan = { kind: "fan", wheel: wheels["wheel 27"], drive: "belt", service: 1.5 };
    expect(values).toEqual({
      tag: "012",
      supplyAirflow: 18400 * (0.3048 ** 3 / 60),
      site: { altitude: 0, roof: true },
      limits: undefined,
      share: undefined,
      sections: [{ kind: "steamCoil", rows: 2, pitch: 8 / 0.0254, wheel: undefined }, fan, fan],
    });
    const first = values.sections[0];
    if (first?.kind === "steamCoil") expectTypeOf(first.rows).toEqualTypeOf<number>();
  });

  it("lists every default with its meaning", () => {
    expect(reading.defaults).toEqual([
      { path: "site.altitude", value: "0 ft", meaning: "height above the sea" },
      { path: "site.roof", value: "yes", meaning: "on a roof" },
      { path: "sections[0].pitch", value: "8 per in", meaning: "fins" },
      { path: "sections[1].wheel", value: "wheel 27", meaning: "wheel" },
      { path: "sections[2].wheel", value: "wheel 27", meaning: "wheel" },
    ]);
  });

  it("knows where every value stands", () => {
    const place = reading.places("supplyAirflow");
    expect(place).toMatchObject({ line: 3, column: 17, text: "18,400 cfm", unit: "cfm" });
    expect(soundText.slice(place?.start, place?.end)).toBe("18,400 cfm");
    expect(reading.places("sections[1].service")).toMatchObject({ line: 10, text: "1-1/2" });
    expect(reading.places("sections[1].kind")).toMatchObject({ text: "fan" });
    expect(reading.places("sections[0].pitch")).toBeUndefined();
    expect(reading.pathAt(soundText.indexOf("1-1/2") + 1)).toBe("sections[1].service");
    expect(reading.pathAt(soundText.indexOf("rows"))).toBe("sections[0]");
  });

  it("may have Windows line ends, a byte order mark and braces", () => {
    expect(read(soundText.replaceAll("\n", "\r\n")).ok).toBe(true);
    expect(read(`\ufeff${soundText}`).ok).toBe(true);
    expect(read('{tag: a, supply airflow: "18,400 cfm", sections: [{kind: fan}], site: }').ok).toBe(true);
  });
});

describe("problems", () => {
  it("come all at once, in the order of the text", () => {
    const source =
      "tag: a\nsupply airflow: 5\nshare: 300 %\nsections:\n  - kind: fan\n    drive: rope\n    colour: red\n";
    const { problems, ok, values } = read(source);
    expect(ok).toBe(false);
    expect(values).toBeUndefined();
    expect(problems.map((each) => [each.line, each.path])).toEqual([
      [2, "supplyAirflow"],
      [3, "share"],
      [6, "sections[0].drive"],
      [7, "sections[0].colour"],
    ]);
    expect(problems[1]).toMatchObject({ field: "share", value: "300 %", severity: "error" });
  });

  it("of anchors that multiply end", () => {
    const lists = {
      rows: list(list(list(factor({ meaning: "a" }), { meaning: "b" }), { meaning: "c" }), { meaning: "d" }),
    } as const;
    const hundred = (what: string) => `[${Array(100).fill(what).join(", ")}]`;
    const reading = readForm(
      `rows:\n- [&a ${hundred("1")}, *a]\n- &b ${hundred("*a")}\n${"- *b\n".repeat(100)}`,
      lists,
      context,
    );
    expect(reading.problems.map(problemText)).toEqual([expect.stringMatching(/too many values/)]);
  });
});

describe("whatever the text is", () => {
  it("reading does not throw", () => {
    const letters = fc.constantFrom(..."abz019 :-[]{}\"'#&*!|>%@`,?\n\t\\.~\u0000é".split(""));
    fc.assert(
      fc.property(fc.string({ unit: letters, maxLength: 60 }), (source) => {
        expect(read(source).ok).toBe(false);
      }),
      { numRuns: 2000 },
    );
  });

  it("a sound text spoiled anywhere is still read or refused in words", () => {
    fc.assert(
      fc.property(fc.nat(soundText.length), fc.nat(6), fc.string({ maxLength: 4 }), (at, gone, put) => {
        const reading = read(soundText.slice(0, at) + put + soundText.slice(at + gone));
        expect(reading.ok).toBe(reading.problems.length === 0);
        for (const problem of reading.problems) {
          expect(problem.line).toBeGreaterThan(0);
          expect(problem.column).toBeGreaterThan(0);
          expect(problem.problem).not.toBe("");
        }
      }),
      { numRuns: 1000 },
    );
  });
});
