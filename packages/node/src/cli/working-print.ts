import type { UnitSystem } from "@oncethrough/engine/quantity/kind";
import type { EvaluatedWorking } from "@oncethrough/engine/unit/report";
import { figureText, siUnit } from "./figure-text.ts";
import { type TextInk, wrapped } from "./ink.ts";

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
