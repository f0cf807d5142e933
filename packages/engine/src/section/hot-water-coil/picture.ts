import { casingBottom, drawBlankOff, drawCoilCore, drawHeaders } from "../coil/drawing.ts";
import type { Frame } from "../contract.ts";
import type { DisplayItem } from "../display.ts";
import { pencilFor } from "../pencil.ts";
import type { HotWaterCoilDesign } from "./design.ts";

/** The coil from its connection side; a pumped loop shows its pump and the blending valve. */
export function drawHotWaterCoil(design: HotWaterCoilDesign, frame: Frame, name: string): readonly DisplayItem[] {
  const pencil = pencilFor(name);
  const { block } = design;
  const left = block.start * 1000;
  const right = left + block.casingDepth * 1000;
  drawBlankOff(pencil, block, frame.height);
  for (const foot of [left + 15, right - 15]) pencil.line("support", "fine", [foot, 0, foot, casingBottom(block, 0)]);
  drawCoilCore(pencil, block);
  drawHeaders(pencil, block, design.connection, "heat");
  if (design.control !== "pumped loop") return pencil.items;
  const x = right + 75;
  const y = casingBottom(block, 0) + 120;
  pencil.line("loop", "heat", [right, y, x + 45, y, x + 45, y + 240, right, y + 240], { label: "pumped loop" });
  pencil.circle("pump", "heat", x + 10, y, 24, { fill: "paper", label: "pump" });
  pencil.line("pump", "heat", [x + 22, y + 14, x - 12, y, x + 22, y - 14]);
  pencil.line("valve", "heat", [x + 33, y + 120, x + 57, y + 120, x + 33, y + 150, x + 57, y + 150], {
    closed: true,
    fill: "paper",
    label: "blending valve",
  });
  return pencil.items;
}
