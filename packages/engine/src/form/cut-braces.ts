import type { YAMLSeq } from "yaml";
import { type Attempt, itemSpans, type Span } from "./cut.ts";
import { writtenScalar } from "./plain-scalar.ts";
import type { Written } from "./reading.ts";
import { takeApart } from "./source.ts";
import { type Shape, shapeOf } from "./tree.ts";

/** Takes out a member or an item inside braces or brackets, with its comma. */
export function cutFromBraces(spans: readonly Span[], index: number): Attempt {
  const span = spans[index] as Span;
  const next = spans[index + 1];
  if (next !== undefined) return { start: span.start, end: next.start, inserted: "" };
  return { start: spans[index - 1]?.end ?? span.start, end: span.end, inserted: "" };
}

/** Puts an item between the items of a list in brackets. */
export function intoBrackets(list: YAMLSeq.Parsed, index: number, item: string): Attempt {
  const spans = itemSpans(list);
  const written = inBrackets(item);
  if (index > 0) {
    const at = (spans[index - 1] as Span).end;
    return { start: at, end: at, inserted: `, ${written}` };
  }
  const at = (spans[0] as Span).start;
  return { start: at, end: at, inserted: `${written}, ` };
}

/** An item on one line, as it stands inside brackets. */
export function inBrackets(item: string): string {
  return flowText(shapeOf((takeApart(item).document?.contents ?? null) as Written));
}

function flowText(shape: Shape): string {
  if (typeof shape === "string") return writtenScalar(shape, true, undefined);
  if ("alias" in shape) return `*${shape.alias}`;
  if ("members" in shape) {
    return `{ ${shape.members.map(([key, value]) => `${flowText(key)}: ${flowText(value)}`).join(", ")} }`;
  }
  return `[${shape.map(flowText).join(", ")}]`;
}
