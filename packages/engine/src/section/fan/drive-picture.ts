import type { Pencil } from "../pencil.ts";
import type { FanDesign } from "./design.ts";

interface Point {
  readonly x: number;
  readonly y: number;
}

/** A motor seen on its shaft end: ribbed body, feet, terminal box. `floor` is where its feet stand. */
export function drawMotorEnd(pencil: Pencil, at: Point, body: number, floor: number): void {
  const radius = body / 2;
  pencil.line("motor", "outline", [
    at.x - 0.75 * radius,
    at.y - 0.7 * radius,
    at.x - 1.15 * radius,
    floor,
    at.x + 1.15 * radius,
    floor,
    at.x + 0.75 * radius,
    at.y - 0.7 * radius,
  ]);
  pencil.box("motor", "outline", at.x - 0.35 * radius, at.y + 0.95 * radius, 0.7 * radius, 0.3 * radius, {
    fill: "paper",
  });
  pencil.circle("motor", "outline", at.x, at.y, radius, { fill: "paper", label: "motor" });
  for (let rib = 0; rib < 24; rib++) {
    const angle = (2 * Math.PI * rib) / 24;
    pencil.line("motor", "hairline", [
      at.x + 0.84 * radius * Math.cos(angle),
      at.y + 0.84 * radius * Math.sin(angle),
      at.x + radius * Math.cos(angle),
      at.y + radius * Math.sin(angle),
    ]);
  }
  pencil.circle("motor", "fine", at.x, at.y, 0.84 * radius);
}

/** A motor seen from the side, shaft to the left: ribs, fan cowl, terminal box, feet down to `floor`. */
export function drawMotorSide(pencil: Pencil, x: number, y: number, length: number, body: number, floor: number): void {
  const radius = body / 2;
  pencil.line("motor", "outline", [
    x + 0.15 * length,
    y - radius,
    x + 0.12 * length,
    floor,
    x + 0.66 * length,
    floor,
    x + 0.63 * length,
    y - radius,
  ]);
  pencil.box("motor", "outline", x + 0.28 * length, y + radius, 0.24 * length, 0.3 * radius, { fill: "paper" });
  pencil.box("motor", "outline", x + 0.06 * length, y - radius, 0.7 * length, body, { fill: "paper", label: "motor" });
  pencil.box("motor", "outline", x, y - 0.6 * radius, 0.06 * length, 1.2 * radius, { fill: "paper" });
  pencil.line("motor", "outline", [
    x + 0.76 * length,
    y - 0.94 * radius,
    x + 0.94 * length,
    y - 0.94 * radius,
    x + length,
    y - 0.7 * radius,
    x + length,
    y + 0.7 * radius,
    x + 0.94 * length,
    y + 0.94 * radius,
    x + 0.76 * length,
    y + 0.94 * radius,
  ]);
  for (let rib = 1; rib < 8; rib++) {
    const height = y - radius + (body * rib) / 8;
    pencil.line("motor", "hairline", [x + 0.1 * length, height, x + 0.72 * length, height]);
  }
}

/** Two sheaves, the belts around them and the line of the guard. */
export function drawBelts(pencil: Pencil, fan: Point, fanSheave: number, motor: Point, motorSheave: number): void {
  const around = (grow: number) => tangentLoop(fan, fanSheave + grow, motor, motorSheave + grow);
  pencil.line("belt guard", "hidden", around(0.32 * fanSheave + 18), {
    closed: true,
    dash: "short",
    label: "belt guard",
  });
  pencil.circle("sheaves", "outline", fan.x, fan.y, fanSheave, { fill: "paper", label: "fan sheave" });
  pencil.circle("sheaves", "outline", motor.x, motor.y, motorSheave, { fill: "paper", label: "motor sheave" });
  for (const grow of [0, 6]) pencil.line("belts", "outline", around(grow), { closed: true });
  for (const [at, radius] of [
    [fan, fanSheave],
    [motor, motorSheave],
  ] as const) {
    pencil.circle("sheaves", "fine", at.x, at.y, 0.8 * radius);
    pencil.circle("sheaves", "outline", at.x, at.y, 0.24 * radius, { fill: "paper" });
  }
}

/** The closed loop of a belt around two circles: outer tangents and the arcs between them. */
function tangentLoop(a: Point, radiusA: number, b: Point, radiusB: number): number[] {
  const distance = Math.hypot(b.x - a.x, b.y - a.y);
  const along = Math.atan2(b.y - a.y, b.x - a.x);
  const open = Math.acos(Math.max(-1, Math.min(1, (radiusA - radiusB) / distance)));
  const points: number[] = [];
  const arc = (centre: Point, radius: number, from: number, to: number) => {
    const steps = 20;
    for (let step = 0; step <= steps; step++) {
      const angle = from + ((to - from) * step) / steps;
      points.push(centre.x + radius * Math.cos(angle), centre.y + radius * Math.sin(angle));
    }
  };
  arc(a, radiusA, along + open, along + 2 * Math.PI - open);
  arc(b, radiusB, along - open, along + open);
  return points;
}

/** Springs under a base whose underside is at `underside`, near both ends: seats and coils, down to the floor. */
export function drawSprings(
  pencil: Pencil,
  design: FanDesign,
  from: number,
  to: number,
  underside: number,
  floor = 0,
): void {
  if (design.isolation !== "springs") {
    for (const x of [from, to - 60]) pencil.box("feet", "outline", x, floor, 60, underside - floor, { fill: "paper" });
    return;
  }
  const inset = 0.12 * (to - from);
  for (const x of [from + inset, to - inset]) {
    const width = 0.3 * Math.min(underside - floor, 160);
    pencil.line("springs", "outline", [x - 1.5 * width, floor + 8, x + 1.5 * width, floor + 8]);
    pencil.line("springs", "outline", [x - 1.2 * width, underside, x + 1.2 * width, underside]);
    const turns = 6;
    const points: number[] = [];
    for (let turn = 0; turn <= 2 * turns; turn++) {
      const side = turn % 2 === 0 ? -1 : 1;
      points.push(x + side * width, floor + 8 + ((underside - floor - 8) * turn) / (2 * turns));
    }
    pencil.line("springs", "outline", points, { label: "spring" });
  }
}

/** A flexible connection between two points, folded. */
export function drawFlexible(pencil: Pencil, from: readonly [number, number], to: readonly [number, number]): void {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.hypot(dx, dy);
  const folds = Math.max(3, Math.round(length / 28));
  const points: number[] = [];
  for (let fold = 0; fold <= 2 * folds; fold++) {
    const share = fold / (2 * folds);
    const aside = fold === 0 || fold === 2 * folds ? 0 : fold % 2 === 0 ? -10 : 10;
    points.push(from[0] + share * dx - (aside * dy) / length, from[1] + share * dy + (aside * dx) / length);
  }
  pencil.line("flexible connection", "outline", points, { label: "flexible connection" });
}
