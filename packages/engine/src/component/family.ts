import { choice, type Fields, flag, text, type ValuesOf } from "#form/field";

/** What every catalogue record says about itself. */
export const recordFields = {
  name: text({ meaning: "The name by which jobs call the record", longest: 80 }),
  typical: flag({ meaning: "A generic record of the trade, not one bought or tested part", default: false }),
  basis: choice(["published", "tested", "common practice", "from memory", "invented"], {
    meaning: "What the figures rest on",
  }),
  source: text({ meaning: "Bibliography key, or the shop's own test report" }),
  date: text({ meaning: "When the record was written, year-month-day" }),
  note: text({ meaning: "Range of validity and what is not covered", longest: 600, default: "" }),
} as const;

/** Where a component comes from; carried by every component. */
export type RecordHead = ValuesOf<typeof recordFields>;

/** A family of purchasable parts: the fields of its records and how a record becomes a component. */
export interface ComponentFamily<
  F extends Fields = Fields,
  Component extends { readonly head: RecordHead } = { readonly head: RecordHead },
> {
  /** As written in a catalogue file: `family: filter medium`. */
  readonly name: string;
  readonly meaning: string;
  /** The fields of a record besides `recordFields`. */
  readonly fields: F;
  /** @throws RangeError naming the field when a record's figures contradict one another. */
  readonly build: (values: ValuesOf<F>, head: RecordHead) => Component;
}

/**
 * Checks the types of a family and gives it back as it is.
 *
 * @param family record, any: the family
 * @returns record: the same family
 * @outside the compiler refuses a family whose `build` does not fit its fields
 * @example defineFamily({ name: "a", meaning: "b", fields: {}, build: (values, head) => ({ head }) }).name // "a"
 * @source definition
 */
export function defineFamily<F extends Fields, Component extends { readonly head: RecordHead }>(
  family: ComponentFamily<F, Component>,
): ComponentFamily<F, Component> {
  return family;
}
