import type { YAMLSeq } from "yaml";
import { type Attempt, afterDash, type Cut, itemSpans, type Span } from "./cut.ts";
import { writtenScalar } from "./plain-scalar.ts";
import { dashOf } from "./tree.ts";

/** The line break that a text uses. */
export function newLine(text: string): string {
  return text.includes("\r\n") ? "\r\n" : "\n";
}

function lineStart(text: string, offset: number): number {
  return offset === 0 ? 0 : text.lastIndexOf("\n", offset - 1) + 1;
}

/** Column, from 0, of an offset; a byte order mark takes none. */
export function columnOf(text: string, offset: number): number {
  const start = lineStart(text, offset);
  return offset - start - (text.startsWith("\ufeff", start) ? 1 : 0);
}

/** The end of the line that a content ends on, before its line break; a content may end with its own line break. */
function lineEnd(text: string, offset: number): number {
  if (offset > 0 && text[offset - 1] === "\n") return offset;
  const found = text.indexOf("\n", offset);
  if (found === -1) return text.length;
  return text[found - 1] === "\r" ? found - 1 : found;
}

/** Whole lines put after the line on which a content ends. */
export function linesAfter(text: string, offset: number, lines: readonly string[]): Cut {
  const at = lineEnd(text, offset);
  const line = newLine(text);
  const startsLine = at === 0 || text[at - 1] === "\n";
  return { start: at, end: at, inserted: startsLine ? `${lines.join(line)}${line}` : `${line}${lines.join(line)}` };
}

/** Lines moved in; empty ones stay empty. */
export function indented(by: number, lines: readonly string[]): string[] {
  return lines.map((line) => (line === "" ? "" : " ".repeat(by) + line));
}

/** Lines of nested names, the last with a value. */
export function nestedLines(names: readonly (string | number)[], last: readonly string[]): string[] {
  const [name, ...rest] = names;
  const key = writtenScalar(String(name), false, undefined);
  const [first = "", ...others] = last;
  if (rest.length === 0) return [`${key}:${first === "" ? "" : ` ${first}`}`, ...indented(2, others)];
  return [`${key}:`, ...indented(2, nestedLines(rest, last))];
}

/** True where a blank line stands before an item and behind the one before it. */
function isBlankBetween(text: string, spans: readonly Span[], index: number): boolean {
  const [before, span] = [spans[index - 1], spans[index]];
  return before !== undefined && span !== undefined && /\n[ \t]*\r?\n/.test(text.slice(before.end, span.start));
}

/** Takes out an item of a list with its lines, and the blank line that set it off. */
export function cutItemLines(text: string, spans: readonly Span[], index: number): Attempt {
  const cut = cutLines(text, spans, index);
  if (typeof cut === "string" || cut.inserted !== "" || text[cut.end - 1] !== "\n") return cut;
  const above = cut.start === 0 ? 0 : lineStart(text, cut.start - 1);
  if (index > 0) return isBlank(text.slice(above, cut.start)) ? { ...cut, start: above } : cut;
  const below = text.indexOf("\n", cut.end) + 1;
  return spans.length > 1 && isBlank(text.slice(cut.end, below)) ? { ...cut, end: below } : cut;
}

function isBlank(line: string): boolean {
  return line.endsWith("\n") && line.trim() === "";
}

/** Takes out an entry or an item with its lines. */
export function cutLines(text: string, spans: readonly Span[], index: number): Attempt {
  const span = spans[index] as Span;
  const next = spans[index + 1];
  const start = lineStart(text, span.start);
  // Behind a dash, `- kind: fan`: what follows moves up to the dash.
  if (/\S/.test(text.slice(start, span.start))) {
    return { start: span.start, end: next?.start ?? span.end, inserted: "" };
  }
  const end = lineEnd(text, span.end);
  if (end < text.length && text[end - 1] !== "\n")
    return { start, end: end + (text[end] === "\r" ? 2 : 1), inserted: "" };
  return { start, end, inserted: "" };
}

/**
 * The items of a list as whole lines without their last line break, each with the comment lines right above it; undefined
 * where a dash does not begin its line.
 */
export function linedSpans(text: string, spans: readonly Span[]): readonly Span[] | undefined {
  const lined = spans.map(({ start, end }) => {
    const own = lineStart(text, start);
    if (/\S/.test(text.slice(own, start).replace(/^\ufeff/, ""))) return undefined;
    let first = own;
    while (first > 0) {
      const above = lineStart(text, first - 1);
      if (!/^\s*#/.test(text.slice(above, first))) break;
      first = above;
    }
    const last = lineEnd(text, end);
    return { start: first, end: text[last - 1] === "\n" ? last - (text[last - 2] === "\r" ? 2 : 1) : last };
  });
  return lined.every((span) => span !== undefined) ? lined : undefined;
}

/** An item as lines behind a dash. */
export function itemLines(item: string): string[] {
  const [first = "", ...others] = item.replace(/\s+$/, "").split(/\r?\n/);
  return [`- ${first}`, ...indented(2, others)];
}

/** Puts an item between the items of a list that has a dash before each. */
export function betweenLines(text: string, list: YAMLSeq.Parsed, index: number, item: string): Attempt {
  const spans = itemSpans(list);
  const lines = indented(columnOf(text, dashOf(list, 0)), itemLines(item));
  const isSpaced = isBlankBetween(text, spans, Math.max(1, Math.min(index, spans.length - 1)));
  if (index > 0) return linesAfter(text, (spans[index - 1] as Span).end, isSpaced ? ["", ...lines] : lines);
  const at = lineStart(text, dashOf(list, 0));
  if (/\S/.test(text.slice(at, dashOf(list, 0)))) return afterDash;
  const line = newLine(text);
  return { start: at, end: at, inserted: `${lines.join(line)}${line}${isSpaced ? line : ""}` };
}
