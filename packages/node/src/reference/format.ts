import { type CaseData, isCaseData, missingNumber, numberAt, shortened, uncertaintyOf } from "./case-data.ts";
import { figureRow, notRun, notRunRow, type Row } from "./row.ts";

/** A kind of file of published cases. */
export interface Format {
  /** What such a file holds, for messages. */
  readonly name: string;
  /** Whether a file is of this kind, by its content. */
  readonly recognises: (data: CaseData) => boolean;
  readonly rows: (data: CaseData) => Row[];
}

/** A figure that the program can give for a case: the key under which the case holds its own. */
export interface Figure {
  readonly key: string;
  readonly unit: string;
  readonly got: () => number;
}

/** Facts about a file that hold for all its cases. */
export function metaOf(data: CaseData): CaseData {
  return isCaseData(data.meta) ? data.meta : {};
}

/** The name of a case: its own, else made from its inputs. */
export function caseName(data: CaseData, inputs: readonly string[], fallback: string): string {
  if (typeof data.id === "string" && data.id !== "") return data.id;
  const words = inputs.flatMap((key) => {
    const value = data[key];
    return typeof value === "number" || typeof value === "string" ? [`${key} ${value}`] : [];
  });
  return words.length > 0 ? words.join(", ") : fallback;
}

/**
 * The rows of one case: every figure that it holds and the program gives. Inputs that are missing, in words or outside
 * what the program answers make it `not run`.
 */
export function caseRows(
  name: string,
  data: CaseData,
  meta: CaseData,
  inputs: readonly string[],
  figures: () => readonly Figure[],
): Row[] {
  const missing = inputs.map((key) => missingNumber(data, key)).find((reason) => reason !== null);
  if (missing !== undefined) return [notRunRow(name, missing)];
  const asked = answer(name, notRun, "", figures);
  if (!Array.isArray(asked)) return [asked as Row];
  const rows = (asked as readonly Figure[]).flatMap((figure) => figureRows(name, data, meta, figure));
  return rows.length > 0 ? rows : [notRunRow(name, "it holds no figure that the program gives")];
}

function figureRows(name: string, data: CaseData, meta: CaseData, figure: Figure): Row[] {
  const value = data[figure.key];
  if (value === undefined || value === null) return [];
  const expected = numberAt(data, figure.key);
  if (expected === null) {
    const reason = `the figure given is not a number (${shortened(JSON.stringify(value))})`;
    return [notRunRow(name, reason, figure.key, figure.unit)];
  }
  const got = answer(name, figure.key, figure.unit, figure.got);
  if (typeof got !== "number") return [got];
  if (!Number.isFinite(got)) return [notRunRow(name, `the program gives ${got}`, figure.key, figure.unit)];
  const uncertainty = uncertaintyOf(data, meta, figure.key, expected);
  return [figureRow(name, figure.key, figure.unit, expected, got, uncertainty)];
}

/** What the program gives, or the row that says why it gives nothing: it refuses with a RangeError. */
function answer<T>(name: string, quantity: string, unit: string, ask: () => T): T | Row {
  try {
    return ask();
  } catch (error) {
    if (error instanceof RangeError) return notRunRow(name, error.message, quantity, unit);
    throw error;
  }
}

/** The rows of a list of cases; entries that are no objects are listed too, and cases of one name are told apart. */
export function listRows(
  list: readonly unknown[],
  word: string,
  rowsOf: (data: CaseData, name: string) => Row[],
): Row[] {
  const seen = new Map<string, number>();
  return list.flatMap((each, index) => {
    const fallback = `${word} ${index + 1}`;
    const rows = isCaseData(each) ? rowsOf(each, fallback) : [notRunRow(fallback, "it is not an object")];
    const name = rows[0]!.case;
    const times = (seen.get(name) ?? 0) + 1;
    seen.set(name, times);
    return times === 1 ? rows : rows.map((row) => ({ ...row, case: `${name} (${times})` }));
  });
}
