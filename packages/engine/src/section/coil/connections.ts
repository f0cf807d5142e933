import type { Coil } from "#component/coil/coil";
import { drainFor, drainTime, type ServicePipe, ventPipe } from "#component/coil/drain-and-vent";
import type { tubeMaterials } from "#component/finned-surface/material";
import type { Liquid } from "#fluid/liquid";
import { liquidDensity } from "#fluid/liquid";
import type { MaterialName } from "#standard/material";
import { partSheets } from "#standard/part-mass";
import type { Frame } from "../contract.ts";
import { boxOf, type SectionPart, solidPart, type WallPart } from "../part.ts";
import { roundForm } from "../part-form.ts";
import { pipeThroughWall } from "../service-parts.ts";
import { type CoilBlock, casingFlange } from "./block.ts";

/** What is joined to the coils of a section. */
export interface CoilPiping {
  /** m, bore of the connections of liquid coils and of their headers; of the steam header and its connection. */
  readonly connection: number;
  /** m, bore of the condensate outlet and its header; of coils on steam. */
  readonly condensateConnection?: number;
  /** Each coil on steam has a vacuum breaker of its own. */
  readonly vacuumBreaker?: boolean;
  /** Undefined for steam. */
  readonly liquid: Liquid | undefined;
}

/** °C at which a coil's filling is weighed. */
export const fillingTemperature = 20;
/** Share of the room beside the tubes that headers have where all are on one side. */
const headerShare = 0.6;

/** Room for headers between tube sheet and wall, m from the right wall. */
interface HeaderRoom {
  readonly from: number;
  readonly width: number;
}

/** m along the tubes: where fins begin, and the room of headers at either end. */
export interface Zones {
  readonly from: number;
  /** On the side of pipes and doors, and across from it. */
  readonly service: HeaderRoom;
  readonly far: HeaderRoom;
}

/** An odd number of passes ends across from where it began. */
function hasOppositeEnds({ coil }: CoilBlock, { liquid }: Pick<CoilPiping, "liquid">): boolean {
  return liquid !== undefined && coil.passes % 2 === 1;
}

/** Where fins and headers stand across the airway. */
export function zonesOf(block: CoilBlock, frame: Frame, piping: Pick<CoilPiping, "liquid">): Zones {
  const { finnedLength } = block.coil;
  const gap = Math.max(0, frame.width - finnedLength);
  const wanted = (hasOppositeEnds(block, piping) ? 0.5 : headerShare) * gap;
  const room = Math.min(Math.max(wanted, casingFlange), gap - casingFlange);
  const from = frame.hand === "right" ? room : gap - room;
  const right = { from: 0, width: Math.max(0, from - casingFlange) };
  const leftFrom = from + finnedLength + casingFlange;
  const left = { from: leftFrom, width: Math.max(0, frame.width - leftFrom) };
  return frame.hand === "right" ? { from, service: right, far: left } : { from, service: left, far: right };
}

/** A header in its place, m. */
interface HeaderPlace {
  readonly name: "supply" | "return" | "steam" | "condensate";
  readonly bore: number;
  /** Its connection is at the foot of the coil, not at its top. */
  readonly isLow: boolean;
  readonly isFar: boolean;
  readonly x: number;
  readonly y: number;
  readonly depth: number;
  readonly width: number;
}

/**
 * Headers between tube sheet and wall, over the first and the last row: both on the service side, or the return across from
 * it where the passes end there. Where a coil is too shallow for two, they stand side by side. Water enters where the air
 * leaves, but for parallel flow; it enters at the foot, steam at the top.
 */
function headerPlaces(block: CoilBlock, zones: Zones, piping: CoilPiping): readonly HeaderPlace[] {
  const { connection, condensateConnection = connection, liquid } = piping;
  const isOpposite = hasOppositeEnds(block, piping);
  const deepest = block.casingDepth - 0.01;
  const widest = Math.max(connection, condensateConnection) + 2 * partSheets.headerWall;
  const isDeep = isOpposite || deepest >= 2 * widest;
  const near = block.start + 0.005;
  const entersLast = liquid !== undefined && block.coil.flow === "counter";
  const place = (name: HeaderPlace["name"], index: 0 | 1, bore: number): HeaderPlace => {
    const outside = bore + 2 * partSheets.headerWall;
    const isFar = isOpposite && index === 1;
    const zone = isFar ? zones.far : zones.service;
    const room = zone.width / (isDeep ? 1 : 2);
    const depth = Math.min(outside, deepest);
    const isLast = (index === 0) === entersLast;
    return {
      name,
      bore,
      isLow: (index === 0) === (liquid !== undefined),
      isFar,
      x: isLast && isDeep ? block.start + block.casingDepth - 0.005 - depth : near,
      y: zone.from + (isDeep ? 0 : index * room),
      depth,
      width: Math.min(room, outside),
    };
  };
  return liquid === undefined
    ? [place("steam", 0, connection), place("condensate", 1, condensateConnection)]
    : [place("supply", 0, connection), place("return", 1, connection)];
}

