import { channelSection, spanDeflection, spanMoment } from "#component/base-rail";
import { materials } from "#standard/material";
import type { Unit } from "#unit/unit";
import type { Arrangement } from "./arrange.ts";
import type { Piece } from "./lifting.ts";
import { type MassPoint, massIn } from "./mass.ts";
import { visitLeaves } from "./part.ts";
import { supportPlaces } from "./support-places.ts";

const gravity = 9.806_65;
/** Pa: two thirds of the yield of common structural steel, 250 MPa; from memory. */
const allowedStress = 165e6;

/** Bending of the base rails. */
export interface RailLoad {
  /** m between supports. */
  readonly span: number;
  /** N/m on the more loaded rail in the heaviest section. */
  readonly load: number;
  readonly section: string;
  /** Pa, m: standing on its supports, running. */
  readonly stress: number;
  readonly deflection: number;
  /** Pa: lifted, in the piece that bends it most; its name. */
  readonly liftedStress: number;
  readonly liftedPiece: string;
  /** Pa that the steel takes. */
  readonly allowed: number;
}

/** Bending of the rails between supports when the unit runs, and of each piece on its lugs; undefined without a rail. */
export function railLoad(
  unit: Unit,
  arrangement: Arrangement,
  pieces: readonly Piece[],
  operating: MassPoint,
): RailLoad | undefined {
  const { railHeight, railThickness, railFlange } = unit.casing;
  if (railHeight < 0.03) return undefined;
  const rail = channelSection(railHeight, railFlange, Math.min(railThickness, railHeight / 3));
  const [first = 0, second = first] = supportPlaces(unit);
  const span = (second - first) / 1000;
  const share = heavierShare(unit, operating);
  const lengths = loadsAlong(unit, arrangement);
  const heaviest = lengths.reduce((best, each) => (each.load > best.load ? each : best), lengths[0]!);
  const load = share * heaviest.load;
  const lifted = pieces.map((piece) => ({
    name: piece.name,
    moment: liftedMoment(piece, lengths, heavierShare(unit, piece.dry)),
  }));
  const worst = lifted.reduce((best, each) => (each.moment > best.moment ? each : best), lifted[0]!);
  return {
    span,
    load,
    section: heaviest.section,
    stress: spanMoment(load, span) / rail.modulus,
    deflection: spanDeflection(load, span, materials.steel.stiffness, rail.secondMoment),
    liftedStress: worst.moment / rail.modulus,
    liftedPiece: worst.name,
    allowed: allowedStress,
  };
}

/** Share of the mass on the rail that carries more. */
function heavierShare(unit: Unit, { centre }: MassPoint): number {
  const across = 1000 * (unit.frame.width + 2 * unit.casing.panelThickness);
  return 0.5 + Math.abs(centre.y - 500 * unit.frame.width) / across;
}

/** N/m of all that stands in a stretch of the unit. */
interface LoadAlong {
  readonly section: string;
  readonly from: number;
  readonly to: number;
  readonly load: number;
}

/** Load of each section with its share of base, frame and roof, spread over its length; a stretch counts at least half a metre. */
function loadsAlong(unit: Unit, arrangement: Arrangement): readonly LoadAlong[] {
  const masses = new Map<string, number>();
  let rest = 0;
  visitLeaves(arrangement.whole, (leaf) => {
    const mass = massIn(leaf, "operating");
    if (leaf.section === undefined) rest += mass;
    else masses.set(leaf.section, (masses.get(leaf.section) ?? 0) + mass);
  });
  const perMetre = rest / (unit.length + 2 * unit.casing.panelThickness);
  return unit.sections
    .filter(({ layout }) => layout.length > 0)
    .map(({ name, start, layout }) => ({
      section: name,
      from: start,
      to: start + layout.length,
      load: gravity * ((masses.get(name) ?? 0) / Math.max(layout.length, 0.5) + perMetre),
    }));
}

/** N·m in the more loaded rail of a piece on its lugs: by statics on two, between neighbours on more. */
function liftedMoment(piece: Piece, loads: readonly LoadAlong[], share: number): number {
  const lugs = [...new Set(piece.lugs.map((lug) => lug.x / 1000))].sort((a, b) => a - b);
  const own = loads.filter(({ section }) => piece.sections.includes(section));
  const [first, second] = lugs;
  if (first === undefined || second === undefined) return 0;
  if (lugs.length > 2) {
    const heaviest = Math.max(0, ...own.map((each) => each.load));
    return spanMoment(share * heaviest, second - first);
  }
  const total = own.reduce((sum, each) => sum + each.load * (each.to - each.from), 0);
  const about = own.reduce((sum, each) => sum + (each.load * (each.to - each.from) * (each.from + each.to)) / 2, 0);
  const right = (about - total * first) / (second - first);
  const left = total - right;
  let most = 0;
  const steps = 60;
  const [start, end] = [piece.from / 1000, piece.to / 1000];
  for (let step = 0; step <= steps; step++) {
    const x = start + ((end - start) * step) / steps;
    let moment = -(x > first ? left * (x - first) : 0) - (x > second ? right * (x - second) : 0);
    for (const each of own) {
      const covered = Math.min(x, each.to) - each.from;
      if (covered > 0) moment += each.load * covered * (x - each.from - covered / 2);
    }
    most = Math.max(most, Math.abs(moment));
  }
  return share * most;
}
