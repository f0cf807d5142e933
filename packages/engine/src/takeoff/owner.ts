import type { Part } from "#arrangement/part";

/** Whose a line is: a section by its name, or the unit as a whole. */
export const wholeUnit = "unit";

/** The owner of a part. */
export function ownerOf(part: Part): string {
  return part.section ?? wholeUnit;
}
