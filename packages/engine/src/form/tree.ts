import {
  type Document,
  isAlias,
  isCollection,
  isMap,
  isScalar,
  isSeq,
  type Pair,
  type ParsedNode,
  visit,
  type YAMLMap,
  type YAMLSeq,
} from "yaml";
import { isEmpty, scalarText, type Written } from "./reading.ts";

/** A name with its value in a text's tree. */
export type Entry = Pair<ParsedNode, Written>;

/** The entries of a map. */
export function entriesOf(map: YAMLMap.Parsed): readonly Entry[] {
  return map.items as Entry[];
}

/** The entry of a map under a name. */
export function entryOf(map: YAMLMap.Parsed, name: string): Entry | undefined {
  return entriesOf(map).find((entry) => scalarText(entry.key) === name);
}

/** What a path leads to: the deepest collection on the way, and the steps that are not in the text. */
export interface Located {
  readonly node: Written;
  /** The entry whose value the node is; undefined for items of lists and the whole text. */
  readonly entry: Entry | undefined;
  readonly parent: YAMLMap.Parsed | YAMLSeq.Parsed | undefined;
  /** Steps that lead nowhere; empty when the node is what the path names. */
  readonly missing: readonly (string | number)[];
}

/** Follows a path as far as the text has it; undefined when it goes through an alias, which stands elsewhere. */
export function locate(root: Written, steps: readonly (string | number)[]): Located | undefined {
  let at: Located = { node: root, entry: undefined, parent: undefined, missing: steps };
  while (at.missing.length > 0) {
    const [step, ...missing] = at.missing;
    if (isAlias(at.node)) return undefined;
    if (typeof step === "string" && isMap(at.node)) {
      const parent = at.node as YAMLMap.Parsed;
      const entry = entryOf(parent, step);
      if (entry === undefined) return at;
      at = { node: entry.value, entry, parent, missing };
    } else if (typeof step === "number" && isSeq(at.node)) {
      const parent = at.node as YAMLSeq.Parsed;
      if (step >= parent.items.length) return at;
      at = { node: parent.items[step] as Written, entry: undefined, parent, missing };
    } else return at;
  }
  return at;
}

/** Offset just after the colon of an entry. */
export function colonEnd(entry: Entry): number {
  const token = entry.srcToken?.sep?.find((each) => each.type === "map-value-ind");
  return token === undefined ? entry.key.range[1] : token.offset + 1;
}

/** Offset where the last character that belongs to a value ends, without comments and blank lines after it. */
export function contentEnd(node: Written, whenNothing: number): number {
  if (node === null) return whenNothing;
  if (!isCollection(node) || node.flow === true) return node.range[1];
  if (isSeq(node))
    return contentEnd(
      (node.items.at(-1) ?? null) as Written,
      dashOf(node as YAMLSeq.Parsed, node.items.length - 1) + 1,
    );
  const last = entriesOf(node as YAMLMap.Parsed).at(-1);
  return last === undefined ? whenNothing : entryEnd(last);
}

/** Offset where an entry ends, without comments and blank lines after it. */
export function entryEnd(entry: Entry): number {
  return contentEnd(entry.value, colonEnd(entry));
}

/** Offset of the dash of a list's item. */
export function dashOf(seq: YAMLSeq.Parsed, index: number): number {
  const token = seq.srcToken?.items[index]?.start.find((each) => each.type === "seq-item-ind");
  return token?.offset ?? (seq.items[index] as ParsedNode | undefined)?.range[0] ?? seq.range[0];
}

/** How many references of a text lead to nothing. */
export function looseReferences(document: Document.Parsed<ParsedNode> | undefined): number {
  let loose = 0;
  if (document === undefined) return loose;
  visit(document, {
    Alias: (_, alias) => {
      if (alias.resolve(document) === undefined) loose += 1;
    },
  });
  return loose;
}

/** What a text says, without how it is written; empty maps, lists and values are alike. */
export type Shape =
  | string
  | { readonly alias: string }
  | readonly Shape[]
  | { readonly members: readonly (readonly [Shape, Shape])[] };

/** The shape of a node. */
export function shapeOf(node: Written): Shape {
  if (node === null || isEmpty(node)) return "";
  if (isAlias(node)) return { alias: node.source };
  if (isScalar(node)) return scalarText(node) ?? "";
  if (isSeq(node)) return node.items.length === 0 ? "" : node.items.map((item) => shapeOf(item as Written));
  const entries = entriesOf(node as YAMLMap.Parsed);
  return entries.length === 0
    ? ""
    : { members: entries.map(({ key, value }) => [shapeOf(key), shapeOf(value)] as const) };
}

/** A shape in which what a path leads to is changed; a change that gives undefined takes it out. */
export function changedShape(
  shape: Shape,
  steps: readonly (string | number)[],
  change: (old: Shape | undefined) => Shape | undefined,
): Shape | undefined {
  const [step, ...rest] = steps;
  if (step === undefined) return change(shape);
  if (typeof step === "number") {
    if (!Array.isArray(shape)) return shape;
    const items = (shape as readonly Shape[]).flatMap((item, index) => {
      const now = index === step ? changedShape(item, rest, change) : item;
      return now === undefined ? [] : [now];
    });
    return items.length === 0 ? "" : items;
  }
  const members = typeof shape === "object" && "members" in shape ? shape.members : [];
  const found = members.some(([name]) => name === step);
  const all = found ? members : [...members, [step, ""] as const];
  const kept = all.flatMap(([name, value]): (readonly [Shape, Shape])[] => {
    const now = name === step ? changedShape(value, rest, (old) => change(found ? old : undefined)) : value;
    return now === undefined ? [] : [[name, now]];
  });
  return kept.length === 0 ? "" : { members: kept };
}
