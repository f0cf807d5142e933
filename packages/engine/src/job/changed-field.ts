import type { Field, Fields } from "#form/field";
import { fieldName, textKey } from "#form/key";
import { nearestName } from "#form/nearest-name";
import { writtenScalar } from "#form/plain-scalar";
import { readForm } from "#form/read";
import type { ReadContext } from "#form/reading";

type Values = Readonly<Record<string, unknown>>;

/** What is wrong with a change, at which member of it. */
export interface ChangeProblem {
  readonly at: "part" | "field" | "value";
  readonly problem: string;
  readonly allowed: string;
}

/** The values of a part with one field changed, or why it cannot be changed. */
export type Changed =
  | { readonly ok: true; readonly values: Values }
  | { readonly ok: false; readonly problem: ChangeProblem };

/** Changes a field named as in a text, `outside air.width`, to a value as typed; nothing else is read again. */
export function changedField(
  fields: Fields,
  values: Values,
  name: string,
  value: string,
  context: ReadContext,
): Changed {
  const [first = "", ...rest] = name.split(".").map((step) => step.trim());
  const member = fieldName(first);
  const field = fields[member];
  if (field === undefined) return noField(first, Object.keys(fields).map(textKey));
  if (rest.length > 0) return inGroup(field, values, member, rest, value, context);
  if (field.type === "group" || field.type === "list" || field.type === "variant") {
    const allowed = field.type === "group" ? `\`${first}.\` and a field inside it` : "a field with a single value";
    return { ok: false, problem: { at: "field", problem: `"${first}" is no single value`, allowed } };
  }
  const reading = readForm(
    `${textKey(member)}: ${writtenScalar(value, false, undefined)}\n`,
    { [member]: field },
    context,
  );
  if (!reading.ok) {
    const { problem = "it cannot be read", allowed = "" } = reading.problems[0] ?? {};
    return { ok: false, problem: { at: "value", problem: `${first}: ${problem}`, allowed } };
  }
  return { ok: true, values: { ...values, ...reading.values } };
}

function inGroup(
  field: Field,
  values: Values,
  member: string,
  rest: readonly string[],
  value: string,
  context: ReadContext,
): Changed {
  const known = values[member];
  if (field.type !== "group" || typeof known !== "object" || known === null) {
    const problem = field.type === "group" ? `"${textKey(member)}" is not given` : `"${textKey(member)}" is no group`;
    return { ok: false, problem: { at: "field", problem, allowed: "a group that the job gives, and a field in it" } };
  }
  const inner = changedField(field.fields, known as Values, rest.join("."), value, context);
  if (!inner.ok) return inner;
  return checked(field.check, { ...values, [member]: inner.values }, inner.values);
}

type Check = Extract<Field, { readonly type: "group" }>["check"];

/** What a group asks of its members together still holds. */
export function checked(check: Check | undefined, whole: Values, group: Values = whole): Changed {
  let found: ChangeProblem | undefined;
  check?.(group, (_, problem, allowed) => {
    found ??= { at: "value", problem, allowed };
  });
  return found === undefined ? { ok: true, values: whole } : { ok: false, problem: found };
}

function noField(typed: string, known: readonly string[]): Changed {
  const nearest = nearestName(typed, known);
  const allowed = nearest === undefined ? known.join(", ") : `did you mean \`${nearest}\`? ${known.join(", ")}`;
  return { ok: false, problem: { at: "field", problem: `"${typed}" is no field of it`, allowed } };
}
