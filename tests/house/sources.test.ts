import { describe, expect, it } from "vitest";
import { filesBelow, readText } from "./project.ts";

interface Citation {
  readonly path: string;
  readonly key: string;
}

const bibliography: Record<string, Record<string, unknown>> = JSON.parse(readText("reference/bibliography.json"));
const keys = Object.keys(bibliography);

/** What a file cites: the first word of each `@source`, of each `…source:` text, and whatever there looks like a dated key. */
function citationsIn(text: string): string[] {
  const tags = [...text.matchAll(/@source\s+(.+)/g)].map((found) => found[1] ?? "");
  const fields = [
    ...text.matchAll(/\b\w*[sS]ource"?\??\s*[:=]\s*(?:["'`]([^"'`\n]+)["'`]|([a-z0-9]+(?:-[a-z0-9]+)+)(?=[\s,;]|$))/gm),
  ].map((found) => found[1] ?? found[2] ?? "");
  const lists = [...text.matchAll(/"sources"\s*:\s*\[([^\]]*)\]/g)].flatMap((found) =>
    [...(found[1] ?? "").matchAll(/"([^"]+)"/g)].map((item) => item[1] ?? ""),
  );
  return [...tags, ...fields, ...lists].flatMap((place) => {
    const first = place.split(/[\s,;:]/)[0] ?? "";
    return [first, ...(place.match(/\b[a-z]+(?:-[a-z0-9]+)*-(?:18|19|20)\d\d\b(?:-[a-z0-9]+)*/g) ?? [])];
  });
}

const citingFolders = ["packages/engine/src", "catalogue", "shop", "profiles", "reference/cases"];
const citations: Citation[] = citingFolders
  .flatMap(filesBelow)
  .filter((path) => /\.(tsx?|ya?ml|json)$/.test(path) && !/\.(test|test-data)\.tsx?$/.test(path))
  .flatMap((path) => citationsIn(readText(path)).map((key) => ({ path, key })))
  .filter(({ key }) => /^[a-z0-9]+(-[a-z0-9]+)*$/.test(key));

describe("the bibliography", () => {
  it("is sorted, with keys in lower case and hyphens", () => {
    expect(keys).toEqual([...keys].sort());
    expect(keys.filter((key) => !/^[a-z0-9]+(-[a-z0-9]+)*$/.test(key))).toEqual([]);
  });

  it.each(keys)("says what %s is", (key) => {
    const { title, author, year, kind, note } = bibliography[key] ?? {};
    expect([typeof title, typeof author, typeof kind, typeof note]).toEqual(["string", "string", "string", "string"]);
    expect(title).not.toBe("");
    expect(kind).not.toBe("");
    expect(year === null || (Number.isInteger(year) && Number(year) > 1700)).toBe(true);
  });

  it("knows every source that is cited", () => {
    expect(citations.length).toBeGreaterThan(0);
    const unknown = citations.filter(({ key }) => !Object.hasOwn(bibliography, key));
    expect(unknown.map(({ path, key }) => `${path} cites ${key}`).join("\n")).toBe("");
  });

  it("names no source that nobody cites", () => {
    const texts = [...citingFolders, "docs", "packages/node/src", "packages/web/src", "tests", "examples"]
      .flatMap(filesBelow)
      .filter((path) => /\.(tsx?|ya?ml|json|md)$/.test(path))
      .map(readText)
      .join("\n");
    const idle = keys.filter((key) => !new RegExp(`(?<![a-z0-9-])${key}(?![a-z0-9-])`).test(texts));
    expect(idle).toEqual([]);
  });
});

describe("reading of citations", () => {
  it("finds keys in tags, fields, names of constants and lists", () => {
    expect(citationsIn(" * @source some-book-1999 eq. 4; idea of other-paper-2001, from memory")).toEqual([
      "some-book-1999",
      "some-book-1999",
      "other-paper-2001",
    ]);
    expect(citationsIn('  source: "a-standard ch. 3",')).toEqual(["a-standard"]);
    expect(citationsIn('const bladeSource = "a-report";')).toEqual(["a-report"]);
    expect(citationsIn("  source: a-record-key\n")).toEqual(["a-record-key"]);
    expect(citationsIn('{ "sources": ["first-key", "second-key p. 3"] }')).toEqual(["first-key", "second-key"]);
    expect(citationsIn("readonly source: string;")).toEqual([]);
  });
});
