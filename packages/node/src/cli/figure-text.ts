import type { QuantityKind, UnitSystem } from "@oncethrough/engine/quantity/kind";
import { printQuantity } from "@oncethrough/engine/quantity/print";
import { siUnitName } from "@oncethrough/engine/quantity/si-unit";

/** What a figure of a section measures. */
export type FigureQuantity = QuantityKind | "count" | "factor";

/** A figure of a section for a person to read. */
export function figureText(value: number, quantity: FigureQuantity, system: UnitSystem): string {
  if (!Number.isFinite(value)) return "—";
  if (quantity === "count") return Number(value.toFixed(Math.abs(value) < 100 ? 2 : 0)).toLocaleString("en-US");
  if (quantity === "factor") return String(Number(value.toPrecision(4)));
  return printQuantity(value, quantity, system);
}

/** The SI unit in which a figure stands in JSON; `1` for bare numbers. */
export function siUnit(quantity: FigureQuantity): string {
  if (quantity === "count" || quantity === "factor") return "1";
  return siUnitName(quantity);
}
