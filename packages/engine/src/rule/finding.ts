import { thinMargin } from "./contract.ts";
import type { Entry, Judge, Tally } from "./judge.ts";

/** What came of a rule. */
export type Outcome = "pass" | "fail" | "cannot tell" | "advice";

/** A rule's outcome for one section, at the condition where its margin is smallest. */
export interface Finding {
  readonly entry: Entry;
  readonly outcome: Outcome;
  /** NaN where it cannot be told. */
  readonly value: number;
  readonly limit: number;
  /** Signed share of the limit that is left; negative where it is missed. */
  readonly margin: number;
  /** Met, with less than a twentieth of the limit left. */
  readonly thin: boolean;
  /** The number under which the rating was judged; −1 for what is judged from the machine, or cannot be told anywhere. */
  readonly at: number;
  /** Ratings at which the limit was missed, and at which it was told. */
  readonly missed: number;
  readonly told: number;
}

/** The findings of a tally, without the entries that apply nowhere. */
export function findingsOf(judge: Judge, tally: Tally): readonly Finding[] {
  return judge.entries.flatMap((entry, place) => {
    const told = tally.told[place]!;
    const missed = tally.missed[place]!;
    const isUnknown = tally.unknown[place]! > 0 && missed === 0;
    if (told === 0 && !isUnknown) return [];
    const figures = told === 0 ? { value: Number.NaN, limit: Number.NaN, margin: Number.NaN } : figuresOf(tally, place);
    const outcome = isUnknown ? "cannot tell" : missed === 0 ? "pass" : entry.decides ? "fail" : "advice";
    const thin = outcome === "pass" && figures.margin < thinMargin && !isDiscrete(entry);
    const at = told === 0 ? tally.firstUnknown[place]! : tally.at[place]!;
    return [{ entry, outcome, ...figures, thin, at, missed, told } satisfies Finding];
  });
}

/** Counts and choices are met or not: just met is not thin. */
function isDiscrete({ rule }: Entry): boolean {
  return rule.isChosen === true || rule.quantity === "count";
}

function figuresOf(tally: Tally, place: number): { value: number; limit: number; margin: number } {
  return { value: tally.value[place]!, limit: tally.limit[place]!, margin: tally.margin[place]! };
}

/** True where a finding fails the unit: a deciding limit is missed, and nobody has let it go. */
export function failsUnit({ outcome, entry }: Finding): boolean {
  return outcome === "fail" && entry.waiver === undefined;
}

const order: Readonly<Record<Outcome, number>> = { fail: 0, advice: 1, "cannot tell": 2, pass: 3 };

/** Failing ones first, then advice, then what cannot be told; the smallest margin first among equals. */
export function sortedFindings(findings: readonly Finding[]): readonly Finding[] {
  const rank = ({ outcome, entry }: Finding) =>
    entry.waiver !== undefined && outcome === "fail" ? 0.5 : order[outcome];
  const margin = (finding: Finding) => (Number.isNaN(finding.margin) ? Number.POSITIVE_INFINITY : finding.margin);
  return [...findings].sort((a, b) => rank(a) - rank(b) || (margin(a) === margin(b) ? 0 : margin(a) - margin(b)));
}
