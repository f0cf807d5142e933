import { coilConnections } from "../coil/connections.ts";
import { coilParts } from "../coil/parts.ts";
import type { Frame } from "../contract.ts";
import { boxOf, type SectionParts } from "../part.ts";
import { panPart } from "../service-parts.ts";
import type { RecoveryCoilDesign } from "./design.ts";

/** The section's coil with its pan; the remote coil stands in another machine. */
export function recoveryCoilParts(design: RecoveryCoilDesign, frame: Frame): SectionParts {
  const { block } = design;
  const from = Math.max(0, block.start - 0.04);
  const to = Math.min(block.length, block.start + block.casingDepth + 0.06);
  const pan = panPart("pan", "drain pan", boxOf(from, 0, 0.012, to - from, frame.width, 0.038));
  const fittings = { wet: true, connection: design.connection, liquid: design.liquid, blankOff: true };
  return { inside: [pan, ...coilParts(block, frame, fittings)], walls: coilConnections(block, frame, fittings) };
}
