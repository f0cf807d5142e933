import type { QuantityKind } from "#quantity/kind";
import { leadingNumber } from "#quantity/number-text";
import { allowedText, type ParsedQuantity, parseQuantity } from "#quantity/parse";
import { printInUnit } from "#quantity/print";
import { plainCharacters } from "#quantity/spelling";
import type { ChoiceField, ComponentField, FlagField, NumberField, QuantityField, TextField } from "./field.ts";
import { nearestName } from "./nearest-name.ts";
import { type Reading, report, type Spot, type unsound } from "./reading.ts";

/** A field whose value is a single scalar of the text. */
export type ScalarField = QuantityField | NumberField | ChoiceField | FlagField | TextField | ComponentField<unknown>;

/** What a scalar came to, and, for a quantity, the unit it was typed in. */
export interface ScalarRead {
  readonly value: unknown;
  readonly unit?: string;
}

/** Reads what a scalar says as its field wants it; a problem is reported at the spot. */
export function readScalar(reading: Reading, typed: string, field: ScalarField, spot: Spot): ScalarRead {
  switch (field.type) {
    case "quantity":
      return readQuantity(reading, typed, field, spot);
    case "number":
      return { value: readNumber(reading, typed, field, spot) };
    case "choice":
      return { value: readChoice(reading, typed, field, spot) };
    case "flag":
      return { value: readFlag(reading, typed, spot) };
    case "text":
      return { value: readText(reading, typed, field, spot) };
    case "component":
      return { value: readComponent(reading, typed, field, spot) };
  }
}

/** What a scalar field takes, in words. */
export function allowedByScalar(reading: Reading, field: ScalarField): string {
  switch (field.type) {
    case "quantity":
      return [allowedText(field.quantity), limitsText(field, undefined)].filter((part) => part !== "").join("; ");
    case "number":
      return allowedNumber(field);
    case "choice":
      return listed(field.choices);
    case "flag":
      return "yes or no";
    case "text":
      return `text of at most ${field.longest ?? longestText} characters`;
    case "component":
      return allowedComponent(reading, field);
  }
}

const longestText = 200;

/** The SI value of a quantity in a descriptor; a descriptor that cannot be read is a mistake in the program. */
export function descriptorQuantity(text: string, kind: QuantityKind): number {
  const parsed = parseQuantity(text, kind);
  if (!parsed.ok) throw new Error(`a field's descriptor says "${text}" for ${kind}: ${parsed.problem}`);
  return parsed.value;
}

/** Two readings of the same limit in different units may differ in the last place. */
const slack = 1e-9;

function readQuantity(reading: Reading, typed: string, field: QuantityField, spot: Spot): ScalarRead {
  const limits = limitsOf(field);
  const parsed = typed === field.default ? limits.byDefault! : parseQuantity(typed, field.quantity);
  if (!parsed.ok) return { value: report(reading, spot, typed, parsed.problem, parsed.allowed) };
  const below = isBeyond(limits.least, parsed.value);
  const above = isBeyond(parsed.value, limits.most);
  if (below || above) {
    const problem = `"${typed}" is ${below ? "below the least" : "above the most"} that is allowed`;
    return { value: report(reading, spot, typed, problem, limitsText(field, parsed.unit)) };
  }
  return { value: parsed.value, unit: parsed.unit };
}

interface Limits {
  readonly least: number;
  readonly most: number;
  readonly byDefault: ParsedQuantity | undefined;
}

/** What descriptors say, who never change, each read once. */
const knownLimits = new WeakMap<QuantityField, Limits>();

function limitsOf(field: QuantityField): Limits {
  const known = knownLimits.get(field);
  if (known !== undefined) return known;
  const { minimum, maximum, quantity } = field;
  const found = {
    least: minimum === undefined ? Number.NEGATIVE_INFINITY : descriptorQuantity(minimum, quantity),
    most: maximum === undefined ? Number.POSITIVE_INFINITY : descriptorQuantity(maximum, quantity),
    byDefault: field.default === undefined ? undefined : parseQuantity(field.default, quantity),
  };
  knownLimits.set(field, found);
  return found;
}

function isBeyond(larger: number, smaller: number): boolean {
  if (!Number.isFinite(larger - smaller)) return false;
  return larger - smaller > slack * Math.max(Math.abs(larger), Math.abs(smaller));
}

