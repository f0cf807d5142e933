import { casingBottom, drawCoilCore } from "../coil/drawing.ts";
import { drawSteamPiping } from "../coil/steam-drawing.ts";
import type { Frame } from "../contract.ts";
import type { DisplayItem } from "../display.ts";
import { pencilFor } from "../pencil.ts";
import { turned } from "../pencil-shape.ts";
import type { FaceBypassDesign } from "./design.ts";

/** Lanes of coil with a bypass channel below each, dampers before and behind that open the one as they close the other. */
export function drawFaceBypass(design: FaceBypassDesign, _frame: Frame, name: string): readonly DisplayItem[] {
  const pencil = pencilFor(name);
  const { block, inner } = design;
  const left = block.start * 1000;
  const right = left + block.casingDepth * 1000;
  const opening = design.bypassOpening * 1000;
  drawCoilCore(pencil, block, inner.outsideDiameter);
  drawSteamPiping(pencil, block, design.dropLeg, design.vacuumBreaker);
  for (let lane = 0; lane < block.stacked; lane++) {
    const bottom = casingBottom(block, lane);
    const height = block.casingHeight * 1000;
    // Channel below the lane: two sheets with the air between them.
    pencil.line("bypass", "hairline", [left, bottom - opening + 4, right, bottom - opening + 4], { dash: "short" });
    pencil.line("bypass", "hairline", [left, bottom - 4, right, bottom - 4], {
      dash: "short",
      label: "bypass channel",
    });
    for (const [hinge, outward] of [
      [left, -1],
      [right, 1],
    ] as const) {
      drawLeaf(pencil, "face damper", hinge, bottom + height, outward, -Math.min(height / 2, 190));
      drawLeaf(pencil, "face damper", hinge, bottom, outward, Math.min(height / 2, 190));
      drawLeaf(pencil, "bypass damper", hinge, bottom, outward, -opening);
    }
  }
  return pencil.items;
}

/** A damper leaf hinged at (x, y), half open. */
function drawLeaf(
  pencil: ReturnType<typeof pencilFor>,
  part: string,
  x: number,
  y: number,
  outward: number,
  length: number,
): void {
  const turn = 40 * outward * (length < 0 ? 1 : -1);
  const tip = turned(x, y, 0, length, turn);
  pencil.line(part, "choice", [x, y, ...tip], { label: part });
  pencil.circle(part, "fine", x, y, 5, { fill: "paper" });
}
