/** A line of a CSV text: its cells, and the line of the file on which it begins, counted from 1. */
export interface CsvRow {
  readonly line: number;
  readonly cells: readonly string[];
}

/** The rows of a CSV text, or what is wrong with it. */
export type Csv =
  | { readonly ok: true; readonly rows: readonly CsvRow[]; readonly separator: string }
  | { readonly ok: false; readonly line: number; readonly problem: string };

/**
 * Reads CSV as RFC 4180 has it: quotes around cells, doubled inside, line ends of either sort. The separator is the
 * comma, or the tab or semicolon where the first line is told apart by these. Blank lines are left out, spaces trimmed.
 */
export function readCsv(text: string): Csv {
  const plain = text.replace(/^\uFEFF/, "");
  const separator = separatorOf(plain);
  const pattern = new RegExp(
    `[ ]*?(?:"((?:[^"]|"")*)"[ \\t]*|([^"${separator}\\r\\n]*))(${separator}|\\r\\n|\\n|\\r|$)`,
    "y",
  );
  const rows: CsvRow[] = [];
  let cells: string[] = [];
  let line = 1;
  let begin = 1;
  while (pattern.lastIndex < plain.length || cells.length > 0) {
    const match = pattern.exec(plain);
    if (match === null) return { ok: false, line, problem: "a quote stands where none may, or is not closed" };
    const [whole, quoted, bare = "", end = ""] = match;
    cells.push((quoted === undefined ? bare : quoted.replaceAll('""', '"')).trim());
    line += whole.match(/\r\n|\n|\r/g)?.length ?? 0;
    if (end === separator) continue;
    if (cells.some((cell) => cell !== "")) rows.push({ line: begin, cells });
    cells = [];
    begin = line;
    if (end === "") break;
  }
  return { ok: true, rows, separator };
}

function separatorOf(text: string): string {
  const first = /^\s*([^\r\n]*)/.exec(text)?.[1]?.replace(/"[^"]*"/g, "") ?? "";
  const count = (sign: string) => first.split(sign).length - 1;
  if (count("\t") > 0) return "\t";
  return count(";") > 0 && count(";") >= count(",") ? ";" : ",";
}

/** A row of CSV: cells that need it are quoted. */
export function csvLine(cells: readonly string[]): string {
  return `${cells.map((cell) => (/[",;\t\r\n]|^\s|\s$/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell)).join(",")}\n`;
}
