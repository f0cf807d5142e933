import type { MoistAirState } from "@oncethrough/engine/fluid/moist-air-state";
import { listOf, number, published, record, text } from "../schema/describe.ts";
import { stateProperties } from "./air-property.ts";
import type { AirProblem } from "./air-request.ts";

/** What `oncethrough air --json` prints. */
export interface AirOutput {
  readonly format: "oncethrough air 1";
  readonly states: readonly (MoistAirState & {
    readonly row?: number;
    readonly name?: string;
    readonly given: readonly string[];
    readonly ideal?: MoistAirState;
    readonly notes: readonly string[];
  })[];
  readonly problems: readonly AirProblem[];
}

const stateFields = Object.fromEntries(
  stateProperties.map(({ key, words, unit }) => [key, number(`${words}, ${unit}`)]),
);
const row = { type: "integer", minimum: 1, description: "line of the CSV file" };

/** The published schema of `oncethrough air --json`. */
export function airSchema(): object {
  const state = record(
    {
      row,
      name: text("the row's name, where the file gives one"),
      given: listOf(text(), "the two properties that were given"),
      ...stateFields,
      ideal: record(stateFields),
      notes: listOf(text()),
    },
    "row",
    "name",
    "ideal",
  );
  const problem = record(
    { row, column: text("column or option"), value: text("as typed"), problem: text(), allowed: text() },
    "row",
  );
  return published(
    "air",
    "States of moist air, as printed by `oncethrough air --json`; all numbers in SI units",
    record({ format: { const: "oncethrough air 1" }, states: listOf(state), problems: listOf(problem) }),
  );
}
