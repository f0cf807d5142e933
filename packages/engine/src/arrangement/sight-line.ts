import type { Part, Point } from "./part.ts";
import type { PlacedSection } from "./section-place.ts";

/** From a window to what should be seen through it while it runs. */
export interface SightLine {
  readonly section: string;
  /** Key of the window. */
  readonly window: string;
  /** Key of what is looked at. */
  readonly to: string;
  readonly name: string;
  readonly from: Point;
  readonly at: Point;
  /** What stands in between. */
  readonly blockedBy: Part | undefined;
}

/** From every window of a fan's section to the wheels, through their inlets, and to the belts. */
export function sightLines(placed: readonly PlacedSection[]): readonly SightLine[] {
  return placed.flatMap(({ section, part }) => {
    const windows = part.children.filter(({ kind }) => kind === "window");
    const fans = part.children.filter(isFan);
    if (windows.length === 0 || fans.length === 0) return [];
    return fans.flatMap((fan) =>
      targetsOf(fan, windows[0]!).map((target) => {
        const lines = windows.map((window) => lineTo(section.name, part, fan, window, target));
        return lines.find(({ blockedBy }) => blockedBy === undefined) ?? lines[0]!;
      }),
    );
  });
}

function isFan(part: Part): boolean {
  return part.children.some(({ key }) => key.endsWith("/sprung") || key.endsWith("/fixed"));
}

/** What is looked at: the inlet cones, through which the wheel is seen, or the dampers before them, and the belt guard. */
function targetsOf(fan: Part, window: Part): readonly Part[] {
  const found: Part[] = [];
  const visit = (part: Part): void => {
    if (part.kind === "guard" || part.name === "inlet cone" || part.name === damperBefore) found.push(part);
    part.children.forEach(visit);
  };
  visit(fan);
  // Of the two cones of a double-inlet fan the nearer one shows the wheel.
  const away = (part: Part) => Math.abs(middle(part).y - middle(window).y);
  const cones = found.filter(({ kind }) => kind === "housing").sort((one, other) => away(one) - away(other));
  // A damper hides the wheel behind it: that its blades hang as they should is what can be seen.
  const inlet = found.find(({ name }) => name === damperBefore) ?? cones[0];
  return [...(inlet === undefined ? [] : [inlet]), ...found.filter(({ kind }) => kind === "guard")];
}

const damperBefore = "damper frame";

const middle = ({ place, size }: Part): Point => ({
  x: place.x + size.x / 2,
  y: place.y + size.y / 2,
  z: place.z + size.z / 2,
});

/** The middle of a part; of a cone on the airflow's axis and of a damper, the middle of its mouth. */
function facing(target: Part): Point {
  const at = middle(target);
  const isMouth = target.name === damperBefore || (target.form?.shape === "cylinder" && target.form.axis === "x");
  return isMouth ? { ...at, x: target.place.x - 10 } : at;
}

function lineTo(section: string, part: Part, fan: Part, window: Part, target: Part): SightLine {
  const from = middle(window);
  const at = facing(target);
  let blockedBy: Part | undefined;
  const visit = (each: Part): void => {
    if (each === fan || blockedBy !== undefined) return;
    if (each.children.length > 0) each.children.forEach(visit);
    else if (!passes.has(each.kind) && crosses(from, at, each)) blockedBy = each;
  };
  part.children.forEach(visit);
  return { section, window: window.key, to: target.key, name: target.name, from, at, blockedBy };
}

/** What a person sees past or through, and the wall itself. */
const passes = new Set<Part["kind"]>(["window", "door", "collar", "pipe", "light"]);

const axes = ["x", "y", "z"] as const;

/** True where the straight way between two points goes through a part's box. */
function crosses(from: Point, to: Point, { place, size }: Part): boolean {
  let enter = 0;
  let leave = 1;
  for (const axis of axes) {
    const way = to[axis] - from[axis];
    const low = place[axis] - from[axis];
    const high = low + size[axis];
    if (Math.abs(way) < 1e-9) {
      if (low > 0 || high < 0) return false;
      continue;
    }
    enter = Math.max(enter, Math.min(low / way, high / way));
    leave = Math.min(leave, Math.max(low / way, high / way));
  }
  return enter < leave;
}
