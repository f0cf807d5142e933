import type { Frame } from "../contract.ts";
import type { DisplayItem } from "../display.ts";
import { type Pencil, pencilFor } from "../pencil.ts";
import { drawArrow } from "../pencil-shape.ts";
import { baseEnds, motorAt, motorSize } from "./base.ts";
import type { FanDesign } from "./design.ts";
import { drawBelts, drawFlexible, drawMotorEnd, drawSprings } from "./drive-picture.ts";
import { type ScrollShape, scrollRadius, turnOf } from "./housing.ts";
import { drawBlades } from "./wheel-picture.ts";

/** The housed fan from the side: scroll, inlet, wheel, bearings, motor, belts, base, springs, flexible connection. */
export function drawHousedFan(design: FanDesign, _frame: Frame, name: string): readonly DisplayItem[] {
  const pencil = pencilFor(name);
  const { scroll, reach, wheel } = design;
  if (scroll === undefined || reach === undefined) return pencil.items;
  const size = design.diameter * 1000;
  const shaft = {
    x: design.shaftPlace * 1000,
    y: design.baseHeight * 1000 + reach.below * size,
  };
  const turn = turnOf(design.discharge);
  /** From wheel diameters around the shaft, blowing right, to millimetres as the fan stands. */
  const place = (x: number, y: number): [number, number] => [
    shaft.x + size * (x * Math.cos(turn) - y * Math.sin(turn)),
    shaft.y + size * (x * Math.sin(turn) + y * Math.cos(turn)),
  ];
  drawBase(pencil, design, shaft, size);
  drawScroll(pencil, scroll, place);
  drawWheel(pencil, design, shaft, size);
  drawBearing(pencil, wheel.inletDiameter, shaft, size);
  drawDrive(pencil, design, shaft);
  drawOutlet(pencil, design, scroll, place, size);
  return pencil.items;
}

type Place = (x: number, y: number) => [number, number];
interface Point {
  readonly x: number;
  readonly y: number;
}

/** Outlet's upper edge, the spiral from its top round to the cut-off, the cut-off's lip, outlet's lower edge. */
function drawScroll(pencil: Pencil, scroll: ScrollShape, place: Place): void {
  const points = [...place(scroll.reach, scroll.top)];
  const first = -1.5 * Math.PI;
  const steps = 72;
  for (let step = 0; step <= steps; step++) {
    const angle = first + ((scroll.cutOffAngle - first) * step) / steps;
    const radius = scrollRadius(scroll, angle);
    points.push(...place(radius * Math.cos(angle), radius * Math.sin(angle)));
  }
  const lip = {
    x: scroll.cutOffRadius * Math.cos(scroll.cutOffAngle),
    y: scroll.cutOffRadius * Math.sin(scroll.cutOffAngle),
  };
  points.push(...place(lip.x + 0.018, lip.y + 0.03), ...place(lip.x + 0.045, lip.y + 0.012));
  points.push(...place(lip.x + 0.075, scroll.outletBottom + 0.03), ...place(lip.x + 0.12, scroll.outletBottom));
  points.push(...place(scroll.reach, scroll.outletBottom));
  pencil.line("housing", "outline", points, { closed: true, fill: "paper", label: "scroll housing" });
  for (const along of [scroll.reach - 0.03, scroll.reach]) {
    pencil.line("housing", "outline", [
      ...place(along, scroll.top + 0.035),
      ...place(along, scroll.outletBottom - 0.035),
    ]);
  }
}

function drawWheel(pencil: Pencil, design: FanDesign, shaft: Point, size: number): void {
  const { wheel } = design;
  const inlet = 0.5 * wheel.inletDiameter * size;
  pencil.circle("wheel", "fine", shaft.x, shaft.y, 0.5 * size, { label: "fan wheel" });
  drawBlades(pencil, shaft, 0.5 * size, inlet * 0.92, wheel.blades);
  pencil.circle("inlet", "outline", shaft.x, shaft.y, inlet + 0.045 * size, { label: "inlet cone" });
  pencil.circle("inlet", "fine", shaft.x, shaft.y, inlet + 0.02 * size);
  pencil.circle("inlet", "outline", shaft.x, shaft.y, inlet);
  pencil.circle("wheel", "fine", shaft.x, shaft.y, 0.13 * size, { fill: "paper" });
}

