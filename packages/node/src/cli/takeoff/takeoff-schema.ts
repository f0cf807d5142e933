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

const bought = record({
  item: text(),
  count: number("pieces"),
  mass: number("kg of all; 0 for fittings, whose mass is in their door"),
  owners: listOf(text(), "sections it is for"),
});

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
        stock: text("what the stock book rests on"),
      }),
    },
  );
}
