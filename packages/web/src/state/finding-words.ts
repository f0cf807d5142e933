import type { UnitSystem } from "@oncethrough/engine/quantity/kind";
import { ruleFigure } from "@oncethrough/engine/rule/words";
import type { FindingLine, Standing } from "./finding-lines.ts";

/** The shape before a finding: never colour alone. */
export const signs: Readonly<Record<Standing, string>> = {
  fails: "◆",
  advice: "△",
  "cannot tell": "?",
  thin: "○",
  "let go": "◇",
  holds: "·",
};

/** How a standing is counted: `2 fail`, `12 advise`. */
export const countWords: Readonly<Record<Standing, readonly [one: string, many: string]>> = {
  fails: ["fails", "fail"],
  advice: ["advice", "advice"],
  "cannot tell": ["cannot be told", "cannot be told"],
  thin: ["thin", "thin"],
  "let go": ["let go", "let go"],
  holds: ["holds", "hold"],
};

/** A value of a finding as a person reads it. */
export function lineFigure({ quantity }: FindingLine, value: number, system: UnitSystem): string {
  return ruleFigure(value, quantity, system).replace("-", "−");
}

/** The margin as a person reads it: `−8.6 %`; empty for what is there or not. */
export function lineMargin({ margin, quantity }: FindingLine): string {
  if (Number.isNaN(margin) || quantity === "flag") return "";
  return shareText(margin);
}

/** `4.2 %`, `−38 %`. */
export function shareText(share: number): string {
  const percent = 100 * share;
  return `${percent.toFixed(Math.abs(percent) < 10 ? 1 : 0).replace("-", "−")} %`;
}

/** What was found against what: `435 fpm, at most 400 fpm`. */
export function valueWords(line: FindingLine, system: UnitSystem): string {
  if (line.outcome === "cannot tell") return `cannot be told: ${line.missing ?? "a figure is missing"}`;
  if (line.quantity === "flag") return lineFigure(line, line.value, system);
  return `${lineFigure(line, line.value, system)}, ${line.sense} ${lineFigure(line, line.limit, system)}`;
}

/** How sure the limit is, in a few words. */
export function basisWords({ own, certainty, isGuide }: FindingLine): string {
  if (own !== undefined) return own.profile;
  return isGuide ? `${certainty}, a recommendation` : certainty;
}

/** A finding in a sentence, for those who do not see its place. */
export function lineSentence(line: FindingLine, system: UnitSystem): string {
  const margin = lineMargin(line);
  const parts = [`${line.rule}: ${valueWords(line, system)}`, ...(margin === "" ? [] : [`margin ${margin}`])];
  return parts.join(", ");
}

/** The findings of a list as rows for a spreadsheet, the head first. */
export function findingRows(lines: readonly FindingLine[], system: UnitSystem): readonly (readonly string[])[] {
  const head = [
    "section",
    "rule",
    "outcome",
    "value",
    "sense",
    "limit",
    "margin",
    "condition",
    "severity",
    "source",
    "certainty",
  ];
  return [
    head,
    ...lines.map((line) => [
      line.section,
      line.rule,
      line.waiver === undefined ? line.outcome : `${line.outcome}, let go`,
      Number.isNaN(line.value) ? "" : lineFigure(line, line.value, system),
      line.sense,
      Number.isNaN(line.limit) ? "" : lineFigure(line, line.limit, system),
      lineMargin(line),
      line.condition?.name ?? "",
      line.severity,
      line.own === undefined ? line.source : `${line.own.profile}: ${line.own.reason}`,
      line.own === undefined ? line.certainty : "",
    ]),
  ];
}
