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
  const steps = leaf.key.split("/");
  return steps.length > 2 ? steps.slice(0, 2).join("/") : `${steps[0]}/${leaf.name}`;
}

function setsOf({ owner, item, leaves }: Gathered): readonly BoughtSet[] {
  const names = new Set(leaves.map(({ name }) => name));
  const isPriced = leaves.every(({ price }) => price !== undefined);
  const mass = leaves.reduce((sum, leaf) => sum + leaf.mass, 0);
  if (names.size > 1) return [{ owner, item, isPriced, count: 1, mass, size: sizeAround(leaves) }];
  return leaves.flatMap((leaf) => {
    const pieces = leaf.pieces ?? [{ size: sizeAround([leaf]), count: leaf.count }];
    const areas = pieces.map(({ size: [, wide, high], count }) => count * wide * high);
    const area = areas.reduce((sum, each) => sum + each, 0);
    return pieces.map(({ size, count }, at) => ({
      owner,
      item,
      isPriced,
      count,
      mass: area > 0 ? (leaf.mass * areas[at]!) / area : leaf.mass / pieces.length,
      size: size.map(Math.round) as unknown as BoughtSet["size"],
    }));
  });
}

function sizeAround(leaves: readonly Part[]): readonly [number, number, number] {
  const side = (axis: "x" | "y" | "z") =>
    Math.round(
      Math.max(...leaves.map(({ place, size }) => place[axis] + size[axis])) -
        Math.min(...leaves.map(({ place }) => place[axis])),
    );
  return [side("x"), side("y"), side("z")];
}
