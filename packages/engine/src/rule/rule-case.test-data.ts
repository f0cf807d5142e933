/** A piece of the base unit's text and what stands there instead. */
export type Patch = readonly (readonly [piece: string, by: string])[];

/** A rule on a patched base unit: met, missed, not to be told, or not applying. */
export interface RuleCase {
  readonly rule: string;
  readonly patch: Patch;
  readonly is: "met" | "missed" | "cannot tell" | "not asked";
  /** In SI, where it was worked out by hand or published. */
  readonly value?: number;
  readonly limit?: number;
}
