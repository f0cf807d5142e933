import { ductEntryLosses } from "#standard/duct-entry";
import type { Frame } from "../contract.ts";
import type { DisplayItem } from "../display.ts";
import { type Pencil, pencilFor } from "../pencil.ts";
import { drawArrow } from "../pencil-shape.ts";
import type { DischargePlenumDesign } from "./design.ts";

/** mm of duct shown beyond the cabinet. */
const stub = 220;

/** The plenum from the side: the wall with its opening, edge, duct stub with flange, and the air that leaves. */
export function drawDischargePlenum(design: DischargePlenumDesign, frame: Frame, name: string): readonly DisplayItem[] {
  const pencil = pencilFor(name);
  const length = design.length * 1000;
  const height = frame.height * 1000;
  const opening = design.outletHeight * 1000;
  if (design.direction === "horizontal") {
    drawOpening(pencil, design, (along, out) => [length + out, along], height, opening);
  } else {
    const up = design.direction === "up";
    drawOpening(pencil, design, (along, out) => [along, up ? height + out : -out], length, opening);
  }
  return pencil.items;
}

/** Place of a point `along` the wall and `out` of it. */
type Place = (along: number, out: number) => [number, number];

function drawOpening(pencil: Pencil, design: DischargePlenumDesign, place: Place, wall: number, opening: number): void {
  const from = (wall - opening) / 2;
  const to = from + opening;
  pencil.line("wall", "outline", [...place(0, 0), ...place(from, 0)]);
  pencil.line("wall", "outline", [...place(to, 0), ...place(wall, 0)]);
  const rounding = ductEntryLosses[design.edge].rounding * opening;
  for (const [edge, side] of [
    [from, -1],
    [to, 1],
  ] as const) {
    pencil.line("edge", "outline", edgeOf(place, edge, side, rounding), { label: `outlet, ${design.edge} edge` });
    pencil.line("duct", "outline", [...place(edge, 0), ...place(edge, stub)]);
  }
  pencil.line("duct", "outline", [...place(from - 30, stub), ...place(to + 30, stub)], { label: "supply duct" });
  const middle = (from + to) / 2;
  const [startX, startY] = place(middle, -0.35 * opening);
  const [endX, endY] = place(middle, stub - 40);
  drawArrow(pencil, "air", "air", startX, startY, endX, endY, 60);
}

/** Rounded lip that stands into the plenum; nothing for a sharp edge. */
function edgeOf(place: Place, edge: number, side: number, rounding: number): number[] {
  const points: number[] = [];
  for (let step = 0; step <= 8; step++) {
    const angle = (Math.PI / 2) * (step / 8);
    points.push(...place(edge + side * rounding * (1 - Math.cos(angle)), -rounding * Math.sin(angle)));
  }
  return points;
}
