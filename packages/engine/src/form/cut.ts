import type { YAMLMap, YAMLSeq } from "yaml";
import type { Written } from "./reading.ts";
import { contentEnd, dashOf, entriesOf, entryEnd } from "./tree.ts";

/** A piece of a text that gives way to another. */
export interface Cut {
  readonly start: number;
  readonly end: number;
  readonly inserted: string;
}

/** A cut, or in words why none can be made. */
export type Attempt = Cut | string;

/** Why a place written behind a dash or in braces cannot be widened. */
export const afterDash = "there is no room to write a group; edit the text";

/** From the first to after the last character of a member or an item. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

/** The spans of a map's entries. */
export function entrySpans(map: YAMLMap.Parsed): Span[] {
  return entriesOf(map).map((entry) => {
    const explicit = entry.srcToken?.start.find(
      (token) => token.type === "explicit-key-ind" || token.type === "anchor",
    );
    return { start: explicit?.offset ?? entry.key.range[0], end: entryEnd(entry) };
  });
}

/** The spans of a list's items, from the dash on where there is one. */
export function itemSpans(list: YAMLSeq.Parsed): Span[] {
  return list.items.map((item, index) => {
    const end = contentEnd(item as Written, dashOf(list, index) + 1);
    return { start: list.flow === true ? ((item as Written)?.range[0] ?? end) : dashOf(list, index), end };
  });
}
