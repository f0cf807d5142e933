import type { CircleItem, Ink, LineItem, Reference, TextItem } from "#section/display";

const none: Reference = {};

type LineOptions = Partial<Pick<LineItem, "closed" | "breaks" | "fill" | "dash" | "tone" | "label" | "reference">>;
type TextOptions = Partial<Pick<TextItem, "anchor" | "size" | "turn" | "label" | "reference">>;
type CircleOptions = Partial<Pick<CircleItem, "fill" | "label" | "reference">>;

/** Straight pieces through points. */
export function line(key: string, ink: Ink, points: readonly number[], options: LineOptions = {}): LineItem {
  return { shape: "line", key, ink, points, reference: none, ...options };
}

/** A rectangle between two corners. */
export function rectangle(
  key: string,
  ink: Ink,
  [left, low, right, high]: readonly [number, number, number, number],
  options: LineOptions = {},
): LineItem {
  return line(key, ink, [left, low, right, low, right, high, left, high], { closed: true, ...options });
}

/** A text, `start`ing at its point and of normal size unless said otherwise. */
export function words(
  key: string,
  ink: Ink,
  [x, y]: readonly [number, number],
  text: string,
  options: TextOptions = {},
): TextItem {
  return { shape: "text", key, ink, x, y, text, anchor: "start", size: "normal", reference: none, ...options };
}

/** A circle around a point. */
export function circle(
  key: string,
  ink: Ink,
  [x, y]: readonly [number, number],
  radius: number,
  options: CircleOptions = {},
): CircleItem {
  return { shape: "circle", key, ink, x, y, radius, reference: none, ...options };
}
