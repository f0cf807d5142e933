import { describe, expect, it } from "vitest";
import { insertItem, moveItem, removeAt, type Splice, spliceEdit } from "./splice.ts";

const job = `# for the marine wing
tag:   "AHU 1"      # on the drawings
zip: 012
duty:
  supply airflow: 18,400 cfm   # design
  days:

    # the wet one
    - 82 °F
    - 90 °F # dry
  notes: |
    as asked
    by telephone
  empty:
limits: { width: 120 in, height: '10 ft' }
unit:
  sections:
    - kind: fan      # first
      wheel: a
    # the coil
    - kind: coil
      rows: 8
    -   &c
        kind: coil
        rows: 6
    - *c
  hand: left
`;

function edited(splice: Splice): string {
  if (!splice.ok) throw new Error(splice.problem);
  return splice.text;
}

/** Old and new lines where two texts differ. */
function changed(before: string, after: string): [string[], string[]] {
  const [old, now] = [before.split("\n"), after.split("\n")];
  let head = 0;
  while (head < Math.min(old.length, now.length) && old[head] === now[head]) head += 1;
  let tail = 0;
  while (tail < Math.min(old.length, now.length) - head && old.at(-1 - tail) === now.at(-1 - tail)) tail += 1;
  return [old.slice(head, old.length - tail), now.slice(head, now.length - tail)];
}

describe("putting a value", () => {
  const edits: [path: string, value: string, old: string[], now: string[]][] = [
    [
      "duty.supplyAirflow",
      "20,000 cfm",
      ["  supply airflow: 18,400 cfm   # design"],
      ["  supply airflow: 20,000 cfm   # design"],
    ],
    ["tag", "AHU 2", ['tag:   "AHU 1"      # on the drawings'], ['tag:   "AHU 2"      # on the drawings']],
    ["tag", 'say "2"', ['tag:   "AHU 1"      # on the drawings'], ['tag:   "say \\"2\\""      # on the drawings']],
    ["zip", "013", ["zip: 012"], ["zip: 013"]],
    ["zip", "a: b # c", ["zip: 012"], ["zip: 'a: b # c'"]],
    ["zip", "", ["zip: 012"], ["zip: ''"]],
    ["zip", "two\nlines", ["zip: 012"], ['zip: "two\\nlines"']],
    ["zip", `6"`, ["zip: 012"], [`zip: 6"`]],
    ["duty.days[0]", "83 °F", ["    - 82 °F"], ["    - 83 °F"]],
    ["duty.days[1]", "91 °F", ["    - 90 °F # dry"], ["    - 91 °F # dry"]],
    ["duty.notes", "in writing", ["  notes: |", "    as asked", "    by telephone"], ["  notes: in writing"]],
    ["duty.empty", "8 ft", ["  empty:"], ["  empty: 8 ft"]],
    [
      "limits.height",
      "9 ft",
      ["limits: { width: 120 in, height: '10 ft' }"],
      ["limits: { width: 120 in, height: '9 ft' }"],
    ],
    [
      "limits.width",
      "1,200 mm",
      ["limits: { width: 120 in, height: '10 ft' }"],
      ["limits: { width: '1,200 mm', height: '10 ft' }"],
    ],
    [
      "limits.length",
      "30 ft",
      ["limits: { width: 120 in, height: '10 ft' }"],
      ["limits: { width: 120 in, height: '10 ft', length: 30 ft }"],
    ],
    ["unit.sections[1].rows", "6", ["      rows: 8"], ["      rows: 6"]],
    ["unit.sections[3]", "none", ["    - *c"], ["    - none"]],
    ["unit.sections[1].finPitch", "12 per in", [], ["      fin pitch: 12 per in"]],
    ["unit.sections[0].finPitch", "12 per in", [], ["      fin pitch: 12 per in"]],
    ["unit.sections[2].finPitch", "12 per in", [], ["        fin pitch: 12 per in"]],
    ["unit.casing.leakageClass", "6", [], ["  casing:", "    leakage class: 6"]],
    ["duty.empty.deep.deeper", "1", [], ["    deep:", "      deeper: 1"]],
    ["duty.newOne", "1", [], ["  new one: 1"]],
    ["site.altitude", "0 ft", [], ["site:", "  altitude: 0 ft"]],
  ];
  it.each(edits)("at %s: %s", (path, value, old, now) => {
    expect(changed(job, edited(spliceEdit(job, path, value)))).toEqual([old, now]);
  });

  it("keeps Windows line ends, and a missing last one missing", () => {
    const windows = job.replaceAll("\n", "\r\n");
    const after = edited(spliceEdit(windows, "unit.casing.leakageClass", "6"));
    expect(after.replaceAll("\r\n", "\n")).toBe(edited(spliceEdit(job, "unit.casing.leakageClass", "6")));
    expect(after.replaceAll("\r\n", "")).not.toContain("\n");
    expect(edited(spliceEdit("a: 1", "b", "2"))).toBe("a: 1\nb: 2");
    expect(edited(spliceEdit("\ufeffa: 1\n", "b", "2"))).toBe("\ufeffa: 1\nb: 2\n");
    expect(edited(spliceEdit("", "a.b", "2"))).toBe("a:\n  b: 2\n");
    expect(edited(spliceEdit("# only\n", "a", "2"))).toBe("# only\na: 2\n");
    expect(edited(spliceEdit("a: {}\n", "a.b", "1,200 mm"))).toBe("a: {b: '1,200 mm'}\n");
  });

  const refused: [path: string, reason: RegExp][] = [
    ["unit.sections[3].rows", /written elsewhere/],
    ["unit.sections[9].rows", /no such item/],
    ["unit.sections", /a group or a list stands there/],
    ["zip.code", /where the path needs a group/],
    ["", /not a path/],
    ["a..b", /not a path/],
  ];
  it.each(refused)("is refused at %s", (path, reason) => {
    const splice = spliceEdit(job, path, "1");
    expect(splice.ok ? "" : splice.problem).toMatch(reason);
  });

  it("is refused in a text that cannot be read", () => {
    expect(spliceEdit("a: 'x", "a", "1")).toMatchObject({ ok: false, problem: expect.stringMatching(/quote/) });
    expect(spliceEdit("a: 1\na: 2\n", "a", "3")).toMatchObject({ ok: false });
  });
});

