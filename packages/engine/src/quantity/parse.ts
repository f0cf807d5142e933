import { adviceAbout } from "./advice.ts";
import type { QuantityKind } from "./kind.ts";
import { kindTable } from "./kind-table.ts";
import { leadingNumber } from "./number-text.ts";
import { canonicalUnit, plainCharacters } from "./spelling.ts";
import { siFromReading, type Unit } from "./unit.ts";

/** What a typed quantity came to: its SI value and the unit it was typed in, or what is wrong and what is allowed. */
export type ParsedQuantity =
  | { readonly ok: true; readonly value: number; readonly unit: string }
  | { readonly ok: false; readonly problem: string; readonly allowed: string };

const longestText = 120;
/** Units that a message names; the common ones stand first in the table. */
const mostNamed = 8;

/**
 * Reads a quantity that a person typed, with its unit: `24,000 CFM`, `3-1/2 in`, `3'-6"`, `2.75 in w.g.`. Words that
 * mean several things are resolved by the kind that is asked for.
 *
 * @param text text: the quantity as typed
 * @param kind choice: what it measures
 * @returns record: the SI value and the unit's name, or the problem and what is allowed; the value is always finite
 * @outside anything that is not such a quantity gives a problem in words
 * @example parseQuantity("24,000 CFM", "airflow").value // 11.326739 ± 1e-6
 * @source derived-here
 */
export function parseQuantity(text: string, kind: QuantityKind): ParsedQuantity {
  const typed = plainCharacters(text.slice(0, 4 * longestText));
  if (typed === "") return refused("nothing is written here", kind);
  if (text.length > longestText) return refused("the text is too long for a quantity", kind);
  const money = kind === "money" ? parseMoney(typed) : undefined;
  return money ?? parseFeetAndInches(typed, kind) ?? parsePlain(priceWithUnit(typed), kind);
}

/**
 * What a field of a kind takes, for messages.
 *
 * @param kind choice: what the field measures
 * @returns text: the units and an example
 * @example allowedText("velocity") // "a velocity in fpm, ft/s, m/s, mph, km/h, knots, in/h or mm/h, such as 450 fpm"
 * @source derived-here
 */
export function allowedText(kind: QuantityKind): string {
  const entry = kindTable[kind];
  const article = /^[aeiou]/i.test(entry.words) ? "an" : "a";
  if (entry.bare) return `${article} ${entry.words} such as ${entry.example}`;
  const names = entry.units.slice(0, mostNamed).map((each) => each.name);
  const last = entry.units.length > mostNamed ? `another unit of ${entry.words}` : (names.pop() ?? "");
  const list = names.length === 0 ? last : `${names.join(", ")} or ${last}`;
  return `${article} ${entry.words} in ${list}, such as ${entry.example}`;
}

/**
 * The unit of a kind that a text spells.
 *
 * @param spelled text: a unit as typed
 * @param kind choice: what it has to measure
 * @returns record: the unit, or undefined when the kind has none that is so spelled
 * @example unitOf("in. w.g.", "pressureDifference").factor // 249.08891 ± 1e-9
 * @source nist-sp-811 appendix B
 */
export function unitOf(spelled: string, kind: QuantityKind): Unit | undefined {
  const canonical = canonicalUnit(spelled);
  const found = kindTable[kind].units.find((each) => each.spellings.includes(canonical));
  return found?.mega === true && !plainCharacters(spelled).startsWith("M") ? undefined : found;
}

function refused(problem: string, kind: QuantityKind): ParsedQuantity {
  return { ok: false, problem, allowed: allowedText(kind) };
}

/** Nothing is colder than absolute zero or emptier than vacuum. */
const leastOfKind: { readonly [kind in QuantityKind]?: number } = { temperature: -273.15, absolutePressure: 0 };

function accepted(reading: number, unit: Unit, kind: QuantityKind): ParsedQuantity {
  const value = siFromReading(reading, unit);
  if (!Number.isFinite(reading) || !Number.isFinite(value)) return refused("the number is not finite", kind);
  const least = leastOfKind[kind];
  if (least !== undefined && value < least - 1e-9) {
    return refused(`${reading} ${unit.name} is below ${kind === "temperature" ? "absolute zero" : "vacuum"}`, kind);
  }
  return { ok: true, value: value === 0 ? 0 : value, unit: unit.name };
}

function parsePlain(typed: string, kind: QuantityKind): ParsedQuantity {
  const number = leadingNumber(typed);
  if (number === undefined) return refused(`"${typed}" does not begin with a number`, kind);
  if (/^,/.test(number.rest)) {
    return refused(`the comma in "${typed}" does not separate thousands; a decimal point is written as a dot`, kind);
  }
  if (number.rest === "") return refused(`"${typed}" has no unit`, kind);
  // 5/8-in and 12-inch are trade spellings; a hyphen before a digit is not.
  const spelled = number.rest.replace(/^-(?=[a-z"'])/i, "");
  const unit = unitOf(spelled, kind);
  if (unit === undefined) return refused(adviceAbout(spelled, kind), kind);
  return accepted(number.value, unit, kind);
}

const feetAndInches = /^([+-]?)\s?(\d[\d,]*)\s?(?:'|ft\.?|feet|foot)\s?-?\s?(\d.*?)\s?(?:"|''|in\.?|inch|inches)$/i;

function parseFeetAndInches(typed: string, kind: QuantityKind): ParsedQuantity | undefined {
  if (kind !== "length" && kind !== "smallLength") return undefined;
  const match = feetAndInches.exec(typed);
  if (match === null) return undefined;
  const feet = leadingNumber(match[2] ?? "");
  const inches = leadingNumber(match[3] ?? "");
  const unit = unitOf("in", kind);
  if (feet?.rest !== "" || inches?.rest !== "" || unit === undefined) return undefined;
  if (inches.value >= 12) return refused(`"${typed}" has 12 inches or more beside the feet`, kind);
  const total = feet.value * 12 + inches.value;
  return accepted(match[1] === "-" ? -total : total, unit, kind);
}

/** `$0.12/kWh` as `0.12 $/kWh`. */
function priceWithUnit(typed: string): string {
  return typed.replace(/^\$ ?([\d.,]+) ?(\/|per )/, "$1 $$$2");
}

const amount = /^([+-]?)\s?([$€£]?)\s?([+-]?)(\d.*|\.\d.*)$/;

function parseMoney(typed: string): ParsedQuantity {
  const match = amount.exec(typed);
  const number = leadingNumber(match?.[4] ?? "");
  if (match === null || number === undefined) return refused(`"${typed}" is not an amount of money`, "money");
  const [, before, symbol = "", after] = match;
  const unit = unitOf(symbol || number.rest || "$", "money");
  if (unit === undefined || (symbol !== "" && number.rest !== "")) {
    return refused(`"${typed}" is not an amount of money`, "money");
  }
  const cents = Math.round(number.value * unit.factor);
  if (!Number.isSafeInteger(cents)) return refused("the amount is too large", "money");
  if (Math.abs(number.value * unit.factor - cents) > 1e-4) {
    return refused(`"${typed}" has parts of a cent`, "money");
  }
  const negative = (before === "-") !== (after === "-");
  const name = symbol || number.rest ? unit.name : "";
  return { ok: true, value: negative && cents !== 0 ? -cents : cents, unit: name };
}
