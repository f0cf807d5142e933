import { type Part, type Point, visitLeaves } from "./part.ts";

/** A mass and where it acts, mm. */
export interface MassPoint {
  /** kg. */
  readonly mass: number;
  readonly centre: Point;
}

/** Adds masses up, each spread evenly over a box. */
export class MassSum {
  mass = 0;
  private x = 0;
  private y = 0;
  private z = 0;

  /** `mass` kg in the part's box; of a long part only what lies from `from` to `to` mm along the airflow. */
  add(part: Part, mass: number, from = Number.NEGATIVE_INFINITY, to = Number.POSITIVE_INFINITY): void {
    const low = Math.max(from, part.place.x);
    const high = Math.min(to, part.place.x + part.size.x);
    if (high < low) return;
    const share = part.size.x > 0 ? (high - low) / part.size.x : 1;
    const counted = mass * share;
    this.mass += counted;
    this.x += (counted * (low + high)) / 2;
    this.y += counted * (part.place.y + part.size.y / 2);
    this.z += counted * (part.place.z + part.size.z / 2);
  }

  result(): MassPoint {
    const { mass } = this;
    const centre = mass > 0 ? { x: this.x / mass, y: this.y / mass, z: this.z / mass } : { x: 0, y: 0, z: 0 };
    return { mass, centre };
  }
}

/** Which of a part's masses counts: as it leaves the shop, or as it runs. */
export type MassState = "dry" | "operating";

/** kg of a part in a state. */
export function massIn(part: Part, state: MassState): number {
  return state === "dry" ? part.mass : part.mass + part.carried;
}

/** Mass and centre of gravity of a part with all below it. */
export function massOf(part: Part, state: MassState): MassPoint {
  const sum = new MassSum();
  visitLeaves(part, (leaf) => sum.add(leaf, massIn(leaf, state)));
  return sum.result();
}