describe("taking out", () => {
  const cuts: [path: string, old: string[], now: string[]][] = [
    ["zip", ["zip: 012"], []],
    ["duty.notes", ["  notes: |", "    as asked", "    by telephone"], []],
    ["duty.empty", ["  empty:"], []],
    ["duty.days[1]", ["    - 90 °F # dry"], []],
    ["limits.width", ["limits: { width: 120 in, height: '10 ft' }"], ["limits: { height: '10 ft' }"]],
    ["limits.height", ["limits: { width: 120 in, height: '10 ft' }"], ["limits: { width: 120 in }"]],
    ["unit.sections[0]", ["    - kind: fan      # first", "      wheel: a"], []],
    ["unit.sections[1]", ["    - kind: coil", "      rows: 8"], []],
    ["unit.sections[3]", ["    - *c"], []],
    ["unit.sections[0].kind", ["    - kind: fan      # first", "      wheel: a"], ["    - wheel: a"]],
    ["unit.hand", ["  hand: left"], []],
  ];
  it.each(cuts)("%s", (path, old, now) => {
    expect(changed(job, edited(removeAt(job, path)))).toEqual([old, now]);
  });

  it("leaves an empty group or list behind the last one", () => {
    expect(edited(removeAt("a:\n  - 1\nb: 2\n", "a[0]"))).toBe("a:\nb: 2\n");
    expect(edited(removeAt("a: [1]\n", "a[0]"))).toBe("a: []\n");
    expect(edited(removeAt("a: 1", "a"))).toBe("");
  });

  it("is refused where nothing stands, and where others refer to it", () => {
    expect(removeAt(job, "duty.nothing")).toMatchObject({ ok: false, problem: "nothing is written there" });
    expect(removeAt(job, "unit.sections[2]")).toMatchObject({
      ok: false,
      problem: expect.stringMatching(/referred to/),
    });
  });
});

