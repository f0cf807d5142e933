import { displayUnit, printNumber, printQuantity } from "@oncethrough/engine/quantity/print";
import { csvLine } from "../air/read-csv.ts";
import { wrapped } from "../ink.ts";
import type { Style } from "../rate/rate-print.ts";
import { type Column, printTable } from "../table.ts";
import { type AlternativeField, alternativeFigures, fieldsOf } from "./alternatives-columns.ts";
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
  const shown = fieldsOf(output.kind).filter((field) => alternativeFigures[field].heading !== undefined);
  return [
    wrapped(found, columns),
    printTable(
      [{ name: "", align: "left" }, ...shown.map((field) => headOf(field, style))],
      listed.map((each) => [each.present ? ink.strong("●") : "", ...shown.map((field) => cellOf(field, each, style))]),
      ink,
    ),
    ...(refused === "" ? [] : [wrapped(ink.quiet(`left out for: ${refused}`), columns)]),
    wrapped(ink.quiet(`● the present coil. Price index: ${output.priceFormula}.`), columns),
  ].join("\n\n");
}

function headOf(field: AlternativeField, { system }: Style): Column {
  const { heading = "", quantity } = alternativeFigures[field];
  if (quantity === "words") return { name: heading, align: "left" };
  if (quantity === "count") return { name: heading, align: "right" };
  return { name: heading, unit: displayUnit(quantity, system), align: "right" };
}

/** What a way tells of a field; wire in the tubes by its name. */
function toldOf(field: AlternativeField, each: AnyAlternative): string | number {
  const value = (each as unknown as Readonly<Record<AlternativeField, string | number | boolean>>)[field];
  return typeof value === "boolean" ? (value ? "wire" : "none") : value;
}

function cellOf(field: AlternativeField, each: AnyAlternative, { system }: Style): string {
  const value = toldOf(field, each);
  // Names of the trade, short; circuits with the wire beside them.
  if (field === "surface") return each.surface.replace(/^typical /, "").replace(/ in\b/, "″");
  if (field === "circuits")
    return `${String(value).padStart(3)}${"turbulators" in each && each.turbulators ? " wire" : ""}`;
  const { quantity } = alternativeFigures[field];
  if (typeof value === "string" || quantity === "words") return String(value);
  return quantity === "count" ? value.toFixed(0) : printNumber(value, quantity, system);
}

/** Alternatives as CSV, in SI. */
export function alternativesCsv({ kind, candidates }: AlternativesOutput): string {
  const fields = fieldsOf(kind).filter((field) => alternativeFigures[field].name !== undefined);
  const lines = candidates.map((each) =>
    csvLine([
      each.present ? "yes" : "",
      ...fields.map((field) => {
        const value = toldOf(field, each);
        return typeof value === "number" ? String(Number(value.toPrecision(6))) : value;
      }),
    ]),
  );
  const names = fields.map((field) => alternativeFigures[field].name ?? "");
  return csvLine(["present", ...names]) + lines.join("");
}