/** The bearing stands on a bar across the inlet. */
function drawBearing(pencil: Pencil, inletDiameter: number, shaft: Point, size: number): void {
  const half = 0.5 * inletDiameter * size + 0.07 * size;
  const bar = 0.022 * size;
  for (const offset of [-bar, bar]) {
    pencil.line("bearing", "fine", [
      shaft.x - half,
      shaft.y - 0.055 * size + offset,
      shaft.x + half,
      shaft.y - 0.055 * size + offset,
    ]);
  }
  pencil.box("bearing", "outline", shaft.x - 0.06 * size, shaft.y - 0.045 * size, 0.12 * size, 0.03 * size, {
    fill: "paper",
    label: "bearing",
  });
  pencil.circle("shaft", "outline", shaft.x, shaft.y, 0.042 * size, { fill: "paper", label: "shaft" });
  pencil.circle("shaft", "fine", shaft.x, shaft.y, 0.02 * size);
}

function drawBase(pencil: Pencil, design: FanDesign, shaft: Point, size: number): void {
  const { from, to } = baseEnds(design);
  const top = design.baseHeight * 1000;
  const height = 90;
  pencil.box("base", "outline", shaft.x + from * 1000, top - height, (to - from) * 1000, height, {
    fill: "paper",
    label: design.isolation === "springs" ? "spring base" : "base",
  });
  pencil.line("base", "fine", [shaft.x + from * 1000, top - 18, shaft.x + to * 1000, top - 18]);
  pencil.line("base", "fine", [shaft.x + from * 1000, top - height + 18, shaft.x + to * 1000, top - height + 18]);
  drawSprings(pencil, design, shaft.x + from * 1000, shaft.x + to * 1000, top - height);
  if (design.discharge === "down" || design.reach === undefined) return;
  // Two legs carry the housing.
  for (const side of [-1, 1]) {
    const foot = shaft.x + side * 0.42 * size;
    pencil.line("pedestal", "outline", [
      foot - 0.07 * size,
      top,
      shaft.x + side * 0.36 * size,
      shaft.y - 0.4 * size,
      foot + 0.07 * size,
      top,
    ]);
  }
}

function drawDrive(pencil: Pencil, design: FanDesign, shaft: Point): void {
  const body = motorSize(design.motorPower).diameter * 1000;
  const motor = motorAt(design);
  if (motor === undefined) {
    pencil.circle("motor", "hidden", shaft.x, shaft.y, body / 2, { label: "motor on the shaft, behind the wheel" });
    return;
  }
  const at = { x: shaft.x + motor.x * 1000, y: shaft.y + motor.y * 1000 };
  drawMotorEnd(pencil, at, body, design.baseHeight * 1000);
  const fanSheave = 0.14 * design.diameter * 1000;
  drawBelts(pencil, shaft, fanSheave, at, Math.max(0.28 * body, 0.55 * fanSheave));
}

/** What leads from the fan's outlet to the end of the section: collar, flexible connection, straight duct. */
function drawOutlet(pencil: Pencil, design: FanDesign, scroll: ScrollShape, place: Place, size: number): void {
  const middle = (scroll.top + scroll.outletBottom) / 2 + 0.18;
  const [fromX, fromY] = place(0.42, middle);
  const [toX, toY] = place(scroll.reach - 0.06, middle);
  drawArrow(pencil, "air", "air", fromX, fromY, toX, toY, 0.06 * size);
  if (design.discharge !== "forward" || design.reach === undefined) return;
  const flexible = (design.flexibleConnection * 1000) / size;
  const duct = (design.outletDuct * 1000) / size;
  const toEnd = (design.length - design.shaftPlace) / design.diameter;
  const collar = toEnd - flexible - duct;
  for (const y of [scroll.top, scroll.outletBottom]) {
    if (collar > scroll.reach + 1e-6) {
      pencil.line("outlet", "outline", [...place(scroll.reach, y), ...place(collar, y)]);
    }
    if (flexible > 0) drawFlexible(pencil, place(collar, y), place(collar + flexible, y));
    if (duct > 0) pencil.line("outlet duct", "outline", [...place(toEnd - duct, y), ...place(toEnd, y)]);
  }
}
