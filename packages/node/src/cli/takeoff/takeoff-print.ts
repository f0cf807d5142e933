import type { QuantityKind } from "@oncethrough/engine/quantity/kind";
import { displayUnit, printNumber } from "@oncethrough/engine/quantity/print";
import { declaredName } from "@oncethrough/engine/section/declared";
import type { OrderFigure } from "@oncethrough/engine/takeoff/order-data";
import { csvLine } from "../air/read-csv.ts";
import { figureText } from "../figure-text.ts";
import { wrapped } from "../ink.ts";
import type { Style } from "../rate/rate-print.ts";
import { type Column, printTable } from "../table.ts";
import type { TakeoffOutput } from "./takeoff-output.ts";

/** The lists of a takeoff. */
export const takeoffLists = ["parts", "cuts", "sheets", "bought", "orders"] as const;
/** One of them. */
export type TakeoffList = (typeof takeoffLists)[number];

/** A list as columns with their kinds and rows of values, from which table and CSV are made. */
interface Listing {
  readonly columns: readonly {
    readonly name: string;
    readonly quantity?: QuantityKind | "count";
    /** Its cells are figures that carry their own unit. */
    readonly isFigure?: true;
  }[];
  readonly rows: readonly (readonly (string | number | OrderFigure | undefined)[])[];
}

const words = (name: string) => ({ name });
const figure = (name: string, quantity: QuantityKind | "count") => ({ name, quantity });

const listings: Readonly<Record<TakeoffList, (output: TakeoffOutput) => Listing>> = {
  parts: ({ parts }) => ({
    columns: [
      words("section"),
      words("part"),
      words("material"),
      figure("count", "count"),
      figure("long", "length"),
      figure("wide", "length"),
      figure("high", "length"),
      figure("mass", "mass"),
      words("bought as"),
    ],
    rows: parts.map((part) => [
      part.owner,
      part.name,
      part.material,
      part.count,
      part.length,
      part.width,
      part.height,
      part.mass,
      part.bought,
    ]),
  }),
  cuts: ({ cuts }) => ({
    columns: [
      words("metal"),
      words("gauge"),
      figure("count", "count"),
      figure("long", "length"),
      figure("wide", "length"),
      words("for"),
    ],
    rows: cuts.map((cut) => [cut.metal, cut.gauge, cut.count, cut.length, cut.width, cut.parts.join(", ")]),
  }),
  sheets: ({ sheets }) => ({
    columns: [
      words("metal"),
      words("gauge"),
      figure("blanks", "area"),
      figure("mass", "mass"),
      figure("sheet long", "length"),
      figure("sheet wide", "length"),
      figure("sheets at least", "count"),
      figure("in shelves", "count"),
      figure("blanks joined", "count"),
    ],
    rows: sheets.map((sheet) => [
      sheet.metal,
      sheet.gauge,
      sheet.area,
      sheet.mass,
      sheet.length,
      sheet.width,
      sheet.length === undefined ? undefined : sheet.least,
      sheet.length === undefined ? undefined : sheet.shelves,
      sheet.joined,
    ]),
  }),
  bought: ({ bought }) => ({
    columns: [
      words("section"),
      words("bought"),
      figure("count", "count"),
      figure("long", "length"),
      figure("wide", "length"),
      figure("high", "length"),
      figure("mass", "mass"),
    ],
    rows: bought.map((line) => [
      line.owner,
      line.item,
      line.count,
      line.length,
      line.width,
      line.height,
      line.mass === 0 ? undefined : line.mass,
    ]),
  }),
  orders: ({ orders }) => ({
    columns: [words("section"), words("ordered by"), { name: "figure", isFigure: true }, words("at")],
    rows: orders.flatMap(({ owner, condition, figures, build, declared }) => {
      const built = build.map((each) => [owner, each.name, "text" in each ? each.text : each, ""]);
      const rated = figures.map((each) => [owner, each.name, each, condition]);
      if (declared === undefined) return [...built, ...rated];
      // The supplier's own figures come first, each with ours at the same point below it.
      const by = declaredName(declared);
      const both = declared.figures.flatMap((each) => [
        [owner, `${each.name}, declared`, each, by],
        [owner, `${each.name}, our rating`, { ...each, value: each.ours }, `the point of ${by}`],
      ]);
      return [...built, ...both, ...rated];
    }),
  }),
};

/** The five lists, one below the other. */
export function printTakeoff(output: TakeoffOutput, style: Style): string {
  const { ink, columns } = style;
  const note = `Sheets at least: by area alone. In shelves: blanks in rows across the sheet, first fit by falling height; a cutting plan lies between. Bought: pieces alike are counted each; pieces that differ and come together, as a fan in its parts, are one thing with the box around them. Orders: a supplier's declared rating where the job holds one, with ours at the same point; our figures at the condition where the first of the section is greatest. Stock book: ${output.stock}.`;
  return [
    ink.strong(`${output.tag} · takeoff`),
    ...takeoffLists.map((list) => `${ink.quiet(list)}\n${listTable(listings[list](output), style)}`),
    ...declaredRemarks(output).map(([owner, remark]) => wrapped(`${owner}: ${remark}`, columns)),
    ink.quiet(wrapped(note, columns)),
  ].join("\n\n");
}

/** What to mind about declared ratings before anyone orders by them, section by section. */
function declaredRemarks({ orders }: TakeoffOutput): readonly (readonly [string, string])[] {
  return orders.flatMap(({ owner, declared }) => (declared?.notes ?? []).map((note) => [owner, note] as const));
}

/** One list as CSV, units in the header. */
export function takeoffCsv(output: TakeoffOutput, list: TakeoffList, system: Style["system"]): string {
  const { columns, rows: listed } = listings[list](output);
  const remarks = list === "orders" ? declaredRemarks(output).map(([owner, note]) => [owner, "mind", note, ""]) : [];
  const rows = [...listed, ...remarks];
  const heads = columns.map(({ name, quantity }) => {
    return quantity === undefined || quantity === "count" ? name : `${name} [${displayUnit(quantity, system)}]`;
  });
  const lines = rows.map((row) => csvLine(row.map((value, at) => csvCell(value, columns[at]?.quantity, system))));
  return csvLine(heads) + lines.join("");
}

/** A figure without marks between its thousands. */
function csvCell(...[value, quantity, system]: Parameters<typeof cell>): string {
  const text = cell(value, quantity, system);
  return typeof value === "number" ? text.replaceAll(",", "") : text;
}

function listTable({ columns, rows }: Listing, { system, ink, columns: width }: Style): string {
  const heads = columns.map(({ name, quantity, isFigure }): Column => {
    if (quantity === undefined) return { name, align: isFigure ? "right" : "left" };
    return quantity === "count"
      ? { name, align: "right" }
      : { name, unit: displayUnit(quantity, system), align: "right" };
  });
  const most = Math.max(20, Math.floor(width / 4));
  const body = rows.map((row) =>
    row.map((value, at) => {
      const text = cell(value, columns[at]?.quantity, system);
      return text.length > most ? `${text.slice(0, most - 1)}…` : text;
    }),
  );
  return printTable(heads, body, ink);
}

function cell(
  value: string | number | OrderFigure | undefined,
  quantity: QuantityKind | "count" | undefined,
  system: Style["system"],
): string {
  if (value === undefined) return "";
  if (typeof value === "string") return value;
  if (typeof value === "object") return figureText(value.value, value.quantity, system);
  return quantity === undefined || quantity === "count" ? String(value) : printNumber(value, quantity, system);
}
