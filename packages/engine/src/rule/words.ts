import type { UnitSystem } from "#quantity/kind";
import { printQuantity } from "#quantity/print";
import type { Check } from "./check.ts";
import type { Machine, RuleQuantity } from "./contract.ts";
import type { Finding } from "./finding.ts";

/** A value of a rule as a person reads it. */
export function ruleFigure(value: number, quantity: RuleQuantity, system: UnitSystem): string {
  if (!Number.isFinite(value)) return "—";
  if (quantity === "flag") return value >= 1 ? "yes" : "no";
  if (quantity === "count" || quantity === "factor") return String(Number(value.toPrecision(4)));
  if (quantity === "time" && value >= 7200) return `${Math.round(value / 3600)} h`;
  if (quantity === "time" && value >= 120) return `${Math.round(value / 60)} min`;
  return printQuantity(value, quantity, system);
}

/** A margin as a person reads it; a flag has none. */
export function marginText({ margin, entry }: Finding): string {
  if (Number.isNaN(margin) || entry.rule.quantity === "flag") return "—";
  const percent = 100 * margin;
  return `${percent.toFixed(Math.abs(percent) < 10 ? 1 : 0)} %`;
}

/** What was measured against what, in a sentence. */
export function findingWords(finding: Finding, system: UnitSystem): string {
  const { rule, own } = finding.entry;
  const figure = (value: number) => ruleFigure(value, rule.quantity, system);
  if (finding.outcome === "cannot tell") return `cannot be told: ${rule.missing ?? "a figure is missing"}`;
  if (rule.quantity === "flag") return `${rule.measures}: ${figure(finding.value)}`;
  const whose = own === undefined ? "" : ` (${own.profile})`;
  return `${rule.measures} ${figure(finding.value)}, ${rule.sense} ${figure(finding.limit)}${whose}`;
}

/** Where the limit comes from: the owner's reason, or the source with how sure it is. */
export function limitBasis({ entry }: Finding): string {
  const { rule, own } = entry;
  if (own !== undefined) return `${own.profile}: ${own.reason}`;
  return `${rule.source} (${rule.certainty})`;
}

/** Name of the condition at which the margin is smallest. */
export function conditionOf(check: Check, finding: Finding): string | undefined {
  return check.conditions[finding.at]?.name;
}

/** What the value is of, where the rule says so. */
export function detailOf(check: Check, { entry, outcome }: Finding): string | undefined {
  const { rule, index } = entry;
  if (rule.scope !== "machine" || rule.detail === undefined || outcome === "cannot tell") return undefined;
  const { judge, conditions, ratings, weighing } = check;
  const { unit, duty } = judge;
  const at: Machine = { unit, duty, conditions, ratings, weighing, index, design: unit.sections[index]?.design };
  return rule.detail(at);
}