/** The headers of one coil. */
export function headersOf(block: CoilBlock, index: number, zones: Zones, piping: CoilPiping): readonly SectionPart[] {
  const { coil } = block;
  const length = coil.bank.finnedHeight;
  const z = block.base + index * block.pitch + casingFlange;
  const { liquid } = piping;
  return headerPlaces(block, zones, piping).map(({ name, bore, x, y, depth, width }) => {
    const metal = Math.PI * (bore + partSheets.headerWall) * partSheets.headerWall * (length + 0.15);
    const volume = (Math.PI / 4) * bore ** 2 * length;
    const carried = liquid === undefined ? 0 : volume * liquidDensity(liquid, fillingTemperature);
    const box = boxOf(x, y, z, depth, width, length);
    const extras = { carried, form: roundForm("z") };
    return solidPart(`${name} header`, `${name} header`, "header", tubeMetal(coil.tubeMaterial), box, metal, extras);
  });
}

/**
 * Everything that is joined to the coils through the walls: for each coil supply and return with a drain at the foot and a
 * vent at the top; steam and condensate with the tapping of the vacuum breaker.
 */
export function coilConnections(block: CoilBlock, frame: Frame, piping: CoilPiping): readonly WallPart[] {
  const places = headerPlaces(block, zonesOf(block, frame, piping), piping);
  return Array.from({ length: block.stacked }, (_, index) => index).flatMap((index) =>
    places.flatMap((place) => connectionsOf(block, frame, piping, place, index)),
  );
}

function connectionsOf(
  block: CoilBlock,
  frame: Frame,
  piping: CoilPiping,
  place: HeaderPlace,
  index: number,
): readonly WallPart[] {
  const { isLow, isFar, name, bore, x, y, depth, width } = place;
  const far = frame.hand === "right" ? "left" : "right";
  const face = isFar ? far : frame.hand;
  const foot = block.base + index * block.pitch + casingFlange;
  const top = foot + block.coil.bank.finnedHeight;
  const outside = bore + 2 * partSheets.headerWall;
  const reach = Math.max(0, face === "right" ? y : frame.width - y - width);
  const coil = block.stacked === 1 ? "" : ` of coil ${index + 1}`;
  const pipe = (what: string, diameter: number, z: number) =>
    pipeThroughWall(
      frame,
      `${what} connection ${index + 1}`,
      `${what} connection${coil}`,
      { diameter, reach },
      withinSection(block, x + depth / 2, diameter),
      z,
      face,
    );
  // Near foot and top of the headers; on a low coil no nearer to each other than they are thick.
  const apart = Math.max((top - foot) / 2 - 0.75 * outside, outside / 2);
  const middle = (foot + top) / 2 + (isLow ? -apart : apart);
  const own = pipe(name, outside, middle);
  const tapping = tappingOf(block, piping, name);
  if (tapping === undefined) return [own];
  const { size, item, what } = tapping;
  // Below the foot or above the top, and clear of the pipe of a coil that is hardly higher than that.
  const z = isLow
    ? Math.min(foot, middle - outside / 2) - 0.6 * size.outside
    : Math.max(top, middle + outside / 2) + 0.6 * size.outside;
  return [own, { ...pipe(what, size.outside, z), fittings: [`${item}, ${size.nominal}`] }];
}

/** m along the flow: a pipe thicker than its coil is deep keeps off what stands beside its section. */
function withinSection({ length }: CoilBlock, x: number, diameter: number): number {
  const half = Math.min(length, diameter) / 2;
  return Math.min(Math.max(x, half), length - half);
}

/** A small pipe out of a header, and what stands on it. */
interface Tapping {
  readonly what: "vent" | "drain" | "vacuum-breaker";
  readonly item: string;
  readonly size: ServicePipe;
}

function tappingOf(block: CoilBlock, piping: CoilPiping, header: HeaderPlace["name"]): Tapping | undefined {
  switch (header) {
    case "supply":
      return { what: "drain", item: "drain valve", size: coilDrain(block.coil, piping.connection) };
    case "return":
      return { what: "vent", item: "air vent", size: ventPipe };
    case "steam":
      return piping.vacuumBreaker === true
        ? { what: "vacuum-breaker", item: "vacuum breaker", size: ventPipe }
        : undefined;
    case "condensate":
      return undefined;
  }
}

/** m³ of liquid in one coil with both its headers. */
export function coilFilling({ tubeVolume, bank }: Coil, connection: number): number {
  return tubeVolume + (Math.PI / 2) * connection ** 2 * bank.finnedHeight;
}

/** The drain of one coil. */
export function coilDrain(coil: Coil, connection: number): ServicePipe {
  return drainFor(coilFilling(coil, connection), coil.bank.finnedHeight);
}

/** s in which one coil runs empty through its drain. */
export function coilDrainTime(coil: Coil, connection: number): number {
  return drainTime(coilFilling(coil, connection), coil.bank.finnedHeight, coilDrain(coil, connection).bore);
}

/** What a tube's metal is among the materials of parts. */
export function tubeMetal(name: keyof typeof tubeMaterials): MaterialName {
  if (name === "carbon steel") return "steel";
  return name === "stainless steel" ? "stainless steel 304" : name;
}
