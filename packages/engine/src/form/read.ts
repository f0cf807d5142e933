import type { ParsedNode } from "yaml";
import type { Fields, GroupCheck, ValuesOf } from "./field.ts";
import { textKey } from "./key.ts";
import type { Problem } from "./problem.ts";
import { mayBeLeftOut, readGroup } from "./read-field.ts";
import { listed } from "./read-scalar.ts";
import type { DefaultApplied, Place, ReadContext, Reading } from "./reading.ts";
import { report, unsound } from "./reading.ts";
import { takeApart } from "./source.ts";

/** What reading a text came to. Values are there only when no problem is an error. */
export type FormReading<Values> = ReadParts &
  ({ readonly ok: true; readonly values: Values } | { readonly ok: false; readonly values: undefined });

interface ReadParts {
  /** In the order of the text. */
  readonly problems: readonly Problem[];
  /** Every value that the text does not give. */
  readonly defaults: readonly DefaultApplied[];
  /** Where the value of a path stands in the text, `unit.sections[3].rows`; undefined when it is not written. */
  readonly places: (path: string) => Place | undefined;
  /** The path of the smallest value that covers an offset of the text: what a cursor stands in. */
  readonly pathAt: (offset: number) => string | undefined;
}

/**
 * Reads a text as a form: every problem at once with its place, every default applied, and the place of every value.
 * It does not throw, whatever the text is; a field descriptor that contradicts itself does (see `checkFields`).
 * `check` is asked about all values together when each is sound.
 */
export function readForm<const F extends Fields>(
  text: string,
  fields: F,
  context: ReadContext,
  check?: GroupCheck,
): FormReading<ValuesOf<F>> {
  const source = takeApart(text);
  const places = new Map<string, Place>();
  const reading: Reading = { source, context, problems: [], defaults: [], places, visited: 0 };
  const parts = {
    problems: reading.problems,
    defaults: reading.defaults,
    places: (path: string) => places.get(path),
    pathAt: (offset: number) => smallestAround(places, offset),
  };
  reading.problems.push(...source.problems);
  if (source.problems.length > 0) return { ...parts, ok: false, values: undefined };
  const contents = (source.document?.contents ?? null) as ParsedNode | null;
  const needed = Object.entries(fields).filter(([, field]) => !mayBeLeftOut(field));
  if (contents === null && needed.length > 0) {
    const names = needed.map(([name]) => textKey(name));
    const allowed = `a text with the names ${listed(names, "and")}`;
    report(reading, { path: "", field: "", offset: 0 }, "", "the text is empty", allowed);
    return { ...parts, ok: false, values: undefined };
  }
  const whole = { type: "group" as const, fields, meaning: "", ...(check === undefined ? {} : { check }) };
  const values = readGroup(reading, contents, whole, { path: "", field: "", offset: 0 });
  reading.problems.sort((a, b) => a.line - b.line || a.column - b.column);
  if (values === unsound || reading.problems.some((problem) => problem.severity === "error")) {
    return { ...parts, ok: false, values: undefined };
  }
  return { ...parts, ok: true, values: values as ValuesOf<F> };
}

/** Of values that stand in the same place, the inner one; of an anchor and what refers to it, the anchor. */
function smallestAround(places: ReadonlyMap<string, Place>, offset: number): string | undefined {
  let found: string | undefined;
  let length = Number.POSITIVE_INFINITY;
  for (const [path, { start, end }] of places) {
    if (offset < start || offset > end || end - start > length) continue;
    if (end - start === length && found !== undefined && !path.startsWith(found)) continue;
    found = path;
    length = end - start;
  }
  return found;
}
