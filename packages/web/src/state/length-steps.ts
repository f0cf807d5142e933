import { metresPerInch } from "@oncethrough/engine/quantity/inch-pound";
import type { UnitSystem } from "@oncethrough/engine/quantity/kind";
import { parseQuantity } from "@oncethrough/engine/quantity/parse";

/** m: what one press of a key changes a length by, and what one with Shift does. */
export const lengthSteps = {
  ip: { one: metresPerInch, many: 6 * metresPerInch },
  si: { one: 0.01, many: 0.1 },
} as const;

/** The system whose units a person typed a length in; `otherwise` where none is typed. */
export function systemTyped(typed: string | undefined, otherwise: UnitSystem): UnitSystem {
  if (typed === undefined) return otherwise;
  return /(?:mm|cm|\dm|\sm)\b/.test(typed) ? "si" : "ip";
}

/** A length in whole steps of a system. */
export function steppedLength(length: number, system: UnitSystem): number {
  const { one } = lengthSteps[system];
  return Math.round(length / one) * one;
}

/** A length as a person would type it: whole inches or millimetres. */
export function shortLength(length: number, system: UnitSystem): string {
  return system === "ip" ? `${Math.round(length / metresPerInch)} in` : `${Math.round(1000 * length)} mm`;
}

/** m of a length as typed in a field's range; undefined where the field has none. */
export function lengthOf(typed: string | undefined): number | undefined {
  if (typed === undefined) return undefined;
  const parsed = parseQuantity(typed, "length");
  return parsed.ok ? parsed.value : undefined;
}
