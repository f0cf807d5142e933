import { listOf, published, record, text } from "../schema/describe.ts";

/** The published schema of `oncethrough design --json`. */
export function designSchema(): object {
  return published("design", "A unit sized from a duty, as printed by `oncethrough design --json`", {
    ...record({
      format: { const: "oncethrough design 1" },
      outcome: { enum: ["unit", "no unit", "contradiction", "not read"] },
      text: text("the complete job file; empty when no unit was found"),
      choices: listOf(
        record({ of: text("section, or `cabinet`"), chosen: text(), because: text("number and limit") }),
        "in the order in which they were made",
      ),
      questions: listOf(
        record({ path: text("of the job file"), assumed: text(), asks: text(), why: text() }),
        "what nobody said, what matters most first",
      ),
      unkept: listOf(text(), "rules of the owner that the unit does not keep, with value and limit"),
      obstacles: listOf(text(), "what stands in the way of the unit that came nearest"),
      contradictions: listOf(
        record({ words: text(), nearest: listOf(record({ path: text(), value: text(), words: text() })) }),
      ),
    }),
  });
}
