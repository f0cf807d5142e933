import type { Frame } from "../contract.ts";
import { drawDamperAcross, drawDamperAlong } from "../damper-part.ts";
import type { DisplayItem } from "../display.ts";
import { pencilFor } from "../pencil.ts";
import type { MixingBoxDesign } from "./design.ts";

/** The box from the side: outside damper across the entry, return damper in the ceiling, the floor or the far wall. */
export function drawMixingBox(design: MixingBoxDesign, frame: Frame, name: string): readonly DisplayItem[] {
  const pencil = pencilFor(name);
  const height = frame.height * 1000;
  const damperHeight = design.outside.height * 1000;
  const bottom = (height - damperHeight) / 2;
  const x = (design.outside.damper.frameDepth * 1000) / 2 + 10;
  if (bottom > 1) {
    pencil.line("blank-off", "outline", [x, 0, x, bottom]);
    pencil.line("blank-off", "outline", [x, height - bottom, x, height]);
  }
  drawDamperAcross(pencil, "outside damper", design.outside, x, bottom);
  const opening = design.returnOpening;
  if (opening === undefined) return pencil.items;
  const along = opening.place === "side" ? opening.part.width * 1000 : opening.part.height * 1000;
  const from = returnStart(design) * 1000;
  if (opening.place === "side") {
    const sideBottom = (height - opening.part.height * 1000) / 2;
    pencil.box("return opening", "hidden", from, sideBottom, along, opening.part.height * 1000, {
      dash: "short",
      label: "return opening in the far wall",
    });
    drawDamperAcross(pencil, "return damper", opening.part, from + along / 2, sideBottom);
  } else {
    const depth = opening.part.damper.frameDepth * 500;
    drawDamperAlong(pencil, "return damper", opening.part, from, opening.place === "top" ? height - depth : depth);
  }
  return pencil.items;
}

/** m from the entry plane to the return opening: behind the outside damper, in the middle of what is left. */
export function returnStart(design: MixingBoxDesign): number {
  const opening = design.returnOpening;
  if (opening === undefined) return 0;
  const along = opening.place === "side" ? opening.part.width : opening.part.height;
  const behind = design.outside.damper.frameDepth + 0.02;
  return Math.max(0, Math.min(design.length - along, behind + Math.max(0, design.length - behind - along) / 2));
}
