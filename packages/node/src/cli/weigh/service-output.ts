import type { Arrangement } from "@oncethrough/engine/arrangement/arrange";
import {
  type FastenerCount,
  type FinishLine,
  fastenersOf,
  finishSchedule,
} from "@oncethrough/engine/arrangement/finish-schedule";
import { type Part, type Point, visitLeaves } from "@oncethrough/engine/arrangement/part";
import type { ServiceSpace } from "@oncethrough/engine/arrangement/service-space";
import type { WetZone } from "@oncethrough/engine/arrangement/wet-zone";
import type { Unit } from "@oncethrough/engine/unit/unit";

/** Room that service asks for, doors, windows, restraints, wet floor and finish; in m. */
export interface ServiceOutput {
  readonly spaces: readonly (Pick<ServiceSpace, "key" | "section" | "part" | "use" | "name" | "side" | "source"> & {
    readonly place: Point;
    readonly size: Point;
  })[];
  readonly doors: readonly DoorOutput[];
  readonly sights: readonly SightOutput[];
  /** Restraints that come off before the fans are started, counted by section. */
  readonly shippingRestraints: readonly { readonly section: string; readonly count: number }[];
  readonly wetZones: readonly WetZone[];
  readonly finish: readonly FinishLine[];
  readonly fasteners: readonly FastenerCount[];
}

interface DoorOutput {
  readonly section: string;
  readonly part: string;
  readonly opens: "outward" | "inward";
  readonly hinges: "upstream" | "downstream";
  readonly width: number;
  readonly opensTo: number;
  readonly strikes?: string;
}

interface SightOutput {
  readonly section: string;
  readonly window: string;
  readonly to: string;
  readonly clear: boolean;
  readonly blockedBy?: string;
}

/** Service of an arrangement as it is printed. */
export function serviceOutput(unit: Unit, arrangement: Arrangement): ServiceOutput {
  const { spaces, swings, sights, wetZones } = arrangement;
  return {
    spaces: spaces.map((space) => ({ ...space, place: metres(space.place), size: metres(space.size) })),
    doors: swings.map(({ section, part, opens, hinges, radius, opensTo, strikes }) => ({
      section,
      part,
      opens,
      hinges,
      width: radius / 1000,
      opensTo,
      ...(strikes === undefined ? {} : { strikes: strikes.key }),
    })),
    sights: sights.map(({ section, window, to, blockedBy }) => ({
      section,
      window,
      to,
      clear: blockedBy === undefined,
      ...(blockedBy === undefined ? {} : { blockedBy: blockedBy.key }),
    })),
    shippingRestraints: restraints(arrangement.whole),
    wetZones: wetZones.map(({ section, from, to }) => ({ section, from: from / 1000, to: to / 1000 })),
    finish: finishSchedule(unit, arrangement),
    fasteners: fastenersOf(arrangement),
  };
}

function metres({ x, y, z }: Point): Point {
  return { x: x / 1000, y: y / 1000, z: z / 1000 };
}

function restraints(whole: Part): ServiceOutput["shippingRestraints"] {
  const counts = new Map<string, number>();
  visitLeaves(whole, ({ name, section, count }) => {
    if (name === "shipping restraint" && section !== undefined) counts.set(section, (counts.get(section) ?? 0) + count);
  });
  return [...counts].map(([section, count]) => ({ section, count }));
}
