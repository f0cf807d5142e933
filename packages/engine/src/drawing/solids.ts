import type { Arrangement } from "#arrangement/arrange";
import type { Part, Point } from "#arrangement/part";
import type { PartKind } from "#section/part";
import type { MaterialName } from "#standard/material";

/** What a viewer may hide by itself: walls, roof, base and frame; what stands inside; the room that service asks for. */
export type SolidLayer = "casing" | "insides" | "service space";

interface SolidBase {
  /** Stable over edits; a part of several solids counts them after `#`. */
  readonly key: string;
  /** Key of the part in the tree; several solids may belong to one. */
  readonly part: string;
  /** Name of the section; undefined for what belongs to the whole unit. */
  readonly section: string | undefined;
  /** Spoken and shown. */
  readonly name: string;
  readonly kind: PartKind | "service space";
  readonly material: MaterialName | undefined;
  readonly wet: boolean;
  readonly layer: SolidLayer;
}

/** A box: its corner nearest the origin, and its sides. */
export interface BoxSolid extends SolidBase {
  readonly shape: "box";
  readonly place: Point;
  readonly size: Point;
}

/** A round piece along an axis, about the middle of its length. */
export interface CylinderSolid extends SolidBase {
  readonly shape: "cylinder";
  readonly axis: "x" | "y" | "z";
  readonly centre: Point;
  readonly radius: number;
  readonly length: number;
}

/** An outline drawn out along an axis, from `from` to `to`; its pairs are the two other axes in the order x, y, z. */
export interface PrismSolid extends SolidBase {
  readonly shape: "prism";
  readonly axis: "x" | "y" | "z";
  readonly outline: readonly number[];
  readonly from: number;
  readonly to: number;
}

/**
 * One piece of the machine in millimetres: x along the airflow from the entry of the clear cabinet, y from its right wall to
 * the left, z up from its floor.
 */
export type Solid = BoxSolid | CylinderSolid | PrismSolid;

const outerKinds = new Set<PartKind>(["door", "window", "pipe"]);
const casingGroups = new Set(["base", "casing", "frame", "roof", "lugs"]);

/** The part tree as solids; walls are cut where doors, hatches and openings stand in them. */
export function solidsOf(arrangement: Arrangement): readonly Solid[] {
  const holes = arrangement.sections.flatMap(({ part }) =>
    part.children.filter(({ kind }) => kind === "door" || kind === "collar"),
  );
  const windows = arrangement.sections.flatMap(({ part }) => part.children.filter(({ kind }) => kind === "window"));
  const solids: Solid[] = [];
  for (const group of arrangement.whole.children) {
    const isCasing = casingGroups.has(group.key);
    visitSolidLeaves(group, (leaf) => {
      const layer = isCasing || outerKinds.has(leaf.kind) ? "casing" : "insides";
      const base: SolidBase = {
        key: leaf.key,
        part: leaf.key,
        section: leaf.section,
        name: leaf.name,
        kind: leaf.kind,
        material: leaf.material,
        wet: leaf.wet,
        layer,
      };
      const cut = leaf.kind === "panel" ? holes : leaf.kind === "door" ? windows : undefined;
      solids.push(...(cut === undefined ? partSolids(leaf, base) : panelSolids(leaf, base, cut)));
    });
  }
  return solids;
}

/** Leaves that are seen: what fills the very box of an earlier sibling is in it, as tubes are in their fins. */
function visitSolidLeaves(part: Part, visit: (leaf: Part) => void): void {
  if (part.children.length === 0) {
    if (part.kind !== "collar" && part.kind !== "fastener" && part.size.x > 0 && part.size.y > 0 && part.size.z > 0)
      visit(part);
    return;
  }
  part.children.forEach((child, index) => {
    const isInside =
      child.form === undefined &&
      child.children.length === 0 &&
      part.children.slice(0, index).some((other) => other.children.length === 0 && isSameBox(other, child));
    if (!isInside) visitSolidLeaves(child, visit);
  });
}

function isSameBox(one: Part, other: Part): boolean {
  return (["x", "y", "z"] as const).every(
    (axis) => one.place[axis] === other.place[axis] && one.size[axis] === other.size[axis],
  );
}

function partSolids(part: Part, base: SolidBase): readonly Solid[] {
  const { form, place, size } = part;
  if (form === undefined) return [{ ...base, shape: "box", place, size }];
  const { axis } = form;
  if (form.shape === "cylinder") {
    const [across, up] = otherAxes[axis];
    const centre = { x: place.x + size.x / 2, y: place.y + size.y / 2, z: place.z + size.z / 2 };
    return [
      { ...base, shape: "cylinder", axis, centre, radius: Math.min(size[across], size[up]) / 2, length: size[axis] },
    ];
  }
  const outlines = form.outlines();
  return outlines.map((shares, index) => ({
    ...base,
    key: outlines.length === 1 ? base.key : `${base.key}#${index + 1}`,
    shape: "prism",
    axis,
    outline: outlineOf(part, axis, shares),
    from: place[axis],
    to: place[axis] + size[axis],
  }));
}

const otherAxes = { x: ["y", "z"], y: ["x", "z"], z: ["x", "y"] } as const;

/** mm of an outline told in shares of the part's box. */
export function outlineOf(part: Part, axis: "x" | "y" | "z", shares: readonly number[]): readonly number[] {
  const [across, up] = otherAxes[axis];
  return shares.map((share, index) => {
    const side = index % 2 === 0 ? across : up;
    return part.place[side] + share * part.size[side];
  });
}

/** What is left of a panel beside the openings in it. */
function panelSolids(panel: Part, base: SolidBase, holes: readonly Part[]): readonly Solid[] {
  const { place, size } = panel;
  const [across, up] = otherAxes[thinnest(size)];
  const through = holes.filter((hole) =>
    (["x", "y", "z"] as const).every(
      (axis) =>
        hole.place[axis] < place[axis] + size[axis] - 0.5 && hole.place[axis] + hole.size[axis] > place[axis] + 0.5,
    ),
  );
  let pieces: Rectangle[] = [sideOf(panel, across, up)];
  for (const hole of through) pieces = pieces.flatMap((piece) => without(piece, sideOf(hole, across, up)));
  return pieces.map((piece, index) => ({
    ...base,
    key: pieces.length === 1 ? base.key : `${base.key}#${index + 1}`,
    shape: "box",
    place: { ...place, [across]: piece.left, [up]: piece.low },
    size: { ...size, [across]: piece.right - piece.left, [up]: piece.high - piece.low },
  }));
}

interface Rectangle {
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
}

function thinnest(size: Point): "x" | "y" | "z" {
  if (size.x <= size.y && size.x <= size.z) return "x";
  return size.y <= size.z ? "y" : "z";
}

function sideOf({ place, size }: Part, across: keyof Point, up: keyof Point): Rectangle {
  return { left: place[across], right: place[across] + size[across], low: place[up], high: place[up] + size[up] };
}

/** A rectangle without a hole: what is left below, above and beside it. */
function without(piece: Rectangle, hole: Rectangle): Rectangle[] {
  const left = Math.max(piece.left, hole.left);
  const right = Math.min(piece.right, hole.right);
  const low = Math.max(piece.low, hole.low);
  const high = Math.min(piece.high, hole.high);
  if (left >= right || low >= high) return [piece];
  const parts = [
    { ...piece, high: low },
    { ...piece, low: high },
    { left: piece.left, right: left, low, high },
    { left: right, right: piece.right, low, high },
  ];
  return parts.filter((each) => each.right - each.left > 0.5 && each.high - each.low > 0.5);
}
