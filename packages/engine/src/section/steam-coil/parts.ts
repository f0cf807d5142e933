import { coilConnections } from "../coil/connections.ts";
import { coilParts } from "../coil/parts.ts";
import { steamFittings } from "../coil/steam.ts";
import type { Frame } from "../contract.ts";
import type { SectionParts } from "../part.ts";
import type { SteamCoilDesign } from "./design.ts";

/** The coils with their distributing tubes and headers. */
export function steamCoilParts(design: SteamCoilDesign, frame: Frame): SectionParts {
  const fittings = { ...steamFittings(design), blankOff: true };
  return { inside: coilParts(design.block, frame, fittings), walls: coilConnections(design.block, frame, fittings) };
}
