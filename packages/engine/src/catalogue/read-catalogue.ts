import { isMap, isSeq, type ParsedNode, type YAMLMap } from "yaml";
import { type RecordHead, recordFields } from "#component/family";
import { group } from "#form/field";
import { membersOf } from "#form/members";
import { nearestName } from "#form/nearest-name";
import type { Problem } from "#form/problem";
import { readGroup } from "#form/read-field";
import { type ReadContext, type Reading, report, resolved, scalarText, typedText, unsound } from "#form/reading";
import { takeApart } from "#form/source";
import { type AnyFamily, componentFamilies } from "./families.ts";

/** A text that holds records, and where it comes from. */
export interface CatalogueFile {
  readonly path: string;
  readonly text: string;
}

/** What is wrong with a record, and in which file. */
export interface CatalogueProblem extends Problem {
  readonly file: string;
}

/** Where a record in use comes from. */
export interface RecordOrigin {
  readonly file: string;
  /** Counted from 1. */
  readonly line: number;
  /** The files whose records of the same name it replaces. */
  readonly replaces: readonly string[];
}

/** The components that a job can name. */
export interface Catalogue {
  readonly families: readonly AnyFamily[];
  /** The component of a family under a name, or undefined. */
  readonly component: (family: string, name: string) => unknown;
  /** The names in a family, in the order in which they were read; empty for an unknown family. */
  readonly names: (family: string) => readonly string[];
  readonly origin: (family: string, name: string) => RecordOrigin | undefined;
  /** In the order of the files, then of their text. Sound records are there even where others are not. */
  readonly problems: readonly CatalogueProblem[];
}

interface Entry {
  readonly component: unknown;
  readonly origin: RecordOrigin;
}
type Shelf = Map<string, Entry>;

/**
 * Reads catalogue files, `family: filter medium` with its `records`. A record of a later file replaces the one of the
 * same name: a shop's own files come after the shipped ones. It does not throw, whatever the texts are.
 */
export function readCatalogue(
  files: readonly CatalogueFile[],
  families: readonly AnyFamily[] = componentFamilies,
): Catalogue {
  const shelves = new Map<string, Shelf>(families.map((family) => [family.name, new Map()]));
  const context: ReadContext = {
    component: (family, name) => shelves.get(family)?.get(name)?.component,
    componentNames: (family) => [...(shelves.get(family)?.keys() ?? [])],
  };
  const problems = files.flatMap((file) => readFile(file, families, shelves, context));
  return {
    families,
    component: context.component,
    names: context.componentNames,
    origin: (family, name) => shelves.get(family)?.get(name)?.origin,
    problems,
  };
}

function readFile(
  file: CatalogueFile,
  families: readonly AnyFamily[],
  shelves: ReadonlyMap<string, Shelf>,
  context: ReadContext,
): CatalogueProblem[] {
  const source = takeApart(file.text);
  const reading: Reading = { source, context, problems: [], defaults: [], places: new Map(), visited: 0 };
  reading.problems.push(...source.problems);
  if (source.problems.length === 0) readRecords(reading, file.path, families, shelves);
  return reading.problems
    .sort((a, b) => a.line - b.line || a.column - b.column)
    .map((problem) => ({ ...problem, file: file.path }));
}

function readRecords(
  reading: Reading,
  file: string,
  families: readonly AnyFamily[],
  shelves: ReadonlyMap<string, Shelf>,
): void {
  const contents = reading.source.document?.contents ?? null;
  const whole = { path: "", field: "", offset: 0 };
  if (!isMap(contents)) {
    report(reading, whole, "", "this is no catalogue file", "`family` and `records`");
    return;
  }
  const members = membersOf(reading, contents as YAMLMap.Parsed, ["family", "records"], whole).byName;
  const family = readFamily(reading, members.get("family")?.value ?? null, families);
  const records = members.get("records")?.value ?? null;
  if (family === undefined) return;
  if (!isSeq(records)) {
    const offset = records?.range?.[0] ?? 0;
    report(
      reading,
      { path: "records", field: "records", offset },
      typedText(reading, records),
      "no list of records",
      "a list; each record begins with a dash",
    );
    return;
  }
  const shelf = shelves.get(family.name) as Shelf;
  const seen = new Set<string>();
  records.items.forEach((item, index) => {
    readRecord(reading, item as ParsedNode, index, family, file, shelf, seen);
  });
}

function readFamily(reading: Reading, node: ParsedNode | null, families: readonly AnyFamily[]): AnyFamily | undefined {
  const name = scalarText(node) ?? "";
  const family = families.find((each) => each.name === name);
  if (family !== undefined) return family;
  const names = families.map((each) => each.name);
  const spot = { path: "family", field: "family", offset: node?.range[0] ?? 0 };
  const problem = name === "" ? "the family of the records is missing" : `"${name}" is not a family of components`;
  report(reading, spot, name, problem, names.join(", "), nearestName(name, names));
  return undefined;
}

function readRecord(
  reading: Reading,
  node: ParsedNode,
  index: number,
  family: AnyFamily,
  file: string,
  shelf: Shelf,
  seen: Set<string>,
): void {
  const path = `records[${index}]`;
  const spot = { path, field: "records", offset: node?.range?.[0] ?? 0 };
  const form = group({ ...recordFields, ...family.fields }, { meaning: family.meaning });
  const values = readGroup(reading, resolved(reading, node) ?? null, form, spot);
  if (values === unsound) return;
  const { name, typical, basis, source, date, note, ...own } = values as Record<string, unknown> & RecordHead;
  const head = { name, typical, basis, source, date, note };
  if (seen.has(name)) {
    report(reading, spot, name, `"${name}" stands twice in this file`, "one record of a name");
    return;
  }
  seen.add(name);
  const component = build(reading, family, own as never, head, spot);
  if (component === unsound) return;
  const before = shelf.get(name)?.origin;
  const replaces = before === undefined ? [] : [...before.replaces, before.file];
  const { line } = reading.source.placeOf(spot.offset);
  shelf.set(name, { component, origin: { file, line, replaces } });
}

/** Builds the component; figures that contradict one another are a problem of the record, at the field that is named. */
function build(
  reading: Reading,
  family: AnyFamily,
  values: never,
  head: Parameters<AnyFamily["build"]>[1],
  spot: { readonly path: string; readonly field: string; readonly offset: number },
): unknown {
  try {
    return family.build(values, head);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return report(reading, spot, head.name, `"${head.name}": ${error.message}`, "figures that fit together");
  }
}
