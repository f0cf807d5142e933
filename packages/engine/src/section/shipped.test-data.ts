import { readdirSync, readFileSync } from "node:fs";
import { type Catalogue, readCatalogue } from "#catalogue/read-catalogue";
import type { Fields, ValuesOf } from "#form/field";
import { readForm } from "#form/read";

const folder = new URL("../../../../catalogue/", import.meta.url);

/** The catalogue as shipped, for tests. */
export const shippedCatalogue: Catalogue = readCatalogue(
  readdirSync(folder)
    .filter((name) => name.endsWith(".yaml"))
    .map((name) => ({ path: name, text: readFileSync(new URL(name, folder), "utf8") })),
);

/** What fields read from a text as a job would have it, against the shipped catalogue; throws with every problem. */
export function valuesOfText<const F extends Fields>(fields: F, text: string): ValuesOf<F> {
  const context = { component: shippedCatalogue.component, componentNames: shippedCatalogue.names };
  const reading = readForm(text, fields, context);
  if (!reading.ok) throw new Error(reading.problems.map((problem) => JSON.stringify(problem)).join("\n"));
  return reading.values;
}
