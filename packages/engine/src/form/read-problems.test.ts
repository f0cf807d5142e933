import { describe, expect, it } from "vitest";
import { problemText } from "./problem.ts";
import { context, fields } from "./read.test-data.ts";
import { readForm } from "./read.ts";

const said = (source: string) => readForm(source, fields, context).problems.map(problemText);

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
});
