import { type Document, parseDocument, stringify } from "yaml";

/** A value as a person types it: `102 in`, `8`, `true`, or a group of such. */
export type DraftValue = string | number | boolean | { readonly [name: string]: DraftValue };

/** A section of the unit being sized; names and values as they are typed in a job file. */
export interface DraftSection {
  readonly kind: string;
  readonly name: string;
  readonly values: Record<string, DraftValue>;
}

/** The unit being sized, as it will stand in the job file. */
export interface Draft {
  readonly casing: Record<string, DraftValue>;
  sections: DraftSection[];
}

/** What a duty file says of the unit already; it stays. */
export interface FixedUnit {
  readonly casing: Readonly<Record<string, DraftValue>>;
  /** In the user's order; undefined when the choice of sections is free. */
  readonly sections: readonly DraftSection[] | undefined;
}

/** A duty file that says nothing of the unit. */
export const noUnitFixed: FixedUnit = { casing: {}, sections: undefined };

/** What the text of a duty file fixes of the unit; the text has been read as a form before. */
export function fixedUnit(text: string): FixedUnit {
  const unit = plain(text)?.unit as { casing?: Record<string, DraftValue>; sections?: Written[] } | null | undefined;
  const sections = unit?.sections?.map(({ kind, name, ...values }) => ({ kind, name: name ?? kind, values }));
  return { casing: unit?.casing ?? {}, sections };
}

type Written = { readonly kind: string; readonly name?: string } & Record<string, DraftValue>;

function plain(text: string): { readonly unit?: unknown } | undefined {
  // Every scalar stays the text that it is: `10 in` and `1e3` alike are read by the form, never by YAML.
  return parseDocument(text, { schema: "failsafe" }).toJS() as { unit?: unknown } | undefined;
}

/** The job file of a draft: the duty's text byte for byte with the unit behind it; where it had one, with what was added. */
export function draftText(dutyText: string, draft: Draft, fixed: FixedUnit): string {
  const isFree = Object.keys(fixed.casing).length === 0 && fixed.sections === undefined;
  if (isFree) return `${dutyText.trimEnd()}\n\n${unitText(draft)}`;
  const document = parseDocument(dutyText, { schema: "failsafe" });
  addMissing(document, ["unit", "casing"], draft.casing, fixed.casing);
  if (fixed.sections === undefined) {
    document.setIn(
      ["unit", "sections"],
      document.createNode(draft.sections.map((section) => asText(writtenSection(section)))),
    );
  } else {
    draft.sections.forEach(({ values }, index) => {
      const known = fixed.sections![index]!.values;
      addMissing(document, ["unit", "sections", index], values, known);
    });
  }
  return document.toString({ lineWidth: 0 });
}

/** Puts into the document what it does not say yet, group by group. */
function addMissing(
  document: Document,
  path: readonly (string | number)[],
  values: Readonly<Record<string, DraftValue>>,
  known: Readonly<Record<string, DraftValue>>,
): void {
  for (const [name, value] of Object.entries(values)) {
    const present = known[name];
    if (present === undefined) document.setIn([...path, name], document.createNode(asText(value)));
    else if (typeof present === "object" && typeof value === "object")
      addMissing(document, [...path, name], value, present);
  }
}

/** Every scalar as the text that stands in the file. */
function asText(value: DraftValue): unknown {
  if (typeof value !== "object") return String(value);
  return Object.fromEntries(Object.entries(value).map(([name, each]) => [name, asText(each)]));
}

function unitText({ casing, sections }: Draft): string {
  const lines = [
    "unit:",
    "  casing:",
    indented(stringify(casing, { lineWidth: 0 }), 4),
    "",
    "  sections:",
    sections.map((section) => listed(stringify(writtenSection(section), { lineWidth: 0 }))).join("\n\n"),
    "",
  ];
  return lines.join("\n");
}

function writtenSection({ kind, name, values }: DraftSection): Record<string, DraftValue> {
  return name === kind ? { kind, ...values } : { kind, name, ...values };
}

function indented(text: string, columns: number): string {
  return text.trimEnd().replace(/^/gm, " ".repeat(columns));
}

function listed(text: string): string {
  return indented(text, 6).replace(/^ {6}/, "    - ");
}
