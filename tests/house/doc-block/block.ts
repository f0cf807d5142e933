/** A doc block taken apart. */
export interface DocBlock {
  /** What stands before the first tag. */
  readonly words: string;
  readonly tags: readonly { readonly tag: string; readonly text: string }[];
}

/** A worked number: an expression over the module's exports and what it has to give. */
export interface Example {
  readonly expression: string;
  readonly expected: unknown;
  /** Largest distance allowed from a number; undefined: none but rounding of the last bits. */
  readonly tolerance: number | undefined;
}

/** Splits a block at its tags; a tag begins a line. */
export function takeApart(block: string): DocBlock {
  const [words = "", ...parts] = block.split(/^@(?=[a-z])/m);
  const tags = parts.map((part) => {
    const [, tag = "", text = ""] = /^([a-z]+)\s*([\s\S]*)$/.exec(part) ?? [];
    return { tag, text: text.trim() };
  });
  return { words: words.trim(), tags };
}

/** What an `@param` says: `name unit, range: words`; undefined when it has another shape. */
export function readParameter(text: string): { name: string; unit: string; range?: string } | undefined {
  const found = /^(?<name>[\w$]+)\s+(?<unit>[^,:]+?)(?:,\s*(?<range>[^:]+?))?:\s+\S/.exec(text.replace(/\s+/g, " "));
  const { name, unit, range } = found?.groups ?? {};
  if (name === undefined || unit === undefined) return undefined;
  return range === undefined ? { name, unit } : { name, unit, range };
}

/** The unit that an `@returns` names: `unit: words`. */
export function readReturn(text: string): string | undefined {
  return /^([^,:]+?):\s+\S/.exec(text)?.[1];
}

/**
 * The examples of one `@example`: lines up to a `//` are the expression, behind it stands what it gives.
 *
 * @throws SyntaxError when a line has no `//` behind it, or what stands there is no value
 */
export function readExamples(text: string): Example[] {
  const examples: Example[] = [];
  let expression = "";
  for (const line of text.split("\n")) {
    const at = line.lastIndexOf("//");
    expression += at < 0 ? `${line} ` : line.slice(0, at);
    if (at < 0) continue;
    examples.push({ expression: expression.trim(), ...readExpected(line.slice(at + 2).trim()) });
    expression = "";
  }
  if (expression.trim() !== "" || examples.length === 0)
    throw new SyntaxError(`an example needs "// expected" behind its expression: ${text}`);
  return examples;
}

function readExpected(text: string): { expected: unknown; tolerance: number | undefined } {
  const [value = "", tolerance] = text.split("±").map((part) => part.trim());
  const expected = value === "undefined" ? undefined : parseValue(value);
  if (tolerance === undefined) return { expected, tolerance: undefined };
  const share = /^(\S+) ?%$/.exec(tolerance)?.[1];
  const distance = share === undefined ? Number(tolerance) : (Number(share) / 100) * Math.abs(Number(expected));
  if (typeof expected !== "number" || !(distance > 0)) throw new SyntaxError(`no tolerance of a number: ${text}`);
  return { expected, tolerance: distance };
}

function parseValue(value: string): unknown {
  const plain = value.replace(/^[−-]/, "-").replace(/(?<=\d)_(?=\d)/g, "");
  if (/^-?Infinity$/.test(plain)) return Number(plain);
  try {
    return JSON.parse(plain);
  } catch {
    const number = Number(plain);
    if (plain === "" || Number.isNaN(number)) throw new SyntaxError(`no value to compare with: ${value}`);
    return number;
  }
}

/** Whether a result is what the example says; a number without tolerance may differ by rounding of its last bits. */
export function agrees(got: unknown, example: Example): boolean {
  const { expected, tolerance } = example;
  if (typeof expected !== "number") return JSON.stringify(got) === JSON.stringify(expected);
  if (typeof got !== "number") return false;
  if (Object.is(got, expected)) return true;
  return Math.abs(got - expected) <= (tolerance ?? 1e-12 * Math.abs(expected));
}

/** Evaluates the expression over a module's exports. */
export function evaluate(expression: string, exports: Readonly<Record<string, unknown>>): unknown {
  const names = Object.keys(exports).filter((name) => name !== "default");
  return new Function(...names, `"use strict"; return (${expression});`)(...names.map((name) => exports[name]));
}
