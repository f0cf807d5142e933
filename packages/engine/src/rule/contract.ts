import type { Weighing } from "#arrangement/weigh";
import type { Condition } from "#duty/condition";
import type { Duty } from "#duty/duty";
import type { QuantityKind } from "#quantity/kind";
import type { SectionRating } from "#section/contract";
import type { UnitRating } from "#unit/rating";
import type { Unit } from "#unit/unit";

/** What a rule's value measures. A `flag` is 1 where something is there and 0 where not. */
export type RuleQuantity = QuantityKind | "count" | "factor" | "flag";

/** How sure the limit is: only what was read, or follows from physics or plain practice, may decide. */
export type Certainty = "read" | "second-hand" | "derived here" | "common practice" | "from memory";

/** What happens where the limit is not met. */
export type Severity = "hazard" | "damage" | "shortfall" | "nuisance";

/** A field of the job that can mend a rule, and which way to turn it. */
export interface Mend {
  /** Where the field stands: the section that is judged, a section of another kind, the casing, the duty. */
  readonly at: "section" | "casing" | "duty" | { readonly kind: string };
  /** The field's name, with dots into groups: `outsideAir.bladeAngle`. */
  readonly field: string;
  readonly way: "more" | "less" | "other";
}

/** What every rule says of itself. */
export interface RuleFacts {
  /** In words, unique: `intake hood velocity`. */
  readonly id: string;
  /** Rows of the list of requirements that it answers, wholly or in part. */
  readonly covers: readonly string[];
  /** What goes wrong otherwise, in a few words. */
  readonly protects: string;
  /** What the value is, in a few words. */
  readonly measures: string;
  readonly quantity: RuleQuantity;
  readonly sense: "at most" | "at least";
  /** Where the limit is worked out: how, in a few words. */
  readonly limitWords?: string;
  /** Bibliography key, then the place there. */
  readonly source: string;
  readonly certainty: Certainty;
  /** The positions of sources that contradict one another about this limit; an owner has to choose. */
  readonly contested?: string;
  /** The source recommends and does not demand. */
  readonly isGuide?: true;
  readonly severity: Severity;
  readonly remedy: string;
  readonly mends: readonly Mend[];
  /** Kinds of section that it judges, every section, or the unit as a whole. */
  readonly of: readonly string[] | "every section" | "unit";
  /** Span over which a margin is told where the limit's zero means nothing: a temperature, a level. */
  readonly span?: number;
  /** True where the value is a choice and no result: met just so, it is not thin. */
  readonly isChosen?: true;
  /** False where only a profile that names it makes it count. */
  readonly byDefault?: false;
}

/** A section (or the unit) at a rating. One record, refilled: a rule may not keep it. */
export interface RatedSection<Design = unknown, Rating extends SectionRating = SectionRating> {
  duty: Duty;
  unit: Unit;
  rating: UnitRating;
  /** Place of the section in the unit; −1 for the unit as a whole. */
  index: number;
  design: Design;
  record: Rating;
}

/** Judged at every condition, or every hour of a year. It allocates nothing. */
export interface ConditionRule<Design = unknown, Rating extends SectionRating = SectionRating> extends RuleFacts {
  readonly scope: "condition";
  /** Conditions at which it is asked; running conditions where left out, and `largest flow` adds the clean-filter excess. */
  readonly when?: "running" | "largest flow" | "stopped";
  readonly limit: number | ((at: RatedSection<Design, Rating>) => number);
  /** NaN: cannot tell. Undefined: does not apply here. */
  readonly value: (at: RatedSection<Design, Rating>) => number | undefined;
  /** What has to be known before it can be told. */
  readonly missing?: string;
}

/** The machine with all that is known of it. */
export interface Machine<Design = unknown> {
  readonly duty: Duty;
  readonly unit: Unit;
  readonly conditions: readonly Condition[];
  /** One for each condition, solved where it can be. */
  readonly ratings: readonly UnitRating[];
  readonly weighing: Weighing;
  /** Place of the section in the unit; −1 for the unit as a whole. */
  readonly index: number;
  readonly design: Design;
}

/** Judged once from unit, arrangement and duty. */
export interface MachineRule<Design = unknown> extends RuleFacts {
  readonly scope: "machine";
  readonly limit: number | ((at: Machine<Design>) => number);
  /** NaN: cannot tell. Undefined: does not apply here. */
  readonly value: (at: Machine<Design>) => number | undefined;
  readonly missing?: string;
  /** What the value is of, where that needs words: the part, the condition. */
  readonly detail?: (at: Machine<Design>) => string | undefined;
}

/** A rule, whatever it looks at. */
export type Rule = ConditionRule | MachineRule;

/** Checks the types of a rule that looks at ratings. */
export function conditionRule<Design = unknown, Rating extends SectionRating = SectionRating>(
  rule: Omit<ConditionRule<Design, Rating>, "scope">,
): Rule {
  return { ...rule, scope: "condition" } as unknown as Rule;
}

/** Checks the types of a rule that looks at the machine. */
export function machineRule<Design = unknown>(rule: Omit<MachineRule<Design>, "scope">): Rule {
  return { ...rule, scope: "machine" } as unknown as Rule;
}

/** True where a limit that is not met may fail a unit: neither remembered, nor contested, nor a recommendation. */
export function mayDecide(rule: RuleFacts): boolean {
  return rule.certainty !== "from memory" && rule.contested === undefined && rule.isGuide === undefined;
}

/** Signed share of the limit that is left; of `span` where that is given. A flag is met whole or not at all. */
export function marginOf(
  value: number,
  limit: number,
  sense: "at most" | "at least",
  quantity: RuleQuantity,
  span: number | undefined,
): number {
  const left = sense === "at most" ? limit - value : value - limit;
  if (quantity === "flag") return left >= 0 ? 1 : -1;
  return left / (span ?? (limit === 0 ? 1 : Math.abs(limit)));
}

/** Below this a margin is thin. */
export const thinMargin = 0.05;
