import type { UnitSystem } from "@oncethrough/engine/quantity/kind";
import { displayUnit, printNumber } from "@oncethrough/engine/quantity/print";
import type { WorkingTable } from "@oncethrough/engine/section/contract";
import type { EvaluatedWorking } from "@oncethrough/engine/unit/report";
import { figureText, siUnit } from "./figure-text.ts";
import { type TextInk, wrapped } from "./ink.ts";
import { type Column, printTable } from "./table.ts";

/** The arithmetic behind figures: equation, what is put in, result, source. Equations hold for the SI values. */
export function printWorking(
  title: string,
  lines: readonly EvaluatedWorking[],
  system: UnitSystem,
  ink: TextInk,
  columns: number,
): string {
  if (lines.length === 0) return `${ink.strong(title)}\n  this section shows no arithmetic`;
  return [ink.strong(title), ...lines.map((line) => workingBlock(line, system, ink, columns))].join("\n\n");
}

/** Tables behind figures: columns with their units, then what they follow. */
export function printWorkingTables(
  tables: readonly WorkingTable[],
  system: UnitSystem,
  ink: TextInk,
  columns: number,
): string[] {
  return tables.map((table) => {
    const heads = table.columns.map(({ name, quantity }): Column => {
      const unit =
        quantity === "words" || quantity === "count" || quantity === "factor" ? "" : displayUnit(quantity, system);
      return { name, ...(unit === "" ? {} : { unit }), align: quantity === "words" ? "left" : "right" };
    });
    const rows = table.lines.map((line) =>
      line.map((cell, index) => {
        const { quantity } = table.columns[index]!;
        if (typeof cell === "string" || quantity === "words") return String(cell);
        if (!Number.isFinite(cell)) return "—";
        return quantity === "count" || quantity === "factor"
          ? figureText(cell, quantity, system)
          : printNumber(cell, quantity, system);
      }),
    );
    const follows = [...table.equations, `[${table.source}]`].map(
      (each) => `  ${wrapped(ink.quiet(each), columns - 2, "    ")}`,
    );
    return [`  ${ink.strong(table.name)}`, printTable(heads, rows, ink), ...follows].join("\n");
  });
}

function workingBlock(line: EvaluatedWorking, system: UnitSystem, ink: TextInk, columns: number): string {
  const symbols = Math.max(...line.terms.map((term) => term.symbol.length), 1);
  const names = Math.max(...line.terms.map((term) => term.name.length), 1);
  const shown = (value: number, quantity: EvaluatedWorking["quantity"]) => figureText(value, quantity, system);
  const exact = (value: number, quantity: EvaluatedWorking["quantity"]) => {
    const unit = siUnit(quantity);
    return ink.quiet(`${String(Number(value.toPrecision(7)))}${unit === "1" ? "" : ` ${unit}`}`);
  };
  const figures = line.terms.map((term) => shown(term.value, term.quantity));
  const width = Math.max(...figures.map((text) => text.length), 1);
  const terms = line.terms.map(
    ({ symbol, name, value, quantity }, index) =>
      `      ${symbol.padEnd(symbols)}  ${name.padEnd(names)}  ${(figures[index] ?? "").padStart(width)}   ${exact(value, quantity)}`,
  );
  return [
    `  ${wrapped(`${line.name}: ${line.equation}`, columns - 2, "      ")}`,
    ...terms,
    `    = ${ink.strong(shown(line.result, line.quantity))}   ${exact(line.result, line.quantity)}   ${ink.quiet(`[${line.source}]`)}`,
  ].join("\n");
}
