import { textKey } from "./key.ts";

/*
 * A path says where in a text a value stands: `unit.sections[3].rows`. Names are field names; in the text they are
 * spaced words. The empty path is the whole text.
 */

/** The path of a member of a group. */
export function memberPath(path: string, name: string): string {
  return path === "" ? name : `${path}.${name}`;
}

/** The path of an item of a list. */
export function itemPath(path: string, index: number): string {
  return `${path}[${index}]`;
}

/** The steps of a path: words of the text for members, numbers for items; undefined when it is not a path. */
export function pathSteps(path: string): readonly (string | number)[] | undefined {
  if (path === "") return [];
  if (!/^[^.[\]]+(?:\[\d+\])*(?:\.[^.[\]]+(?:\[\d+\])*)*$|^\[\d+\]/.test(path)) return undefined;
  const steps = path.match(/\[\d+\]|[^.[\]]+/g) ?? [];
  return steps.map((step) => (step.startsWith("[") ? Number(step.slice(1, -1)) : textKey(step)));
}
