/** Short words for the published schemas of what the program prints. */

/** A number in SI units. */
export function number(description?: string): object {
  return description === undefined ? { type: "number" } : { type: "number", description };
}

/** A piece of text. */
export function text(description?: string): object {
  return description === undefined ? { type: "string" } : { type: "string", description };
}

/** An object whose members are all there, but for those named as optional. */
export function record(properties: Readonly<Record<string, object>>, ...optional: string[]): object {
  const required = Object.keys(properties).filter((name) => !optional.includes(name));
  return { type: "object", required, additionalProperties: false, properties };
}

/** A list of one sort of thing. */
export function listOf(items: object, description?: string): object {
  return description === undefined ? { type: "array", items } : { type: "array", items, description };
}

/** A whole schema. */
export function published(name: string, title: string, schema: object): object {
  return {
    $schema: "https://json-schema.org/draft/2020-12/schema",
    $id: `urn:oncethrough:${name}:1`,
    title,
    ...schema,
  };
}
