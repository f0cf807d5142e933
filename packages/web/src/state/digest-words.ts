import type { DigestFigure } from "@oncethrough/engine/compare/digest";
import type { UnitSystem } from "@oncethrough/engine/quantity/kind";
import { printFigure } from "./figures.ts";
import { moneyText, signedText } from "./money-words.ts";

/** A figure of a digest as a person reads it; a dash where it is not known. */
export function digestText({ value, quantity }: DigestFigure, system: UnitSystem, currency: string): string {
  if (value === undefined) return "—";
  return quantity === "money" ? moneyText(value, currency) : printFigure(value, quantity, system);
}

/** What a figure is more or less than another; nothing where it is the same as printed. */
export function digestDifference(
  figure: DigestFigure,
  against: DigestFigure,
  system: UnitSystem,
  currency: string,
): string {
  if (figure.value === undefined || against.value === undefined) return "";
  if (digestText(figure, system, currency) === digestText(against, system, currency)) return "";
  return signedText(figure.value - against.value, (value) => digestText({ ...figure, value }, system, currency));
}
