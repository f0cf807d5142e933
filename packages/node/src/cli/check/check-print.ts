import type { Check } from "@oncethrough/engine/rule/check";
import type { Finding } from "@oncethrough/engine/rule/finding";
import {
  conditionOf,
  detailOf,
  findingWords,
  limitBasis,
  marginText,
  ruleFigure,
} from "@oncethrough/engine/rule/words";
import { wrapped } from "../ink.ts";
import type { Style } from "../rate/rate-print.ts";
import { type Column, printTable } from "../table.ts";
import type { Judged } from "./check-output.ts";

/** The findings for a person: counts, then section by section a table, and the words to what is not met. */
export function printCheck(judged: Judged, style: Style, withAll: boolean): string {
  const { check, sections, output } = judged;
  const parts = [printCounts(judged, style)];
  for (const { condition, reason } of output.unsolved) {
    parts.push(style.ink.fail(wrapped(`not solved, and not judged: ${condition}: ${reason}`, style.columns)));
  }
  for (const { name, findings } of sections) {
    const shown = withAll ? findings : findings.filter(({ outcome, thin }) => outcome !== "pass" || thin);
    if (shown.length > 0) parts.push(printSection(check, name, shown, style));
  }
  if (!withAll) parts.push(style.ink.quiet("what passes with room is left out; --all shows it"));
  return parts.join("\n\n");
}

function printCounts({ output }: Judged, { ink }: Style): string {
  const { fail, waived, advice, pass, thin, "cannot tell": unknown } = output.counts;
  const counts = [
    fail === 0 ? "nothing that decides is missed" : ink.fail(`${fail} not met`),
    ...(waived > 0 ? [`${waived} not met and let go by name`] : []),
    `${advice} advice`,
    `${unknown} cannot be told`,
    `${pass} met${thin > 0 ? `, ${thin} of them thinly` : ""}`,
  ];
  return `${ink.strong(`${output.tag} · rules of ${output.profile}`)}\n${counts.join("; ")}`;
}

function printSection(check: Check, name: string, findings: readonly Finding[], style: Style): string {
  const { ink } = style;
  const columns: Column[] = [
    { name: "", align: "left" },
    { name: "rule", align: "left" },
    { name: "value", align: "right" },
    { name: "limit", align: "left" },
    { name: "margin", align: "right" },
    { name: "where it is smallest", align: "left" },
  ];
  const rows = findings.map((finding) => cells(check, finding, style));
  const words = findings.flatMap((finding) => (finding.outcome === "pass" ? [] : [explained(check, finding, style)]));
  return [ink.strong(name), printTable(columns, rows, ink), ...words].join("\n");
}

function cells(check: Check, finding: Finding, { ink, system }: Style): readonly string[] {
  const { rule } = finding.entry;
  const figure = (value: number) => ruleFigure(value, rule.quantity, system);
  const isFlag = rule.quantity === "flag";
  return [
    mark(finding, ink),
    rule.id,
    figure(finding.value),
    Number.isNaN(finding.limit) || isFlag ? "" : `${rule.sense} ${figure(finding.limit)}`,
    marginText(finding),
    conditionOf(check, finding) ?? "",
  ];
}

function mark({ outcome, thin, entry }: Finding, ink: Style["ink"]): string {
  if (outcome === "fail") return entry.waiver === undefined ? ink.fail("FAIL") : "let go";
  if (outcome === "pass") return thin ? ink.accent("thin") : ink.quiet("pass");
  return outcome === "advice" ? ink.accent("advice") : ink.accent("unknown");
}

/** What is missed, what that endangers, what mends it, and whose limit it is. */
function explained(check: Check, finding: Finding, { ink, system, columns }: Style): string {
  const { rule, waiver, own } = finding.entry;
  const detail = detailOf(check, finding);
  const lines = [
    `${rule.id}: ${findingWords(finding, system)}${detail === undefined ? "" : ` (${detail})`}.`,
    `It protects ${rule.protects}. ${capital(rule.remedy)}.`,
    `${limitBasis(finding)}.`,
    ...(rule.contested === undefined || own !== undefined
      ? []
      : [`Sources contradict one another: ${rule.contested}.`]),
    ...(waiver === undefined ? [] : [`Let go by ${waiver.by}: ${waiver.reason}.`]),
  ];
  return ink.quiet(wrapped(`  ${lines.join(" ")}`, columns, "    "));
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
