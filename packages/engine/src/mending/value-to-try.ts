import type { Field, NumberField, QuantityField } from "#form/field";
import type { QuantityKind } from "#quantity/kind";
import { parseQuantity } from "#quantity/parse";
import { printInUnit } from "#quantity/print";

/** A field as it stands in a job. */
export interface Standing {
  readonly field: Field;
  /** As typed, or the default; undefined where neither is there. */
  readonly text: string | undefined;
}

/** Which way a field is turned. */
export type Way = "more" | "less" | "other";

/** Steps of a quantity, of what stands there; nearest first. */
const factors = {
  more: [1.03, 1.06, 1.1, 1.15, 1.2, 1.3, 1.4, 1.5, 1.75, 2, 2.5, 3],
  less: [0.97, 0.94, 0.9, 0.85, 0.8, 0.7, 0.6, 0.5, 0.4, 0.3, 0.2],
} as const;
/** Steps of quantities whose zero means nothing, SI. */
const steps: Partial<Record<QuantityKind, readonly number[]>> = {
  temperature: [0.5, 1, 2, 3, 5, 8, 12],
  angle: [1, 2, 3, 5, 8, 12, 20, 30],
};
const countSteps = [1, 2, 3, 4, 6, 8];

/** What may be written in place of what stands there, nearest first; `names` are the records of a component's family. */
export function valuesToTry(
  { field, text }: Standing,
  way: Way,
  names: (family: string) => readonly string[],
): readonly string[] {
  switch (field.type) {
    case "quantity":
      return text === undefined || way === "other" ? [] : quantities(field, text, way);
    case "number":
      return text === undefined || way === "other" ? [] : numbers(field, Number(text), way);
    case "choice":
      return field.choices.filter((each) => each !== text);
    case "component":
      return names(field.family).filter((each) => each !== text);
    case "flag":
      return [text === "true" || text === "yes" ? "false" : "true"];
    default:
      return [];
  }
}

function quantities(field: QuantityField, text: string, way: "more" | "less"): readonly string[] {
  const present = parseQuantity(text, field.quantity);
  if (!present.ok) return [];
  const sign = way === "more" ? 1 : -1;
  const fixed = steps[field.quantity];
  const wanted =
    fixed === undefined
      ? factors[way].map((factor) => present.value * factor)
      : fixed.map((step) => present.value + sign * step);
  const [least, most] = [field.minimum, field.maximum].map((bound) =>
    bound === undefined ? undefined : parseQuantity(bound, field.quantity),
  );
  const within = wanted.filter((value) => !(least?.ok && value < least.value) && !(most?.ok && value > most.value));
  const typed = within.map((value) => rounded(printInUnit(value, field.quantity, present.unit), sign));
  return [...new Set(typed)].filter((each) => each !== text);
}

/** A value half way between two of a quantity, as typed; undefined where there is none that a person would type. */
export function valueBetween(field: Field, first: string, second: string): string | undefined {
  if (field.type !== "quantity") return undefined;
  const [from, to] = [parseQuantity(first, field.quantity), parseQuantity(second, field.quantity)];
  if (!from.ok || !to.ok) return undefined;
  const half = printInUnit((from.value + to.value) / 2, field.quantity, to.unit);
  const typed = rounded(half, to.value > from.value ? 1 : -1);
  return typed === first || typed === second ? undefined : typed;
}

/** To what a person would type: whole inches, three digits otherwise, away from what stands there. */
function rounded(text: string, sign: number): string {
  const [, number, unit] = /^(-?[\d,.e+-]+)(.*)$/.exec(text)!;
  const value = Number(number!.replaceAll(",", ""));
  const digit =
    unit!.trim() === "in" && Math.abs(value) >= 8 ? 1 : 10 ** (Math.floor(Math.log10(Math.abs(value) || 1)) - 2);
  const whole = (sign > 0 ? Math.ceil(value / digit - 1e-9) : Math.floor(value / digit + 1e-9)) * digit;
  return `${Number(whole.toPrecision(6))}${unit}`;
}

function numbers(field: NumberField, present: number, way: "more" | "less"): readonly string[] {
  const sign = way === "more" ? 1 : -1;
  const wanted = field.integer
    ? countSteps.map((step) => present + sign * step)
    : factors[way].map((factor) => Number((present * factor).toPrecision(3)));
  const { minimum = Number.NEGATIVE_INFINITY, maximum = Number.POSITIVE_INFINITY } = field;
  return wanted.filter((value) => value >= minimum && value <= maximum).map(String);
}
