import { slingPull, slingTension } from "#component/sling";
import { springLoads } from "#component/spring";
import type { Unit } from "#unit/unit";
import type { Arrangement } from "./arrange.ts";
import { type MassPoint, MassSum } from "./mass.ts";
import { type Point, visitLeaves } from "./part.ts";
import { lugPlaces, type Split } from "./split.ts";

const gravity = 9.806_65;
/** Wrap, skids and bracing over the mass of a piece; common practice, from memory. */
const packing = 0.02;

/** What lifting is told with, wherever it is shown. */
export const liftingCaution =
  "Figures for a rigging plan, not the plan. Use all lugs, spreader bars, slings each rated for the whole piece, and a test lift; qualified riggers, the site's engineer and local codes decide. Nobody stands under the load.";

/** A piece as it is shipped and lifted. */
export interface Piece extends Split {
  /** mm outside, along, across and up. */
  readonly size: Point;
  /** kg dry, and as shipped. */
  readonly dry: MassPoint;
  readonly shippingMass: number;
  readonly lugs: readonly LugLoad[];
  /** N in each leg when all share by the rigid piece; when two opposite ones carry it alone; pull that spreaders take. */
  readonly legTension: number;
  readonly twoLegTension: number;
  readonly spreaderForce: number;
}

/** A lug and the mass that hangs on it. */
export interface LugLoad {
  readonly x: number;
  readonly y: number;
  /** kg. */
  readonly mass: number;
}

/** The pieces with masses, centres of gravity and loads of their lugs. */
export function piecesOf(unit: Unit, arrangement: Arrangement): readonly Piece[] {
  const panel = 1000 * unit.casing.panelThickness;
  const masses = pieceMasses(unit, arrangement);
  return arrangement.splits.map((split, index) => {
    const dry = masses[index]!;
    const shippingMass = dry.mass * (1 + packing);
    const lugs = lugPlaces(unit, split);
    const hung = lugs.length < 4 ? [] : springLoads(shippingMass, dry.centre, lugs);
    const most = Math.max(0, ...hung) * gravity;
    const size = { x: split.to - split.from + 2 * panel, y: arrangement.outside.width, z: arrangement.outside.height };
    return {
      ...split,
      size,
      dry,
      shippingMass,
      lugs: lugs.map((lug, place) => ({ ...lug, mass: hung[place]! })),
      legTension: slingTension(most, unit.casing.slingAngle),
      twoLegTension: slingTension((shippingMass * gravity) / 2, unit.casing.slingAngle),
      spreaderForce: slingPull(most, unit.casing.slingAngle),
    };
  });
}

/** Dry masses of the pieces: their sections, and what of base, frame and roof lies in each; a hood is shipped loose. */
function pieceMasses(unit: Unit, { whole, splits }: Arrangement): readonly MassPoint[] {
  const pieces = splits.map(({ from, to }) => ({
    sum: new MassSum(),
    from: from <= 0 ? Number.NEGATIVE_INFINITY : from,
    to: to >= 1000 * unit.length - 1e-6 ? Number.POSITIVE_INFINITY : to,
  }));
  const isIn = new Map(splits.flatMap(({ sections }, index) => sections.map((name) => [name, pieces[index]!.sum])));
  for (const { name, layout } of unit.sections) if (layout.outside > 0) isIn.delete(name);
  visitLeaves(whole, (leaf) => {
    const own = leaf.section === undefined ? undefined : isIn.get(leaf.section);
    if (own !== undefined) own.add(leaf, leaf.mass);
    // What a hood brings of the casing stays with the cabinet; the hood itself goes loose.
    else if (leaf.section === undefined || !leaf.key.startsWith(`${leaf.section}/`)) {
      for (const { sum, from, to } of pieces) sum.add(leaf, leaf.mass, from, to);
    }
  });
  return pieces.map(({ sum }) => sum.result());
}

/** kg of what is shipped loose: hoods outside the cabinet. */
export function looseMass(arrangement: Arrangement): number {
  return arrangement.sections.reduce((sum, { section, part }) => sum + (section.layout.outside > 0 ? part.mass : 0), 0);
}

/** kg on each of the unit's four corners when it runs, x and y in mm: entry and exit, right and left. */
export function cornerLoads(unit: Unit, operating: MassPoint): readonly LugLoad[] {
  const panel = 1000 * unit.casing.panelThickness;
  const corners = [-panel, 1000 * unit.length + panel].flatMap((x) =>
    [-panel, 1000 * unit.frame.width + panel].map((y) => ({ x, y })),
  );
  return springLoads(operating.mass, operating.centre, corners).map((mass, index) => ({ ...corners[index]!, mass }));
}
