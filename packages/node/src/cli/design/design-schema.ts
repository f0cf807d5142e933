import { listOf, published, record, text } from "../schema/describe.ts";

const change = { path: text("of the job file"), value: text() };

/** A change of the duty, and what must change with it. */
const way = record({ ...change, words: text(), also: listOf(record(change), "what must change with it") }, "also");

/** The published schema of `oncethrough design --json`. */
export function designSchema(): object {
  return published("design", "A unit sized from a duty, as printed by `oncethrough design --json`", {
    ...record({
      format: { const: "oncethrough design 1" },
      outcome: { enum: ["unit", "contradiction", "not read"] },
      text: text("the complete job file; empty when no unit was found"),
      choices: listOf(
        record({ of: text("section, or `cabinet`"), chosen: text(), because: text("number and limit") }),
        "in the order in which they were made",
      ),
      questions: listOf(
        record({ path: text("of the job file"), assumed: text(), asks: text(), why: text() }),
        "what nobody said, what matters most first",
      ),
      contradictions: listOf(
        record(
          {
            words: text("what of the duty no unit gives, or stands against the unit that comes nearest"),
            nearest: listOf(way, "duties that work, each alone and each proven by sizing for it"),
            why: text("why no way out is told, where none was found"),
          },
          "why",
        ),
      ),
    }),
  });
}
