import { inBothUnits } from "#section/both-units";
import type { DoorSwing } from "./door-swing.ts";
import type { ArrangementNotice } from "./notice.ts";
import type { PlacedSection } from "./section-place.ts";
import type { ServiceSpace } from "./service-space.ts";
import type { SightLine } from "./sight-line.ts";
import type { ShippingLimits } from "./split.ts";

/** What service meets: doors that strike something, windows that show nothing, filters without a door, a coil without room. */
export function serviceNotices(
  placed: readonly PlacedSection[],
  service: {
    readonly swings: readonly DoorSwing[];
    readonly spaces: readonly ServiceSpace[];
    readonly sights: readonly SightLine[];
  },
  limits: ShippingLimits,
  width: number,
): readonly ArrangementNotice[] {
  return [
    ...service.swings.flatMap(strikeNotice),
    ...service.sights.flatMap(sightNotice),
    ...placed.flatMap((each, index) => filterNotice(placed, each, index)),
    ...pullNotices(service.spaces, limits, width),
  ];
}

function strikeNotice({ section, hinge, strikes, opens }: DoorSwing): readonly ArrangementNotice[] {
  if (strikes === undefined) return [];
  const where = strikes.section === section || strikes.section === undefined ? "" : ` of ${strikes.section}`;
  const what = `the door, which opens ${opens} against the wall pressure, strikes ${strikes.name}${where} before it is open by a right angle`;
  return [{ part: section, at: hinge.x, what, weight: "caution" }];
}

function sightNotice({ section, name, from, blockedBy }: SightLine): readonly ArrangementNotice[] {
  if (blockedBy === undefined) return [];
  const what = `from its windows the ${name} is not seen: ${blockedBy.name} stands in between`;
  return [{ part: section, at: from.x, what, weight: "information" }];
}

/** Filters are reached through a door in their own section, or in an access beside it. */
function filterNotice(
  placed: readonly PlacedSection[],
  { section, part, openings }: PlacedSection,
  index: number,
): readonly ArrangementNotice[] {
  if (!part.children.some(({ children }) => children.some(({ kind }) => kind === "filter"))) return [];
  const hasDoor = (each: PlacedSection | undefined) => each?.openings.some(({ wall }) => wall.kind === "door") === true;
  if (openings.some(({ wall }) => wall.kind === "door")) return [];
  if (hasDoor(placed[index - 1]) || hasDoor(placed[index + 1])) return [];
  const what = "no door fits beside the rack, and no neighbour has one: its filters are not reached";
  return [{ part: section.name, at: 1000 * section.start, what, weight: "caution" }];
}

/** Where the site's width does not hold the unit and what is drawn out of it. */
function pullNotices(
  spaces: readonly ServiceSpace[],
  limits: ShippingLimits,
  width: number,
): readonly ArrangementNotice[] {
  const limit = limits.width;
  const pulls = spaces.filter(({ use }) => use === "coil pull");
  if (limit === undefined || pulls.length === 0) return [];
  const longest = pulls.reduce((one, other) => (other.size.y > one.size.y ? other : one));
  if (width + longest.size.y <= 1000 * limit) return [];
  const what = `coils come out to the ${longest.side} and need ${inBothUnits(longest.size.y / 1000, "length")} there; the site takes ${inBothUnits(limit, "length")} in all: keep the rest clear of what cannot be moved`;
  return [{ part: longest.section, at: longest.place.x, what, weight: "information" }];
}
