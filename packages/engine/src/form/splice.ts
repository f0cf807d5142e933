import { isCollection, isMap, isScalar, isSeq, type YAMLMap, type YAMLSeq } from "yaml";
import { type Attempt, afterDash, entrySpans, itemSpans, type Span } from "./cut.ts";
import { cutFromBraces, inBrackets, intoBrackets } from "./cut-braces.ts";
import {
  betweenLines,
  columnOf,
  cutItemLines,
  cutLines,
  indented,
  itemLines,
  linedSpans,
  linesAfter,
  nestedLines,
  newLine,
} from "./cut-lines.ts";
import { pathSteps } from "./path.ts";
import { writtenScalar } from "./plain-scalar.ts";
import { problemText } from "./problem.ts";
import { isEmpty, type Written } from "./reading.ts";
import { type Source, takeApart } from "./source.ts";
import {
  changedShape,
  colonEnd,
  type Entry,
  entriesOf,
  entryEnd,
  type Located,
  locate,
  looseReferences,
  type Shape,
  shapeOf,
} from "./tree.ts";

/** An edit of a text: the characters from `start` to `end` give way to `inserted`, all others stay as they are. */
export type Splice =
  | {
      readonly ok: true;
      readonly text: string;
      readonly start: number;
      readonly end: number;
      readonly inserted: string;
    }
  | { readonly ok: false; readonly problem: string };

type Step = string | number;

/**
 * Puts a value at a path. The value is what a person types (`24,000 cfm`); quotes are added where the text needs
 * them. Names that are not there yet are written at the end of their group.
 */
export function spliceEdit(text: string, path: string, value: string): Splice {
  return spliced(
    text,
    path,
    (shape, steps) => changedShape(shape, steps, () => value) ?? "",
    (source, steps) => {
      const found = locate(rootOf(source), steps);
      if (found === undefined) return throughAlias;
      if (found.missing.length > 0) return withNewMember(text, found, value);
      const { node, entry, parent } = found;
      if (isEmpty(node)) return afterMark(text, found, writtenScalar(value, parent?.flow === true, undefined));
      if (isCollection(node)) return "a group or a list stands there, not a single value";
      const [start, end] = node === null ? [0, 0] : node.range;
      const type = isScalar(node) ? (node.type ?? undefined) : undefined;
      const written = writtenScalar(value, parent?.flow === true, type);
      const tail = entry !== undefined && text.slice(start, end).endsWith("\n") ? newLine(text) : "";
      return { start, end, inserted: written + tail };
    },
  );
}

/** Takes a member or an item out, with its lines where it has them to itself. */
export function removeAt(text: string, path: string): Splice {
  return spliced(
    text,
    path,
    (shape, steps) => changedShape(shape, steps, () => undefined) ?? "",
    (source, steps) => {
      const found = locate(rootOf(source), steps);
      if (found === undefined) return throughAlias;
      if (found.missing.length > 0) return "nothing is written there";
      const { parent } = found;
      if (parent === undefined) return "the whole text cannot be taken out";
      const spans = isMap(parent) ? entrySpans(parent as YAMLMap.Parsed) : itemSpans(parent as YAMLSeq.Parsed);
      const index = isMap(parent) ? parent.items.indexOf(found.entry as Entry) : (steps.at(-1) as number);
      if (parent.flow === true) return cutFromBraces(spans, index);
      return isMap(parent) ? cutLines(text, spans, index) : cutItemLines(text, spans, index);
    },
  );
}

/** Puts an item before the `index`th of a list; the item is written as YAML, from its first column on. */
export function insertItem(text: string, listPath: string, index: number, item: string): Splice {
  const parsed = takeApart(item);
  const problem = parsed.problems[0];
  if (problem !== undefined) return { ok: false, problem: `the new item cannot be read: ${problemText(problem)}` };
  const added = shapeOf(rootOf(parsed));
  const intended = (shape: Shape, steps: readonly Step[]): Shape =>
    changedShape(shape, steps, (old) => {
      const items = Array.isArray(old) ? (old as readonly Shape[]) : [];
      return [...items.slice(0, index), added, ...items.slice(index)];
    }) ?? "";
  return spliced(text, listPath, intended, (source, steps) => {
    const found = locate(rootOf(source), steps);
    if (found === undefined) return throughAlias;
    if (found.missing.length > 0) return withNewList(text, found, item);
    const { node } = found;
    if (isEmpty(node) || (isSeq(node) && node.items.length === 0)) return asFirstItem(text, found, item);
    if (!isSeq(node)) return "what stands there is not a list";
    const list = node as YAMLSeq.Parsed;
    if (index < 0 || index > list.items.length) return `the list has ${list.items.length} items`;
    return list.flow === true ? intoBrackets(list, index, item) : betweenLines(text, list, index, item);
  });
}

/**
 * Moves an item of a list to another place in it: its lines go with the comment lines right above them, byte for byte;
 * blank lines and other comments between the items stay where they are.
 */
export function moveItem(text: string, listPath: string, from: number, to: number): Splice {
  const intended = (shape: Shape, steps: readonly Step[]): Shape =>
    changedShape(shape, steps, (old) => (Array.isArray(old) ? moved(old as readonly Shape[], from, to) : old)) ?? "";
  return spliced(text, listPath, intended, (source, steps) => {
    const found = locate(rootOf(source), steps);
    if (found === undefined) return throughAlias;
    const { node, missing } = found;
    if (missing.length > 0 || !isSeq(node)) return "what stands there is not a list";
    const list = node as YAMLSeq.Parsed;
    const last = list.items.length - 1;
    if (from < 0 || to < 0 || from > last || to > last) return `the list has ${list.items.length} items`;
    const spans = list.flow === true ? itemSpans(list) : linedSpans(text, itemSpans(list));
    return spans === undefined ? afterDash : permuted(text, spans, from, to);
  });
}

