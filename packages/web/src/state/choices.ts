import type { ChoiceFigure, ChoicePoint } from "@oncethrough/engine/chart/choice-plot";
import type { QuantityKind, UnitSystem } from "@oncethrough/engine/quantity/kind";
import { displayUnit, printNumber, toDisplay } from "@oncethrough/engine/quantity/print";

/** A figure of alternatives as a column of their table. */
export interface ChoiceColumn {
  readonly key: string;
  readonly name: string;
  readonly quantity: QuantityKind | "count" | "words";
  readonly meaning: string;
}

/** What taking an alternative writes at a field of its section; undefined takes the field out of the text. */
export interface FieldChange {
  readonly field: string;
  readonly typed: string | undefined;
}

/** One way to build a section. Figures in SI, by the keys of the columns. */
export interface Choice {
  readonly key: string;
  /** `8 rows, 12 per in, 92 circuits, typical plain 5/8 in`. */
  readonly name: string;
  readonly figures: Readonly<Record<string, number | string>>;
  readonly changes: readonly FieldChange[];
}

/** Alternatives of one section, as table and plot show them. */
export interface Choices {
  readonly columns: readonly ChoiceColumn[];
  readonly list: readonly Choice[];
  /** The section as it is, where its figures are known. */
  readonly present: Choice | undefined;
  readonly plot: { readonly x: ChoicePlotAxis; readonly y: ChoicePlotAxis };
  /** What was looked for and found, in words. */
  readonly found: string;
  readonly remarks: readonly string[];
}

/** The column that lies on an axis of the plot. */
export interface ChoicePlotAxis {
  readonly column: string;
  readonly better: "less" | "more";
}

/** By which column alternatives are sorted. */
export interface ChoiceSorting {
  readonly column: string;
  readonly way: "ascending" | "descending";
}

/** The alternatives sorted; what is alike stays as it was. */
export function sortedChoices(list: readonly Choice[], { column, way }: ChoiceSorting): readonly Choice[] {
  const turn = way === "ascending" ? 1 : -1;
  return list.toSorted((one, other) => {
    const [a, b] = [one.figures[column] ?? 0, other.figures[column] ?? 0];
    if (typeof a === "number" && typeof b === "number") return turn * (a - b);
    return turn * String(a).localeCompare(String(b));
  });
}

/** A figure as a cell shows it, without its unit. */
export function choiceText(choice: Choice, { key, quantity }: ChoiceColumn, system: UnitSystem): string {
  const value = choice.figures[key];
  if (value === undefined) return "";
  if (typeof value === "string") return value;
  if (quantity === "count" || quantity === "words") return value.toFixed(0);
  return Number.isFinite(value) ? printNumber(value, quantity, system).replace("-", "−") : "—";
}

/** The unit of a column, empty for counts and words. */
export function choiceUnit({ quantity }: ChoiceColumn, system: UnitSystem): string {
  return quantity === "count" || quantity === "words" ? "" : displayUnit(quantity, system);
}

/** The whole table for a spreadsheet: a line each, cells apart by tabs, numbers in the units shown and without separators. */
export function choicesAsTabs(choices: Choices, list: readonly Choice[], system: UnitSystem): string {
  const head = choices.columns.map((column) => {
    const unit = choiceUnit(column, system);
    return unit === "" ? column.name : `${column.name} [${unit}]`;
  });
  const lines = list.map((choice) => {
    const cells = choices.columns.map(({ key, quantity }) => {
      const value = choice.figures[key] ?? "";
      if (typeof value === "string" || quantity === "count" || quantity === "words") return String(value);
      return String(Number(toDisplay(value, quantity, system).toPrecision(6)));
    });
    return [choice.key === choices.present?.key ? "present" : "", ...cells].join("\t");
  });
  return [["", ...head].join("\t"), ...lines, ""].join("\n");
}

/** What an axis of the plot shows; columns without a quantity cannot lie on one. */
export function axisFigure(choices: Choices, { column, better }: ChoicePlotAxis): ChoiceFigure {
  const found = choices.columns.find(({ key }) => key === column);
  if (found === undefined || found.quantity === "count" || found.quantity === "words")
    throw new RangeError(`no column ${column} with a quantity`);
  return { name: found.meaning, quantity: found.quantity, better };
}

/** An alternative as a point of the plot. */
export function choicePoint({ plot }: Choices, { key, name, figures }: Choice): ChoicePoint {
  return { key, name, x: Number(figures[plot.x.column]), y: Number(figures[plot.y.column]) };
}
