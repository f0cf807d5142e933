import type { QuantityKind } from "#quantity/kind";

/**
 * A field is what a person may write at one place of a text file: its type, range, default and meaning.
 * Reading, the published schema, the list of defaults and the page's inputs all read the same field.
 * Names are camelCase here and spaced lower-case words in text: `supplyAirflow` is written `supply airflow`.
 */
export type Field =
  | QuantityField
  | NumberField
  | ChoiceField
  | FlagField
  | TextField
  | ComponentField<unknown>
  | GroupField<Fields>
  | ListField<Field>
  | VariantField<Record<string, Fields>>;

/** Fields by name. */
export type Fields = { readonly [name: string]: Field };

interface Described {
  /** What the field is, in the trade's words; one sentence. */
  readonly meaning: string;
  /** True when the field may be left out without a default: its value is then `undefined`. */
  readonly optional?: true;
}

/** A number with its unit as typed, `18400 cfm`; the value is in SI. */
export interface QuantityField extends Described {
  readonly type: "quantity";
  readonly quantity: QuantityKind;
  /** As a person would type it, with unit. */
  readonly default?: string;
  readonly minimum?: string;
  readonly maximum?: string;
}

/** A bare number: a count, a factor. */
export interface NumberField extends Described {
  readonly type: "number";
  readonly integer: boolean;
  readonly default?: number;
  readonly minimum?: number;
  readonly maximum?: number;
}

/** One word out of a list. */
export interface ChoiceField<Choice extends string = string> extends Described {
  readonly type: "choice";
  readonly choices: readonly Choice[];
  readonly default?: Choice;
}

/** Yes or no. */
export interface FlagField extends Described {
  readonly type: "flag";
  readonly default?: boolean;
}

/** Free text. */
export interface TextField extends Described {
  readonly type: "text";
  readonly default?: string;
  /** Longest text taken, in characters; 200 when not said. */
  readonly longest?: number;
}

/** The name of a catalogue record; the value is the record itself. */
export interface ComponentField<Component> extends Described {
  readonly type: "component";
  readonly family: string;
  readonly default?: string;
  /** Carries the record's type; never set. */
  readonly componentType?: Component;
}

/** Fields that belong together. A group whose fields all have defaults may be left out. */
export interface GroupField<Members extends Fields> extends Described {
  readonly type: "group";
  readonly fields: Members;
  /** What the members must fulfil together; called when each is sound by itself. */
  readonly check?: GroupCheck;
}

/** A condition on the members of a group together. */
export type GroupCheck = (values: Readonly<Record<string, unknown>>, say: SayProblem) => void;

/** Reports what is wrong at a member (or at the group, with `undefined`) and what is allowed. */
export type SayProblem = (member: string | undefined, problem: string, allowed: string) => void;

/** Any number of one field. */
export interface ListField<Item extends Field> extends Described {
  readonly type: "list";
  readonly item: Item;
  readonly fewest?: number;
  readonly most?: number;
}

/** A group whose `kind` says which fields it has. */
export interface VariantField<Variants extends Record<string, Fields>> extends Described {
  readonly type: "variant";
  readonly variants: Variants;
  /** What a variant's members must fulfil together. */
  readonly checks?: { readonly [kind: string]: GroupCheck };
}

/** The value that reading a field gives. */
export type ValueOf<F extends Field> = F extends { readonly optional: true }
  ? PresentValueOf<F> | undefined
  : PresentValueOf<F>;

type PresentValueOf<F> = F extends QuantityField | NumberField
  ? number
  : F extends ChoiceField<infer Choice>
    ? Choice
    : F extends FlagField
      ? boolean
      : F extends TextField
        ? string
        : F extends ComponentField<infer Component>
          ? Component
          : F extends GroupField<infer Members>
            ? ValuesOf<Members>
            : F extends ListField<infer Item>
              ? readonly ValueOf<Item>[]
              : F extends VariantField<infer Variants>
                ? { [Kind in keyof Variants]: { readonly kind: Kind } & ValuesOf<Variants[Kind]> }[keyof Variants]
                : never;

/** The values that reading a table of fields gives. */
export type ValuesOf<Members extends Fields> = { readonly [Name in keyof Members]: ValueOf<Members[Name]> };

type Rest<F, Fixed extends keyof F> = Omit<F, Fixed | "type">;

/** A quantity field, `quantity("length", { meaning: "…", default: "5/8 in" })`. */
export function quantity<const Options extends Rest<QuantityField, "quantity">>(
  kind: QuantityKind,
  options: Options,
): { readonly type: "quantity"; readonly quantity: QuantityKind } & Options {
  return { type: "quantity", quantity: kind, ...options };
}

/** A whole number. */
export function integer<const Options extends Rest<NumberField, "integer">>(
  options: Options,
): { readonly type: "number"; readonly integer: true } & Options {
  return { type: "number", integer: true, ...options };
}

/** A bare number, whole or not. */
export function factor<const Options extends Rest<NumberField, "integer">>(
  options: Options,
): { readonly type: "number"; readonly integer: false } & Options {
  return { type: "number", integer: false, ...options };
}

/** One word out of a list. */
export function choice<
  const Choice extends string,
  const Options extends Rest<ChoiceField<NoInfer<Choice>>, "choices">,
>(
  choices: readonly Choice[],
  options: Options,
): { readonly type: "choice"; readonly choices: readonly Choice[] } & Options {
  return { type: "choice", choices, ...options };
}

/** Yes or no. */
export function flag<const Options extends Rest<FlagField, never>>(
  options: Options,
): { readonly type: "flag" } & Options {
  return { type: "flag", ...options };
}

/** Free text. */
export function text<const Options extends Rest<TextField, never>>(
  options: Options,
): { readonly type: "text" } & Options {
  return { type: "text", ...options };
}

/** The name of a record of a catalogue family; give the record's type: `component<FanWheel>()("fan wheel", {…})`. */
export function component<Component>() {
  return <const Options extends Rest<ComponentField<Component>, "family" | "componentType">>(
    family: string,
    options: Options,
  ): ComponentField<Component> & { readonly type: "component"; readonly family: string } & Options => ({
    type: "component",
    family,
    ...options,
  });
}

/** Fields that belong together. */
export function group<const Members extends Fields, const Options extends Rest<GroupField<Members>, "fields">>(
  fields: Members,
  options: Options,
): { readonly type: "group"; readonly fields: Members } & Options {
  return { type: "group", fields, ...options };
}

/** Any number of one field. */
export function list<const Item extends Field, const Options extends Rest<ListField<Item>, "item">>(
  item: Item,
  options: Options,
): { readonly type: "list"; readonly item: Item } & Options {
  return { type: "list", item, ...options };
}

/** A group whose `kind` says which fields it has. */
export function variant<
  const Variants extends Record<string, Fields>,
  const Options extends Rest<VariantField<Variants>, "variants">,
>(variants: Variants, options: Options): { readonly type: "variant"; readonly variants: Variants } & Options {
  return { type: "variant", variants, ...options };
}
