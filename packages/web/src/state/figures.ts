import type { QuantityKind, UnitSystem } from "@oncethrough/engine/quantity/kind";
import { printQuantity } from "@oncethrough/engine/quantity/print";
import { siUnitName } from "@oncethrough/engine/quantity/si-unit";
import type { SectionRating } from "@oncethrough/engine/section/contract";
import type { UnitRating } from "@oncethrough/engine/unit/rating";
import { type EvaluatedWorking, workingOf } from "@oncethrough/engine/unit/report";
import type { Unit } from "@oncethrough/engine/unit/unit";

/** A figure as shown. */
export interface Figure {
  readonly key: string;
  readonly name: string;
  readonly value: string;
  /** The arithmetic behind it, where the kind tells it. */
  readonly working: EvaluatedWorking | undefined;
}

/** A number as a person reads it; counts and factors have no unit. */
export function printFigure(value: number, quantity: QuantityKind | "count" | "factor", system: UnitSystem): string {
  if (!Number.isFinite(value)) return "—";
  if (quantity === "count") return value.toFixed(0);
  if (quantity === "factor") return String(Number(value.toPrecision(4))).replace("-", "−");
  return printQuantity(value, quantity, system).replace(/^-/, "−");
}

/** A number as it stands in an equation: in SI, with seven digits. */
export function siFigure(value: number, quantity: QuantityKind | "count" | "factor"): string {
  if (!Number.isFinite(value)) return "—";
  const unit = quantity === "count" || quantity === "factor" ? "1" : siUnitName(quantity);
  return `${Number(value.toPrecision(7))}${unit === "1" ? "" : ` ${unit}`}`.replace(/^-/, "−");
}

/** Figures as rows for a spreadsheet, the head first. */
export function figureRows(figures: readonly Figure[]): readonly (readonly string[])[] {
  return [["figure", "value"], ...figures.map(({ name, value }) => [name, value])];
}

/** What follows in a section at one condition, most important first. */
export function sectionFigures(unit: Unit, rating: UnitRating, index: number, system: UnitSystem): readonly Figure[] {
  const section = unit.sections[index];
  const record = rating.sections[index];
  if (section === undefined || record === undefined) return [];
  const workings = workingOf(unit, rating, section.name) ?? [];
  return section.behaviour.figures.map((line) => {
    const value = record[line.figure as keyof SectionRating] as unknown;
    return {
      key: line.figure,
      name: line.name,
      value: typeof value === "number" ? printFigure(value, line.quantity, system) : String(value ?? "—"),
      working: workings.find((working) => working.figure === line.figure),
    };
  });
}

/** What follows for the unit as a whole. */
export function unitFigures(unit: Unit, rating: UnitRating, system: UnitSystem): readonly Figure[] {
  const { supply } = rating;
  const figure = (key: string, name: string, value: number, quantity: QuantityKind | "count"): Figure => ({
    key,
    name,
    value: printFigure(value, quantity, system),
    working: undefined,
  });
  return [
    figure("supplyStandardAirflow", "supply, standard air", rating.supplyStandardAirflow, "standardAirflow"),
    figure("supplyActualAirflow", "supply, actual", rating.supplyActualAirflow, "actualAirflow"),
    figure("outsideAirShare", "outside air", rating.outsideAirShare, "share"),
    figure("supplyDryBulb", "supply dry bulb", supply.dryBulb, "temperature"),
    figure("supplyHumidityRatio", "supply moisture", supply.humidityRatio, "humidityRatio"),
    figure("externalStaticHeld", "external static held", rating.externalStaticHeld, "pressureDifference"),
    figure("externalStaticNeeded", "external static needed", rating.externalStaticNeeded, "pressureDifference"),
    figure("fanSpeed", "fan speed", rating.operation.fanSpeed, "rotationalSpeed"),
    figure("fanElectricPower", "fan motors, from the mains", rating.fanElectricPower, "electricPower"),
    figure("length", "length of the cabinet", unit.length, "length"),
  ];
}
