import { type Part, type Point, visitLeaves } from "#arrangement/part";
import { circle, line } from "#chart/items";
import type { DisplayItem, Ink } from "#section/display";
import type { PartKind } from "#section/part";
import { outlineOf } from "./solids.ts";

/** Where a drawing is looked at from: the right side, above, before the entry, behind the exit. */
export type ViewSide = "side" | "plan" | "entry" | "exit";

type Axis = keyof Point;

/** Axis that a view looks along, and those that run to the right and up on the paper. */
const axes: Readonly<Record<ViewSide, { readonly depth: Axis; readonly right: Axis; readonly up: Axis }>> = {
  side: { depth: "y", right: "x", up: "z" },
  plan: { depth: "z", right: "x", up: "y" },
  entry: { depth: "x", right: "y", up: "z" },
  exit: { depth: "x", right: "y", up: "z" },
};

/** A view of the unit: from before the entry, its right side is on the right hand, so that y runs to the left. */
export interface View {
  readonly side: ViewSide;
  /** mm, clear width of the cabinet: what mirrors the entry's view. */
  readonly width: number;
}

/** A point of the unit on the paper. */
export function onPaper(view: View, point: Point): readonly [number, number] {
  const { right, up } = axes[view.side];
  return [mirrored(view, point[right]), point[up]];
}

function mirrored({ side, width }: View, value: number): number {
  return side === "entry" ? width - value : value;
}

/** The box of a part on the paper: left, low, right, high. */
export function paperBox(view: View, part: Pick<Part, "place" | "size">): readonly [number, number, number, number] {
  const { right, up } = axes[view.side];
  const ends = [part.place[right], part.place[right] + part.size[right]].map((end) => mirrored(view, end));
  return [Math.min(...ends), part.place[up], Math.max(...ends), part.place[up] + part.size[up]];
}

/** The ink of a part's edges. */
const inks: Partial<Record<PartKind, Ink>> = {
  panel: "outline",
  rail: "outline",
  roof: "outline",
  door: "outline",
  window: "outline",
  collar: "outline",
  housing: "outline",
  wheel: "fine",
  motor: "outline",
  pan: "moisture",
  trap: "moisture",
  pipe: "water",
  header: "water",
  blades: "choice",
  restraint: "fine",
};

/** What an item of a part stands for. */
export function partReference(part: Part): DisplayItem["reference"] {
  return part.section === undefined ? { part: part.key } : { section: part.section, part: part.key };
}

/** How a silhouette is inked. */
export interface Inked {
  /** What it stands for, where that is not the part in its section. */
  readonly reference?: DisplayItem["reference"];
  readonly ink?: Ink;
  readonly fill?: Ink | "paper";
  readonly dash?: "short" | "long";
}

/** The silhouettes of a leaf: outlines seen end-on as they are, all else as the box around each piece. */
export function silhouettes(view: View, part: Part, inked: Inked = {}): readonly DisplayItem[] {
  const { form } = part;
  const { depth } = axes[view.side];
  const common = { reference: partReference(part), label: part.name, ...given(inked) };
  const ink = inked.ink ?? inks[part.kind] ?? "fine";
  const key = part.key;
  if (form === undefined) return [closed(key, ink, corners(paperBox(view, part)), common)];
  if (form.shape === "cylinder") {
    const box = paperBox(view, part);
    if (form.axis !== depth) return [closed(key, ink, corners(box), common)];
    const [left, low, right, high] = box;
    const at = [(left + right) / 2, (low + high) / 2] as const;
    const { dash: _, ...round } = common;
    return [circle(key, ink, at, Math.min(right - left, high - low) / 2, round)];
  }
  const outlines = form.outlines().map((shares) => outlineOf(part, form.axis, shares));
  const pieces = outlines.map((outline) =>
    form.axis === depth ? mirroredOutline(view, outline) : corners(pieceBox(view, part, form.axis, outline)),
  );
  return distinct(pieces).map((points, index, all) =>
    closed(all.length === 1 ? key : `${key}#${index + 1}`, ink, points, common),
  );
}

function given({ fill, dash, reference }: Inked): Omit<Inked, "ink"> {
  return {
    ...(reference === undefined ? {} : { reference }),
    ...(fill === undefined ? {} : { fill }),
    ...(dash === undefined ? {} : { dash }),
  };
}

function closed(key: string, ink: Ink, points: readonly number[], options: object): DisplayItem {
  return line(key, ink, points, { closed: true, ...options });
}

function corners([left, low, right, high]: readonly [number, number, number, number]): readonly number[] {
  return [left, low, right, low, right, high, left, high];
}

function mirroredOutline(view: View, outline: readonly number[]): readonly number[] {
  return outline.map((value, index) => (index % 2 === 0 ? mirrored(view, value) : value));
}

/** The box on the paper of one outline that is drawn out along an axis in the paper. */
function pieceBox(
  view: View,
  part: Part,
  axis: Axis,
  outline: readonly number[],
): readonly [number, number, number, number] {
  const others = (["x", "y", "z"] as const).filter((each) => each !== axis);
  const place = { ...part.place };
  const size = { ...part.size };
  others.forEach((other, offset) => {
    const values = outline.filter((_, index) => index % 2 === offset);
    place[other] = Math.min(...values);
    size[other] = Math.max(...values) - place[other];
  });
  return paperBox(view, { place, size });
}

/** Each outline once: rows that lie behind one another are one. */
function distinct(outlines: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const seen = new Map<string, readonly number[]>();
  for (const outline of outlines) seen.set(outline.map((value) => Math.round(value)).join(" "), outline);
  return [...seen.values()];
}

/** Leaves from the farthest to the nearest, so that what is nearer covers what is behind it. */
export function farthestFirst(view: View, parts: readonly Part[]): readonly Part[] {
  const leaves: Part[] = [];
  for (const part of parts) visitLeaves(part, (leaf) => leaves.push(leaf));
  const { depth } = axes[view.side];
  // Above and behind the exit the larger coordinate is nearer; before the entry and at the right side the smaller one.
  const isLargerNearer = view.side === "plan" || view.side === "exit";
  const near = ({ place, size }: Part) => (isLargerNearer ? place[depth] + size[depth] : -place[depth]);
  return leaves.sort((one, other) => near(one) - near(other));
}
