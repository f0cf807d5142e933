import { type Part, visitLeaves } from "./part.ts";
import type { PlacedSection } from "./section-place.ts";

/** A stretch of the airway whose floor is wetted by a section: from its first wet part to the end of its pan. */
export interface WetZone {
  readonly section: string;
  /** mm along the airflow. */
  readonly from: number;
  readonly to: number;
}

/** The stretches in which water stands or runs, section by section; hoods outside the cabinet are left out. */
export function wetZonesOf(placed: readonly PlacedSection[]): readonly WetZone[] {
  return placed.flatMap(({ section, part }) => {
    if (section.layout.outside > 0 || !part.wet) return [];
    let [from, to] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    visitLeaves(part, (leaf) => {
      if (!leaf.wet) return;
      from = Math.min(from, leaf.place.x);
      to = Math.max(to, leaf.place.x + leaf.size.x);
    });
    return [{ section: section.name, from, to }];
  });
}

/** True where a part stands in a wet stretch. */
export function standsWet(part: Pick<Part, "place" | "size">, zones: readonly WetZone[]): boolean {
  return zones.some(({ from, to }) => part.place.x < to - 1 && part.place.x + part.size.x > from + 1);
}
