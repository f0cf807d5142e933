import type { Fields } from "#form/field";
import type { Air } from "./air.ts";
import type { SectionCondition, SectionKind, SectionRating } from "./contract.ts";

/** Rates a section by itself, with all its figures. */
export function rateSection<F extends Fields, Design, Rating extends SectionRating>(
  kind: SectionKind<string, F, Design, Rating>,
  design: Design,
  air: Air,
  at: SectionCondition,
  out: Rating,
): void {
  kind.rate(design, air, at, out);
  kind.complete?.(design, at, out);
}
