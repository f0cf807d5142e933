import type { PlacedNote, UnitRating } from "@oncethrough/engine/unit/rating";
import { notesOf, shortfallsOf } from "@oncethrough/engine/unit/report";
import type { RatingBook } from "./rating-book.ts";
import type { Unmet, Unsolved } from "./told-conditions.ts";

/** What is not met at the conditions that are known of so far, each thing once, at its worst. */
export function unmetOf(book: RatingBook): readonly Unmet[] {
  if (book.told !== undefined) return book.told.unmet;
  const worst = new Map<string, Unmet>();
  for (const rating of ratingsOf(book)) {
    const { key, name } = rating.condition;
    for (const shortfall of shortfallsOf(book.job.unit, rating)) {
      const thing = `${shortfall.section}\n${shortfall.what}`;
      const known = worst.get(thing);
      const conditions = (known?.conditions ?? 0) + 1;
      const isWorse = known === undefined || missOf(shortfall) > missOf(known);
      worst.set(thing, isWorse ? { ...shortfall, condition: { key, name }, conditions } : { ...known, conditions });
    }
  }
  return [...worst.values()];
}

/** The conditions that did not come to a solution. */
export function unsolvedOf(book: RatingBook): readonly Unsolved[] {
  if (book.told !== undefined) return book.told.unsolved;
  return book.job.conditions.flatMap(({ key, name }) => {
    const rating = book.known(key);
    const reason = rating === undefined ? book.failure(key) : rating.solved ? undefined : rating.reason;
    return reason === undefined ? [] : [{ key, name, reason }];
  });
}

/** What is worth minding at one condition, cautions first. */
export function notesAt(book: RatingBook, rating: UnitRating): readonly PlacedNote[] {
  const notes = notesOf(book.job.unit, rating);
  return notes.toSorted((one, other) => Number(other.weight === "caution") - Number(one.weight === "caution"));
}

function ratingsOf(book: RatingBook): readonly UnitRating[] {
  return book.job.conditions.flatMap((condition) => book.known(condition.key) ?? []);
}

function missOf({ wanted, got }: { readonly wanted: number; readonly got: number }): number {
  return Math.abs(got - wanted);
}
