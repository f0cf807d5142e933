import type { Frame } from "../contract.ts";
import type { DisplayItem } from "../display.ts";
import { pencilFor } from "../pencil.ts";
import type { MoistureEliminatorDesign } from "./design.ts";

/** The eliminator: bent blades one beside the other, drawn as if seen along them, and the pan under them. */
export function drawMoistureEliminator(
  design: MoistureEliminatorDesign,
  frame: Frame,
  name: string,
): readonly DisplayItem[] {
  const pencil = pencilFor(name);
  const depth = design.eliminator.depth * 1000;
  const x = (design.length * 1000 - depth) / 2;
  const height = design.height * 1000;
  const bottom = Math.max(40, (frame.height * 1000 - height) / 2);
  const top = Math.min(frame.height * 1000 - 10, bottom + height);
  pencil.line("frame", "outline", [x, bottom, x + depth, bottom]);
  pencil.line("frame", "outline", [x, top, x + depth, top]);
  const pitch = Math.max(design.eliminator.bladePitch * 1000, (top - bottom) / 48);
  const legs = design.eliminator.bends + 1;
  const amplitude = Math.min(0.85 * pitch, depth / legs);
  for (let y = bottom + 0.2 * pitch; y + amplitude < top; y += pitch) {
    const points: number[] = [];
    for (let bend = 0; bend <= legs; bend++)
      points.push(x + (depth * bend) / legs, y + (bend % 2 === 0 ? 0 : amplitude));
    pencil.line("blades", "fine", points);
  }
  pencil.line("pan", "moisture", [x - 20, 36, x - 20, 8, x + depth + 40, 8, x + depth + 40, 36], {
    label: "drain pan",
  });
  return pencil.items;
}