/** The limits in the unit that the person typed, with the descriptor's own words where they differ. */
function limitsText(field: QuantityField, unit: string | undefined): string {
  const said = (word: string, limit: string | undefined): string[] => {
    if (limit === undefined) return [];
    const own =
      unit === undefined ? limit : printInUnit(descriptorQuantity(limit, field.quantity), field.quantity, unit);
    return [plain(own) === plain(limit) ? `${word} ${limit}` : `${word} ${own} (${limit})`];
  };
  return [...said("at least", field.minimum), ...said("at most", field.maximum)].join(" and ");
}

function plain(text: string): string {
  return plainCharacters(text).replace(/[ ,]/g, "");
}

function readNumber(reading: Reading, typed: string, field: NumberField, spot: Spot): number | typeof unsound {
  const number = leadingNumber(plainCharacters(typed));
  const allowed = allowedNumber(field);
  if (number === undefined) return report(reading, spot, typed, `"${typed}" is not a number`, allowed);
  if (number.rest !== "") return report(reading, spot, typed, `"${typed}" is more than a bare number`, allowed);
  if (!Number.isFinite(number.value)) return report(reading, spot, typed, `"${typed}" is not finite`, allowed);
  if (field.integer && !Number.isSafeInteger(number.value)) {
    return report(reading, spot, typed, `"${typed}" is not a whole number`, allowed);
  }
  if (field.minimum !== undefined && number.value < field.minimum) {
    return report(reading, spot, typed, `"${typed}" is below the least that is allowed`, allowed);
  }
  if (field.maximum !== undefined && number.value > field.maximum) {
    return report(reading, spot, typed, `"${typed}" is above the most that is allowed`, allowed);
  }
  return number.value;
}

function allowedNumber(field: NumberField): string {
  const limits = [
    ...(field.minimum === undefined ? [] : [`at least ${field.minimum}`]),
    ...(field.maximum === undefined ? [] : [`at most ${field.maximum}`]),
  ];
  const kind = field.integer ? "a whole number" : "a number without unit";
  return limits.length === 0 ? kind : `${kind}, ${limits.join(" and ")}`;
}

function readChoice(reading: Reading, typed: string, field: ChoiceField, spot: Spot): string | typeof unsound {
  if (field.choices.includes(typed)) return typed;
  const nearest = nearestName(typed, field.choices);
  return report(reading, spot, typed, `"${typed}" is not one of the choices`, listed(field.choices), nearest);
}

/** Names joined for a sentence; a long list is cut. */
export function listed(names: readonly string[], word: "or" | "and" = "or"): string {
  const shown = names.slice(0, 40);
  if (shown.length < names.length) return `${shown.join(", ")}, … (${names.length} in all)`;
  const last = shown.pop() ?? "none";
  return shown.length === 0 ? last : `${shown.join(", ")} ${word} ${last}`;
}

function readFlag(reading: Reading, typed: string, spot: Spot): boolean | typeof unsound {
  if (typed === "yes" || typed === "true") return true;
  if (typed === "no" || typed === "false") return false;
  return report(reading, spot, typed, `"${typed}" is neither yes nor no`, "yes or no");
}

function readText(reading: Reading, typed: string, field: TextField, spot: Spot): string | typeof unsound {
  const longest = field.longest ?? longestText;
  if (typed.length <= longest) return typed;
  const problem = `the text has ${typed.length} characters`;
  return report(reading, spot, `${typed.slice(0, 60)}…`, problem, `at most ${longest} characters`);
}

function readComponent(reading: Reading, typed: string, field: ComponentField<unknown>, spot: Spot): unknown {
  const found = reading.context.component(field.family, typed);
  if (found !== undefined) return found;
  const nearest = nearestName(typed, reading.context.componentNames(field.family));
  const problem = `the catalogue has no ${field.family} called "${typed}"`;
  return report(reading, spot, typed, problem, allowedComponent(reading, field), nearest);
}

function allowedComponent(reading: Reading, field: ComponentField<unknown>): string {
  const names = reading.context.componentNames(field.family);
  return names.length === 0 ? `a ${field.family}; the catalogue holds none` : listed(names);
}
