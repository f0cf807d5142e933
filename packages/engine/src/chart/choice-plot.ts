import type { QuantityKind, UnitSystem } from "#quantity/kind";
import { displayUnit, printQuantity, toDisplay } from "#quantity/print";
import type { DisplayItem, DisplayList } from "#section/display";
import { circle, line, words } from "./items.ts";
import { LabelRoom, placesAround } from "./label-room.ts";
import { textWidth } from "./text-size.ts";
import { type NiceRange, niceRange, tickText } from "./ticks.ts";

/** One way to build a thing, as a point: two of its figures in SI. */
export interface ChoicePoint {
  readonly key: string;
  readonly name: string;
  readonly x: number;
  readonly y: number;
}

/** A figure on an axis, and which end of it is the better one. */
export interface ChoiceFigure {
  readonly name: string;
  readonly quantity: QuantityKind;
  readonly better: "less" | "more";
}

/** What a plot of alternatives shows. */
export interface ChoicePlotOptions {
  readonly title: string;
  readonly points: readonly ChoicePoint[];
  /** The present choice, whether it is among the points or not. */
  readonly present: ChoicePoint | undefined;
  readonly x: ChoiceFigure;
  readonly y: ChoiceFigure;
  readonly system: UnitSystem;
  /** pt. */
  readonly width: number;
  readonly height: number;
}

/** Where a point stands on the page. */
export interface PlacedChoice {
  readonly key: string;
  readonly words: string;
  readonly x: number;
  readonly y: number;
  /** No other point is better in both figures. */
  readonly isBest: boolean;
}

/** The plot, with the points drawn on it from left to right, so that a hand can reach them. */
export interface ChoicePlotList extends DisplayList {
  readonly placed: readonly PlacedChoice[];
  /** Where any point would stand. */
  readonly place: (point: ChoicePoint) => { readonly x: number; readonly y: number };
}

const left = 56;
const right = 16;
const top = 30;
const foot = 42;
/** pt: of points nearer to one another than this, one is drawn. */
const grain = 5;

interface Scale {
  readonly range: NiceRange;
  readonly place: (value: number) => number;
}

/**
 * Alternatives by two of their figures: the present one marked and named, the best ones (none is better in both) joined by
 * a line, all others as small circles. Points that would cover one another are drawn once.
 */
export function choicePlot(options: ChoicePlotOptions): ChoicePlotList {
  const { points, present, x, y, system, width, height, title } = options;
  const all = present === undefined ? points : [...points, present];
  if (all.length === 0) throw new RangeError("there is nothing to plot");
  const across = scaleOf(
    all.map((each) => each.x),
    x,
    system,
    left,
    width - right,
  );
  const up = scaleOf(
    all.map((each) => each.y),
    y,
    system,
    height - foot,
    top,
  );
  const best = bestOf(points, x.better, y.better);
  const say = (each: ChoicePoint) =>
    `${each.name}: ${printQuantity(each.x, x.quantity, system)}, ${printQuantity(each.y, y.quantity, system)}`;
  const shown = thinned(points, new Set(best.map((each) => each.key)), across, up);
  const placed = shown
    .map((each) => ({
      key: each.key,
      words: say(each),
      x: across.place(each.x),
      y: up.place(each.y),
      isBest: best.includes(each),
    }))
    .sort((a, b) => a.x - b.x || a.y - b.y);
  return {
    title: `${title}: ${y.name} against ${x.name}`,
    unit: "pt",
    up: false,
    box: { x: 0, y: 0, width, height },
    placed,
    place: (point) => ({ x: across.place(point.x), y: up.place(point.y) }),
    items: [
      ...scaleItems(across, up, options),
      ...bestLine(best, across, up),
      ...placed.map((each) =>
        circle(`choice-${each.key}`, each.isBest ? "outline" : "fine", [each.x, each.y], each.isBest ? 3.4 : 2, {
          fill: "paper",
          label: each.words,
        }),
      ),
      ...(present === undefined ? [] : presentItems(present, say(present), across, up, options)),
    ],
  };
}

/** A scale that holds all values with a little room at both ends. */
function scaleOf(
  values: readonly number[],
  { quantity }: ChoiceFigure,
  system: UnitSystem,
  from: number,
  to: number,
): Scale {
  const read = (value: number) => toDisplay(value, quantity, system);
  const readings = values.map(read);
  const [low, high] = [Math.min(...readings), Math.max(...readings)];
  const count = Math.max(3, Math.round(Math.abs(to - from) / 80));
  const range = niceRange(low, high, count, Math.max(1e-9, 0.02 * Math.abs(high)));
  return { range, place: (value) => from + ((read(value) - range.low) / (range.high - range.low)) * (to - from) };
}

