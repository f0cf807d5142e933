import type { QuantityKind } from "./kind.ts";
import { kindTable } from "./kind-table.ts";

/** Kinds whose SI unit nobody types. */
const untyped: Partial<Record<QuantityKind, string>> = { concentration: "kg/m³", money: "cents" };

/**
 * The SI unit in which values of a kind stand, without a prefix: that in which equations hold.
 *
 * @param kind choice: what the value measures
 * @returns text: name of the unit; `1` for bare numbers
 * @example siUnitName("power") === "W" // true
 * @source definition
 */
export function siUnitName(kind: QuantityKind): string {
  const unit = kindTable[kind].units.find((each) => each.factor === 1 && each.zero === 0);
  return unit?.name ?? untyped[kind] ?? "1";
}
