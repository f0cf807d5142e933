import { flag, group, list, quantity, text, type ValuesOf } from "#form/field";
import type { Unit } from "#unit/unit";

/** What an option does to one field of the cabinet or of a section. */
const changeFields = {
  part: text({ meaning: "`cabinet`, or the name of a section", longest: 40 }),
  field: text({
    meaning: "The field it changes; a field inside a group after a dot: `outside air.width`",
    longest: 120,
  }),
  value: text({ meaning: "What then stands there, as it would be typed", longest: 200 }),
} as const;

const optionFields = {
  name: text({ meaning: "What the option is called in the offer", longest: 80 }),
  note: text({ meaning: "What the customer should know of it", default: "", longest: 600 }),
  taken: flag({
    meaning: "Whether the order includes it: then the machine is drawn, rated and weighed with it",
    default: false,
  }),
  changes: list(group(changeFields, { meaning: "A change of one field" }), {
    meaning: "What it changes of the machine",
    optional: true,
    most: 60,
  }),
  price: quantity("money", {
    meaning: "Entered price, added to what its changes come to; below zero it is a credit",
    optional: true,
  }),
  mass: quantity("mass", {
    meaning: "Entered mass of what the changes do not weigh; it has no place in the machine",
    optional: true,
    minimum: "0 kg",
  }),
} as const;

/** An option of the offer as it is written. */
export const optionField = group(optionFields, {
  meaning: "An option: the price beside the base price, taken or not",
  check: (values, say) => {
    const changes = values.changes as readonly unknown[] | undefined;
    if ((changes === undefined || changes.length === 0) && values.price === undefined) {
      say(undefined, "the option changes nothing and has no price", "`changes`, `price`, or both");
    }
  },
});

/** An option as read, in SI and cents. */
export type WrittenOption = ValuesOf<typeof optionFields>;

/** An option made ready: the base unit with it alone. */
export interface JobOption {
  readonly name: string;
  readonly note: string;
  readonly taken: boolean;
  readonly changes: readonly { readonly part: string; readonly field: string; readonly value: string }[];
  /** The base unit itself where it changes nothing. */
  readonly unit: Unit;
  /** Cents entered with it; undefined where its price is that of its changes. */
  readonly price: number | undefined;
  /** kg entered with it. */
  readonly mass: number;
}
