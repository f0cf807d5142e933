import fc from "fast-check";
import { describe, expect, expectTypeOf, it } from "vitest";
import { choice, component, factor, flag, group, integer, list, quantity, text, variant } from "./field.ts";
import { problemText } from "./problem.ts";
import { readForm } from "./read.ts";
import type { ReadContext } from "./reading.ts";

interface Wheel {
  readonly diameter: number;
}

const wheels: Readonly<Record<string, Wheel>> = { "wheel 27": { diameter: 0.7 }, "wheel 30": { diameter: 0.76 } };
const context: ReadContext = {
  component: (family, name) => (family === "wheel" && Object.hasOwn(wheels, name) ? wheels[name] : undefined),
  componentNames: () => Object.keys(wheels),
};

const fields = {
  tag: text({ meaning: "name of the unit", longest: 20 }),
  supplyAirflow: quantity("airflow", { meaning: "air to the duct", minimum: "100 cfm", maximum: "100,000 cfm" }),
  site: group(
    {
      altitude: quantity("length", { meaning: "height above the sea", default: "0 ft" }),
      roof: flag({ meaning: "on a roof", default: true }),
    },
    { meaning: "where it stands" },
  ),
  limits: group(
    { least: quantity("temperature", { meaning: "least" }), most: quantity("temperature", { meaning: "most" }) },
    {
      meaning: "limits of supply air",
      optional: true,
      check: (values, say) => {
        if (Number(values.least) > Number(values.most)) say("least", "the least is above the most", "at most the most");
      },
    },
  ),
  share: quantity("share", { meaning: "outside air", optional: true, minimum: "30 %", maximum: "100 %" }),
  sections: list(
    variant(
      {
        steamCoil: {
          rows: integer({ meaning: "rows", minimum: 1, maximum: 4 }),
          pitch: quantity("pitch", { meaning: "fins", default: "8 per in" }),
          wheel: component<Wheel>()("wheel", { meaning: "unused wheel", optional: true }),
        },
        fan: {
          wheel: component<Wheel>()("wheel", { meaning: "wheel", default: "wheel 27" }),
          drive: choice(["belt", "direct"], { meaning: "drive", default: "direct" }),
          service: factor({ meaning: "service factor", default: 1.15, minimum: 1, maximum: 2 }),
        },
      },
      {
        meaning: "a section",
        checks: {
          fan: (values, say) => {
            if (values.drive === "belt" && Number(values.service) < 1.4)
              say("service", "too small for belts", "at least 1.4");
          },
        },
      },
    ),
    { meaning: "sections in airflow order", fewest: 1, most: 3 },
  ),
} as const;

const read = (source: string) => readForm(source, fields, context);
const said = (source: string) => read(source).problems.map(problemText);

