import type { QuantityKind } from "#quantity/kind";

/** A figure of a declared rating beside ours, both at the declared point. */
export interface DeclaredLine {
  readonly what: string;
  readonly quantity: QuantityKind;
  readonly declared: number;
  readonly ours: number;
  /** Declared over ours, less one; of temperatures declared less ours, K. */
  readonly difference: number;
  /** By how much a certified rating may miss, measured as the difference; undefined where none is known. */
  readonly tolerance: number | undefined;
}

/** Something that the declared rating was made at, and what it is at the condition in hand. */
export interface DeclaredCircumstance {
  readonly what: string;
  readonly quantity: QuantityKind;
  readonly declared: number;
  readonly here: number;
  /** The condition in hand asks more of the part than the declared point did. */
  readonly asksMore: boolean;
}

/** A declared rating held against our own. */
export interface DeclaredComparison {
  readonly number: string;
  readonly revision: string;
  /** What both are rated at, in words. */
  readonly at: string;
  readonly lines: readonly DeclaredLine[];
  /** What differs from the condition in hand by more than rounding. */
  readonly circumstances: readonly DeclaredCircumstance[];
  /** What does not fit, whatever the condition: another build, another liquid, figures that disagree among themselves. */
  readonly remarks: readonly string[];
  readonly source: string;
}

/** Number and revision, as documents name a declared rating. */
export function declaredName({ number, revision }: Pick<DeclaredComparison, "number" | "revision">): string {
  return `declared rating ${number}${revision === "" ? "" : `, revision ${revision}`}`;
}

/** A line of a comparison; temperatures are compared by their difference, all else by their ratio. */
export function declaredLine(
  what: string,
  quantity: QuantityKind,
  declared: number,
  ours: number,
  tolerance?: number,
): DeclaredLine {
  const difference = quantity === "temperature" ? declared - ours : declared / ours - 1;
  return { what, quantity, declared, ours, difference, tolerance };
}

/** True where declared and ours lie further apart than a certified rating may miss. */
export function misses({ difference, tolerance }: DeclaredLine): boolean {
  return tolerance !== undefined && !(Math.abs(difference) <= tolerance);
}
