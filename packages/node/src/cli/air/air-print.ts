import type { MoistAirState } from "@oncethrough/engine/fluid/moist-air-state";
import type { UnitSystem } from "@oncethrough/engine/quantity/kind";
import { displayUnit, printNumber, printQuantity, toDisplay } from "@oncethrough/engine/quantity/print";
import type { TextInk } from "../ink.ts";
import { type Column, printTable } from "../table.ts";
import type { AirTable } from "./air-csv.ts";
import { type AirProperty, stateProperties } from "./air-property.ts";
import type { AirAnswer, AirProblem } from "./air-request.ts";
import { csvLine } from "./read-csv.ts";

/** One state, upright: every property in both systems, the chosen one first. */
export function printState(answer: AirAnswer, system: UnitSystem, ink: TextInk): string {
  const other: UnitSystem = system === "ip" ? "si" : "ip";
  const columns: Column[] = [
    { name: "", align: "left" },
    { name: "", align: "right" },
    { name: "", align: "right" },
    ...(answer.ideal === undefined ? [] : ([{ name: "ideal relations", align: "right" }] as const)),
    { name: "", align: "left" },
  ];
  const rows = shownProperties([answer.state]).map((property) => {
    const value = answer.state[property.key];
    const given = answer.given.some((key) => key === property.key);
    return [
      ink.quiet(property.words),
      ink.strong(printQuantity(value, property.quantity, system)),
      ink.quiet(printQuantity(value, property.quantity, other)),
      ...(answer.ideal === undefined ? [] : [printQuantity(answer.ideal[property.key], property.quantity, system)]),
      given ? ink.accent("given") : "",
    ];
  });
  const notes = answer.notes.map((note) => `${note}\n`).join("");
  return `${printTable(columns, rows, ink)}\n${notes}`;
}

/** Many states, one to a line. */
export function printStates(table: AirTable, system: UnitSystem, ink: TextInk): string {
  const states = table.rows.flatMap((row) => (row.answer === undefined ? [] : [row.answer.state]));
  const named = table.rows.some((row) => row.name !== undefined);
  const withIdeal = table.rows.some((row) => row.answer?.ideal !== undefined);
  const properties = shownProperties(states);
  const columns: Column[] = [
    { name: "row", align: "right" },
    ...(named ? ([{ name: "name", align: "left" }] as const) : []),
    ...properties.map(({ words, quantity }) => ({
      name: shortWords[words] ?? words,
      unit: displayUnit(quantity, system),
      align: "right" as const,
    })),
  ];
  const line = (label: string, name: string, state: MoistAirState | undefined) => [
    label,
    ...(named ? [name] : []),
    ...properties.map(({ key, quantity }) => (state === undefined ? "–" : printNumber(state[key], quantity, system))),
  ];
  const rows = table.rows.flatMap(({ row, name, answer }) => [
    line(String(row), name ?? "", answer?.state),
    ...(withIdeal && answer?.ideal !== undefined ? [line("ideal", "", answer.ideal)] : []),
  ]);
  return `${printTable(columns, rows, ink)}\n`;
}

const shortWords: Readonly<Record<string, string>> = {
  "relative humidity": "rel. hum.",
  "humidity ratio": "hum. ratio",
  "specific volume": "volume",
};

/** Free water is shown where there is any. */
function shownProperties(states: readonly MoistAirState[]): readonly AirProperty[] {
  const foggy = states.some((state) => state.freeWater > 0);
  return stateProperties.filter((property) => property.key !== "freeWater" || foggy);
}

/** Many states as CSV, every digit that counts, one line for each row that was read, so that the tables stay side by side. */
export function stateCsv(table: AirTable, system: UnitSystem): string {
  const withIdeal = table.rows.some((row) => row.answer?.ideal !== undefined);
  const heads = stateProperties.map(({ words, quantity }) => `${words} [${displayUnit(quantity, system)}]`);
  const idealHeads = withIdeal ? heads.map((head) => `ideal ${head}`) : [];
  const cells = (state: MoistAirState | undefined) =>
    stateProperties.map(({ key, quantity }) =>
      state === undefined ? "" : String(Number(toDisplay(state[key], quantity, system).toPrecision(8))),
    );
  const lines = table.rows.map(({ row, name, answer }) => {
    const problem = table.problems.find((each) => each.row === row);
    const ideal = withIdeal ? cells(answer?.ideal) : [];
    return csvLine([name ?? "", ...cells(answer?.state), ...ideal, problem === undefined ? "" : problem.problem]);
  });
  return csvLine(["name", ...heads, ...idealHeads, "problem"]) + lines.join("");
}

/** A problem in a line: row, column, value, what is wrong, what is allowed. */
export function airProblemText(problem: AirProblem): string {
  const row = problem.row === undefined ? "" : `row ${problem.row}, `;
  const where = problem.column === "" ? "" : `${problem.column}: `;
  const value = problem.value === "" || problem.problem.includes(`"`) ? "" : `"${problem.value}": `;
  return `${row}${where}${value}${problem.problem}; allowed: ${problem.allowed}\n`;
}
