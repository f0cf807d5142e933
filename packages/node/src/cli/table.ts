import Table from "cli-table3";
import type { TextInk } from "./ink.ts";

/** A column of a printed table: its name (a line break starts a second line), its unit, and where figures stand. */
export interface Column {
  readonly name: string;
  readonly unit?: string;
  readonly align: "left" | "right";
}

const noLines = {
  top: "",
  "top-mid": "",
  "top-left": "",
  "top-right": "",
  bottom: "",
  "bottom-mid": "",
  "bottom-left": "",
  "bottom-right": "",
  left: "",
  "left-mid": "",
  mid: "",
  "mid-mid": "",
  right: "",
  "right-mid": "",
  middle: "  ",
};

/** A table without boxes: names and units quiet above, figures aligned below. */
export function printTable(columns: readonly Column[], rows: readonly (readonly string[])[], ink: TextInk): string {
  const table = new Table({
    chars: noLines,
    style: { head: [], border: [], "padding-left": 0, "padding-right": 0, compact: true },
    colAligns: columns.map((column) => column.align),
  });
  const nameLines = Math.max(...columns.map((column) => column.name.split("\n").length));
  const heads = Array.from({ length: nameLines }, (_, line) =>
    columns.map((column) => {
      const lines = column.name.split("\n");
      return lines[line - nameLines + lines.length] ?? "";
    }),
  );
  heads.push(columns.map((column) => column.unit ?? ""));
  for (const head of heads) {
    if (head.some((cell) => cell !== "")) table.push(head.map((cell) => ink.quiet(cell)));
  }
  for (const row of rows) table.push([...row]);
  return table
    .toString()
    .split("\n")
    .map((line) => line.trimEnd())
    .join("\n");
}
