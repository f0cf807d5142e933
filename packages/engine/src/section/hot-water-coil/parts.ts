import { coilConnections } from "../coil/connections.ts";
import { coilParts, fillingWater } from "../coil/parts.ts";
import type { Frame } from "../contract.ts";
import type { SectionParts } from "../part.ts";
import type { HotWaterCoilDesign } from "./design.ts";

/** The coils with casings, headers and filling. */
export function hotWaterCoilParts(design: HotWaterCoilDesign, frame: Frame): SectionParts {
  const fittings = { wet: false, connection: design.connection, liquid: fillingWater, blankOff: true };
  return { inside: coilParts(design.block, frame, fittings), walls: coilConnections(design.block, frame, fittings) };
}
