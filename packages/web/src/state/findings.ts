import type { QuantityKind } from "@oncethrough/engine/quantity/kind";
import type { PlacedNote, UnitRating } from "@oncethrough/engine/unit/rating";
import { notesOf, shortfallsOf } from "@oncethrough/engine/unit/report";
import type { RatingBook } from "./rating-book.ts";

/** Something wanted and not held: where, by how much, and at which condition it is worst. */
export interface Unmet {
  readonly section: string;
  readonly what: string;
  readonly quantity: QuantityKind;
  readonly wanted: number;
  readonly got: number;
  readonly condition: { readonly key: string; readonly name: string };
  /** How many of the solved conditions miss it. */
  readonly conditions: number;
}

/** A condition at which the unit could not be solved, and why. */
export interface Unsolved {
  readonly key: string;
  readonly name: string;
  readonly reason: string;
}

/** What is not met at the conditions that are solved so far, each thing once, at its worst. */
export function unmetOf(book: RatingBook): readonly Unmet[] {
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
