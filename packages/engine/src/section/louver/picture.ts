import type { Frame } from "../contract.ts";
import type { DisplayItem } from "../display.ts";
import { pencilFor } from "../pencil.ts";
import type { LouverDesign } from "./design.ts";

/** The louver in section: sloped blades with their drain channels, frame, screen and pan. */
export function drawLouver(design: LouverDesign, frame: Frame, name: string): readonly DisplayItem[] {
  const pencil = pencilFor(name);
  const { louver } = design;
  const depth = louver.bladeDepth * 1000;
  const height = design.height * 1000;
  const bottom = (frame.height * 1000 - height) / 2;
  const edge = (louver.headAndSill * 1000) / 2;
  for (const y of [bottom, bottom + height - edge * 0.5]) {
    pencil.box("louver frame", "outline", 0, y, depth, edge * 0.5, { fill: "paper" });
  }
  const pitch = Math.max(louver.bladePitch * 1000, height / 40);
  const count = Math.max(1, Math.floor((height - 2 * edge) / pitch));
  const rise = Math.min(0.92 * pitch, depth * Math.tan((louver.bladeAngle * Math.PI) / 180));
  const first = bottom + (height - (count - 1) * pitch - rise) / 2;
  for (let blade = 0; blade < count; blade++) {
    const y = first + blade * pitch;
    const hook = louver.drainable ? [0.42 * depth, y + 0.5 * rise, 0.42 * depth, y + 0.5 * rise + 0.16 * pitch] : [];
    // Outside is on the left: the blade falls towards it.
    pencil.line("blades", "outline", [0, y, 0, y + 0.12 * pitch, 0, y, 0.42 * depth, y + 0.5 * rise]);
    if (hook.length > 0) pencil.line("blades", "outline", hook);
    pencil.line("blades", "outline", [0.42 * depth, y + 0.5 * rise, depth, y + rise, depth, y + rise + 0.12 * pitch]);
  }
  if (design.screen !== undefined) {
    const x = depth + 20;
    pencil.line("bird screen", "fine", [x, bottom, x, bottom + height], { dash: "short", label: "bird screen" });
  }
  if (design.drainPan) drawPan();
  return pencil.items;

  function drawPan(): void {
    const end = design.length * 1000 - 10;
    const lip = Math.min(60, 0.05 * height);
    pencil.line("drain pan", "moisture", [4, lip, 4, 6, end, 6, end, lip], { label: "drain pan" });
    pencil.line("drain pan", "moisture", [end * 0.5 - 14, 6, end * 0.5 - 14, -40]);
    pencil.line("drain pan", "moisture", [end * 0.5 + 14, 6, end * 0.5 + 14, -40]);
  }
}
