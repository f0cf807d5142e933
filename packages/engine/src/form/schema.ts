import { kindTable } from "#quantity/kind-table";
import { allowedText } from "#quantity/parse";
import { checkFields } from "./check-fields.ts";
import type { Field, Fields, GroupField, ListField, NumberField, QuantityField, VariantField } from "./field.ts";
import { textKey } from "./key.ts";
import { mayBeLeftOut } from "./read-field.ts";

/** A JSON Schema, draft 2020-12, as plain data. */
export type JsonSchema = { readonly [keyword: string]: unknown };

/**
 * The schema of a text with these fields, for editors: names as written, meanings, units, choices and defaults. Fields
 * that contradict themselves are a mistake in the program and throw: no schema is published of them.
 */
export function jsonSchema(fields: Fields, title: string, id: string): JsonSchema {
  const faults = checkFields(fields);
  if (faults.length > 0) throw new Error(`the fields of "${title}" contradict themselves: ${faults.join("; ")}`);
  return {
    $schema: "https://json-schema.org/draft/2020-12/schema",
    $id: id,
    title,
    ...groupSchema(fields, {}),
    type: "object",
  };
}

function fieldSchema(field: Field): JsonSchema {
  const said = { description: field.meaning };
  switch (field.type) {
    case "quantity":
      return quantitySchema(field);
    case "number":
      return numberSchema(field);
    case "choice":
      return { ...said, ...defaulted(field.default), enum: field.choices.flatMap(asEditorsRead) };
    case "flag":
      return { ...said, ...defaulted(field.default), enum: [true, false, "yes", "no"] };
    case "text":
      return {
        ...said,
        ...defaulted(field.default),
        type: ["string", "number", "boolean"],
        maxLength: field.longest ?? 200,
      };
    case "component":
      return {
        description: `${field.meaning} (${field.family} of the catalogue)`,
        ...defaulted(field.default),
        type: "string",
      };
    case "group":
      return { ...said, ...groupSchema((field as GroupField<Fields>).fields, {}), ...emptyToo(field, "object") };
    case "list":
      return listSchema(field);
    case "variant":
      return variantSchema(field);
  }
}

/** A choice that looks like a number or a truth is one to an editor. */
function asEditorsRead(choice: string): unknown[] {
  if (/^\d+(\.\d+)?$/.test(choice)) return [choice, Number(choice)];
  return choice === "true" || choice === "false" ? [choice, choice === "true"] : [choice];
}

function defaulted(value: unknown): JsonSchema {
  return value === undefined ? {} : { default: value };
}

/** A group or list that may be left out may also stand there with nothing behind its name. */
function emptyToo(field: Field, type: string): JsonSchema {
  return { type: field.type === "list" || mayBeLeftOut(field) ? [type, "null"] : type };
}

/** A number and something that is not a number: the unit. */
const numberAndUnit = "^\\s*[-+−–]?\\s*[.0-9¼½¾⅓⅔⅛⅜⅝⅞].*[^0-9.,\\s]";

function quantitySchema(field: QuantityField): JsonSchema {
  const { bare, example } = kindTable[field.quantity];
  const limits = [
    ...(field.minimum === undefined ? [] : [`at least ${field.minimum}`]),
    ...(field.maximum === undefined ? [] : [`at most ${field.maximum}`]),
  ];
  const description = [field.meaning, allowedText(field.quantity), ...limits].join("; ");
  const type = bare ? { type: ["string", "number"] } : { type: "string", pattern: numberAndUnit };
  return { description, ...type, ...defaulted(field.default), examples: [field.default ?? example] };
}

function numberSchema(field: NumberField): JsonSchema {
  const { minimum, maximum } = field;
  return {
    description: field.meaning,
    type: field.integer ? "integer" : "number",
    ...(minimum === undefined ? {} : { minimum }),
    ...(maximum === undefined ? {} : { maximum }),
    ...defaulted(field.default),
  };
}

function groupSchema(fields: Fields, first: JsonSchema): JsonSchema {
  const entries = Object.entries(fields);
  const needed = entries.filter(([, field]) => !mayBeLeftOut(field)).map(([name]) => textKey(name));
  const properties = Object.fromEntries(entries.map(([name, field]) => [textKey(name), fieldSchema(field)]));
  const required = [...Object.keys(first), ...needed];
  return {
    properties: { ...first, ...properties },
    ...(required.length === 0 ? {} : { required }),
    additionalProperties: false,
  };
}

function listSchema(field: ListField<Field>): JsonSchema {
  return {
    description: field.meaning,
    ...((field.fewest ?? 0) === 0 ? emptyToo(field, "array") : { type: "array" }),
    items: fieldSchema(field.item),
    ...(field.fewest === undefined ? {} : { minItems: field.fewest }),
    ...(field.most === undefined ? {} : { maxItems: field.most }),
  };
}

/** The kind first, for completion; then one alternative per kind with what it may hold. */
function variantSchema(field: VariantField<Record<string, Fields>>): JsonSchema {
  const kinds = Object.entries(field.variants);
  return {
    description: field.meaning,
    type: "object",
    required: ["kind"],
    properties: { kind: { enum: kinds.map(([kind]) => textKey(kind)) } },
    oneOf: kinds.map(([kind, fields]) => ({
      title: textKey(kind),
      ...groupSchema(fields, { kind: { const: textKey(kind) } }),
    })),
  };
}
