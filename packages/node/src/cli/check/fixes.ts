import type { Catalogue } from "@oncethrough/engine/catalogue/read-catalogue";
import { type Bench, type Fix, type Proof, proveJob, smallestFix } from "@oncethrough/engine/mending/smallest-fix";
import { printQuantity } from "@oncethrough/engine/quantity/print";
import { type Finding, sortedFindings } from "@oncethrough/engine/rule/finding";
import type { Profile } from "@oncethrough/engine/rule/profile";
import type { ShopBooks } from "@oncethrough/engine/takeoff/shop-book";
import { amountText } from "../price/price-print.ts";
import type { Style } from "../rate/rate-print.ts";
import { printTable } from "../table.ts";

/** A finding that may be mended, and the cheapest single change that does. */
export interface MendedFinding {
  readonly finding: Finding;
  readonly fix: Fix | undefined;
}

/** Finds the smallest fix of every finding that fails, advises or is thin; of one rule where it is named. */
export function fixesOf(
  text: string,
  catalogue: Catalogue,
  profile: Profile,
  books: ShopBooks | undefined,
  rule: string | undefined,
): readonly MendedFinding[] {
  const bench: Bench = { catalogue, profile, books };
  const proof = proveJob(text, bench);
  if (proof === undefined) return [];
  return wantsMending(proof)
    .filter(({ entry }) => rule === undefined || entry.rule.id === rule)
    .map((finding) => ({ finding, fix: smallestFix(proof, finding, bench) }));
}

function wantsMending({ check }: Proof): readonly Finding[] {
  return sortedFindings(check.findings).filter(
    ({ outcome, thin }) => outcome === "fail" || outcome === "advice" || thin,
  );
}

/** The fixes for a person: what to change, the margin it leaves, what it costs. */
export function printFixes(found: readonly MendedFinding[], currency: string, style: Style): string {
  const { ink, system } = style;
  const rows = found.map(({ finding, fix }) => {
    const { section, rule } = finding.entry;
    if (fix === undefined)
      return [section, rule.id, ink.quiet("no single change mends it alone"), "", "", "", "", "", ""];
    const signed = (value: number, words: string) => `${value > 0 ? "+" : ""}${words}`;
    return [
      section,
      rule.id,
      fix.words,
      `${fix.before} → ${ink.accent(fix.value)}`,
      `${(100 * fix.margin).toFixed(1)} %`,
      fix.priceChange === undefined ? "" : signed(fix.priceChange, amountText(fix.priceChange)),
      signed(fix.massChange, printQuantity(fix.massChange, "mass", system)),
      signed(fix.lengthChange, printQuantity(fix.lengthChange, "length", system)),
      signed(fix.fanPressureChange, printQuantity(fix.fanPressureChange, "pressureDifference", system)),
    ];
  });
  const table = printTable(
    [
      { name: "section", align: "left" },
      { name: "rule", align: "left" },
      { name: "smallest fix", align: "left" },
      { name: "change", align: "left" },
      { name: "margin then", align: "right" },
      { name: "price", unit: currency, align: "right" },
      { name: "mass", align: "right" },
      { name: "length", align: "right" },
      { name: "fan", align: "right" },
    ],
    rows,
    ink,
  );
  return `${ink.strong("smallest fixes, each alone")}\n${table}`;
}
