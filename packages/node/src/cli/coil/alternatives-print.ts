import { displayUnit, printNumber, printQuantity } from "@oncethrough/engine/quantity/print";
import { csvLine } from "../air/read-csv.ts";
import { wrapped } from "../ink.ts";
import type { Style } from "../rate/rate-print.ts";
import { type Column, printTable } from "../table.ts";
import { type AlternativeColumn, columnsOf } from "./alternatives-columns.ts";
import type { AlternativesOutput, AnyAlternative } from "./alternatives-output.ts";

const sortedWords = { price: "price index", air: "air pressure drop", water: "water pressure drop", rows: "rows" };

/** Alternatives for a person: the present choice first, marked; then the list. */
export function printAlternatives(output: AlternativesOutput, style: Style): string {
  const { ink, system, columns } = style;
  const wanted = printQuantity(output.wantedLeaving, "temperature", system);
  const found = `${output.met} of ${output.looked} ways to build a ${output.kind} leave the air at ${wanted} and keep the limits; least ${sortedWords[output.sortedBy]} first`;
  const refused = Object.entries(output.refused)
    .filter(([, count]) => count > 0)
    .map(([why, count]) => `${why} ${count}`)
    .join(", ");
  const listed = [...output.candidates];
  if (output.present !== undefined && !listed.some((each) => each.present)) listed.unshift(output.present);
  const shown = columnsOf(output.kind).filter(({ heading }) => heading !== undefined);
  return [
    wrapped(found, columns),
    printTable(
      [{ name: "", align: "left" }, ...shown.map((column) => headOf(column, style))],
      listed.map((each) => [
        each.present ? ink.strong("●") : "",
        ...shown.map((column) => cellOf(column, each, style)),
      ]),
      ink,
    ),
    ...(refused === "" ? [] : [wrapped(ink.quiet(`left out for: ${refused}`), columns)]),
    wrapped(ink.quiet(`● the present coil. Price index: ${output.priceFormula}.`), columns),
  ].join("\n\n");
}

function headOf({ heading = "", quantity }: AlternativeColumn, { system }: Style): Column {
  if (quantity === "words") return { name: heading, align: "left" };
  if (quantity === "count") return { name: heading, align: "right" };
  return { name: heading, unit: displayUnit(quantity, system), align: "right" };
}

function cellOf({ quantity, value, shown }: AlternativeColumn, each: AnyAlternative, { system }: Style): string {
  if (shown !== undefined) return shown(each as never);
  const cell = value(each as never);
  if (typeof cell === "string" || quantity === "words") return String(cell);
  return quantity === "count" ? cell.toFixed(0) : printNumber(cell, quantity, system);
}

/** Alternatives as CSV, in SI. */
export function alternativesCsv({ kind, candidates }: AlternativesOutput): string {
  const columns = columnsOf(kind);
  const lines = candidates.map((each) =>
    csvLine([
      each.present ? "yes" : "",
      ...columns.map(({ value }) => {
        const cell = value(each as never);
        return typeof cell === "number" ? String(Number(cell.toPrecision(6))) : cell;
      }),
    ]),
  );
  return csvLine(["present", ...columns.map(({ name }) => name)]) + lines.join("");
}
