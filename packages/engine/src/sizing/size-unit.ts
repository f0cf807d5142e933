import type { Catalogue } from "#catalogue/read-catalogue";
import type { Problem } from "#form/problem";
import type { Profile } from "#rule/profile";
import type { Contradiction } from "./contradiction.ts";
import { nearestDuties } from "./nearest-duty.ts";
import { type Failure, type FoundUnit, sizeOnce } from "./size-once.ts";
import type { Choice } from "./workroom.ts";

/** What sizing comes to. */
export type Sizing =
  | FoundUnit
  | { readonly outcome: "not read"; readonly problems: readonly Problem[] }
  | {
      readonly outcome: "contradiction";
      /** What the duty asks and no unit gives; after a search, what stands against the unit that came nearest. */
      readonly contradictions: readonly Contradiction[];
      /** How the unit that came nearest was chosen; empty where it did not come to one. */
      readonly choices: readonly Choice[];
    };

/**
 * Sizes a unit from a duty file: chooses sections, cross-section, then every section's sizes, solving the whole unit
 * between, until it holds its duty and keeps every rule that decides; or says what of the duty no unit gives, with the
 * nearest duties that work, each proven by sizing for it. Deterministic; what the file fixes stays.
 */
export function sizeUnit(text: string, catalogue: Catalogue, profile: Profile): Sizing {
  const bench = { catalogue, profile, books: undefined, readings: new Map() };
  const once = sizeOnce(text, bench);
  if (once.outcome === "unit" || once.outcome === "not read") return once;
  const { ways, why } = nearestDuties(text, once, (changed) => sizeOnce(changed, bench));
  const [first, ...others] = wordsOf(once);
  const contradictions = [
    { words: first, nearest: ways, ...(why === "" ? {} : { why }) },
    ...others.map((words) => ({ words, nearest: [] })),
  ];
  return { outcome: "contradiction", contradictions, choices: once.outcome === "no unit" ? once.nearest.choices : [] };
}

function wordsOf(failure: Failure): readonly [string, ...string[]] {
  switch (failure.outcome) {
    case "contradiction": {
      const [first, ...others] = failure.contradictions.map(({ words }) => words);
      return [first!, ...others];
    }
    case "no cabinet":
      return [failure.misfit.words];
    default: {
      const [first = "no unit was found", ...others] = failure.nearest.obstacles;
      return [`of the unit that comes nearest, ${first}`, ...others];
    }
  }
}
