import { isAlias, isMap, isScalar, isSeq, type ParsedNode } from "yaml";
import { type Problem, shortened } from "./problem.ts";
import type { Source } from "./source.ts";

/** What a reader of a form must be able to ask about the catalogue. */
export interface ReadContext {
  /** The record of a family under a name, or undefined. */
  readonly component: (family: string, name: string) => unknown;
  readonly componentNames: (family: string) => readonly string[];
}

/** A value that the text does not give. */
export interface DefaultApplied {
  readonly path: string;
  /** As a person would type it. */
  readonly value: string;
  readonly meaning: string;
}

/** Where a value stands in the text: from `start` up to, not including, `end`. */
export interface Place {
  readonly start: number;
  readonly end: number;
  /** Counted from 1. */
  readonly line: number;
  readonly column: number;
  /** The value as typed. */
  readonly text: string;
  /** The unit that a quantity was typed in. */
  readonly unit?: string;
}

/** The state of one reading; filled while the text is walked. */
export interface Reading {
  readonly source: Source;
  readonly context: ReadContext;
  readonly problems: Problem[];
  readonly defaults: DefaultApplied[];
  readonly places: Map<string, Place>;
  /** Values looked at, so that anchors used in anchors cannot make a small text endless. */
  visited: number;
}

/** Where the reader stands: the path, the field's words, and the offset to point at when nothing is written. */
export interface Spot {
  readonly path: string;
  readonly field: string;
  readonly offset: number;
}

/** Stands for a value that has a problem, which is reported already. */
export const unsound: unique symbol = Symbol("unsound");

/** A node, or nothing where a name has no value. */
export type Written = ParsedNode | null;

/** Reports an error at a place and gives `unsound`. */
export function report(
  reading: Reading,
  spot: Spot,
  value: string,
  problem: string,
  allowed: string,
  nearest?: string,
): typeof unsound {
  const place = reading.source.placeOf(spot.offset);
  const named = nearest === undefined ? {} : { nearest };
  const { path, field } = spot;
  reading.problems.push({ ...place, path, field, value, problem, allowed, ...named, severity: "error" });
  return unsound;
}

/** The text of a node as typed, on one line. */
export function typedText(reading: Reading, node: Written): string {
  return node === null ? "" : shortened(reading.source.text.slice(node.range[0], node.range[1]));
}

/** What a scalar says: the characters of a plain one, untouched by YAML's own types, or what stands in its quotes. */
export function scalarText(node: Written): string | undefined {
  if (node === null || !isScalar(node)) return undefined;
  const quoted = node.type !== undefined && node.type !== "PLAIN";
  return quoted || node.source === undefined ? String(node.value ?? "") : node.source;
}

/** True where a name has no value at all. */
export function isEmpty(node: Written): boolean {
  return node === null || (isScalar(node) && (node.type ?? "PLAIN") === "PLAIN" && (node.source ?? "") === "");
}

/** What an alias stands for; the node itself when it is none; undefined when its anchor is not there. */
export function resolved(reading: Reading, node: Written): Written | undefined {
  if (node === null || !isAlias(node)) return node;
  const { document } = reading.source;
  return document === undefined ? undefined : (node.resolve(document) as ParsedNode | undefined);
}

/** What kind of thing a node is, for messages. */
export function whatStands(node: Written): string {
  if (isEmpty(node)) return "nothing is written here";
  if (isSeq(node)) return "a list stands here";
  return isMap(node) ? "a group of names stands here" : "a single value stands here";
}

/** Remembers where the value of a path stands. */
export function remember(reading: Reading, path: string, node: Written, offset: number, unit?: string): void {
  const start = node === null ? offset : node.range[0];
  const end = node === null ? offset : node.range[1];
  const text = reading.source.text.slice(start, end);
  const typedIn = unit === undefined ? {} : { unit };
  reading.places.set(path, { start, end, ...reading.source.placeOf(start), text, ...typedIn });
}
