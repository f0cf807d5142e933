import { listOf, published, record, text } from "../schema/describe.ts";

const count = (description: string) => ({ type: "integer", minimum: 1, description });

/** The published schema of `oncethrough read --json`. */
export function readSchema(): object {
  const problem = record(
    {
      file: text("where the text stands"),
      line: count("counted from 1"),
      column: count("counted from 1"),
      path: text("place in the text, `unit.sections[3].rows`; empty for the text as a whole"),
      field: text("the field's words as written in the text"),
      value: text("as typed, on one line"),
      problem: text(),
      allowed: text("what is allowed there"),
      nearest: text("the name that was probably meant"),
      severity: { enum: ["error", "warning"] },
    },
    "nearest",
  );
  const preset = record({ path: text(), value: text("as a person would type it"), meaning: text() });
  return published(
    "read",
    "A job file as read, printed by `oncethrough read --json`",
    record({
      format: { const: "oncethrough reading 1" },
      sound: { type: "boolean", description: "false when any problem is an error" },
      problems: listOf(problem, "in the order of the text"),
      defaults: listOf(preset, "every value that the text leaves to its default"),
    }),
  );
}
