import { listOf, published, record, text } from "../schema/describe.ts";

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
        record({
          words: text("what of the duty no unit gives, or stands against the unit that comes nearest"),
          nearest: listOf(record({ path: text(), value: text(), words: text() }), "duties that work, each alone"),
        }),
      ),
    }),
  });
}
