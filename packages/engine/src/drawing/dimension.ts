import { line, words } from "#chart/items";
import { textWidth } from "#chart/text-size";
import type { UnitSystem } from "#quantity/kind";
import type { DisplayItem, Reference } from "#section/display";
import { dimensionText } from "./dimension-chain.ts";

/** How dimensions are written. */
export interface DimensionStyle {
  /** mm of the drawing for a point on the paper. */
  readonly textScale: number;
  readonly system: UnitSystem;
}

/** A dimension: key, ends in mm, where its line lies, and where the witness lines begin. */
export interface Dimension {
  readonly key: string;
  readonly from: number;
  readonly to: number;
  readonly at: number;
  /** mm: where the thing measured is; witness lines run from near it to the dimension line. */
  readonly thing?: number;
  readonly words?: string;
  readonly reference?: Reference;
}

/** A length along the paper: the line, ticks, witness lines, and the figure over it, or beside it where it is too short. */
export function levelDimension(dimension: Dimension, style: DimensionStyle): readonly DisplayItem[] {
  const { key, from, to, at, thing } = dimension;
  const { textScale } = style;
  const reference = dimension.reference ?? {};
  const text = said(dimension, style);
  const fits = textWidth(text, "small") * textScale < to - from - 4 * textScale;
  const tick = 4 * textScale;
  const place = fits
    ? ([(from + to) / 2, at + 3.5 * textScale] as const)
    : ([to + 4 * textScale, at + 3.5 * textScale] as const);
  return [
    line(key, "quiet", [from, at, to, at], { reference }),
    ...[from, to].map((end, index) =>
      line(`${key}-tick-${index}`, "quiet", [end - tick, at - tick, end + tick, at + tick], { reference }),
    ),
    ...witnesses(key, thing, at, textScale, (near, far) => [
      [from, near, from, far],
      [to, near, to, far],
    ]),
    words(`${key}-figure`, "outline", place, text, { size: "small", anchor: fits ? "middle" : "start", reference }),
  ];
}

/** A length up the paper, its figure turned along the line, under its lower end where it is too short. */
export function uprightDimension(dimension: Dimension, style: DimensionStyle): readonly DisplayItem[] {
  const { key, from, to, at, thing } = dimension;
  const { textScale } = style;
  const reference = dimension.reference ?? {};
  const text = said(dimension, style);
  const tick = 4 * textScale;
  const fits = textWidth(text, "small") * textScale < to - from - 4 * textScale;
  const figure = words(
    `${key}-figure`,
    "outline",
    [at - 3.5 * textScale, fits ? (from + to) / 2 : from - 5 * textScale],
    text,
    { size: "small", anchor: fits ? "middle" : "end", turn: 90, reference },
  );
  return [
    line(key, "quiet", [at, from, at, to], { reference }),
    ...[from, to].map((end, index) =>
      line(`${key}-tick-${index}`, "quiet", [at - tick, end - tick, at + tick, end + tick], { reference }),
    ),
    ...witnesses(key, thing, at, textScale, (near, far) => [
      [near, from, far, from],
      [near, to, far, to],
    ]),
    figure,
  ];
}

function said({ from, to, words: said }: Dimension, { system }: DimensionStyle): string {
  return said ?? dimensionText((to - from) / 1000, system);
}

function witnesses(
  key: string,
  thing: number | undefined,
  at: number,
  textScale: number,
  lines: (near: number, far: number) => readonly (readonly number[])[],
): readonly DisplayItem[] {
  if (thing === undefined) return [];
  const way = Math.sign(at - thing);
  return lines(thing + way * 3 * textScale, at + way * 5 * textScale).map((points, index) =>
    line(`${key}-witness-${index}`, "hairline", points),
  );
}
