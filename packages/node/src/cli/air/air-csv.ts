import { nearestName } from "@oncethrough/engine/form/nearest-name";
import type { QuantityKind } from "@oncethrough/engine/quantity/kind";
import { allowedText, unitOf } from "@oncethrough/engine/quantity/parse";
import { givenProperties } from "./air-property.ts";
import { type AirAnswer, type AirProblem, answerAir, placeWords } from "./air-request.ts";
import { type CsvRow, readCsv } from "./read-csv.ts";

/** What a CSV of pairs came to: one entry for each row, in order, and all problems. */
export interface AirTable {
  readonly rows: readonly {
    readonly row: number;
    readonly name: string | undefined;
    readonly answer: AirAnswer | undefined;
  }[];
  readonly problems: readonly AirProblem[];
}

interface CsvColumn {
  /** The header's words; `name` for a column that is carried along. */
  readonly words: string;
  /** The unit in the header's brackets. */
  readonly unit: string | undefined;
}

const knownWords = [...givenProperties.map((each) => each.words), ...placeWords, "name"];

const kindOf: Readonly<Record<string, QuantityKind>> = {
  ...Object.fromEntries(givenProperties.map((each) => [each.words, each.quantity])),
  pressure: "absolutePressure",
  altitude: "length",
};

/** Answers every row of a CSV of pairs. */
export function answerCsv(text: string, ideal: boolean): AirTable {
  const csv = readCsv(text);
  if (!csv.ok) {
    return {
      rows: [],
      problems: [
        {
          row: csv.line,
          column: "",
          value: "",
          problem: csv.problem,
          allowed: 'quotes around a whole cell, "" inside',
        },
      ],
    };
  }
  const [header, ...body] = csv.rows;
  if (header === undefined) return { rows: [], problems: [] };
  const problems: AirProblem[] = [];
  const columns = header.cells.map((cell) => readHeader(cell, header.line, problems));
  if (body.length === 0) {
    problems.push({
      row: header.line,
      column: "",
      value: "",
      problem: "no row follows the header",
      allowed: "one row for each state",
    });
  }
  reportDoubles(columns, header.line, problems);
  if (problems.length > 0) return { rows: [], problems };
  const rows = body.map((row) => answerRow(row, columns, ideal, problems));
  return { rows, problems };
}

function readHeader(cell: string, row: number, problems: AirProblem[]): CsvColumn {
  const [, name = "", unit] = /^(.*?)\s*(?:[[(]([^\])]*)[\])])?$/s.exec(cell) ?? [];
  const words = name
    .replace(/([a-z])([A-Z])/g, "$1 $2")
    .replace(/[\s_-]+/g, " ")
    .trim()
    .toLowerCase();
  const kind = kindOf[words];
  if (!knownWords.includes(words)) {
    const nearest = nearestName(words, knownWords);
    const meant = nearest === undefined ? "" : `; did you mean "${nearest}"?`;
    problems.push({
      row,
      column: cell,
      value: cell,
      problem: `the column "${name}" is not known${meant}`,
      allowed: knownWords.join(", "),
    });
  } else if (unit !== undefined && kind !== undefined && unitOf(unit, kind) === undefined) {
    problems.push({
      row,
      column: words,
      value: cell,
      problem: `"${unit}" is not a unit of this column`,
      allowed: allowedText(kind),
    });
  }
  return { words, unit };
}

function reportDoubles(columns: readonly CsvColumn[], row: number, problems: AirProblem[]): void {
  const seen = new Set<string>();
  for (const { words } of columns) {
    if (seen.has(words))
      problems.push({
        row,
        column: words,
        value: "",
        problem: "the column stands twice",
        allowed: "one column for each value",
      });
    seen.add(words);
  }
}

function answerRow(
  row: CsvRow,
  columns: readonly CsvColumn[],
  ideal: boolean,
  problems: AirProblem[],
): AirTable["rows"][number] {
  const typed: Record<string, string> = {};
  row.cells.forEach((cell, index) => {
    const column = columns[index];
    if (column !== undefined) typed[column.words] = withUnit(cell, column);
  });
  const name = typed.name || undefined;
  const failed = { row: row.line, name, answer: undefined };
  if (row.cells.length > columns.length) {
    const problem = `${row.cells.length} cells stand under ${columns.length} column names`;
    problems.push({
      row: row.line,
      column: "",
      value: "",
      problem,
      allowed: "as many cells as columns; quotes around a cell with a comma",
    });
    return failed;
  }
  const answer = answerAir(typed, ideal);
  if ("state" in answer) {
    return { row: row.line, name, answer: { row: row.line, ...(name === undefined ? {} : { name }), ...answer } };
  }
  problems.push(...answer.map((problem) => ({ row: row.line, ...problem })));
  return failed;
}

/** A bare number takes the header's unit; a cell with a unit of its own keeps it. */
function withUnit(cell: string, column: CsvColumn): string {
  return column.unit !== undefined && /^[+-]?[\d.,]+(?:e[+-]?\d+)?$/i.test(cell) ? `${cell} ${column.unit}` : cell;
}