/** The points that no other is better than in both figures, best first by x. */
function bestOf(points: readonly ChoicePoint[], x: "less" | "more", y: "less" | "more"): readonly ChoicePoint[] {
  const gain = (value: number, better: "less" | "more") => (better === "more" ? value : -value);
  const ordered = points.toSorted((a, b) => gain(b.x, x) - gain(a.x, x) || gain(b.y, y) - gain(a.y, y));
  const found: ChoicePoint[] = [];
  let most = Number.NEGATIVE_INFINITY;
  for (const each of ordered) {
    if (gain(each.y, y) <= most) continue;
    most = gain(each.y, y);
    found.push(each);
  }
  return found;
}

/** One point for each spot of the page, the first of the list; those to keep stay in any case. */
function thinned(points: readonly ChoicePoint[], keep: ReadonlySet<string>, across: Scale, up: Scale) {
  const taken = new Set<string>();
  const spot = (each: ChoicePoint) =>
    `${Math.round(across.place(each.x) / grain)} ${Math.round(up.place(each.y) / grain)}`;
  for (const each of points) if (keep.has(each.key)) taken.add(spot(each));
  return points.filter((each) => {
    if (keep.has(each.key)) return true;
    const at = spot(each);
    if (taken.has(at)) return false;
    taken.add(at);
    return true;
  });
}

/** The best ones joined, in the order of x. */
function bestLine(best: readonly ChoicePoint[], across: Scale, up: Scale): readonly DisplayItem[] {
  if (best.length < 2) return [];
  const points = best.toSorted((a, b) => a.x - b.x).flatMap((each) => [across.place(each.x), up.place(each.y)]);
  return [line("best", "outline", points, { dash: "short", label: "none is better in both" })];
}

function scaleItems(
  across: Scale,
  up: Scale,
  { x, y, system, width, height }: ChoicePlotOptions,
): readonly DisplayItem[] {
  const [low, high] = [height - foot, top];
  const place = ({ range, place: _ }: Scale, tick: number, from: number, to: number) =>
    from + ((tick - range.low) / (range.high - range.low)) * (to - from);
  const unitAt = left + 1.08 * textWidth(y.name, "normal") + 12;
  const ends = { less: "less is better", more: "more is better" } as const;
  return [
    ...across.range.ticks.flatMap((tick, index) => {
      const at = place(across, tick, left, width - right);
      return [
        line(`x-line-${index}`, "hairline", [at, low, at, high]),
        words(`x-tick-${index}`, "quiet", [at, low + 15], tickText(tick, across.range.step), {
          size: "small",
          anchor: "middle",
        }),
      ];
    }),
    ...up.range.ticks.flatMap((tick, index) => {
      const at = place(up, tick, low, high);
      return [
        line(`y-line-${index}`, index === 0 ? "quiet" : "hairline", [left, at, width - right, at]),
        words(`y-tick-${index}`, "quiet", [left - 8, at + 4], separated(tick, up.range.step), {
          size: "small",
          anchor: "end",
        }),
      ];
    }),
    words("y-name", "strong", [left, top - 12], y.name),
    words("y-unit", "quiet", [unitAt, top - 12], `${displayUnit(y.quantity, system)}, ${ends[y.better]}`, {
      size: "small",
    }),
    words(
      "x-name",
      "quiet",
      [(left + width - right) / 2, low + 33],
      `${x.name}, ${displayUnit(x.quantity, system)}, ${ends[x.better]}`,
      { size: "small", anchor: "middle" },
    ),
  ];
}

/** The present choice with lines to both scales, and its name. */
function presentItems(
  present: ChoicePoint,
  label: string,
  across: Scale,
  up: Scale,
  { height }: ChoicePlotOptions,
): readonly DisplayItem[] {
  const at = [across.place(present.x), up.place(present.y)] as const;
  const place = new LabelRoom().place(at[0], at[1], "present", "normal", placesAround.slice(4));
  return [
    line("present-x", "choice", [at[0], at[1], at[0], height - foot], { dash: "short" }),
    line("present-y", "choice", [left, at[1], at[0], at[1]], { dash: "short" }),
    circle("present", "choice", at, 6, { fill: "paper", label: `present, ${label}` }),
    circle("present-dot", "choice", at, 2.4, { fill: "choice" }),
    words("present-name", "choice", [at[0] + place.dx + 2, at[1] + place.dy - 2], "present", { anchor: place.anchor }),
  ];
}

/** A tick with commas between thousands. */
function separated(tick: number, step: number): string {
  return tickText(tick, step).replace(/\B(?=(\d{3})+(?!\d))(?<!\.\d*)/g, ",");
}
