import { textKey } from "@oncethrough/engine/form/key";
import { jobFields, sectionKind } from "@oncethrough/engine/job/job";
import type { UnitSystem } from "@oncethrough/engine/quantity/kind";
import { type BenchState, sectionPath, type UnitView, unitViews } from "./bench-state.ts";
import { type ComponentNames, fieldRows } from "./field-rows.ts";
import { sectionFigures } from "./figures.ts";
import { type FindingLine, sortedLines, standingOf } from "./finding-lines.ts";
import { valueWords } from "./finding-words.ts";

/** What the page does of itself, by name. */
export type Command =
  | "save"
  | "open"
  | "new"
  | "variants"
  | "help"
  | "tour"
  | "undo"
  | "redo"
  | "print"
  | "keys"
  | "theme"
  | "units"
  | "air"
  | "add before"
  | "add behind"
  | "earlier"
  | "later"
  | "remove";

/** Where an entry leads. */
export type Way =
  | { readonly to: "part"; readonly path: string }
  | { readonly to: "finding"; readonly key: string; readonly index: number }
  | { readonly to: "figure"; readonly path: string; readonly figure: string }
  | { readonly to: "field"; readonly part: string; readonly path: string }
  | { readonly to: "condition"; readonly key: string }
  | { readonly to: "view"; readonly view: UnitView }
  | { readonly to: "command"; readonly command: Command };

/** Something that can be searched for and gone to. */
export interface GoEntry {
  readonly key: string;
  readonly kind: "section" | "finding" | "figure" | "field" | "condition" | "command";
  readonly name: string;
  /** The section, the value, the keys. */
  readonly detail: string;
  readonly way: Way;
}

/** Everything that can be gone to, in the order in which equals are shown. */
export function goEntries(
  state: BenchState,
  catalogue: ComponentNames,
  findings: readonly FindingLine[],
): readonly GoEntry[] {
  return [
    ...sectionEntries(state),
    ...commandEntries(state),
    ...conditionEntries(state),
    ...findingEntries(findings, state.system),
    ...figureEntries(state),
    ...fieldEntries(state, catalogue),
  ];
}

/** The entries that hold every word that is typed, best first: words that begin a name before words inside it. */
export function foundEntries(entries: readonly GoEntry[], typed: string, most: number): readonly GoEntry[] {
  const words = typed.toLowerCase().split(/\s+/).filter(Boolean);
  if (words.length === 0) return entries.slice(0, most);
  const ranked = entries.flatMap((entry, place) => {
    const rank = rankOf(entry, words);
    return rank === undefined ? [] : [{ entry, rank, place }];
  });
  return ranked
    .sort((one, other) => one.rank - other.rank || one.place - other.place)
    .slice(0, most)
    .map(({ entry }) => entry);
}

/** Lower is nearer; undefined where a word is missing. */
function rankOf({ name, detail, kind }: GoEntry, words: readonly string[]): number | undefined {
  const [title, rest] = [name.toLowerCase(), `${detail} ${kind}`.toLowerCase()];
  let rank = title === words.join(" ") ? -4 : title.length / 100;
  for (const word of words) {
    const at = title.indexOf(word);
    if (at === 0) rank += 0;
    else if (at > 0) rank += /[\s-]/.test(title[at - 1] ?? "") ? 1 : 3;
    else if (rest.includes(word)) rank += 4;
    else return undefined;
  }
  return rank;
}

function sectionEntries({ sound }: BenchState): readonly GoEntry[] {
  const sections = sound?.job.unit.sections ?? [];
  const part = (path: string, name: string, detail: string): GoEntry => ({
    key: `part ${path}`,
    kind: "section",
    name,
    detail,
    way: { to: "part", path },
  });
  return [
    ...sections.map(({ name, kind }, index) => part(sectionPath(index), name, name === kind ? "" : kind)),
    part("duty", "duty", "what the customer needs"),
    part("unit.casing", "cabinet", "the unit as a whole"),
  ];
}

function conditionEntries({ sound }: BenchState): readonly GoEntry[] {
  return (sound?.job.conditions ?? []).map(({ key, name }) => ({
    key: `condition ${key}`,
    kind: "condition",
    name,
    detail: "",
    way: { to: "condition", key },
  }));
}