describe("putting an item into a list", () => {
  const item = "kind: spray gap\nlength: 12 in  # hatches\n";
  const lines = ["    - kind: spray gap", "      length: 12 in  # hatches"];
  it.each([0, 1, 2, 3, 4])("at %d moves the others on", (index) => {
    const after = edited(insertItem(job, "unit.sections", index, item));
    expect(after.split("\n").filter((line) => !lines.includes(line))).toEqual(job.split("\n"));
    const kinds = [...after.slice(after.indexOf("sections")).matchAll(/kind: (\w+)|- (\*c)/g)].map(
      (found) => found[1] ?? found[2],
    );
    const expected = ["fan", "coil", "coil", "*c"];
    expected.splice(index, 0, "spray");
    expect(kinds).toEqual(expected);
  });

  it("begins a list", () => {
    expect(edited(insertItem("a:\n  b:\nc: 1\n", "a.b", 0, "x: 1\ny: 2"))).toBe(
      "a:\n  b:\n    - x: 1\n      y: 2\nc: 1\n",
    );
    expect(edited(insertItem("a: []  # none\nc: 1\n", "a", 0, "x: 1"))).toBe("a:\n  - x: 1  # none\nc: 1\n");
    expect(edited(insertItem("c: 1\n", "a.b", 0, "x: 1\ny: 2"))).toBe("c: 1\na:\n  b:\n    - x: 1\n      y: 2\n");
  });

  it("goes into brackets on one line", () => {
    expect(edited(insertItem("a: [1, 2]\n", "a", 0, "3"))).toBe("a: [3, 1, 2]\n");
    expect(edited(insertItem("a: [1, 2]\n", "a", 2, "x: 18,400 cfm\ny: [1]"))).toBe(
      "a: [1, 2, { x: '18,400 cfm', y: [1] }]\n",
    );
    expect(edited(insertItem("a: { b: [] }\n", "a.b", 0, "012"))).toBe("a: { b: [012] }\n");
    expect(edited(insertItem("a: {}\n", "a.b", 0, "1"))).toBe("a: {b: [1]}\n");
  });

  it("is refused where there is no list, no such place, or no such item", () => {
    expect(insertItem(job, "zip", 0, "1")).toMatchObject({ ok: false, problem: "what stands there is not a list" });
    expect(insertItem(job, "duty.days", 3, "1")).toMatchObject({ ok: false, problem: "the list has 2 items" });
    expect(insertItem(job, "duty.days", 0, "'x")).toMatchObject({
      ok: false,
      problem: expect.stringMatching(/cannot be read/),
    });
  });
});

describe("a list whose items stand apart", () => {
  const apart = "a:\n  - x: 1\n\n  - x: 2\n\n# end\nb: 3\n";

  it.each([
    [0, "a:\n  - n: 9\n\n  - x: 1\n\n  - x: 2\n\n# end\nb: 3\n"],
    [1, "a:\n  - x: 1\n\n  - n: 9\n\n  - x: 2\n\n# end\nb: 3\n"],
    [2, "a:\n  - x: 1\n\n  - x: 2\n\n  - n: 9\n\n# end\nb: 3\n"],
  ])("takes a new one at %d as apart, and gives it back with its blank line", (index, now) => {
    const put = edited(insertItem(apart, "a", index, "n: 9"));
    expect(put).toBe(now);
    expect(edited(removeAt(put, `a[${index}]`))).toBe(apart);
  });
});

describe("moving an item", () => {
  const list =
    "a:\n  # of one\n  - n: one # 1\n    deep: { x: 1 }\n\n  - n: two\n  # of three\n  # too\n  - n: three\n\n# end\nb: 3";

  it("takes its comment along, and leaves blank lines where they are", () => {
    expect(edited(moveItem(list, "a", 0, 2))).toBe(
      "a:\n  - n: two\n\n  # of three\n  # too\n  - n: three\n  # of one\n  - n: one # 1\n    deep: { x: 1 }\n\n# end\nb: 3",
    );
    expect(edited(moveItem(list, "a", 2, 1))).toBe(
      "a:\n  # of one\n  - n: one # 1\n    deep: { x: 1 }\n\n  # of three\n  # too\n  - n: three\n  - n: two\n\n# end\nb: 3",
    );
  });

  it.each([
    [0, 0],
    [0, 1],
    [0, 2],
    [1, 2],
    [2, 0],
  ])("from %d to %d and back gives the same bytes, with either line end", (from, to) => {
    for (const text of [list, list.replaceAll("\n", "\r\n"), "a:\n  - 1\n  - 2\n\n  - 3"]) {
      const there = edited(moveItem(text, "a", from, to));
      expect(there === text).toBe(from === to);
      expect(edited(moveItem(there, "a", to, from))).toBe(text);
    }
  });

  it("works in brackets, and says why it cannot be done", () => {
    expect(edited(moveItem("a: [1, { x: 2 },  3]\n", "a", 1, 2))).toBe("a: [1, 3,  { x: 2 }]\n");
    expect(moveItem(list, "a", 0, 3)).toMatchObject({ ok: false, problem: "the list has 3 items" });
    expect(moveItem(list, "b", 0, 1)).toMatchObject({ ok: false, problem: "what stands there is not a list" });
    expect(moveItem(job, "unit.sections", 3, 0)).toMatchObject({ ok: false });
  });
});
