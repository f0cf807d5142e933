import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { choice, component, factor, flag, group, integer, list, quantity, text, variant } from "./field.ts";
import { readForm } from "./read.ts";
import { jsonSchema } from "./schema.ts";

const fields = {
  tag: text({ meaning: "Name of the unit", longest: 20 }),
  supplyAirflow: quantity("airflow", { meaning: "Air to the duct", minimum: "100 cfm" }),
  budget: quantity("money", { meaning: "What it may cost", optional: true }),
  site: group(
    {
      altitude: quantity("length", { meaning: "Height above the sea", default: "0 ft" }),
      roof: flag({ meaning: "On a roof", default: true }),
    },
    { meaning: "Where it stands" },
  ),
  steel: choice(["304", "316", "painted"], { meaning: "Skin", default: "304" }),
  sections: list(
    variant(
      {
        steamCoil: { rows: integer({ meaning: "Rows", minimum: 1, maximum: 4 }) },
        fan: {
          wheel: component<object>()("wheel", { meaning: "Wheel" }),
          service: factor({ meaning: "Service factor", default: 1.15, minimum: 1 }),
        },
      },
      { meaning: "A section" },
    ),
    { meaning: "Sections in airflow order", fewest: 1, most: 9 },
  ),
} as const;

const schema = jsonSchema(fields, "A job", "https://example.org/job.json");
const isValid = new Ajv2020({ strict: true, allowUnionTypes: true, strictRequired: false }).compile(schema);
const context = { component: () => ({}), componentNames: () => [] };

/** What an editor says and what the reader says. */
function judged(source: string): [editor: boolean, reader: boolean] {
  return [isValid(parse(source)), readForm(source, fields, context).ok];
}

const sound = `tag: 12
supply airflow: 18,400 cfm
site:
steel: 316
sections:
  - kind: steam coil
    rows: 2
  - kind: fan
    wheel: wheel 27
`;

describe("the schema for editors", () => {
  it("is draft 2020-12 with names as written, meanings, defaults and units", () => {
    expect(schema).toMatchObject({
      $schema: "https://json-schema.org/draft/2020-12/schema",
      $id: "https://example.org/job.json",
      title: "A job",
      required: ["tag", "supply airflow", "sections"],
      properties: {
        "supply airflow": {
          description: expect.stringMatching(/^Air to the duct; an airflow in cfm.*at least 100 cfm$/),
        },
        site: { properties: { altitude: { default: "0 ft", examples: ["0 ft"] }, roof: { default: true } } },
        sections: { items: { properties: { kind: { enum: ["steam coil", "fan"] } } } },
      },
    });
    expect(new Ajv2020().validateSchema(schema)).toBe(true);
  });

  it("is not made of fields that contradict themselves", () => {
    expect(() => jsonSchema({ a: quantity("length", { meaning: "a", default: "3" }) }, "A job", "job")).toThrow(
      /no unit/,
    );
  });

  const taken = [
    sound,
    sound.replace("18,400 cfm", "3-1/2 m³/s"),
    sound.replace("18,400 cfm", '"½ m3/s"'),
    sound.replace("site:", "site: {roof: no, altitude: 6200 ft}"),
    `${sound}budget: 125000\n`,
    `${sound}budget: $125,000.00\n`,
  ];
  it.each(taken)("takes what the reader takes: %#", (source) => {
    expect(judged(source)).toEqual([true, true]);
  });

  const refused = [
    sound.replace("supply airflow", "supplyAirflow"),
    sound.replace("18,400 cfm", "18400"),
    sound.replace("18,400 cfm", "much"),
    sound.replace("rows: 2", "rows: 9"),
    sound.replace("rows: 2", "rows: 2.5"),
    sound.replace("rows: 2", "row: 2"),
    sound.replace("kind: fan", "kind: fun"),
    sound.replace("    wheel: wheel 27\n", ""),
    sound.replace("316", "317"),
    sound.replace("tag: 12\n", ""),
    sound.replace("tag: 12", "tag: [12]"),
    sound.replace("site:", "site: {roof: perhaps}"),
    `${sound}colour: red\n`,
  ];
  it.each(refused)("refuses what the reader refuses: %#", (source) => {
    expect(judged(source)).toEqual([false, false]);
  });
});
