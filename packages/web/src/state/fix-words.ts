import type { Fix } from "@oncethrough/engine/mending/smallest-fix";
import type { UnitSystem } from "@oncethrough/engine/quantity/kind";
import { printFigure } from "./figures.ts";
import type { FindingLine } from "./finding-lines.ts";
import { roundMoneyText, signedText } from "./money-words.ts";

/** A fix as the worker gives it. */
export type FixFigures = Omit<Fix, "text">;

/** The named step that applies a fix, and what it writes. */
export function fixStep({ rule }: FindingLine, { path, words, value }: FixFigures) {
  return { step: `mend ${rule}: ${words} ${value}`, changes: [{ path, typed: value }] };
}

/** What has to be said before a fix: the duty is the customer's, and no engineer turns it alone. */
export function fixCaveat({ path }: Pick<FixFigures, "path">): string {
  return path.startsWith("duty.") ? "only if the duty may change, " : "";
}

/** What a fix costs: price, mass, length, the fan's pressure; each with what it is, what stays the same left out. */
export function fixCosts(
  { priceChange, massChange, lengthChange, fanPressureChange }: FixFigures,
  currency: string,
  system: UnitSystem,
): readonly (readonly [name: string, change: string])[] {
  const mass = (size: number) => printFigure(size, "mass", system);
  const length = (size: number) => printFigure(size, "length", system);
  const pressure = (size: number) => printFigure(size, "pressureDifference", system);
  const nothing = "no change";
  return [
    [
      "price",
      priceChange === undefined ? "not priced" : changed(priceChange, 50, (size) => roundMoneyText(size, currency)),
    ],
    ["mass", changed(massChange, 0.05, mass)],
    ["length", changed(lengthChange, 5e-5, length)],
    ["fan pressure", changed(fanPressureChange, 0.5, pressure)],
  ];

  function changed(value: number, least: number, text: (size: number) => string): string {
    return Math.abs(value) < least ? nothing : signedText(value, text);
  }
}
