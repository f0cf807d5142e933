import type { QuantityKind, UnitSystem } from "./kind.ts";
import { type Display, kindTable } from "./kind-table.ts";
import { readingFromSi } from "./unit.ts";

/**
 * A quantity for a person to read: rounded as the kind's table says, thousands separated by commas, with its unit.
 *
 * @param value SI, any: the quantity
 * @param kind choice: what it measures
 * @param system choice: ip or si
 * @returns text: number and unit; money has no symbol, since only its job knows the currency
 * @outside a value that is not finite prints as a dash; a time of a day and more as never within it
 * @example printQuantity(8.6834, "airflow", "ip") // "18,399 cfm"
 * @example printQuantity(86400, "minutes", "si") // "never within 24 h"
 * @source derived-here
 */
export function printQuantity(value: number, kind: QuantityKind, system: UnitSystem): string {
  const { endless } = kindTable[kind];
  if (endless !== undefined && value >= endless.from) return endless.words;
  const name = displayUnit(kind, system);
  const number = printNumber(value, kind, system);
  return name === "" || name === "°" ? `${number}${name}` : `${number} ${name}`;
}

/**
 * The number alone, in the unit that `displayUnit` names.
 *
 * @param value SI, any: the quantity
 * @param kind choice: what it measures
 * @param system choice: ip or si
 * @returns text: the rounded number
 * @outside a value that is not finite prints as a dash
 * @example printNumber(0.85, "share", "ip") // "85.0"
 * @source derived-here
 */
export function printNumber(value: number, kind: QuantityKind, system: UnitSystem): string {
  const display = kindTable[kind][system];
  const reading = readingFromSi(value, display.unit);
  if (!Number.isFinite(reading)) return "—";
  if (display.decimals === undefined && reading !== 0 && Math.abs(reading) < 1e-6) {
    return reading.toExponential(display.significant - 1);
  }
  if (Math.abs(reading) >= 1e15) return reading.toExponential(6);
  return separated(reading.toFixed(shownDecimals(reading, display)));
}

/**
 * The unit in which a system shows a kind.
 *
 * @param kind choice: what is measured
 * @param system choice: ip or si
 * @returns text: the unit's name; empty for money
 * @example displayUnit("pressureDifference", "ip") // "in.wg"
 * @source derived-here
 */
export function displayUnit(kind: QuantityKind, system: UnitSystem): string {
  return kind === "money" ? "" : kindTable[kind][system].unit.name;
}

/**
 * The unrounded number in the unit that `displayUnit` names, for charts and inputs.
 *
 * @param value SI, any: the quantity
 * @param kind choice: what it measures
 * @param system choice: ip or si
 * @returns number: the reading
 * @example toDisplay(1, "velocity", "ip") // 196.850394 ± 1e-6
 * @source definition
 */
export function toDisplay(value: number, kind: QuantityKind, system: UnitSystem): number {
  return readingFromSi(value, kindTable[kind][system].unit);
}

/**
 * The SI value of a reading in the unit that `displayUnit` names: the way back of `toDisplay`.
 *
 * @param reading number, any: the number in the shown unit
 * @param kind choice: what it measures
 * @param system choice: ip or si
 * @returns SI: the quantity
 * @example fromDisplay(196.850394, "velocity", "ip") // 1 ± 1e-8
 * @source definition
 */
export function fromDisplay(reading: number, kind: QuantityKind, system: UnitSystem): number {
  const { unit } = kindTable[kind][system];
  return (reading - unit.zero) * unit.factor;
}

/**
 * A value in the unit it was typed in, to as many digits as matter in a message.
 *
 * @param value SI, any: the quantity
 * @param kind choice: what it measures
 * @param unitName text: a unit's printed name, as `parseQuantity` gives it
 * @returns text: number and unit
 * @outside an unknown name uses the kind's inch-pound unit
 * @example printInUnit(1.016, "velocity", "fpm") // "200 fpm"
 * @source derived-here
 */
export function printInUnit(value: number, kind: QuantityKind, unitName: string): string {
  const entry = kindTable[kind];
  const unit = entry.units.find((each) => each.name === unitName) ?? entry.ip.unit;
  const number = Number(readingFromSi(value, unit).toPrecision(6));
  const text =
    Math.abs(number) >= 1e6 || (number !== 0 && Math.abs(number) < 1e-6) ? String(number) : separated(String(number));
  if (kind === "money") return unitName === "" ? text : `${unit.name}${text}`;
  return unit.name === "°" ? `${text}°` : `${text} ${unit.name}`;
}

/**
 * A bare number with commas between thousands, the same on every machine.
 *
 * @param value number, any: what is counted
 * @param decimals count, 0…15: digits behind the point at most; zeros at the end are left out
 * @returns text: the number
 * @outside a value that is not finite prints as a dash
 * @example groupedNumber(1234567.891, 1) // "1,234,567.9"
 * @source derived-here
 */
export function groupedNumber(value: number, decimals: number): string {
  return Number.isFinite(value) ? separated(String(Number(value.toFixed(decimals)))) : "—";
}

/** Enough decimals for the digits that count; a carry (9.9996 to 10.000) may give one more, which does no harm. */
function shownDecimals(reading: number, display: Display): number {
  if (display.decimals !== undefined) return display.decimals;
  if (reading === 0) return 0;
  return Math.max(0, display.significant - 1 - Math.floor(Math.log10(Math.abs(reading))));
}

/** Commas between thousands; no minus before a number that rounded to nothing. */
function separated(digits: string): string {
  const unsigned = Number(digits) === 0 ? digits.replace("-", "") : digits;
  const [whole = "", ...decimals] = unsigned.split(".");
  return [whole.replace(/\B(?=(\d{3})+$)/g, ","), ...decimals].join(".");
}
