import { coilConnections } from "../coil/connections.ts";
import { coilParts, coilSpan, fillingWater } from "../coil/parts.ts";
import type { Frame } from "../contract.ts";
import { blank, boxOf, type SectionPart, type SectionParts, sheetPart } from "../part.ts";
import { panPart } from "../service-parts.ts";
import type { ChilledWaterCoilDesign } from "./design.ts";

/** The coils in stainless casings, the main pan to its reach, intermediate pans and their down-comer. */
export function chilledWaterCoilParts(design: ChilledWaterCoilDesign, frame: Frame): SectionParts {
  const { block } = design;
  const from = Math.max(0, block.start - 0.04);
  const to = block.start + block.casingDepth + Math.max(0.02, design.panReach);
  const pan = panPart("main pan", "main drain pan", boxOf(from, 0, 0.012, to - from, frame.width, design.panDepth));
  const fittings = { wet: true, connection: design.connection, liquid: fillingWater, blankOff: true };
  return {
    inside: [
      pan,
      ...coilParts(block, frame, fittings),
      ...(design.intermediatePans ? betweenCoils(design, frame) : []),
    ],
    walls: coilConnections(block, frame, fittings),
  };
}

function betweenCoils(design: ChilledWaterCoilDesign, frame: Frame): readonly SectionPart[] {
  const { block } = design;
  const { y, width } = coilSpan(block, frame, { liquid: fillingWater });
  const end = block.start + block.casingDepth;
  const from = Math.max(0, block.start - 0.015);
  const below = (index: number) => block.base + index * block.pitch;
  const pans = Array.from({ length: block.stacked - 1 }, (_, index) => {
    const z = below(index + 1) - 0.085;
    const box = boxOf(from, y, z, end + design.intermediateReach - from, width, 0.045);
    return panPart(`intermediate pan ${index + 1}`, "intermediate drain pan", box);
  });
  const top = below(block.stacked - 1) - 0.085;
  const foot = 0.012 + design.panDepth;
  const at = boxOf(end + design.intermediateReach - 0.04, y, foot, 0.035, 0.035, Math.max(0.01, top - foot));
  const pipe = sheetPart(
    "down-comer",
    "down-comer",
    "pan",
    "stainless steel 304",
    "16",
    at,
    [blank(top - foot, 0.14)],
    { wet: true, shares: true },
  );
  return [...pans, pipe];
}
