import type { QuantityKind } from "#quantity/kind";
import { printQuantity } from "#quantity/print";

/** A figure inside a sentence, for readers of either system: `62.01 in (1575 mm)`. */
export function inBothUnits(value: number, kind: QuantityKind): string {
  return `${printQuantity(value, kind, "ip")} (${printQuantity(value, kind, "si")})`;
}
