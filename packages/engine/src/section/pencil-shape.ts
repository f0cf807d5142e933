import type { Ink } from "./display.ts";
import type { Pencil } from "./pencil.ts";

/** Half thickness of a symmetric airfoil over its chord, at stations along the chord. */
const chordStations = [0, 0.04, 0.12, 0.28, 0.5, 0.75, 1];
const halfThickness = chordStations.map(
  (x) => 0.6 * (0.2969 * Math.sqrt(x) - 0.126 * x - 0.3516 * x ** 2 + 0.2843 * x ** 3 - 0.1036 * x ** 4),
);

/** An airfoil blade about its axle at (x, y); `turn` in degrees anticlockwise from pointing along +x. */
export function drawAirfoilBlade(
  pencil: Pencil,
  part: string,
  x: number,
  y: number,
  chord: number,
  turn: number,
  ink: Ink = "outline",
): void {
  const upper = chordStations.map((s, i) => [s - 0.5, halfThickness[i]!] as const);
  const lower = chordStations.map((s, i) => [s - 0.5, -halfThickness[i]!] as const).reverse();
  const points = [...upper, ...lower.slice(1, -1)].flatMap(([u, v]) => turned(x, y, u * chord, v * chord, turn));
  pencil.line(part, ink, points, { closed: true, fill: "paper" });
  pencil.circle(part, "fine", x, y, Math.max(3, chord * 0.03), { fill: "paper" });
}

/** The point (u, v) turned about (x, y) by `turn` degrees. */
export function turned(x: number, y: number, u: number, v: number, turn: number): [number, number] {
  const angle = (turn * Math.PI) / 180;
  return [x + u * Math.cos(angle) - v * Math.sin(angle), y + u * Math.sin(angle) + v * Math.cos(angle)];
}

/** An arrow from (x1, y1) to (x2, y2). */
export function drawArrow(
  pencil: Pencil,
  part: string,
  ink: Ink,
  x1: number,
  y1: number,
  x2: number,
  y2: number,
  headLength: number,
): void {
  const angle = (Math.atan2(y2 - y1, x2 - x1) * 180) / Math.PI;
  pencil.line(part, ink, [x1, y1, x2, y2]);
  const left = turned(x2, y2, -headLength, 0.45 * headLength, angle);
  const right = turned(x2, y2, -headLength, -0.45 * headLength, angle);
  pencil.line(part, ink, [...left, x2, y2, ...right]);
}

/** A door seen from outside: leaf, hinges on one edge, handle on the other, window. All in millimetres. */
export interface DoorDrawing {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly hinges: "upstream" | "downstream";
  readonly window: boolean;
  readonly label: string;
}

/** Draws a walk-in door. */
export function drawDoor(pencil: Pencil, door: DoorDrawing): void {
  const { x, y, width, height } = door;
  const rounded = roundedBox(x, y, width, height, Math.min(20, width / 10));
  pencil.line("door", "outline", rounded, { closed: true, label: door.label });
  const rim = Math.min(25, width / 12);
  pencil.line("door", "hairline", roundedBox(x + rim, y + rim, width - 2 * rim, height - 2 * rim, rim / 2), {
    closed: true,
  });
  const hingeX = door.hinges === "upstream" ? x - 14 : x + width - 8;
  for (const share of [0.12, 0.5, 0.88])
    pencil.box("hinges", "outline", hingeX, y + share * height - 30, 22, 60, { fill: "outline" });
  const handleX = door.hinges === "upstream" ? x + 0.86 * width : x + 0.14 * width;
  const inward = door.hinges === "upstream" ? -1 : 1;
  for (const share of [0.36, 0.64]) {
    const handleY = y + share * height;
    pencil.circle("handle", "outline", handleX, handleY, 11, { fill: "paper" });
    pencil.line("handle", "outline", [handleX, handleY, handleX + inward * 70, handleY + 35]);
  }
  if (!door.window) return;
  const side = Math.min(0.5 * width, 250);
  const windowY = y + Math.min(0.8 * height, height - side - rim * 2);
  const glass = roundedBox(x + (width - side) / 2, windowY - side * 0.1, side, side, 18);
  pencil.line("window", "outline", glass, { closed: true, fill: "paper" });
  pencil.line("window", "hairline", [
    x + width / 2 - side * 0.25,
    windowY + side * 0.15,
    x + width / 2 + side * 0.15,
    windowY + side * 0.6,
  ]);
}

/** A hatch: a small panel held by compression latches. */
export function drawHatch(pencil: Pencil, x: number, y: number, width: number, height: number, label: string): void {
  pencil.line("hatch", "outline", roundedBox(x, y, width, height, Math.min(15, width / 8)), { closed: true, label });
  const inset = Math.min(30, width / 5);
  for (const [u, v] of [
    [inset, inset],
    [width - inset, inset],
    [inset, height - inset],
    [width - inset, height - inset],
  ] as const) {
    pencil.circle("latch", "fine", x + u, y + v, Math.min(9, width / 14));
    pencil.line("latch", "fine", [x + u - Math.min(9, width / 14), y + v, x + u + Math.min(9, width / 14), y + v]);
  }
  pencil.line("hatch", "fine", [x + width / 2, y + height * 0.44, x + width / 2, y + height * 0.56]);
}

/** Corners cut by short lines, so that a box looks made. */
function roundedBox(x: number, y: number, width: number, height: number, radius: number): number[] {
  const points: number[] = [];
  const corners = [
    [x + width - radius, y + radius, -90],
    [x + width - radius, y + height - radius, 0],
    [x + radius, y + height - radius, 90],
    [x + radius, y + radius, 180],
  ] as const;
  for (const [cx, cy, start] of corners) {
    for (const step of [0, 30, 60, 90]) points.push(...turned(cx, cy, radius, 0, start + step));
  }
  return points;
}
