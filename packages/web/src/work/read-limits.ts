import type { Catalogue } from "@oncethrough/engine/catalogue/read-catalogue";
import type { Fields, GroupCheck } from "@oncethrough/engine/form/field";
import { readForm } from "@oncethrough/engine/form/read";

/**
 * Limits of a search as a person typed them.
 *
 * @throws Error when one cannot be read
 */
export function readLimits<const F extends Fields>(
  text: string,
  fields: F,
  check: GroupCheck | undefined,
  catalogue: Catalogue,
) {
  const context = { component: catalogue.component, componentNames: catalogue.names };
  const reading = readForm(text, fields, context, check);
  if (!reading.ok) throw new Error(reading.problems.map(({ field, problem }) => `${field}: ${problem}`).join("; "));
  return reading.values;
}
