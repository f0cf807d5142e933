import { casingBottom, drawBlankOff, drawCoilCore } from "../coil/drawing.ts";
import { drawSteamPiping } from "../coil/steam-drawing.ts";
import type { Frame } from "../contract.ts";
import type { DisplayItem } from "../display.ts";
import { pencilFor } from "../pencil.ts";
import type { SteamCoilDesign } from "./design.ts";

/** The coil from its header side: large tubes with their inner tubes, steam header, drop leg to the trap, vacuum breaker. */
export function drawSteamCoil(design: SteamCoilDesign, frame: Frame, name: string): readonly DisplayItem[] {
  const pencil = pencilFor(name);
  const { block, inner } = design;
  drawBlankOff(pencil, block, frame.height);
  for (const foot of [block.start * 1000 + 15, (block.start + block.casingDepth) * 1000 - 15]) {
    pencil.line("support", "fine", [foot, 0, foot, casingBottom(block, 0)]);
  }
  drawCoilCore(pencil, block, inner.outsideDiameter);
  drawSteamPiping(pencil, block, design.dropLeg, design.vacuumBreaker);
  return pencil.items;
}
