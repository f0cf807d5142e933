import type { CasingLeakage } from "@oncethrough/engine/arrangement/casing-leakage";
import { type LugLoad, liftingCaution, type Piece } from "@oncethrough/engine/arrangement/lifting";
import type { MassPoint } from "@oncethrough/engine/arrangement/mass";
import type { ArrangementNotice } from "@oncethrough/engine/arrangement/notice";
import type { PanelLoad } from "@oncethrough/engine/arrangement/panel-load";
import { type Part, type Point, visitParts } from "@oncethrough/engine/arrangement/part";
import type { RailLoad } from "@oncethrough/engine/arrangement/rail-load";
import { workingSpaceCaution } from "@oncethrough/engine/arrangement/service-space";
import type { FanSprings } from "@oncethrough/engine/arrangement/spring-load";
import type { FaceAgainstDew, Transmission } from "@oncethrough/engine/arrangement/transmission";
import type { SectionTrap } from "@oncethrough/engine/arrangement/trap";
import { type SectionMass, weighUnit } from "@oncethrough/engine/arrangement/weigh";
import type { Job } from "@oncethrough/engine/job/job";
import { type ServiceOutput, serviceOutput } from "./service-output.ts";

/** What `oncethrough weigh --json` prints; the tables for people are printed from the same figures. All in SI, places in m. */
export interface WeighOutput {
  readonly format: "oncethrough weight 1";
  readonly tag: string;
  /** m, outside, hood, rail and roof included. */
  readonly size: Point;
  readonly sections: readonly SectionMass[];
  readonly rest: readonly { readonly name: string; readonly mass: number }[];
  readonly dry: MassPoint;
  readonly operating: MassPoint;
  readonly loose: number;
  readonly pieces: readonly PieceOutput[];
  readonly corners: readonly LugLoad[];
  readonly rail?: RailLoad;
  readonly traps: readonly SectionTrap[];
  readonly panels: readonly PanelLoad[];
  readonly shutOff: { readonly pressure: number; readonly condition: string };
  readonly springs: readonly FanSprings[];
  readonly transmission: Omit<Transmission, "faces"> & { readonly faces: readonly FaceOutput[] };
  readonly leakage: CasingLeakage;
  readonly service: ServiceOutput;
  readonly notices: readonly ArrangementNotice[];
  readonly unsolved: readonly string[];
  readonly cautions: { readonly lifting: string; readonly electrical: string };
  readonly parts?: readonly PartOutput[];
}

/** A face against the dew point; what is allowed is left out where the other side is not colder. */
type FaceOutput = Omit<FaceAgainstDew, "allowed"> & { readonly allowed?: number };

/** A piece for shipping, m and kg. */
export interface PieceOutput extends Omit<Piece, "dry" | "from" | "to"> {
  readonly from: number;
  readonly to: number;
  readonly mass: number;
  readonly centre: Point;
}

/** A part of the tree, m and kg. */
export interface PartOutput {
  readonly key: string;
  readonly name: string;
  readonly kind: string;
  readonly section?: string;
  readonly material?: string;
  readonly place: Point;
  readonly size: Point;
  readonly mass: number;
  readonly carried: number;
  readonly source: string;
  readonly wet: boolean;
  readonly count: number;
}

/** Arranges and weighs the unit of a job. */
export function weightOf(job: Job, withParts: boolean): WeighOutput {
  const weighing = weighUnit(job.unit, job.duty, job.conditions);
  const { arrangement, running, transmission, rail } = weighing;
  return {
    format: "oncethrough weight 1",
    tag: job.tag,
    size: metres(arrangement.size),
    sections: weighing.sections,
    rest: weighing.rest,
    dry: massPoint(weighing.dry),
    operating: massPoint(weighing.operating),
    loose: weighing.loose,
    pieces: weighing.pieces.map(pieceOutput),
    corners: weighing.corners.map(loadOutput),
    ...(rail === undefined ? {} : { rail }),
    traps: weighing.traps,
    panels: weighing.panels,
    shutOff: running.shutOff,
    springs: weighing.springs.map(springsOutput),
    transmission: { ...transmission, faces: transmission.faces.map(faceOutput) },
    leakage: weighing.leakage,
    service: serviceOutput(job.unit, arrangement),
    notices: arrangement.notices.map(noticeOutput),
    unsolved: running.unsolved,
    cautions: { lifting: liftingCaution, electrical: workingSpaceCaution },
    ...(withParts ? { parts: partsOutput(arrangement.whole) } : {}),
  };
}

function metres({ x, y, z }: Point): Point {
  return { x: x / 1000, y: y / 1000, z: z / 1000 };
}

function massPoint({ mass, centre }: MassPoint): MassPoint {
  return { mass, centre: metres(centre) };
}

function loadOutput({ x, y, mass }: LugLoad): LugLoad {
  return { x: x / 1000, y: y / 1000, mass };
}

function springsOutput(springs: FanSprings): FanSprings {
  return { ...springs, points: springs.points.map((point) => ({ ...point, x: point.x / 1000, y: point.y / 1000 })) };
}

function noticeOutput({ at, ...rest }: ArrangementNotice): ArrangementNotice {
  return { ...rest, at: at === undefined ? undefined : at / 1000 };
}

function faceOutput({ allowed, ...face }: FaceAgainstDew): FaceOutput {
  return Number.isFinite(allowed) ? { ...face, allowed } : face;
}

function pieceOutput({ dry, from, to, size, lugs, ...rest }: Piece): PieceOutput {
  return {
    ...rest,
    from: from / 1000,
    to: to / 1000,
    size: metres(size),
    lugs: lugs.map(loadOutput),
    mass: dry.mass,
    centre: metres(dry.centre),
  };
}

function partsOutput(whole: Part): readonly PartOutput[] {
  const parts: PartOutput[] = [];
  visitParts(whole, (part) => {
    parts.push({
      key: part.key,
      name: part.name,
      kind: part.kind,
      ...(part.section === undefined ? {} : { section: part.section }),
      ...(part.material === undefined ? {} : { material: part.material }),
      place: metres(part.place),
      size: metres(part.size),
      mass: part.mass,
      carried: part.carried,
      source: part.massSource,
      wet: part.wet,
      count: part.count,
    });
  });
  return parts;
}
