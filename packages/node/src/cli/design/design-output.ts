import type { Catalogue } from "@oncethrough/engine/catalogue/read-catalogue";
import type { Profile } from "@oncethrough/engine/rule/profile";
import type { Contradiction } from "@oncethrough/engine/sizing/contradiction";
import type { Question } from "@oncethrough/engine/sizing/question";
import { sizeUnit } from "@oncethrough/engine/sizing/size-unit";
import type { Choice } from "@oncethrough/engine/sizing/workroom";

/** What `oncethrough design --json` prints. */
export interface DesignOutput {
  readonly format: "oncethrough design 1";
  readonly outcome: "unit" | "contradiction" | "not read";
  /** The complete job file; empty when no unit was found. */
  readonly text: string;
  readonly choices: readonly Choice[];
  readonly questions: readonly Question[];
  /** What of the duty no unit gives, with the nearest duties that work. */
  readonly contradictions: readonly Contradiction[];
}

/** Sizes a unit for the text of a duty file that reads. */
export function designOf(text: string, catalogue: Catalogue, profile: Profile): DesignOutput {
  const sizing = sizeUnit(text, catalogue, profile);
  const nothing = { text: "", choices: [], questions: [], contradictions: [] };
  const base = { format: "oncethrough design 1" as const, ...nothing };
  switch (sizing.outcome) {
    case "unit": {
      const { outcome, text: jobText, choices, questions } = sizing;
      return { ...base, outcome, text: jobText, choices, questions };
    }
    case "not read":
      return { ...base, outcome: sizing.outcome };
    default:
      return { ...base, ...sizing };
  }
}
