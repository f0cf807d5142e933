import { metresPerInch } from "#quantity/inch-pound";
import type { Arrangement } from "./arrange.ts";
import type { Part } from "./part.ts";

/** mm: width from which a door lets a person in; a narrower one, and a hatch, let an arm in. */
const entered = 18 * 1000 * metresPerInch;
/** Share of the cabinet's width and height from which a thing bars the way along it; common practice. */
const barring = 0.4;

/** How far an arm has to reach to wipe all of a pan. */
export interface ArmReach {
  readonly pan: string;
  /** m from the nearest place where somebody stands or reaches in to the point farthest from any; NaN without a place. */
  readonly distance: number;
  /** The section of that place, and whether a person stands in it or reaches in from outside. */
  readonly from: string;
  readonly stands: boolean;
}

/** A box from which an arm reaches, mm: where a person stands, or a hatch in the wall. */
interface ReachedFrom {
  readonly section: string;
  readonly stands: boolean;
  readonly low: readonly [number, number, number];
  readonly high: readonly [number, number, number];
}

/** For each drained pan of a section how far its farthest point lies from where it is wiped. */
export function armReaches(arrangement: Arrangement, section: string): readonly ArmReach[] {
  const own = arrangement.sections.find((each) => each.section.name === section);
  const pans = own?.part.children.filter(({ kind, name }) => kind === "pan" && name !== "down-comer") ?? [];
  if (pans.length === 0) return [];
  const places = placesOf(arrangement);
  return pans.map((pan) => {
    let worst: ArmReach = { pan: pan.name, distance: places.length === 0 ? Number.NaN : 0, from: "", stands: false };
    for (const point of pointsOf(pan)) {
      const nearest = nearestOf(places, point);
      if (nearest !== undefined && nearest.distance > worst.distance) worst = { pan: pan.name, ...nearest };
    }
    return worst;
  });
}

/** Who comes in by a door stands anywhere along the cabinet up to what bars the way; an arm reaches in at a hatch. */
function placesOf(arrangement: Arrangement): readonly ReachedFrom[] {
  const bars = barsOf(arrangement);
  return arrangement.sections.flatMap(({ section, part }) =>
    part.children
      .filter(({ kind }) => kind === "door")
      .map(({ place, size }): ReachedFrom => {
        const low = [place.x, place.y, place.z] as const;
        const high = [place.x + size.x, place.y + size.y, place.z + size.z] as const;
        if (section.kind === "spray gap" || size.x < entered - 1)
          return { section: section.name, stands: false, low, high };
        const middle = place.x + size.x / 2;
        const from = Math.max(0, ...bars.filter((bar) => bar.to <= middle).map((bar) => bar.to));
        const to = Math.min(...bars.filter((bar) => bar.from >= middle).map((bar) => bar.from), high[0] + 10_000);
        const far = Number.POSITIVE_INFINITY;
        return { section: section.name, stands: true, low: [from, -far, -far], high: [to, far, far] };
      }),
  );
}

/** Stretches of the cabinet that are barred: coils, racks, dampers, baffles, walls across. */
function barsOf({ sections, whole }: Arrangement): readonly { readonly from: number; readonly to: number }[] {
  const width = barring * whole.size.y;
  const height = barring * whole.size.z;
  return sections
    .flatMap(({ part }) => part.children)
    .filter(({ kind, size }) => kind !== "pan" && kind !== "door" && size.y > width && size.z > height)
    .map(({ place, size }) => ({ from: place.x, to: place.x + size.x }));
}

/** Points of a pan's floor in even steps, its edges included. */
function pointsOf({ place, size }: Part): readonly (readonly [number, number, number])[] {
  const steps = 8;
  return Array.from({ length: (steps + 1) ** 2 }, (_, index) => {
    const [step, row] = [index % (steps + 1), Math.floor(index / (steps + 1))];
    return [place.x + (size.x * step) / steps, place.y + (size.y * row) / steps, place.z] as const;
  });
}

function nearestOf(
  places: readonly ReachedFrom[],
  [x, y, z]: readonly [number, number, number],
): Omit<ArmReach, "pan"> | undefined {
  let nearest: Omit<ArmReach, "pan"> | undefined;
  for (const { section, stands, low, high } of places) {
    const beyond = (axis: 0 | 1 | 2, at: number) => Math.max(low[axis] - at, 0, at - high[axis]);
    const distance = Math.hypot(beyond(0, x), beyond(1, y), beyond(2, z)) / 1000;
    if (nearest === undefined || distance < nearest.distance) nearest = { distance, from: section, stands };
  }
  return nearest;
}