const throughAlias = "the value is written elsewhere and referred to here; edit it where it stands";

/** Makes the cut, and makes sure that the new text says what was intended and nothing else. */
function spliced(
  text: string,
  path: string,
  intended: (shape: Shape, steps: readonly Step[]) => Shape,
  attempt: (source: Source, steps: readonly Step[]) => Attempt,
): Splice {
  const steps = pathSteps(path);
  if (steps === undefined || steps.length === 0) return { ok: false, problem: `"${path}" is not a path` };
  const source = takeApart(text);
  const broken = source.problems[0];
  if (broken !== undefined) return { ok: false, problem: `the text cannot be read: ${problemText(broken)}` };
  const cut = attempt(source, steps);
  if (typeof cut === "string") return { ok: false, problem: cut };
  const edited = text.slice(0, cut.start) + cut.inserted + text.slice(cut.end);
  const after = takeApart(edited);
  if (looseReferences(after.document) > looseReferences(source.document)) {
    return { ok: false, problem: "what stands there is referred to elsewhere in the text" };
  }
  const wanted = JSON.stringify(intended(shapeOf(rootOf(source)), steps));
  if (after.problems.length > 0 || JSON.stringify(shapeOf(rootOf(after))) !== wanted) {
    return { ok: false, problem: "this place is written in a way that cannot be edited piecemeal; edit the text" };
  }
  return { ok: true, text: edited, ...cut };
}

/** The text from the first to the last item concerned, with the items in their new order between what separates them. */
function permuted(text: string, spans: readonly Span[], from: number, to: number): Attempt {
  const [first, last] = [Math.min(from, to), Math.max(from, to)];
  const concerned = spans.slice(first, last + 1);
  const items = moved(
    concerned.map(({ start, end }) => text.slice(start, end)),
    from - first,
    to - first,
  );
  const inserted = items.map((item, index) => {
    const next = concerned[index + 1];
    return next === undefined ? item : item + text.slice((concerned[index] as Span).end, next.start);
  });
  return { start: (concerned[0] as Span).start, end: (concerned.at(-1) as Span).end, inserted: inserted.join("") };
}

function moved<Item>(items: readonly Item[], from: number, to: number): readonly Item[] {
  const rest = items.toSpliced(from, 1);
  return rest.toSpliced(to, 0, ...items.slice(from, from + 1));
}

function rootOf(source: Source): Written {
  return (source.document?.contents ?? null) as Written;
}

/** Puts a value behind the colon or dash that has none. */
function afterMark(text: string, { node, entry, parent }: Located, written: string): Attempt {
  if (entry !== undefined) return { start: colonEnd(entry), end: colonEnd(entry), inserted: ` ${written}` };
  if (parent === undefined || node === null) return "there is no name to write the value to";
  const at = node.range[0];
  return { start: at, end: at, inserted: /\s/.test(text[at - 1] ?? " ") ? written : ` ${written}` };
}

function withNewMember(text: string, found: Located, value: string): Attempt {
  return withNewNames(text, found, [writtenScalar(value, false, undefined)], writtenScalar(value, true, undefined));
}

function withNewList(text: string, found: Located, item: string): Attempt {
  return withNewNames(text, found, ["", ...itemLines(item)], `[${inBrackets(item)}]`);
}

/** Writes the missing names of a path at the end of the group that the path reaches. */
function withNewNames(text: string, found: Located, last: readonly string[], inBraces: string): Attempt {
  const { node, missing } = found;
  if (missing.some((step) => typeof step === "number")) return "the list has no such item";
  if (isMap(node) && node.flow === true) {
    const value = missing.reduceRight<string>(
      (inner, name, at) => `${name}: ${at === missing.length - 1 ? inner : `{${inner}}`}`,
      inBraces,
    );
    const before = entriesOf(node as YAMLMap.Parsed).at(-1);
    const at = before === undefined ? node.range[0] + 1 : entryEnd(before);
    return { start: at, end: at, inserted: before === undefined ? value : `, ${value}` };
  }
  const lines = nestedLines(missing, last);
  if (isMap(node)) {
    const entries = entriesOf(node as YAMLMap.Parsed);
    const before = entries.at(-1) as Entry;
    const column = columnOf(text, (entries[0] as Entry).key.range[0]);
    return linesAfter(text, entryEnd(before), indented(column, lines));
  }
  if (!isEmpty(node)) return "a single value or a list stands where the path needs a group";
  if (found.entry === undefined) return found.parent === undefined ? linesAfter(text, text.length, lines) : afterDash;
  const column = columnOf(text, found.entry.key.range[0]) + 2;
  return found.parent?.flow === true ? afterDash : linesAfter(text, colonEnd(found.entry), indented(column, lines));
}

function asFirstItem(text: string, found: Located, item: string): Attempt {
  const { node, entry, parent } = found;
  if (entry === undefined || node === null) return afterDash;
  if (parent?.flow === true) {
    const written = `[${inBrackets(item)}]`;
    return isEmpty(node)
      ? afterMark(text, found, written)
      : { start: node.range[0], end: node.range[1], inserted: written };
  }
  const lines = indented(columnOf(text, entry.key.range[0]) + 2, itemLines(item));
  if (isEmpty(node)) return linesAfter(text, colonEnd(entry), lines);
  const line = newLine(text);
  const [start, end] = node.range;
  const before = text.slice(0, start).endsWith(" ") ? start - 1 : start;
  return { start: before, end, inserted: `${line}${lines.join(line)}` };
}
