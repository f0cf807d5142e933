import type { Frame } from "../contract.ts";
import type { DisplayItem } from "../display.ts";
import { type Pencil, pencilFor } from "../pencil.ts";
import { drawArrow } from "../pencil-shape.ts";
import { backdraftBlades, backdraftDepth, backdraftSide } from "./backdraft.ts";
import { motorSize } from "./base.ts";
import type { FanDesign } from "./design.ts";
import { drawMotorSide, drawSprings } from "./drive-picture.ts";

/** Plenum wheels from the side, one row above another: inlet wall and cones, wheels, motors, frames on springs. */
export function drawPlenumWheels(design: FanDesign, frame: Frame, name: string): readonly DisplayItem[] {
  const pencil = pencilFor(name);
  const height = frame.height * 1000;
  const cell = height / design.rows;
  const wall = design.upstreamSpace * 1000;
  const size = design.diameter * 1000;
  const throat = 0.5 * design.wheel.inletDiameter * size;
  const mouth = throat * 1.16;
  let below = 0;
  for (let row = 0; row < design.rows; row++) {
    const y = (row + 0.5) * cell;
    pencil.line("inlet wall", "outline", [wall, below, wall, y - mouth], { label: "inlet wall" });
    below = y + mouth;
    drawUnit(pencil, design, wall, y, row * cell);
  }
  pencil.line("inlet wall", "outline", [wall, below, wall, height]);
  if (design.columns > 1) {
    const words = `${design.columns} wide × ${design.rows} high`;
    pencil.text("array", "quiet", 1000 * design.length - 40, height - 130, words, "end");
  }
  return pencil.items;
}

/** One wheel with its cone, motor and frame; `floor` is the bottom of its cell. */
function drawUnit(pencil: Pencil, design: FanDesign, wall: number, y: number, floor: number): void {
  const { wheel } = design;
  const size = design.diameter * 1000;
  const throat = 0.5 * wheel.inletDiameter * size;
  const shroud = wall + 0.17 * size;
  const back = shroud + wheel.wheelWidth * size;
  for (const side of [-1, 1])
    pencil.line("inlet cone", "outline", coneOf(wall, y, side, throat, size), { label: "inlet cone" });
  if (design.backdraftDampers) drawBackdraft(pencil, wall, y, 1000 * backdraftSide(design));
  drawWheelSide(pencil, design, shroud, back, y);
  const motor = motorSize(design.motorPower);
  const [length, body] = [motor.length * 1000, motor.diameter * 1000];
  const motorStart = back + 0.06 * size;
  const base = Math.max(y - 0.5 * size - 60, floor + design.baseHeight * 1000);
  pencil.box("shaft", "outline", back, y - 0.03 * size, motorStart - back, 0.06 * size, {
    fill: "paper",
    label: "shaft",
  });
  const stand = Math.min(y - 0.75 * body, base + 0.6 * (y - base));
  drawMotorSide(pencil, motorStart, y, length, body, stand);
  drawFrame(pencil, design, wall, motorStart + length, base, stand, floor);
  const x = (shroud + back) / 2;
  drawArrow(pencil, "air", "air", x, y + 0.53 * size, x + 0.1 * size, y + 0.62 * size, 0.035 * size);
}

/** Pedestal under the motor, and the frame on its springs. */
function drawFrame(
  pencil: Pencil,
  design: FanDesign,
  wall: number,
  end: number,
  base: number,
  stand: number,
  floor: number,
): void {
  const from = wall + 0.2 * design.diameter * 1000;
  pencil.line("frame", "outline", [
    end - 0.62 * (end - from),
    base,
    end - 0.5 * (end - from),
    stand,
    end - 30,
    stand,
    end - 10,
    base,
  ]);
  pencil.box("frame", "outline", from, base - 60, end - from, 60, { fill: "paper", label: "fan frame" });
  // Springs are as high as springs are; what is left to the floor of the cell is a stand.
  const underside = base - 60;
  const stool = Math.max(floor, underside - (design.baseHeight - 0.15) * 1000 - 30);
  drawSprings(pencil, design, from, end, underside, stool);
  if (floor > 0) pencil.line("shelf", "outline", [wall, floor, end + 40, floor]);
  if (stool - floor < 20) return;
  pencil.box("stand", "outline", from, stool - 40, end - from, 40, { fill: "paper", label: "stand" });
  for (const x of [from, end - 50]) pencil.box("stand", "outline", x, floor, 50, stool - 40 - floor, { fill: "paper" });
  pencil.line("stand", "fine", [from + 50, floor, end - 50, stool - 40]);
}

/** The bell of the inlet cone: from the wall inwards on a quarter of an ellipse to the throat, a little into the wheel. */
function coneOf(wall: number, y: number, side: number, throat: number, size: number): number[] {
  const points: number[] = [];
  const depth = 0.17 * size;
  for (let step = 0; step <= 10; step++) {
    const angle = (Math.PI / 2) * (step / 10);
    points.push(
      wall + depth * Math.sin(angle),
      y + side * (throat + 0.16 * throat * (1 - Math.sin(angle) ** 2) ** 1.2),
    );
  }
  points.push(wall + depth + 0.03 * size, y + side * throat * 1.01);
  return points;
}

/** Conical shroud, back plate, hub and the blades between them as the eye sees them. */
function drawWheelSide(pencil: Pencil, design: FanDesign, shroud: number, back: number, y: number): void {
  const size = design.diameter * 1000;
  const radius = 0.5 * size;
  const eye = 0.52 * design.wheel.inletDiameter * size;
  const edge = shroud + 0.34 * (back - shroud);
  const outline: number[] = [
    shroud,
    y + eye,
    edge,
    y + radius,
    back,
    y + radius,
    back,
    y - radius,
    edge,
    y - radius,
    shroud,
    y - eye,
  ];
  pencil.line("wheel", "outline", outline, { closed: true, fill: "paper", label: "plenum wheel" });
  const { blades } = design.wheel;
  for (let blade = 0; blade < blades; blade++) {
    // Only the near half is seen; a blade's tip and root stand at their projections.
    const angle = Math.PI * ((blade + 0.5) / blades - 0.5);
    const tip = y + radius * Math.sin(angle);
    const root = y + 0.62 * radius * Math.sin(angle - 0.25);
    const start = Math.abs(tip - y) > eye ? edge : shroud + 0.12 * (back - shroud);
    pencil.line("blades", "fine", [start, tip, back, tip]);
    pencil.line("blades", "hairline", [start + 0.2 * (back - start), root, back, root]);
  }
  pencil.box("wheel", "outline", back - 0.01 * size, y - radius, 0.016 * size, 2 * radius, { fill: "paper" });
  pencil.box("wheel", "outline", back - 0.1 * size, y - 0.07 * size, 0.1 * size, 0.14 * size, { fill: "paper" });
}

/** Blades of a damper that the stream holds open, in their frame before the wall. */
function drawBackdraft(pencil: Pencil, wall: number, y: number, side: number): void {
  const blades = backdraftBlades(side / 1000);
  const pitch = side / blades;
  const start = wall - 1000 * backdraftDepth;
  for (const edge of [-0.5, 0.5]) {
    pencil.line("backdraft damper", "outline", [start, y + edge * side, wall, y + edge * side], {
      label: "backdraft damper",
    });
  }
  for (let blade = 0; blade < blades; blade++) {
    const at = y + (blade + 0.5) * pitch - side / 2;
    pencil.line("backdraft damper", "outline", [start + 8, at + 0.17 * pitch, wall - 8, at - 0.17 * pitch], {
      label: "backdraft damper",
    });
  }
}
