import type { Certainty, RuleQuantity, Severity } from "@oncethrough/engine/rule/contract";
import type { Outcome } from "@oncethrough/engine/rule/finding";

/** A finding as it comes from the worker: plain data, all that is shown of it. Figures in SI. */
export interface FindingLine {
  /** Section and rule: the same finding after an edit. */
  readonly key: string;
  readonly rule: string;
  readonly section: string;
  /** Place of the section; −1 for the unit as a whole. */
  readonly index: number;
  readonly outcome: Outcome;
  readonly thin: boolean;
  readonly quantity: RuleQuantity;
  readonly sense: "at most" | "at least";
  /** NaN where they cannot be told. */
  readonly value: number;
  readonly limit: number;
  readonly margin: number;
  /** Where the margin is smallest; undefined for what follows from the machine alone. `key` where the job has it. */
  readonly condition: { readonly name: string; readonly key: string | undefined } | undefined;
  /** Ratings at which the limit was missed, and at which it was told. */
  readonly missed: number;
  readonly told: number;
  readonly detail: string | undefined;
  readonly missing: string | undefined;
  readonly measures: string;
  readonly limitWords: string | undefined;
  readonly protects: string;
  readonly remedy: string;
  readonly severity: Severity;
  readonly source: string;
  readonly certainty: Certainty;
  /** Neither remembered, nor contested, nor a recommendation: missed, it fails the unit. */
  readonly decides: boolean;
  readonly isGuide: boolean;
  readonly contested: string | undefined;
  /** The owner's limit in place of the rule's, and why. */
  readonly own: { readonly profile: string; readonly reason: string } | undefined;
  readonly waiver: { readonly by: string; readonly reason: string } | undefined;
  /** Rows of the list of requirements that it answers. */
  readonly requirements: readonly string[];
  /** Some field of the job can mend it. */
  readonly canMend: boolean;
}

/** A job judged by the profile that it names. */
export interface Judgement {
  readonly profile: string;
  /** All profiles at hand. */
  readonly profiles: readonly string[];
  /** Failing first, then advice, then what cannot be told, then what holds; the smallest margin first in each. */
  readonly lines: readonly FindingLine[];
}

/** How a finding stands, as a person sorts it. */
export type Standing = "fails" | "let go" | "advice" | "cannot tell" | "thin" | "holds";

/** Gravest first. */
export const standings: readonly Standing[] = ["fails", "advice", "cannot tell", "thin", "let go", "holds"];

/** How a finding stands. */
export function standingOf({ outcome, thin, waiver }: FindingLine): Standing {
  if (outcome === "cannot tell") return "cannot tell";
  if (outcome === "pass") return thin ? "thin" : "holds";
  if (waiver !== undefined) return "let go";
  return outcome === "fail" ? "fails" : "advice";
}

/** How many findings stand how. */
export function countStandings(lines: readonly FindingLine[]): Readonly<Record<Standing, number>> {
  const counts = { fails: 0, "let go": 0, advice: 0, "cannot tell": 0, thin: 0, holds: 0 };
  for (const line of lines) counts[standingOf(line)] += 1;
  return counts;
}

/** Which findings are shown; an empty word shows all. */
export interface FindingFilter {
  /** `to mind` shows all but what holds. */
  readonly standing: "to mind" | "" | Standing;
  readonly severity: "" | Severity;
  readonly certainty: "" | Certainty;
  readonly section: string;
}

/** What is shown at first. */
export const firstFilter: FindingFilter = { standing: "to mind", severity: "", certainty: "", section: "" };

/** The findings that a filter lets through, gravest first, the smallest margin first among equals. */
export function shownFindings(lines: readonly FindingLine[], filter: FindingFilter): readonly FindingLine[] {
  const isShown = (line: FindingLine) => {
    const standing = standingOf(line);
    const stands = filter.standing === "to mind" ? standing !== "holds" : isAsked(filter.standing, standing);
    return (
      stands &&
      isAsked(filter.severity, line.severity) &&
      isAsked(filter.certainty, line.certainty) &&
      isAsked(filter.section, line.section)
    );
  };
  return sortedLines(lines.filter(isShown));
}

function isAsked(asked: string, is: string): boolean {
  return asked === "" || asked === is;
}

/** Gravest first; among equals the smallest margin first, and what cannot be told last. */
export function sortedLines(lines: readonly FindingLine[]): readonly FindingLine[] {
  const rank = (line: FindingLine) => standings.indexOf(standingOf(line));
  const margin = ({ margin: left }: FindingLine) => (Number.isNaN(left) ? Number.POSITIVE_INFINITY : left);
  return lines.toSorted((a, b) => rank(a) - rank(b) || (margin(a) === margin(b) ? 0 : margin(a) - margin(b)));
}

/** Findings of one section as a flag on the drawing. */
export interface SectionFlag {
  readonly index: number;
  readonly section: string;
  /** The gravest of them. */
  readonly standing: Exclude<Standing, "holds">;
  /** Those that have to be minded, gravest first. */
  readonly lines: readonly FindingLine[];
}

/** The flags of a unit by section, the unit as a whole (−1) last. Only what is to be minded raises one. */
export function sectionFlags(lines: readonly FindingLine[]): readonly SectionFlag[] {
  const minded = sortedLines(lines).filter((line) => isFlagged(standingOf(line)));
  const indices = [...new Set(minded.map(({ index }) => index))];
  return indices
    .toSorted((a, b) => (a < 0 ? 1 : b < 0 ? -1 : a - b))
    .map((index) => {
      const own = minded.filter((line) => line.index === index);
      return { index, section: own[0]!.section, standing: standingOf(own[0]!) as SectionFlag["standing"], lines: own };
    });
}

function isFlagged(standing: Standing): boolean {
  return standing !== "holds" && standing !== "let go";
}

/** The finding that a flag selects: the gravest, or the next where one of them is in hand already. */
export function nextOfFlag({ lines }: SectionFlag, inHand: string | undefined): FindingLine {
  const place = lines.findIndex(({ key }) => key === inHand);
  return lines[(place + 1) % lines.length]!;
}

/**
 * The findings for which a smallest fix is looked for: what fails, then what is thin; before them the one in hand, where
 * that is an advice.
 */
export function toMend(lines: readonly FindingLine[], inHand?: string): readonly FindingLine[] {
  const mends = (standing: Standing) =>
    sortedLines(lines.filter((line) => line.canMend && standingOf(line) === standing));
  return [...mends("advice").filter(({ key }) => key === inHand), ...mends("fails"), ...mends("thin")];
}
