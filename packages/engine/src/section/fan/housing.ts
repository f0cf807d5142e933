import type { FanWheel } from "#component/fan-wheel";

/**
 * Side view of a scroll housing, in wheel diameters from the shaft, blowing to the right out of its top. The scroll is
 * a logarithmic spiral (free vortex: the angle to the wheel is the same all the way) from the cut-off, clockwise below and
 * behind the wheel, to its highest point, where it runs level into the outlet.
 */
export interface ScrollShape {
  readonly cutOffRadius: number;
  /** Radians above the horizontal towards the outlet. */
  readonly cutOffAngle: number;
  /** Height of the outlet's upper edge over the shaft; the spiral's largest radius. */
  readonly top: number;
  readonly outletBottom: number;
  /** From the shaft to the outlet plane. */
  readonly reach: number;
  /** Radius grows by this power of e for each radian. */
  readonly growth: number;
}

/** Gap between wheel and cut-off that housings commonly have, and where the cut-off stands. */
const cutOffRadius = 0.57;
const cutOffAngle = Math.PI / 12;
const reach = 0.8;

/** The scroll of a housed fan: its outlet has the record's height, the cut-off leaves the record's blast area. */
export function scrollShape(wheel: FanWheel): ScrollShape {
  const top = cutOffRadius * Math.sin(cutOffAngle) + wheel.blastArea * wheel.outletHeight;
  const turn = (3 / 2) * Math.PI + cutOffAngle;
  return {
    cutOffRadius,
    cutOffAngle,
    top,
    outletBottom: top - wheel.outletHeight,
    reach,
    growth: Math.log(top / cutOffRadius) / turn,
  };
}

/** Radius of the scroll at `angle` radians anticlockwise from the direction of the outlet, π/2 being the top. */
export function scrollRadius(shape: ScrollShape, angle: number): number {
  // Clockwise from the cut-off; the top is reached last.
  const turned = shape.cutOffAngle - angle;
  return shape.cutOffRadius * Math.exp(shape.growth * turned);
}

/**
 * The outline of a scroll as it stands, pairs in wheel diameters from the shaft: the outlet's upper edge, the spiral from its
 * top round to the cut-off, the outlet's lower edge.
 */
export function scrollOutline(shape: ScrollShape, discharge: "forward" | "up" | "down", steps = 36): readonly number[] {
  const turn = turnOf(discharge);
  const first = -1.5 * Math.PI;
  const points = [shape.reach, shape.top];
  for (let step = 0; step <= steps; step++) {
    const angle = first + ((shape.cutOffAngle - first) * step) / steps;
    const radius = scrollRadius(shape, angle);
    points.push(radius * Math.cos(angle), radius * Math.sin(angle));
  }
  points.push(shape.reach, shape.outletBottom);
  return points.map((value, index) => {
    const [x, y] = index % 2 === 0 ? [value, points[index + 1]!] : [points[index - 1]!, value];
    return index % 2 === 0 ? x * Math.cos(turn) - y * Math.sin(turn) : x * Math.sin(turn) + y * Math.cos(turn);
  });
}

/** How far a housing reaches from the shaft, in wheel diameters, as it stands. */
export interface HousingReach {
  readonly before: number;
  readonly behind: number;
  readonly above: number;
  readonly below: number;
}

/** Reach of a scroll that blows forward, up or down. */
export function housingReach(shape: ScrollShape, discharge: "forward" | "up" | "down"): HousingReach {
  const bottom = scrollRadius(shape, -Math.PI / 2);
  const back = scrollRadius(shape, -Math.PI);
  if (discharge === "forward") return { before: back, behind: shape.reach, above: shape.top, below: bottom };
  if (discharge === "up") return { before: shape.top, behind: bottom, above: shape.reach, below: back };
  return { before: bottom, behind: shape.top, above: back, below: shape.reach };
}

/** Place of a belt-drive motor's shaft from the fan's, m, beside the scroll on the common base. */
export interface MotorPlace {
  readonly x: number;
  readonly y: number;
}

/**
 * The motor stands on the base as near to the scroll as a gap allows: downstream of it, or upstream where the fan blows
 * down. `below` is how far the base is under the shaft, m.
 */
export function motorPlace(
  shape: ScrollShape,
  discharge: "forward" | "up" | "down",
  diameter: number,
  below: number,
  motorDiameter: number,
): MotorPlace {
  const side = discharge === "down" ? -1 : 1;
  const y = -below + 0.6 * motorDiameter;
  for (let x = 0.2 * diameter; x < 1.5 * diameter; x += 0.01 * diameter) {
    const angle = Math.atan2(y, side * x) - turnOf(discharge);
    const radius = scrollRadius(shape, wrapped(angle, shape)) * diameter;
    if (Math.hypot(x, y) > radius + 0.62 * motorDiameter) return { x: side * x, y };
  }
  return { x: side * 1.5 * diameter, y };
}

/** Radians by which the scroll as drawn (blowing to the right) is turned. */
export function turnOf(discharge: "forward" | "up" | "down"): number {
  if (discharge === "forward") return 0;
  return discharge === "up" ? Math.PI / 2 : -Math.PI / 2;
}

/** The angle on the spiral: between the cut-off and one turn less. */
function wrapped(angle: number, shape: ScrollShape): number {
  const turn = 2 * Math.PI;
  return angle - turn * Math.ceil((angle - shape.cutOffAngle) / turn);
}
