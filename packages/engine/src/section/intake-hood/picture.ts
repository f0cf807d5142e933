import type { Frame } from "../contract.ts";
import type { DisplayItem } from "../display.ts";
import { pencilFor } from "../pencil.ts";
import type { IntakeHoodDesign } from "./design.ts";

/** The hood from the side, outside the cabinet: sloped roof, drip lip, bird screen in the opening. */
export function drawIntakeHood(design: IntakeHoodDesign, frame: Frame, name: string): readonly DisplayItem[] {
  const pencil = pencilFor(name);
  const depth = design.projection * 1000;
  const top = frame.height * 1000;
  const bottom = top - design.throatHeight * 1000;
  const slope = Math.min(0.55 * depth, 0.32 * (top - bottom));
  const front = top - slope;
  const lip = Math.min(60, 0.1 * depth);
  pencil.line("hood", "outline", [depth, top + 20, 0, front + 20, 0, design.facesDown ? bottom : front - 40], {
    label: "intake hood",
  });
  pencil.line("hood", "fine", [depth, top, 18, front + 6, 18, design.facesDown ? bottom : front - 40]);
  if (design.facesDown) {
    pencil.line("hood", "outline", [0, bottom, lip, bottom]);
    drawScreen(lip, bottom + 25, depth, bottom + 25);
  } else {
    pencil.line("hood", "outline", [0, bottom, depth, bottom]);
    drawScreen(40, bottom, 40, front - 40);
  }
  return pencil.items;

  /** Wires seen edge on: a double line with short strokes across. */
  function drawScreen(x1: number, y1: number, x2: number, y2: number): void {
    pencil.line("bird screen", "fine", [x1, y1, x2, y2], { label: "bird screen" });
    const length = Math.hypot(x2 - x1, y2 - y1);
    const count = Math.max(4, Math.round(length / 60));
    const [ux, uy] = [(x2 - x1) / length, (y2 - y1) / length];
    for (let stroke = 0; stroke <= count; stroke++) {
      const x = x1 + (ux * length * stroke) / count;
      const y = y1 + (uy * length * stroke) / count;
      pencil.line("bird screen", "fine", [x - 9 * uy, y - 9 * ux, x + 9 * uy, y + 9 * ux]);
    }
  }
}
