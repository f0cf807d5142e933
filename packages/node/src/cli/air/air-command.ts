import type { UnitSystem } from "@oncethrough/engine/quantity/kind";
import { readTextFile, readTextStream } from "#files/read-text";
import { exitCode, UsageProblem } from "../exit-code.ts";
import { type TextInk, textInk } from "../ink.ts";
import { type Given, optionFlag, optionText, printJson, type Streams, unitSystem } from "../session.ts";
import { type AirTable, answerCsv } from "./air-csv.ts";
import { airProblemText, printState, printStates, stateCsv } from "./air-print.ts";
import { givenProperties } from "./air-property.ts";
import { answerAir, placeWords } from "./air-request.ts";
import type { AirOutput } from "./air-schema.ts";

/** `oncethrough air`: states of moist air from two values each. */
export async function airCommand(given: Given, streams: Streams): Promise<number> {
  const typed = typedValues(given);
  const ideal = optionFlag(given, "ideal");
  const file = optionText(given, "csv");
  if (file !== undefined && Object.keys(typed).length > 0) {
    throw new UsageProblem(`--csv and --${Object.keys(typed)[0]?.replaceAll(" ", "-")} exclude each other`);
  }
  const table = file === undefined ? single(typed, ideal) : answerCsv(await csvText(file, streams), ideal);
  print(table, given, streams, file === undefined);
  for (const problem of table.problems) streams.errors(airProblemText(problem));
  if (table.problems.length === 0) return exitCode.fine;
  return file === undefined ? exitCode.wrongUse : exitCode.found;
}

/** The values given as options, by their words. */
function typedValues(given: Given): Record<string, string> {
  const named = [...givenProperties, ...placeWords.map((words) => ({ key: words, words }))];
  const found = named.map(({ key, words }) => [words, optionText(given, key)] as const);
  return Object.fromEntries(found.filter((entry): entry is readonly [string, string] => entry[1] !== undefined));
}

async function csvText(file: string, streams: Streams): Promise<string> {
  return file === "-" ? readTextStream(streams.input, "standard input") : readTextFile(file);
}

function single(typed: Readonly<Record<string, string>>, ideal: boolean): AirTable {
  const answer = answerAir(typed, ideal);
  if ("state" in answer) return { rows: [{ row: 1, name: undefined, answer }], problems: [] };
  return { rows: [], problems: answer };
}

function print(table: AirTable, given: Given, streams: Streams, alone: boolean): void {
  const system = unitSystem(given);
  const form = optionFlag(given, "json") ? "json" : optionText(given, "output");
  if (form === "json") printJson(streams, airOutput(table));
  else if (form === "csv" && table.rows.length > 0) streams.output(stateCsv(table, system));
  else if (table.rows.length > 0) streams.output(airTable(table, alone, system, textInk(streams.colour)));
}

function airTable(table: AirTable, alone: boolean, system: UnitSystem, ink: TextInk): string {
  const first = table.rows[0]?.answer;
  return alone && first !== undefined ? printState(first, system, ink) : printStates(table, system, ink);
}

function airOutput(table: AirTable): AirOutput {
  const states = table.rows.flatMap(({ answer }) => {
    if (answer === undefined) return [];
    const { state, given, notes, ...rest } = answer;
    return [{ ...rest, given: [...given], ...state, notes: [...notes] }];
  });
  return { format: "oncethrough air 1", states, problems: table.problems };
}
