import type { Field, Fields } from "@oncethrough/engine/form/field";
import { textKey } from "@oncethrough/engine/form/key";
import { memberPath } from "@oncethrough/engine/form/path";
import type { Problem } from "@oncethrough/engine/form/problem";
import type { JobReading } from "@oncethrough/engine/job/read-job";

/** A field as a row of the panel: what it is, what is typed, what stands where nothing is typed. */
export interface FieldRow {
  readonly row: "field";
  readonly path: string;
  /** The field's words as in the text. */
  readonly name: string;
  readonly meaning: string;
  readonly control: "line" | "choice";
  readonly choices: readonly string[];
  /** As typed, without quotes; undefined when the text does not give it. */
  readonly typed: string | undefined;
  /** What then holds, as a person would type it; undefined when the field is simply not given. */
  readonly fallback: string | undefined;
  /** It may be left out of the text. */
  readonly canOmit: boolean;
  /** The range in words. */
  readonly allowed: string;
  readonly problems: readonly Problem[];
}

/** The head of a group of rows, or a word about fields that the text holds and the panel does not edit. */
export interface HeadRow {
  readonly row: "head";
  readonly path: string;
  readonly name: string;
  readonly meaning: string;
  readonly depth: number;
  readonly note: string;
}

/** What the rows need of a reading: of a job, or of any other text of fields. */
export type ReadFields = Pick<JobReading, "problems" | "defaults" | "places">;

/** What the rows need to know about the catalogue. */
export interface ComponentNames {
  readonly names: (family: string) => readonly string[];
}

/** The rows of a table of fields at a path of the job text. */
export function fieldRows(
  fields: Fields,
  path: string,
  reading: ReadFields,
  catalogue: ComponentNames,
  depth = 0,
): readonly (FieldRow | HeadRow)[] {
  return Object.entries(fields).flatMap(([name, field]) =>
    rowsOf(field, memberPath(path, name), textKey(name), reading, catalogue, depth),
  );
}

function rowsOf(
  field: Field,
  path: string,
  name: string,
  reading: ReadFields,
  catalogue: ComponentNames,
  depth: number,
): readonly (FieldRow | HeadRow)[] {
  const head = (note: string): HeadRow => ({ row: "head", path, name, meaning: field.meaning, depth, note });
  const isWritten = reading.places(path) !== undefined;
  switch (field.type) {
    case "group":
      if (field.optional === true && !isWritten) return [head("not given")];
      return [head(""), ...fieldRows(field.fields, path, reading, catalogue, depth + 1)];
    case "list":
    case "variant":
      return [head(isWritten ? "in the text" : "not given")];
    default:
      return [fieldRow(field, path, name, reading, catalogue)];
  }
}

type PlainField = Exclude<Field, { readonly type: "group" | "list" | "variant" }>;

function fieldRow(
  field: PlainField,
  path: string,
  name: string,
  reading: ReadFields,
  catalogue: ComponentNames,
): FieldRow {
  const place = reading.places(path);
  const choices = choicesOf(field, catalogue);
  const applied = reading.defaults.find((each) => each.path === path)?.value;
  return {
    row: "field",
    path,
    name,
    meaning: field.meaning,
    control: choices.length > 0 ? "choice" : "line",
    choices,
    typed: place === undefined ? undefined : unquoted(place.text),
    fallback: applied ?? (field.default === undefined ? undefined : shownDefault(field)),
    canOmit: field.default !== undefined || field.optional === true,
    allowed: allowedWords(field),
    problems: reading.problems.filter((problem) => problem.path === path),
  };
}

function choicesOf(field: PlainField, catalogue: ComponentNames): readonly string[] {
  if (field.type === "choice") return field.choices;
  if (field.type === "flag") return ["yes", "no"];
  return field.type === "component" ? catalogue.names(field.family) : [];
}

function shownDefault(field: PlainField): string {
  if (field.type === "flag") return field.default === true ? "yes" : "no";
  return String(field.default);
}

function allowedWords(field: PlainField): string {
  if (field.type !== "quantity" && field.type !== "number") return "";
  const { minimum, maximum } = field;
  if (minimum !== undefined && maximum !== undefined) return `${minimum} to ${maximum}`;
  if (minimum !== undefined) return `at least ${minimum}`;
  return maximum === undefined ? "" : `at most ${maximum}`;
}

/** What a person reads between the quotes of a quoted value. */
function unquoted(text: string): string {
  const quote = text[0];
  if ((quote !== '"' && quote !== "'") || text.length < 2 || !text.endsWith(quote)) return text;
  const inner = text.slice(1, -1);
  return quote === "'" ? inner.replaceAll("''", "'") : inner.replace(/\\(["\\])/g, "$1");
}
