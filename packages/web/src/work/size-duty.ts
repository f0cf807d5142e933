import { readDutyFile } from "@oncethrough/engine/sizing/duty-file";
import { sizeUnit } from "@oncethrough/engine/sizing/size-unit";
import type { BookShelf } from "./book-shelf.ts";
import type { SizingResult, SizingTask } from "./task.ts";

/** Sizes the unit of a duty; one step, since a size follows from all the others. */
export function* sizeDuty({ text }: SizingTask, shelf: BookShelf): Generator<number, SizingResult> {
  yield 0;
  const { duty } = readDutyFile(text, shelf.catalogue);
  if (duty === undefined) throw new Error("the duty still lacks answers");
  const sizing = sizeUnit(text, shelf.catalogue, shelf.profile(duty.ownerProfile));
  switch (sizing.outcome) {
    case "unit":
      return { outcome: "unit", text: sizing.text, choices: sizing.choices, contradictions: [] };
    case "contradiction":
      return { outcome: "no unit", text: "", choices: sizing.choices, contradictions: sizing.contradictions };
    case "not read":
      throw new Error(sizing.problems.map(({ field, problem }) => `${field}: ${problem}`).join("; "));
  }
}
