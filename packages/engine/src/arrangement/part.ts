import type { PartKind, SectionPart } from "#section/part";
import type { MaterialName } from "#standard/material";

/** Millimetres along the airflow, from the right wall to the left, and up; floor and entry plane of the clear cabinet at 0. */
export interface Point {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** A part of the machine: a leaf with its own mass, or an assembly with the sum of its children. */
export interface Part {
  /** Path from the unit down, stable over edits: `cooling coil/coil 1/core/fins`. */
  readonly key: string;
  readonly name: string;
  readonly kind: PartKind;
  /** Name of the section it belongs to; undefined for what belongs to the whole unit. */
  readonly section: string | undefined;
  readonly material: MaterialName | undefined;
  /** Corner nearest the origin, and size, of the box around it. */
  readonly place: Point;
  readonly size: Point;
  /** What fills the box; a plain box where undefined. */
  readonly form: SectionPart["form"];
  /** kg, dry, of all of it. */
  readonly mass: number;
  /** kg that it carries when the unit runs: water, dust. */
  readonly carried: number;
  readonly massSource: string;
  /** Water stands on it or runs over it. */
  readonly wet: boolean;
  /** It lies in the same space as its neighbours: fins on tubes, a wheel in its housing. */
  readonly shares: boolean;
  /** It is drawn out through the service side as a whole. */
  readonly pulled: boolean;
  readonly count: number;
  readonly pieces: SectionPart["pieces"];
  readonly sheets: NonNullable<SectionPart["sheets"]>;
  readonly filling: SectionPart["filling"];
  readonly bought: string | undefined;
  /** Bought things on it, one of each. */
  readonly fittings: readonly string[];
  /** Cents, where its price was entered with it. */
  readonly price: number | undefined;
  readonly children: readonly Part[];
}

const none: readonly never[] = [];
const axes = ["x", "y", "z"] as const;

/** A part of a section moved to its place in the unit. */
export function placedPart(part: SectionPart, parentKey: string, section: string | undefined, shift: Point): Part {
  const key = `${parentKey}/${part.key}`;
  const { box } = part;
  let [mass, carried, isWet] = [part.mass, part.carried ?? 0, part.wet === true];
  let children: Part[] | undefined;
  if (part.children !== undefined) {
    children = part.children.map((child) => placedPart(child, key, section, shift));
    for (const child of children) {
      mass += child.mass;
      carried += child.carried;
      isWet ||= child.wet;
    }
  }
  return {
    key,
    name: part.name,
    kind: part.kind,
    section,
    material: part.material,
    place: { x: box.x + shift.x, y: box.y + shift.y, z: box.z + shift.z },
    size: { x: box.length, y: box.width, z: box.height },
    form: part.form,
    mass,
    carried,
    massSource: part.massSource,
    wet: isWet,
    shares: part.shares === true,
    pulled: part.pulled === true,
    count: part.count ?? 1,
    pieces: part.pieces,
    sheets: part.sheets ?? none,
    filling: part.filling,
    bought: part.bought,
    fittings: part.fittings ?? none,
    price: part.price,
    children: children ?? none,
  };
}

/** Parts that belong together: box around them, sum of their masses. */
export function partGroup(key: string, name: string, section: string | undefined, children: readonly Part[]): Part {
  const far = Number.POSITIVE_INFINITY;
  const [low, high] = [
    { x: far, y: far, z: far },
    { x: -far, y: -far, z: -far },
  ];
  let [mass, carried, wet] = [0, 0, false];
  for (const child of children) {
    const { place, size } = child;
    for (const axis of axes) {
      low[axis] = Math.min(low[axis], place[axis]);
      high[axis] = Math.max(high[axis], place[axis] + size[axis]);
    }
    mass += child.mass;
    carried += child.carried;
    wet ||= child.wet;
  }
  const isEmpty = children.length === 0;
  return {
    key,
    name,
    kind: "assembly",
    section,
    material: undefined,
    place: isEmpty ? { x: 0, y: 0, z: 0 } : low,
    size: isEmpty ? { x: 0, y: 0, z: 0 } : { x: high.x - low.x, y: high.y - low.y, z: high.z - low.z },
    form: undefined,
    mass,
    carried,
    massSource: "definition sum of its parts",
    wet,
    shares: false,
    pulled: false,
    count: 1,
    pieces: undefined,
    sheets: none,
    filling: undefined,
    bought: undefined,
    fittings: none,
    price: undefined,
    children,
  };
}

/** The sum of a figure over things. */
export function sumOf<Thing>(things: readonly Thing[], figure: (thing: Thing) => number): number {
  let sum = 0;
  for (const thing of things) sum += figure(thing);
  return sum;
}

/** Calls `visit` for every part that has no children. */
export function visitLeaves(part: Part, visit: (leaf: Part) => void): void {
  if (part.children.length === 0) visit(part);
  else for (const child of part.children) visitLeaves(child, visit);
}

/** Calls `visit` for a part and everything below it. */
export function visitParts(part: Part, visit: (part: Part) => void): void {
  visit(part);
  for (const child of part.children) visitParts(child, visit);
}
