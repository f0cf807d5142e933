import { type Part, visitLeaves } from "#arrangement/part";
import { ownerOf } from "./owner.ts";

/** Pieces that are bought together under one name. */
export interface BoughtSet {
  readonly owner: string;
  readonly item: string;
  /** Its price was entered with it, and no book is asked. */
  readonly isPriced: boolean;
  /** How many things to order. */
  readonly count: number;
  /** kg of all its pieces. */
  readonly mass: number;
  /** mm along the airflow, across and up: of one piece, or around all pieces of a thing that comes in several. */
  readonly size: readonly [number, number, number] | undefined;
}

interface Gathered {
  readonly owner: string;
  readonly item: string;
  readonly leaves: Part[];
}

/**
 * What is bought, as it is ordered. Pieces alike are things of their own (four springs, a dozen filters); pieces that differ, in
 * one assembly under one item, are one thing that comes in pieces (a fan of housing, wheel, cones and shaft; a damper of
 * frame, blades and linkage).
 */
export function boughtSets(whole: Part): readonly BoughtSet[] {
  const gathered = new Map<string, Gathered>();
  const fittings = new Map<string, { owner: string; item: string; count: number }>();
  visitLeaves(whole, (leaf) => {
    const owner = ownerOf(leaf);
    for (const item of leaf.fittings) {
      const key = `${owner}\n${item}`;
      const known = fittings.get(key) ?? { owner, item, count: 0 };
      known.count += 1;
      fittings.set(key, known);
    }
    if (leaf.bought === undefined) return;
    const key = `${owner}\n${assemblyOf(leaf)}\n${leaf.bought}`;
    const known = gathered.get(key) ?? { owner, item: leaf.bought, leaves: [] };
    known.leaves.push(leaf);
    gathered.set(key, known);
  });
  return [
    ...[...gathered.values()].flatMap(setsOf),
    ...[...fittings.values()].map((each) => ({ ...each, isPriced: false, mass: 0, size: undefined })),
  ];
}

/** The piece of the section that a leaf belongs to: `fan/fan 1`; a leaf right below its owner stands for its own name. */
function assemblyOf(leaf: Part): string {
  const { key } = leaf;
  const first = key.indexOf("/");
  const second = key.indexOf("/", first + 1);
  return second < 0 ? `${key.slice(0, first)}/${leaf.name}` : key.slice(0, second);
}

function setsOf({ owner, item, leaves }: Gathered): readonly BoughtSet[] {
  const isPriced = leaves.every(({ price }) => price !== undefined);
  const [first] = leaves;
  if (leaves.length > 1 && leaves.some(({ name }) => name !== first?.name)) {
    const mass = leaves.reduce((sum, leaf) => sum + leaf.mass, 0);
    return [{ owner, item, isPriced, count: 1, mass, size: sizeAround(leaves) }];
  }
  return leaves.flatMap((leaf) => piecesOf(leaf, { owner, item, isPriced }));
}

/** The pieces of a leaf: as many as its box holds, or the sizes told, which share its mass by their faces. */
function piecesOf(leaf: Part, of: Pick<BoughtSet, "owner" | "item" | "isPriced">): readonly BoughtSet[] {
  const { pieces, mass, count, size } = leaf;
  if (pieces === undefined) {
    return [{ ...of, count, mass, size: [Math.round(size.x), Math.round(size.y), Math.round(size.z)] }];
  }
  const areas = pieces.map((piece) => piece.count * piece.size[1] * piece.size[2]);
  const area = areas.reduce((sum, each) => sum + each, 0);
  return pieces.map((piece, at) => ({
    ...of,
    count: piece.count,
    mass: area > 0 ? (mass * areas[at]!) / area : mass / pieces.length,
    size: [Math.round(piece.size[0]), Math.round(piece.size[1]), Math.round(piece.size[2])],
  }));
}

function sizeAround(leaves: readonly Part[]): readonly [number, number, number] {
  const side = (axis: "x" | "y" | "z") => {
    let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (const { place, size } of leaves) {
      low = Math.min(low, place[axis]);
      high = Math.max(high, place[axis] + size[axis]);
    }
    return Math.round(high - low);
  };
  return [side("x"), side("y"), side("z")];
}
