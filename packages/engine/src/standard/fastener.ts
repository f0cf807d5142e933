import { type MaterialName, materials } from "./material.ts";

/** A fastener with what goes with it. Lengths mm. */
export interface Fastener {
  readonly size: string;
  readonly diameter: number;
  readonly length: number;
  /** Volume of head, nut and washers over the cube of the diameter. */
  readonly head: number;
}

/** A hexagon head and a washer; a head, a nut and two washers: plain proportions of inch bolts, derived here. */
const screwHead = 1.8;
const boltSet = 3.3;

/** Fasteners of a cabinet, typical sizes of the trade. */
export const fasteners = {
  "panel screw with sealing washer": { size: "1/4 × 1 in", diameter: 6.35, length: 25.4, head: screwHead },
  "roof screw with sealing washer": { size: "1/4 × 3/4 in", diameter: 6.35, length: 19.05, head: screwHead },
  "sheet screw": { size: "#10 × 3/4 in", diameter: 4.83, length: 19.05, head: screwHead },
  "hinge and latch screw with nut": { size: "1/4 × 3/4 in", diameter: 6.35, length: 19.05, head: boltSet },
  "joint bolt with nut": { size: "3/8 × 3 in", diameter: 9.53, length: 76.2, head: boltSet },
  "floor bolt with nut": { size: "3/8 × 3 in", diameter: 9.53, length: 76.2, head: boltSet },
  "coil bolt with nut": { size: "3/8 × 1 in", diameter: 9.53, length: 25.4, head: boltSet },
  "foot bolt with nut": { size: "1/2 × 2 in", diameter: 12.7, length: 50.8, head: boltSet },
} as const satisfies Record<string, Fastener>;

/** Name of a fastener. */
export type FastenerName = keyof typeof fasteners;

/** mm between fasteners of a seam; common practice. */
export const fastenerPitch = { panel: 200, roof: 300, sheet: 150, joint: 150, floor: 600 } as const;

/** Where sizes, pitches and masses come from. */
export const fastenerSource = "common-practice sizes and pitches; shank, head, nut and washers by their proportions";

/**
 * Mass of one fastener with nut and washers.
 *
 * @param name choice: which
 * @param material choice: what it is made of
 * @returns kg: mass of one
 * @example fastenerMass("joint bolt with nut", "steel") // 0.065 ± 0.003
 * @source derived-here shank by its diameter, the rest by proportions of hexagon bolts
 */
export function fastenerMass(name: FastenerName, material: MaterialName): number {
  const { diameter, length, head } = fasteners[name];
  const volume = (Math.PI / 4) * diameter ** 2 * length + head * diameter ** 3;
  return (volume / 1e9) * materials[material].density;
}
