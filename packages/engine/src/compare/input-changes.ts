import { parse } from "yaml";

/** Something that job texts say differently. */
export interface InputChange {
  /** `duty`, `casing`, or the section's name. */
  readonly owner: string;
  /** `rows`, `supply airflow, design`. */
  readonly field: string;
  /** As typed, text by text; undefined where a text leaves it to its default. */
  readonly values: readonly (string | undefined)[];
}

/**
 * What several job texts say differently, in the order of the first that says it. A section is known by its name (its kind
 * where it has none), so that one moved along the airway is not all new. A text that cannot be taken apart says nothing.
 */
export function inputChanges(texts: readonly string[]): readonly InputChange[] {
  const all = texts.map(saidIn);
  const keys = new Set(all.flatMap((said) => [...said.keys()]));
  return [...keys].flatMap((key) => {
    const values = all.map((said) => said.get(key)?.value);
    if (values.every((value) => value === values[0])) return [];
    const { owner, field } = all.find((said) => said.has(key))!.get(key)!;
    return [{ owner, field, values }];
  });
}

interface Said {
  readonly owner: string;
  readonly field: string;
  readonly value: string;
}

function saidIn(text: string): ReadonlyMap<string, Said> {
  const said = new Map<string, Said>();
  let tree: unknown;
  try {
    // All scalars stay as typed.
    tree = parse(text, { schema: "failsafe" });
  } catch {
    return said;
  }
  const walk = (value: unknown, owner: string, steps: readonly string[]): void => {
    if (Array.isArray(value)) {
      const names = ownNames(value);
      if (steps.at(-1) === "sections") {
        said.set("order", { owner: "unit", field: "sections in airflow order", value: names.join(", ") });
      }
      value.forEach((item, index) => {
        const name = names[index]!;
        if (steps.at(-1) === "sections") walk(item, name, []);
        else walk(item, owner, [...steps, name]);
      });
    } else if (typeof value === "object" && value !== null) {
      for (const [name, member] of Object.entries(value)) walk(member, owner, [...steps, name]);
    } else {
      const [owned, path] = owner === "" ? ownerIn(steps) : [owner, steps];
      said.set(`${owned}\n${path.join("\n")}`, { owner: owned, field: path.join(", "), value: String(value ?? "") });
    }
  };
  walk(tree, "", []);
  return said;
}

/** `duty`, `casing`, `options`: what a path outside of the sections belongs to. */
function ownerIn([first = "", second = "", ...rest]: readonly string[]): [string, readonly string[]] {
  return first === "unit" ? [second, rest] : [first, [second, ...rest].filter((step) => step !== "")];
}

/** Names of list items: their own, else their kind's, else their place; numbered where two have the same. */
function ownNames(items: readonly unknown[]): readonly string[] {
  const plain = items.map((item, index) => {
    const { name, kind } = (typeof item === "object" && item !== null ? item : {}) as Record<string, unknown>;
    return String(name ?? kind ?? index + 1);
  });
  const before = (index: number) => plain.slice(0, index).filter((each) => each === plain[index]).length;
  return plain.map((each, index) => (before(index) === 0 ? each : `${each} ${before(index) + 1}`));
}
