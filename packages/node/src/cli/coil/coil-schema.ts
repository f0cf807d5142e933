import {
  airStateFigures,
  figuresOfKind,
  noteRecord,
  shortfallFigures,
  workingLine,
  workingTable,
} from "../rate/rate-schema.ts";
import { listOf, number, published, record } from "../schema/describe.ts";
import { coilKinds } from "./coil-file.ts";

/** The published schema of `oncethrough coil --json`. */
export function coilSchema(): object {
  const whole = record(
    {
      format: { const: "oncethrough coil rating 1" },
      kind: { enum: coilKinds.map((kind) => kind.name) },
      barometricPressure: number("Pa absolute"),
      dryAirFlow: number("kg/s of dry air"),
      standardAirflow: number("m³/s of standard air, 0.075 lb/ft³"),
      actualAirflow: number("m³/s as the air enters"),
      entering: record(airStateFigures),
      leaving: record(airStateFigures),
      totalHeat: number("W that water or steam gives to the air; negative where the coil cools"),
      condensate: number("kg/s drained from the air"),
      condensateHeat: number("W that the condensate carries away"),
      totalPressureLoss: number("Pa"),
      figures: { type: "object", additionalProperties: { type: "number" } },
      shortfalls: listOf(record(shortfallFigures), "what is asked and not held"),
      notes: listOf(noteRecord({})),
      working: listOf(workingLine),
      tables: listOf(workingTable),
    },
    "working",
    "tables",
  );
  const byKind = coilKinds.map((kind) => ({
    if: { properties: { kind: { const: kind.name } } },
    // biome-ignore lint/suspicious/noThenProperty: a word of JSON Schema
    then: { properties: { figures: figuresOfKind(kind) } },
  }));
  return published("coil", "A coil rated by itself, as printed by `oncethrough coil --json`; all numbers in SI units", {
    ...whole,
    allOf: byKind,
  });
}
