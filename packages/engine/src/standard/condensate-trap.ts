import { inch } from "./inch.ts";

/**
 * Depths of condensate traps. Under suction the drop from inlet to outlet is the suction as a water column and one inch more,
 * the seal half of the drop; under pressure the seal is the pressure and half an inch more, the outlet half an inch
 * under the inlet. Installation texts of several makers agree.
 */
export const condensateTrapRule = {
  source: "condensate-trap-texts",
  /** m. */
  suctionMargin: inch,
  sealShare: 0.5,
  pressureMargin: 0.0127,
  outletDrop: 0.0127,
  /** m: base rail at least; owners' specifications. */
  leastRail: 6 * inch,
} as const;

/** Roughness of Manning's formula for plain drain pipe, from memory. */
export const drainPipeRoughness = { value: 0.01, source: "from-memory Manning's n of smooth pipe" } as const;
