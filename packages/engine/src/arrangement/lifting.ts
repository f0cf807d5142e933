import { slingPull, slingTension } from "#component/sling";
import { springLoads } from "#component/spring";
import type { Unit } from "#unit/unit";
import type { Arrangement } from "./arrange.ts";
import { type MassPoint, type MassState, MassSum, massIn } from "./mass.ts";
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
  return arrangement.splits.map((split) => {
    const dry = pieceMass(unit, arrangement, split, "dry");
    const shippingMass = dry.mass * (1 + packing);
    const lugs = lugPlaces(unit, split);
    const masses = lugs.length < 4 ? [] : springLoads(shippingMass, dry.centre, lugs);
    const most = Math.max(0, ...masses) * gravity;
    const size = { x: split.to - split.from + 2 * panel, y: arrangement.outside.width, z: arrangement.outside.height };
    return {
      ...split,
      size,
      dry,
      shippingMass,
      lugs: lugs.map((lug, index) => ({ ...lug, mass: masses[index]! })),
      legTension: slingTension(most, unit.casing.slingAngle),
      twoLegTension: slingTension((shippingMass * gravity) / 2, unit.casing.slingAngle),
      spreaderForce: slingPull(most, unit.casing.slingAngle),
    };
  });
}

/** Mass of a piece: its sections, and what of base, frame and roof lies in it; a hood is shipped loose. */
export function pieceMass(unit: Unit, arrangement: Arrangement, split: Split, state: MassState): MassPoint {
  const sum = new MassSum();
  const isFirst = split.from <= 0;
  const isLast = split.to >= 1000 * unit.length - 1e-6;
  const from = isFirst ? Number.NEGATIVE_INFINITY : split.from;
  const to = isLast ? Number.POSITIVE_INFINITY : split.to;
  const loose = new Set(unit.sections.filter(({ layout }) => layout.outside > 0).map(({ name }) => name));
  visitLeaves(arrangement.whole, (leaf) => {
    const mass = massIn(leaf, state);
    if (leaf.section === undefined) sum.add(leaf, mass, from, to);
    else if (split.sections.includes(leaf.section) && !(state === "dry" && loose.has(leaf.section)))
      sum.add(leaf, mass);
  });
  return sum.result();
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
