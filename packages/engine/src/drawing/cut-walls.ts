import type { Arrangement } from "#arrangement/arrange";
import { type Part, type Point, visitLeaves } from "#arrangement/part";
import { rectangle } from "#chart/items";
import type { DisplayItem } from "#section/display";
import { paperBox, silhouettes, type View } from "./projection.ts";

/** Panels and frame of the cabinet cut through the middle of it, open where doors, hatches and openings stand in them. */
export function cutWalls({ whole, sections }: Arrangement, view: View): readonly DisplayItem[] {
  const holes = sections.flatMap(({ part }) =>
    part.children.filter(({ kind }) => kind === "door" || kind === "collar"),
  );
  const casing = whole.children.find(({ key }) => key === "casing");
  const depth = view.side === "plan" ? "z" : "y";
  const middle = casing === undefined ? 0 : casing.place[depth] + casing.size[depth] / 2;
  const items: DisplayItem[] = [];
  for (const group of whole.children) {
    if (group.key !== "casing" && group.key !== "frame") continue;
    visitLeaves(group, (leaf) => {
      const isCut = leaf.place[depth] <= middle && leaf.place[depth] + leaf.size[depth] >= middle;
      if (!isCut || leaf.shares) return;
      items.push(...(leaf.kind === "panel" ? wallPieces(leaf, holes, view) : silhouettes(view, leaf, ofPart(leaf))));
    });
  }
  return items;
}

/** The wall is no section's own, though a section stands behind it. */
const ofPart = (part: Part) => ({ fill: "paper", reference: { part: part.key } }) as const;

/** A wall panel without the stretches of it that open. */
function wallPieces(panel: Part, holes: readonly Part[], view: View): readonly DisplayItem[] {
  const box = paperBox(view, panel);
  const isAlong = box[2] - box[0] >= box[3] - box[1];
  const [low, high] = isAlong ? [box[0], box[2]] : [box[1], box[3]];
  const through = holes
    .filter((hole) => axes.every((axis) => reach(hole, panel, axis) > 1))
    .map((hole) => paperBox(view, hole))
    .map((hole) => (isAlong ? ([hole[0], hole[2]] as const) : ([hole[1], hole[3]] as const)))
    .sort((one, other) => one[0] - other[0]);
  const pieces: (readonly [number, number])[] = [];
  let from = low;
  for (const [start, end] of through) {
    if (start > from + 1) pieces.push([from, start]);
    from = Math.max(from, end);
  }
  if (high > from + 1) pieces.push([from, high]);
  return pieces.map(([start, end], index) => {
    const corners = isAlong ? ([start, box[1], end, box[3]] as const) : ([box[0], start, box[2], end] as const);
    const key = pieces.length === 1 ? panel.key : `${panel.key}#${index + 1}`;
    return rectangle(key, "outline", corners, { label: panel.name, ...ofPart(panel) });
  });
}

const axes = ["x", "y", "z"] as const;

/** mm that two parts have in common along an axis. */
function reach(one: Part, other: Part, axis: keyof Point): number {
  return (
    Math.min(one.place[axis] + one.size[axis], other.place[axis] + other.size[axis]) -
    Math.max(one.place[axis], other.place[axis])
  );
}
