import type { QuantityKind } from "@oncethrough/engine/quantity/kind";
import { printQuantity } from "@oncethrough/engine/quantity/print";
import { glued } from "../ink.ts";
import type { Style } from "../rate/rate-print.ts";

/** How a figure is said, held together with its unit. */
export function sayer({ system }: Style): (value: number, quantity: QuantityKind) => string {
  return (value, quantity) => glued(printQuantity(value, quantity, system));
}