const soundText = `# the unit on the north roof
tag: 012
supply airflow: 18,400 cfm   # design
sections:
  - kind: steam coil
    rows: 2
  - &fan
    kind: fan
    drive: belt
    service: 1-1/2
  - *fan
`;

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
  const head = "tag: a\nsupply airflow: 500 cfm\n";
  const tail = "sections: [{kind: fan}]\n";
  const cases: [what: string, source: string, says: string[]][] = [
    [
      "a mistyped name, and not that the meant one is missing",
      `tag: a\nsuply airflow: 500 cfm\n${tail}`,
      [
        'line 2, column 1: suply airflow: "suply airflow" is not a name known here; allowed: tag, supply airflow, site, limits, share or sections; did you mean "supply airflow"?',
      ],
    ],
    [
      "a missing value",
      `tag: a\n${tail}`,
      [
        'line 1, column 1: supply airflow: "supply airflow" is missing; allowed: an airflow in cfm, m³/s, m³/h, m³/min, L/s, acfm, actual m³/s, actual m³/h or another unit of airflow, such as 18,400 cfm; at least 100 cfm and at most 100,000 cfm',
      ],
    ],
    [
      "a number without unit",
      `${head}share: 0.85\n${tail}`,
      ['line 3, column 8: share: "0.85" has no unit; allowed: a share in %, such as 85 %'],
    ],
    [
      "limits in the unit that was typed",
      `tag: a\nsupply airflow: 10 L/s\n${tail}`,
      [
        'line 2, column 17: supply airflow: "10 L/s" is below the least that is allowed; allowed: at least 47.1947 L/s (100 cfm) and at most 47,194.7 L/s (100,000 cfm)',
      ],
    ],
    [
      "limits in the same unit once",
      `${head}share: 20 %\n${tail}`,
      ['line 3, column 8: share: "20 %" is below the least that is allowed; allowed: at least 30 % and at most 100 %'],
    ],
    [
      "a name written twice",
      `${head}tag: b\n${tail}`,
      ['line 3, column 1: tag: "tag" is written twice; allowed: "tag" once; the first is on line 1'],
    ],
    [
      "a comma that ends a value in braces",
      `${head}site: {altitude: 6,200 ft}\n${tail}`,
      [
        'line 3, column 18: altitude: "6" has no unit; allowed: a length in in, ft, mm, cm, m, mil or µm, such as 3-1/2 in',
        'line 3, column 20: 200 ft: inside braces a comma ends the value; allowed: a number without commas inside braces, or in quotes: "18,400 cfm"',
      ],
    ],
    [
      "a text that is too long",
      `tag: ${"a".repeat(21)}\nsupply airflow: 500 cfm\n${tail}`,
      ["line 1, column 6: tag: the text has 21 characters; allowed: at most 20 characters"],
    ],
    [
      "neither yes nor no",
      `${head}site:\n  roof: maybe\n${tail}`,
      ['line 4, column 9: roof: "maybe" is neither yes nor no; allowed: yes or no'],
    ],
    [
      "nothing behind a name",
      `${head}share:\n${tail}`,
      [
        "line 3, column 1: share: nothing is written here; allowed: a share in %, such as 85 %; at least 30 % and at most 100 %",
      ],
    ],
    [
      "an optional group with missing members",
      `${head}limits:\n  least: 40 °F\n${tail}`,
      ['line 3, column 1: most: "most" is missing; allowed: a temperature in °F, °C, K or °R, such as 98 °F'],
    ],
    [
      "members that contradict one another",
      `${head}limits:\n  least: 60 °F\n  most: 50 °F\n${tail}`,
      ["line 4, column 10: least: the least is above the most; allowed: at most the most"],
    ],
    [
      "too few items",
      `${head}sections:\n`,
      ["line 3, column 1: sections: the list has 0 items; allowed: 1 to 3 items"],
    ],
    [
      "a list that is none",
      `${head}sections: fan\n`,
      ["line 3, column 11: sections: a single value stands here; allowed: a list: a dash before each item"],
    ],
    [
      "a kind that does not exist",
      `${head}sections:\n  - kind: steam coyl\n    rows: 2\n`,
      [
        'line 4, column 11: kind: "steam coyl" is not a kind known here; allowed: steam coil or fan; did you mean "steam coil"?',
      ],
    ],
    [
      "no kind",
      `${head}sections:\n  - rows: 2\n`,
      ['line 4, column 5: kind: "kind" is missing; allowed: steam coil or fan'],
    ],
    [
      "whole numbers, limits and words",
      `${head}sections:\n  - {kind: steam coil, rows: 2.5}\n  - {kind: steam coil, rows: 9}\n  - {kind: steam coil, rows: two}\n`,
      [
        'line 4, column 30: rows: "2.5" is not a whole number; allowed: a whole number, at least 1 and at most 4',
        'line 5, column 30: rows: "9" is above the most that is allowed; allowed: a whole number, at least 1 and at most 4',
        'line 6, column 30: rows: "two" is not a number; allowed: a whole number, at least 1 and at most 4',
      ],
    ],
    [
      "a unit where a bare number stands",
      `${head}sections: [{kind: steam coil, rows: 2 in}]\n`,
      ['line 3, column 37: rows: "2 in" is more than a bare number; allowed: a whole number, at least 1 and at most 4'],
    ],
    [
      "a component that the catalogue does not have",
      `${head}sections: [{kind: fan, wheel: wheel 28}]\n`,
      [
        'line 3, column 31: wheel: the catalogue has no wheel called "wheel 28"; allowed: wheel 27 or wheel 30; did you mean "wheel 27"?',
      ],
    ],
    [
      "a choice that is none",
      `${head}sections: [{kind: fan, drive: belts}]\n`,
      ['line 3, column 31: drive: "belts" is not one of the choices; allowed: belt or direct; did you mean "belt"?'],
    ],
    [
      "what a variant's members must fulfil together, at the group where a default is wrong",
      `${head}sections:\n  - kind: fan\n    drive: belt\n`,
      ["line 4, column 5: service: too small for belts; allowed: at least 1.4"],
    ],
    [
      "a reference to nothing",
      `tag: *a\nsupply airflow: 500 cfm\n${tail}`,
      ['line 1, column 6: tag: "*a" refers to nothing; allowed: an anchor that stands further up'],
    ],
    [
      "a group where one value belongs",
      `tag: {a: 1}\nsupply airflow: [1, 2]\n${tail}`,
      [
        "line 1, column 6: tag: a group of names stands here; allowed: text of at most 20 characters",
        "line 2, column 17: supply airflow: a list stands here; allowed: an airflow in cfm, m³/s, m³/h, m³/min, L/s, acfm, actual m³/s, actual m³/h or another unit of airflow, such as 18,400 cfm; at least 100 cfm and at most 100,000 cfm",
      ],
    ],
    [
      "an empty text",
      "",
      ["line 1, column 1: the text is empty; allowed: a text with the names tag, supply airflow and sections"],
    ],
    [
      "a text of comments alone",
      "# nothing\n\n",
      ["line 1, column 1: the text is empty; allowed: a text with the names tag, supply airflow and sections"],
    ],
    [
      "a list as the whole text",
      "- a\n",
      ["line 1, column 1: a list stands here; allowed: the names tag, supply airflow, site, limits, share or sections"],
    ],
    [
      "a binary file",
      "tag: a\n\u0000\u0001",
      ["line 2, column 1: this is not a text file; allowed: plain text in UTF-8"],
    ],
    [
      "a huge text",
      "#".repeat(4 * 1024 * 1024 + 1),
      ["line 1, column 1: the text is too long: 4.0 million characters; allowed: at most 4 million characters"],
    ],
    [
      "brackets without end",
      `tag: ${"[".repeat(100_000)}`,
      ["line 1, column 66: the text is nested too deeply; allowed: at most 60 levels"],
    ],
    [
      "dashes without end",
      `${"- ".repeat(100_000)}a`,
      ["line 1, column 1: the text is nested too deeply; allowed: at most 60 levels"],
    ],
    [
      "a tab",
      "tag: a\nsite:\n\troof: yes\n",
      ["line 3, column 1: a tab stands where lines are moved in; allowed: spaces, two for each level"],
    ],
    [
      "a second colon",
      "tag: AHU: north\n",
      [
        'line 1, column 6: a second name begins on the line; allowed: one name and its value to a line; text with a colon and a space in quotes: "like: this"',
      ],
    ],
    [
      "a quote without end",
      'tag: "a\n',
      ["line 2, column 1: a quote is not closed; allowed: the same quote at both ends"],
    ],
    [
      "a minus with a space",
      "tag: - 40 °F\n",
      ["line 1, column 6: a dash and a space begin a list on the line of its name; allowed: -40 °F without the space"],
    ],
    [
      "no space after a colon",
      "tag:a\nshare: 85 %\n",
      ["line 1, column 1: a name is not followed by a colon and a space; allowed: name: value"],
    ],
    [
      "a line too far left",
      "site:\n    roof: yes\n  altitude: 0 ft\n",
      [
        "line 3, column 1: the line does not begin in the column where it should; allowed: names of one group begin in the same column; what belongs to a name is two spaces further in",
      ],
    ],
    [
      "a sign that begins nothing",
      "tag: @north\n",
      ['line 1, column 6: a value cannot begin with this sign; allowed: put the text in quotes: "@ 12 in"'],
    ],
    [
      "two texts in one",
      "tag: a\n---\ntag: b\n",
      [
        "line 2, column 1: a second text begins here; allowed: one text to a file, without lines of three dashes or dots",
      ],
    ],
  ];
  it.each(cases)("tell %s", (_what, source, says) => {
    expect(said(source)).toEqual(says);
  });

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
