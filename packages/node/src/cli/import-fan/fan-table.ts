import type { FanTestProblem, FanTestRow } from "@oncethrough/engine/design/fan-test-row";
import { nearestName } from "@oncethrough/engine/form/nearest-name";
import type { QuantityKind } from "@oncethrough/engine/quantity/kind";
import { allowedText, parseQuantity, unitOf } from "@oncethrough/engine/quantity/parse";
import { type CsvRow, readCsv } from "../air/read-csv.ts";

/** What a column of a test table may hold. */
const columnKinds = {
  flow: "actualAirflow",
  "static pressure": "pressureDifference",
  "total pressure": "pressureDifference",
  "shaft power": "shaftPower",
  speed: "rotationalSpeed",
  density: "density",
} as const satisfies Readonly<Record<string, QuantityKind>>;

type ColumnName = keyof typeof columnKinds;

/** Other words that shops write. */
const synonyms: Readonly<Record<string, ColumnName>> = {
  airflow: "flow",
  power: "shaft power",
  "brake power": "shaft power",
  "fan static pressure": "static pressure",
  "fan total pressure": "total pressure",
  "air density": "density",
  "fan speed": "speed",
};

interface Column {
  readonly name: ColumnName;
  /** As the header spells it; undefined where every cell has its own. */
  readonly unit: string | undefined;
}

/** A test table read, or what is wrong with it by line. */
export type FanTable =
  | {
      readonly ok: true;
      readonly rows: readonly FanTestRow[];
      readonly pressure: "static" | "total";
      /** Names of the units in which flow, pressure and power stand, to write the record in the same. */
      readonly units: Readonly<Record<"flow" | "pressure" | "power" | "speed" | "density", string>>;
    }
  | { readonly ok: false; readonly problems: readonly FanTestProblem[] };

/** What stands for a whole table where it has no such column; SI. */
export interface TableDefaults {
  readonly speed: number | undefined;
  readonly density: number;
}

/** Reads a test table: one column each for flow, pressure, power, perhaps speed and density, with units in brackets. */
export function readFanTable(text: string, defaults: TableDefaults): FanTable {
  const csv = readCsv(text);
  if (!csv.ok) return refused([{ line: csv.line, problem: csv.problem, needed: "quotes around a whole cell" }]);
  const [header, ...body] = csv.rows;
  if (header === undefined) {
    return refused([{ line: 1, problem: "the file is empty", needed: `a header that names ${columnWords}` }]);
  }
  const problems: FanTestProblem[] = [];
  const columns = header.cells.map((cell) => readHeader(cell, header.line, problems));
  problems.push(...columnProblems(columns, header.line, defaults));
  if (problems.length > 0) return refused(problems);
  const units = new Map<ColumnName, string>();
  const rows = body.flatMap((row) => readRow(row, columns, defaults, units, problems));
  if (problems.length > 0) return refused(problems);
  const pressure = columns.some((column) => column?.name === "total pressure") ? "total" : "static";
  const unit = (name: ColumnName, other: string) => units.get(name) ?? other;
  return {
    ok: true,
    rows,
    pressure,
    units: {
      flow: unit("flow", "acfm"),
      pressure: unit(`${pressure} pressure`, "in.wg"),
      power: unit("shaft power", "hp"),
      speed: unit("speed", "rpm"),
      density: unit("density", "lb/ft³"),
    },
  };
}

const columnWords = Object.keys(columnKinds).join(", ");

function refused(problems: readonly FanTestProblem[]): FanTable {
  return { ok: false, problems };
}

function readHeader(cell: string, line: number, problems: FanTestProblem[]): Column | undefined {
  const [, before = "", unit] = /^(.*?)\s*(?:[[(]([^\])]*)[\])])?$/s.exec(cell) ?? [];
  const words = before
    .replace(/[\s_-]+/g, " ")
    .trim()
    .toLowerCase();
  const name = Object.hasOwn(columnKinds, words) ? (words as ColumnName) : synonyms[words];
  if (name === undefined) {
    const nearest = nearestName(words, [...Object.keys(columnKinds), ...Object.keys(synonyms)]);
    const meant = nearest === undefined ? "" : `; did you mean "${nearest}"?`;
    problems.push({ line, problem: `the column "${cell}" is not known${meant}`, needed: `columns ${columnWords}` });
    return undefined;
  }
  const kind = columnKinds[name];
  if (unit !== undefined && unitOf(unit, kind) === undefined) {
    problems.push({ line, problem: `"${unit}" is no unit of ${name}`, needed: allowedText(kind) });
  }
  return { name, unit };
}

function columnProblems(
  columns: readonly (Column | undefined)[],
  line: number,
  defaults: TableDefaults,
): readonly FanTestProblem[] {
  const names = columns.flatMap((column) => (column === undefined ? [] : [column.name]));
  const twice = names.find((name, index) => names.indexOf(name) !== index);
  const pressures = names.filter((name) => name.endsWith("pressure"));
  const missing = (["flow", "shaft power", "speed"] as const).filter(
    (name) => !names.includes(name) && !(name === "speed" && defaults.speed !== undefined),
  );
  return [
    ...(twice === undefined ? [] : [{ line, problem: `the column ${twice} stands twice`, needed: "each column once" }]),
    ...(new Set(pressures).size === 1
      ? []
      : [
          {
            line,
            problem: pressures.length === 0 ? "no column of pressure" : "both static and total pressure are given",
            needed: "one of static pressure and total pressure",
          },
        ]),
    ...missing.map((name) => ({
      line,
      problem: `no column ${name}`,
      needed:
        name === "speed"
          ? "a column speed [rpm], or --speed for the whole table"
          : `a column ${name} with its unit in brackets`,
    })),
  ];
}

function readRow(
  row: CsvRow,
  columns: readonly (Column | undefined)[],
  defaults: TableDefaults,
  units: Map<ColumnName, string>,
  problems: FanTestProblem[],
): readonly FanTestRow[] {
  if (row.cells.length !== columns.length) {
    const problem = `${row.cells.length} cells stand under ${columns.length} column names`;
    problems.push({ line: row.line, problem, needed: "as many cells as columns; no commas between thousands" });
    return [];
  }
  const values = new Map<ColumnName, number>();
  for (const [index, column] of columns.entries()) {
    if (column === undefined) continue;
    const value = readCell(row.cells[index] ?? "", column, row.line, units, problems);
    if (value !== undefined) values.set(column.name, value);
  }
  return [
    {
      line: row.line,
      flow: values.get("flow") ?? 0,
      pressure: values.get("static pressure") ?? values.get("total pressure") ?? 0,
      shaftPower: values.get("shaft power") ?? 0,
      speed: values.get("speed") ?? defaults.speed ?? 0,
      density: values.get("density") ?? defaults.density,
    },
  ];
}

/** A bare number takes the header's unit; a cell with a unit of its own keeps it. */
function readCell(
  cell: string,
  { name, unit }: Column,
  line: number,
  units: Map<ColumnName, string>,
  problems: FanTestProblem[],
): number | undefined {
  const isBare = /^[-+]?[\d.,]+(?:e[-+]?\d+)?$/i.test(cell);
  const parsed = parseQuantity(isBare && unit !== undefined ? `${cell} ${unit}` : cell, columnKinds[name]);
  if (!parsed.ok) {
    problems.push({
      line,
      problem: `${name}: ${parsed.problem}`,
      needed: `${parsed.allowed}; or its unit in the header's brackets`,
    });
    return undefined;
  }
  units.set(name, parsed.unit);
  return parsed.value;
}
