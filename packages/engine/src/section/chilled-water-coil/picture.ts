import { casingBottom, drawBlankOff, drawCoilCore, drawHeaders } from "../coil/drawing.ts";
import type { Frame } from "../contract.ts";
import type { DisplayItem } from "../display.ts";
import { pencilFor } from "../pencil.ts";
import type { ChilledWaterCoilDesign } from "./design.ts";

/** The coils from their connection side with headers, the main pan to its reach, intermediate pans and down-comers. */
export function drawChilledWaterCoil(
  design: ChilledWaterCoilDesign,
  frame: Frame,
  name: string,
): readonly DisplayItem[] {
  const pencil = pencilFor(name);
  const { block } = design;
  const x = block.start * 1000;
  const end = x + block.casingDepth * 1000;
  const reach = end + Math.max(0.02, design.panReach) * 1000;
  const depth = design.panDepth * 1000;
  const floor = 12;
  drawBlankOff(pencil, block, frame.height);
  // Support rails of the lowest coil stand in the pan.
  for (const foot of [x + 20, end - 20]) pencil.line("support", "fine", [foot, floor, foot, casingBottom(block, 0)]);
  drawCoilCore(pencil, block);
  drawHeaders(pencil, block, design.connection, "water");
  pencil.line("main pan", "moisture", [x - 40, floor + depth, x - 40, floor, reach, floor, reach, floor + depth], {
    label: "main drain pan",
  });
  pencil.line("drain", "moisture", [end, floor, end, -50, end + 40, -50], { label: "drain to trap" });
  if (design.intermediatePans) drawIntermediatePans(pencil, design, x, end);
  return pencil.items;
}

function drawIntermediatePans(
  pencil: ReturnType<typeof pencilFor>,
  design: ChilledWaterCoilDesign,
  x: number,
  end: number,
): void {
  const { block } = design;
  const tip = end + design.intermediateReach * 1000;
  for (let index = 1; index < block.stacked; index++) {
    const y = casingBottom(block, index) - 80;
    pencil.line("intermediate pan", "moisture", [x - 15, y + 45, x - 15, y + 8, tip, y, tip, y + 45], {
      label: "intermediate drain pan",
    });
  }
  // One down-comer takes all intermediate pans to the main pan.
  const top = casingBottom(block, block.stacked - 1) - 80;
  const at = tip - 12;
  pencil.line("down-comer", "moisture", [at, top, at, 30], { label: "down-comer" });
}
