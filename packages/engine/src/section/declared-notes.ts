import { inBothUnits } from "./both-units.ts";
import type { Note } from "./contract.ts";
import {
  type DeclaredCircumstance,
  type DeclaredComparison,
  type DeclaredLine,
  declaredName,
  misses,
} from "./declared.ts";

/** What to mind about a declared rating before anyone orders by it. */
export function declaredNotes(comparison: DeclaredComparison | undefined): readonly Note[] {
  if (comparison === undefined) return [];
  const name = declaredName(comparison);
  const { lines, circumstances, remarks, source } = comparison;
  const apart = lines.some(misses);
  const figures = lines.map((line) => `${line.what} ${differenceText(line)}`).join(", ");
  const verdict = apart ? "; more than the tolerance of a certified rating: ask which of both is right" : "";
  const harder = circumstances.filter((each) => each.asksMore);
  const words = (each: DeclaredCircumstance) =>
    `${each.what} ${inBothUnits(each.here, each.quantity)} here, ${inBothUnits(each.declared, each.quantity)} declared`;
  const notes: Note[] = [
    {
      what: `${name} over ours at its own point: ${figures}${verdict}`,
      weight: apart ? "caution" : "information",
      source,
    },
    ...remarks.map((what): Note => ({ what: `${name}: ${what}`, weight: "caution" })),
  ];
  if (harder.length > 0) {
    const what = `${name} does not cover this condition, which asks more: ${harder.map(words).join("; ")}`;
    notes.push({ what, weight: "caution" });
  } else if (circumstances.length > 0) {
    const what = `${name} was made at other circumstances: ${circumstances.map(words).join("; ")}`;
    notes.push({ what, weight: "information" });
  }
  return notes;
}

/** `+3.1 %`, or `−0.4 K` of temperatures. */
function differenceText({ difference, quantity }: DeclaredLine): string {
  const sign = difference < 0 ? "−" : "+";
  if (quantity === "temperature") return `${sign}${inBothUnits(Math.abs(difference), "temperatureDifference")}`;
  return `${sign}${Math.abs(100 * difference).toFixed(1)} %`;
}
