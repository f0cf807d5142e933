import { leadingNumber } from "#quantity/number-text";
import { parseQuantity } from "#quantity/parse";
import type { Field, Fields, NumberField, QuantityField } from "./field.ts";
import { fieldName, textKey } from "./key.ts";
import { itemPath, memberPath } from "./path.ts";

/**
 * What contradicts itself in a table of fields: defaults and limits that cannot be read or lie outside one another,
 * names that do not survive being written as words. Tests of every table call this; an empty list is sound.
 */
export function checkFields(fields: Fields, path = ""): readonly string[] {
  return Object.entries(fields).flatMap(([name, field]) => {
    const here = memberPath(path, name);
    const faults = checkField(field, here);
    if (fieldName(textKey(name)) !== name) faults.push(`${here}: the name does not survive as "${textKey(name)}"`);
    return faults;
  });
}

function checkField(field: Field, path: string): string[] {
  const say = (fault: string): string => `${path}: ${fault}`;
  const faults = field.meaning.trim() === "" ? [say("no meaning")] : [];
  if (field.optional === true && "default" in field) faults.push(say("optional and with a default"));
  switch (field.type) {
    case "quantity":
      return [...faults, ...quantityFaults(field).map(say)];
    case "number":
      return [...faults, ...numberFaults(field).map(say)];
    case "choice":
      if (field.default !== undefined && !field.choices.includes(field.default))
        faults.push(say("default is no choice"));
      if (new Set(field.choices).size !== field.choices.length) faults.push(say("a choice stands twice"));
      return faults;
    case "text":
      if ((field.default ?? "").length > (field.longest ?? 200)) faults.push(say("the default is too long"));
      return faults;
    case "group":
      return [...faults, ...checkFields(field.fields, path)];
    case "list":
      return [...faults, ...checkField(field.item, itemPath(path, 0))];
    case "variant":
      return [...faults, ...Object.entries(field.variants).flatMap(([kind, fields]) => kindFaults(kind, fields, path))];
    default:
      return faults;
  }
}

function kindFaults(kind: string, fields: Fields, path: string): readonly string[] {
  const named = "kind" in fields ? [`${path}: ${kind} has a field of its own called kind`] : [];
  return [...named, ...checkFields(fields, `${path}(${kind})`)];
}

function quantityFaults(field: QuantityField): string[] {
  const faults: string[] = [];
  const siOf = (text: string | undefined): number | undefined => {
    if (text === undefined) return undefined;
    const parsed = parseQuantity(text, field.quantity);
    if (parsed.ok) return parsed.value;
    faults.push(`"${text}": ${parsed.problem}`);
    return undefined;
  };
  return [...orderFaults(siOf(field.minimum), siOf(field.default), siOf(field.maximum)), ...faults];
}

function numberFaults(field: NumberField): string[] {
  const given = [field.minimum, field.default, field.maximum].filter((each) => each !== undefined);
  const faults = given
    .filter((each) => leadingNumber(String(each)) === undefined)
    .map((each) => `${each} is no number`);
  if (field.integer && !Number.isInteger(field.default ?? 0)) faults.push(`default ${field.default} is not whole`);
  return [...orderFaults(field.minimum, field.default, field.maximum), ...faults];
}

function orderFaults(minimum: number | undefined, value: number | undefined, maximum: number | undefined): string[] {
  const least = minimum ?? Number.NEGATIVE_INFINITY;
  const most = maximum ?? Number.POSITIVE_INFINITY;
  const faults = least > most ? ["minimum above maximum"] : [];
  const slack = 1e-9 * Math.abs(value ?? 0);
  if (value !== undefined && (value < least - slack || value > most + slack)) faults.push("default outside its limits");
  return faults;
}
