import fc from "fast-check";
import type { Field, Fields } from "#form/field";
import { parseQuantity } from "#quantity/parse";
import { type SectionKind, SectionProblem } from "#section/contract";
import { shippedCatalogue } from "#section/shipped.test-data";
import { assembleUnit, type WrittenSection } from "./assemble.ts";
import type { Casing } from "./casing.ts";
import type { Unit } from "./unit.ts";

function si(text: string, field: Field & { type: "quantity" }): number {
  const reading = parseQuantity(text, field.quantity);
  if (!reading.ok) throw new Error(`${text}: ${reading.problem}`);
  return reading.value;
}

/** Values of a quantity field: about its default, within its limits. */
function quantityValues(field: Field & { type: "quantity" }): fc.Arbitrary<number> {
  const low = field.minimum === undefined ? Number.NEGATIVE_INFINITY : si(field.minimum, field);
  const high = field.maximum === undefined ? Number.POSITIVE_INFINITY : si(field.maximum, field);
  if (field.default === undefined) return fc.double({ min: low, max: high, noNaN: true });
  const typical = si(field.default, field);
  return fc
    .double({ min: 0.7, max: 1.4, noNaN: true })
    .map((factor) => Math.min(high, Math.max(low, typical * factor)));
}

function valuesOf(field: Field): fc.Arbitrary<unknown> {
  const present = presentValues(field);
  const hasDefault = "default" in field && field.default !== undefined;
  if (field.optional !== true || hasDefault) return present;
  return fc.constant(undefined);
}

function presentValues(field: Field): fc.Arbitrary<unknown> {
  switch (field.type) {
    case "quantity":
      return quantityValues(field);
    case "number": {
      const low = field.minimum ?? 0;
      const high = Math.min(field.maximum ?? 10, Math.max(low, 2 * (field.default ?? 5)));
      return field.integer ? fc.integer({ min: low, max: high }) : fc.double({ min: low, max: high, noNaN: true });
    }
    case "choice":
      return fc.constantFrom(...field.choices);
    case "flag":
      return fc.boolean();
    case "text":
      return fc.constant(field.default ?? "");
    case "component":
      return fc
        .constantFrom(...shippedCatalogue.names(field.family))
        .map((name) => shippedCatalogue.component(field.family, name));
    case "group":
      return groupValues(field.fields);
    case "list":
      return fc.constant([]);
    case "variant":
      return fc.constant(undefined);
  }
}

function groupValues(fields: Fields): fc.Arbitrary<Record<string, unknown>> {
  return fc.record(Object.fromEntries(Object.entries(fields).map(([name, field]) => [name, valuesOf(field)])));
}

/** A section of the kind with random values; `fixed` values are as given. */
export function randomSection(
  kind: SectionKind,
  name: string,
  fixed: Readonly<Record<string, unknown>> = {},
): fc.Arbitrary<WrittenSection> {
  return groupValues(kind.fields).map((values) => ({ kind, name, values: { ...values, ...fixed } }));
}

/** A unit of the sections, or undefined when random parts do not fit one another. */
export function unitOrNothing(casing: Casing, sections: readonly WrittenSection[]): Unit | undefined {
  try {
    return assembleUnit(casing, sections).unit;
  } catch (error) {
    if (error instanceof SectionProblem) return undefined;
    throw error;
  }
}