function findingEntries(lines: readonly FindingLine[], system: UnitSystem): readonly GoEntry[] {
  return sortedLines(lines).map((line) => ({
    key: `finding ${line.key}`,
    kind: "finding",
    name: line.rule,
    detail: `${line.section}, ${standingOf(line)}, ${valueWords(line, system)}`,
    way: { to: "finding", key: line.key, index: line.index },
  }));
}

function figureEntries({ sound, condition, system }: BenchState): readonly GoEntry[] {
  const rating = sound?.book.known(condition);
  if (sound === undefined || rating === undefined) return [];
  const { unit } = sound.job;
  return unit.sections.flatMap((section, index) =>
    sectionFigures(unit, rating, index, system).map(
      (figure): GoEntry => ({
        key: `figure ${index} ${figure.key}`,
        kind: "figure",
        name: figure.name,
        detail: `${section.name}, ${figure.value}`,
        way: { to: "figure", path: sectionPath(index), figure: figure.key },
      }),
    ),
  );
}

function fieldEntries({ sound, reading }: BenchState, catalogue: ComponentNames): readonly GoEntry[] {
  const sections = sound?.job.unit.sections ?? [];
  const parts = [
    { path: "duty", name: "duty", fields: jobFields.duty.fields },
    { path: "unit.casing", name: "cabinet", fields: jobFields.unit.fields.casing.fields },
    ...sections.map(({ name, kind }, index) => ({
      path: sectionPath(index),
      name,
      fields: sectionKind(kind)?.fields ?? {},
    })),
  ];
  return parts.flatMap((part) =>
    fieldRows(part.fields, part.path, reading, catalogue).flatMap((row): GoEntry[] => {
      if (row.row !== "field") return [];
      const group = row.path
        .slice(part.path.length + 1)
        .split(".")
        .slice(0, -1);
      const value = row.typed ?? (row.fallback === undefined ? "not given" : `${row.fallback} by default`);
      return [
        {
          key: `field ${row.path}`,
          kind: "field",
          name: row.name,
          detail: [part.name, ...group.map(textKey), value].join(", "),
          way: { to: "field", part: part.path, path: row.path },
        },
      ];
    }),
  );
}

/** What a command is called, and the keys that do the same. */
const commands: readonly (readonly [Command, string, string])[] = [
  ["save", "save the job", "Ctrl S"],
  ["open", "open a job", "Ctrl O"],
  ["new", "begin a new unit", ""],
  ["variants", "variants side by side", ""],
  ["undo", "undo", "Ctrl Z"],
  ["redo", "redo", "Ctrl Shift Z"],
  ["add before", "add a section before this one", "Shift Insert"],
  ["add behind", "add a section behind this one", "Insert"],
  ["earlier", "move the section earlier in the airflow", "Shift ←"],
  ["later", "move the section later in the airflow", "Shift →"],
  ["remove", "remove the section", "Delete"],
  ["units", "other units of measure", ""],
  ["theme", "light, dark, as the system", ""],
  ["air", "air moves or stands", ""],
  ["print", "print the sheets", "Ctrl P"],
  ["help", "help: what matters, section by section", ""],
  ["tour", "tour of the page", ""],
  ["keys", "keys of the page", "?"],
];

function commandEntries({ history }: BenchState): readonly GoEntry[] {
  const steps = { undo: history.past.at(-1)?.name, redo: history.future.at(-1)?.name };
  const entries = commands.flatMap(([command, name, keys]): GoEntry[] => {
    const isStep = command === "undo" || command === "redo";
    const step = isStep ? steps[command] : undefined;
    if (isStep && step === undefined) return [];
    const title = step === undefined ? name : `${name}: ${step}`;
    return [{ key: `command ${command}`, kind: "command", name: title, detail: keys, way: { to: "command", command } }];
  });
  const views = unitViews.map(
    (view): GoEntry => ({
      key: `view ${view}`,
      kind: "command",
      name: `see the machine: ${view}`,
      detail: "",
      way: { to: "view", view },
    }),
  );
  return [...entries, ...views];
}
