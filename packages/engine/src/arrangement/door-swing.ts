import type { WallPart } from "#section/part";
import type { Unit } from "#unit/unit";
import { sectionWithRole } from "#unit/walk";
import type { Part } from "./part.ts";
import type { PlacedSection } from "./section-place.ts";

/** A door and the room that its leaf sweeps, mm. */
export interface DoorSwing {
  readonly section: string;
  /** Key of the door in the tree of parts. */
  readonly part: string;
  readonly face: "right" | "left";
  readonly opens: "outward" | "inward";
  readonly hinges: "upstream" | "downstream";
  /** Hinge, and the direction in which the leaf lies when it is shut: +1 along the airflow. */
  readonly hinge: { readonly x: number; readonly y: number };
  readonly shut: 1 | -1;
  /** Direction across the unit into which it opens: +1 to the left. */
  readonly open: 1 | -1;
  readonly radius: number;
  readonly low: number;
  readonly high: number;
  /** Degrees: 180 lies back against the wall, 90 where something stands in the way of that. */
  readonly opensTo: 90 | 180;
  /** What the leaf strikes before it is open by a right angle. */
  readonly strikes: Part | undefined;
}

/** How every door of the service side opens: against the wall pressure, on the hinges that leave most room. */
export function doorSwings(unit: Unit, placed: readonly PlacedSection[]): readonly DoorSwing[] {
  const fan = sectionWithRole(unit, "fan");
  const outer = placed.flatMap(({ part }) => part.children.filter(({ kind }) => outsideKinds.has(kind)));
  return placed.flatMap((section, index) =>
    section.openings.flatMap(({ wall }) => {
      const door = section.part.children.find(({ key }) => key === `${section.part.key}/${wall.key}`);
      if (wall.kind !== "door" || door === undefined) return [];
      if (wall.face !== "right" && wall.face !== "left") return [];
      // Before the fan air draws inwards, behind it it presses outwards.
      const opens = wall.opens ?? (fan >= 0 && index > fan ? "inward" : "outward");
      const obstacles = opens === "outward" ? outer : insideLeaves(placed, index);
      return [chosenSwing(unit, section.section.name, wall, door, opens, obstacles)];
    }),
  );
}

const outsideKinds = new Set<Part["kind"]>(["pipe", "box", "door"]);

/** What stands in a section and its neighbours, walls left out. */
function insideLeaves(placed: readonly PlacedSection[], index: number): readonly Part[] {
  const leaves: Part[] = [];
  const visit = (part: Part): void => {
    if (part.kind === "door" || part.kind === "window" || part.kind === "collar" || part.kind === "pipe") return;
    if (part.children.length === 0) leaves.push(part);
    else part.children.forEach(visit);
  };
  for (const each of placed.slice(Math.max(0, index - 1), index + 2)) each.part.children.forEach(visit);
  return leaves;
}

/** The hinges that the job names, or those on which the door opens widest. */
function chosenSwing(
  unit: Unit,
  section: string,
  wall: WallPart,
  door: Part,
  opens: "outward" | "inward",
  obstacles: readonly Part[],
): DoorSwing {
  const hinges = wall.hinges === undefined ? (["upstream", "downstream"] as const) : [wall.hinges];
  const swings = hinges.map((edge) => swingOn(unit, section, wall, door, opens, edge, obstacles));
  const merit = (swing: DoorSwing) => (swing.strikes === undefined ? swing.opensTo : 0);
  return swings.reduce((best, each) => (merit(each) > merit(best) ? each : best));
}

function swingOn(
  unit: Unit,
  section: string,
  wall: WallPart,
  door: Part,
  opens: "outward" | "inward",
  hinges: "upstream" | "downstream",
  obstacles: readonly Part[],
): DoorSwing {
  const face = wall.face === "right" ? "right" : "left";
  const panel = 1000 * unit.casing.panelThickness;
  const width = 1000 * unit.frame.width;
  const outward = face === "right" ? -1 : 1;
  const inner = face === "right" ? 0 : width;
  const shut = hinges === "upstream" ? 1 : -1;
  const swing = {
    section,
    part: door.key,
    face,
    opens,
    hinges,
    hinge: {
      x: hinges === "upstream" ? door.place.x : door.place.x + door.size.x,
      y: opens === "outward" ? inner + outward * panel : inner,
    },
    shut,
    open: opens === "outward" ? outward : outward === 1 ? -1 : 1,
    radius: door.size.x,
    low: door.place.z,
    high: door.place.z + door.size.z,
  } as const;
  const strikes = obstacles.find((part) => part.key !== door.key && sweeps(swing, part, shut));
  // Laid back against the wall a leaf may not cover the next door.
  const back = shut === 1 ? -1 : 1;
  const isFree = !obstacles.some((part) => part.key !== door.key && sweeps(swing, proud(part), back));
  return { ...swing, opensTo: strikes === undefined && isFree ? 180 : 90, strikes };
}

/** A door as thick as its handles stand out on both sides of the wall; other parts as they are. */
function proud(part: Part): Part {
  if (part.kind !== "door") return part;
  return { ...part, place: { ...part.place, y: part.place.y - 60 }, size: { ...part.size, y: part.size.y + 120 } };
}

type Sweep = Pick<DoorSwing, "hinge" | "open" | "radius" | "low" | "high">;

/** mm that parts may come nearer than the leaf's edge: its gasket gives. */
const touch = 1;

/** True where the quarter circle on the side `along` of the hinge meets a part's box. */
export function sweeps(swing: Sweep, part: Part, along: 1 | -1): boolean {
  const { hinge, radius, open, low, high } = swing;
  if (part.place.z + part.size.z <= low + touch || part.place.z >= high - touch) return false;
  const dx = wayTo(part.place.x, part.size.x, hinge.x, along);
  const dy = wayTo(part.place.y, part.size.y, hinge.y, open);
  return Math.hypot(dx, dy) < radius - touch;
}

/** mm from a hinge to the near side of a box in one direction; without end for a box that lies behind the hinge. */
function wayTo(place: number, size: number, from: number, sign: 1 | -1): number {
  const far = sign === 1 ? place + size - from : from - place;
  return far <= touch ? Number.POSITIVE_INFINITY : Math.max(0, far - size);
}
