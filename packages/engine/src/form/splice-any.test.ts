import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { factor, group, list, text, variant } from "./field.ts";
import { readForm } from "./read.ts";
import { insertItem, removeAt, spliceEdit } from "./splice.ts";

describe("any edit", () => {
  const fields = {
    tag: text({ meaning: "a", optional: true }),
    group: group(
      { note: text({ meaning: "a", optional: true }), rate: factor({ meaning: "a", default: 1 }) },
      { meaning: "a" },
    ),
    items: list(variant({ fan: { note: text({ meaning: "a", optional: true }) } }, { meaning: "a" }), { meaning: "a" }),
  } as const;
  const context = { component: () => undefined, componentNames: () => [] };
  const word = fc.constantFrom(
    "x",
    "012",
    "24,000 cfm",
    "3'-6\"",
    "no # comment",
    "a: b",
    "~",
    "é",
    "- 1",
    "[",
    "  ",
    "true",
    "*x",
    "null",
  );
  const free = fc.oneof(
    word,
    fc.string({ unit: "grapheme", maxLength: 12 }).filter((each) => !/\p{C}/u.test(each)),
  );
  const comment = fc.constantFrom("", "  # a note", "\n# a line of its own", "\n\n");
  const entry = (name: string) =>
    fc.tuple(fc.constantFrom("plain", '"old"', "'old'", "012"), comment).map(([v, c]) => `${name}: ${v}${c}`);
  const items = fc
    .array(entry("- kind: fan\n    note"), { maxLength: 3 })
    .map((each) => `items:\n${each.map((one) => `  ${one.replaceAll("\n#", "\n  #")}`).join("\n")}\n`);
  const inBraces = fc.constantFrom(
    "group: {note: a, rate: 2}\n",
    "group: {}\n",
    "group:\n  note: b # c\n\n  rate: 2\n",
    "group:\n",
  );
  const document = fc.tuple(entry("tag"), inBraces, items, fc.boolean()).map(([a, b, c, windows]) => {
    const whole = `${a}\n${b}${c}`;
    return windows ? whole.replaceAll("\n", "\r\n") : whole;
  });

  it("leaves every character outside of it as it was, and is read back as put", () => {
    const path = fc.constantFrom("tag", "group.note", "items[0].note", "items[1].note");
    fc.assert(
      fc.property(document, path, free, (source, at, value) => {
        const before = readForm(source, fields, context);
        if (!before.ok) throw new Error(`${JSON.stringify(source)} ${JSON.stringify(before.problems)}`);
        const index = Number(/\d/.exec(at)?.[0] ?? -1);
        const splice = spliceEdit(source, at, value);
        if (index >= before.values.items.length) {
          expect(splice.ok).toBe(false);
          return;
        }
        if (!splice.ok) throw new Error(splice.problem);
        expect(splice.text.slice(0, splice.start)).toBe(source.slice(0, splice.start));
        expect(splice.text.slice(splice.start + splice.inserted.length)).toBe(source.slice(splice.end));
        const after = readForm(splice.text, fields, context);
        if (!after.ok) throw new Error(JSON.stringify(after.problems));
        const expected = structuredClone(before.values) as unknown as {
          tag?: string;
          group: { note?: string };
          items: { note?: string }[];
        };
        const target = index >= 0 ? expected.items[index] : at === "tag" ? expected : expected.group;
        if (at === "tag") expected.tag = value;
        else if (target !== undefined) (target as { note?: string }).note = value;
        expect(after.values).toEqual(expected);
      }),
      { numRuns: 1500 },
    );
  });

  it("put in and taken out again gives the same bytes", () => {
    fc.assert(
      fc.property(document, fc.nat(3), (source, place) => {
        const before = readForm(source, fields, context);
        const index = Math.min(place, before.values?.items.length ?? 0);
        const put = insertItem(source, "items", index, "kind: fan\nnote: new");
        if (!put.ok) throw new Error(put.problem);
        const out = removeAt(put.text, `items[${index}]`);
        expect(out.ok && out.text).toBe(source);
      }),
      { numRuns: 500 },
    );
  });

  it("of any text at all does not throw", () => {
    const letters = fc.constantFrom(..."ab01 :-[]{}\"'#&*!|>,?\n\r\t".split(""));
    const path = fc.constantFrom("a", "a.b", "a[0]", "b[1].a", "[0]");
    fc.assert(
      fc.property(fc.string({ unit: letters, maxLength: 40 }), path, free, (source, at, value) => {
        for (const splice of [spliceEdit(source, at, value), removeAt(source, at), insertItem(source, at, 0, value)]) {
          if (splice.ok) expect(splice.text.startsWith(source.slice(0, splice.start))).toBe(true);
          else expect(splice.problem).not.toBe("");
        }
      }),
      { numRuns: 3000 },
    );
  });
});
