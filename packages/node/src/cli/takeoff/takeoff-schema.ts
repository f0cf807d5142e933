import { listOf, number, published, record, text } from "../schema/describe.ts";

const part = record(
  {
    owner: text("name of the section, or `unit`"),
    name: text(),
    material: text("empty for what is bought of several"),
    count: number("pieces"),
    length: number("m, of the box around one, or around all where they lie in one"),
    width: number("m"),
    height: number("m"),
    mass: number("kg of all, dry"),
    bought: text("what it is ordered by"),
  },
  "bought",
);

const cut = record({
  metal: text(),
  gauge: text(),
  length: number("m, flanges included"),
  width: number("m"),
  count: number("pieces"),
  parts: listOf(text(), "names of what is made of it"),
});

const sheet = record(
  {
    metal: text(),
    gauge: text(),
    area: number("m² of blanks"),
    mass: number("kg of blanks"),
    length: number("m of the sheet in stock; left out where there is none"),
    width: number("m of the sheet in stock"),
    least: number("sheets by area alone"),
    shelves: number("sheets with blanks in shelves, first fit by falling height"),
    joined: number("blanks larger than the sheet, joined of pieces"),
  },
  "length",
  "width",
);

const bought = record(
  {
    owner: text("name of the section, or `unit`"),
    item: text("catalogue record, or family and size"),
    isPriced: { type: "boolean", description: "its price was entered with it" },
    count: number("things to order"),
    length: number("m along the airflow; left out for fittings of doors"),
    width: number("m"),
    height: number("m"),
    mass: number("kg of all; 0 for fittings, whose mass is in their door"),
  },
  "length",
  "width",
  "height",
);

const figure = record({ name: text(), quantity: text("kind of quantity"), value: number("in SI units") });

const order = record(
  {
    owner: text("name of the section"),
    condition: text("at which the first figure is greatest"),
    figures: listOf(figure, "entering air, and what is asked of the part there"),
    build: listOf({ anyOf: [figure, record({ name: text(), text: text() })] }, "what it is to be built as"),
    declared: record({
      number: text("of the declared rating"),
      revision: text(),
      figures: listOf(
        record({
          name: text(),
          quantity: text("kind of quantity"),
          value: number("declared"),
          ours: number("at the same point"),
        }),
      ),
      notes: listOf(text(), "what to mind before ordering by it"),
    }),
  },
  "declared",
);

/** The published schema of `oncethrough takeoff --json`. */
export function takeoffSchema(): object {
  return published(
    "takeoff",
    "What a unit is built of, as printed by `oncethrough takeoff --json`; all numbers in SI units",
    {
      ...record({
        format: { const: "oncethrough takeoff 1" },
        tag: text("of the unit"),
        parts: listOf(part),
        cuts: listOf(cut),
        sheets: listOf(sheet),
        bought: listOf(bought),
        orders: listOf(order, "what bought parts are ordered by; fans that stand are no condition"),
        stock: text("what the stock book rests on"),
      }),
    },
  );
}
