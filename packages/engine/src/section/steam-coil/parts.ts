import { coilConnections, coilParts } from "../coil/parts.ts";
import type { Frame } from "../contract.ts";
import type { SectionParts } from "../part.ts";
import type { SteamCoilDesign } from "./design.ts";

/** m: steam header, 2½ in pipe; common practice. */
const steamHeader = 0.063;

/** The coils with their distributing tubes and headers. */
export function steamCoilParts(design: SteamCoilDesign, frame: Frame): SectionParts {
  const fittings = { wet: false, connection: steamHeader, liquid: undefined, inner: design.inner, blankOff: true };
  return { inside: coilParts(design.block, frame, fittings), walls: coilConnections(design.block, frame, fittings) };
}
