import { casingBottom, drawBlankOff, drawCoilCore, drawHeaders } from "../coil/drawing.ts";
import type { Frame } from "../contract.ts";
import type { DisplayItem } from "../display.ts";
import { pencilFor } from "../pencil.ts";
import type { RecoveryCoilDesign } from "./design.ts";

/** The section's coil, and the two pipes that go up to the exhaust coil with pump and valve. */
export function drawRecoveryCoil(design: RecoveryCoilDesign, frame: Frame, name: string): readonly DisplayItem[] {
  const pencil = pencilFor(name);
  const { block } = design;
  const left = block.start * 1000;
  const right = left + block.casingDepth * 1000;
  const roof = frame.height * 1000;
  drawBlankOff(pencil, block, frame.height);
  drawCoilCore(pencil, block);
  drawHeaders(pencil, block, design.connection, "water");
  const low = casingBottom(block, 0) + 140;
  pencil.line("loop", "water", [right, low, right + 60, low, right + 60, roof + 60], {
    label: "from the exhaust coil",
  });
  pencil.line("loop", "water", [right, low + 90, right + 110, low + 90, right + 110, roof + 60], {
    label: "to the exhaust coil",
  });
  pencil.circle("pump", "water", right + 110, roof - 160, 24, { fill: "paper", label: "pump" });
  pencil.line("pump", "water", [right + 96, roof - 172, right + 110, roof - 138, right + 124, roof - 172]);
  pencil.line("bypass", "water", [right + 60, low + 220, right + 110, low + 220], {
    dash: "short",
    label: "frost bypass",
  });
  pencil.line("pan", "moisture", [left - 40, 50, left - 40, 12, right + 60, 12, right + 60, 50], {
    label: "drain pan",
  });
  return pencil.items;
}
