/** How the panels of a casing hold together. */
export interface CasingFrame {
  /** kg for each metre of edge, panel of 50 mm; in proportion to the panel's thickness. */
  readonly massPerLength: number;
  /** W/m K that a metre of edge passes besides the panels. */
  readonly linearTransmittance: number;
  /** W/m²K where it passes most, for sweating. */
  readonly localTransmittance: number;
  /** Where its strength comes from: material of its profile. */
  readonly material: "galvanized steel" | "steel" | "aluminium";
}

/** Edges of casings as common in the trade; masses and thermal figures from memory. */
export const casingFrames = {
  "thermally broken aluminium": {
    massPerLength: 2.3,
    linearTransmittance: 0.1,
    localTransmittance: 2.4,
    material: "aluminium",
  },
  // No metal runs through: the joint is little weaker than the panel.
  "full thermal break": {
    massPerLength: 2,
    linearTransmittance: 0.04,
    localTransmittance: 1,
    material: "aluminium",
  },
  "steel tube": { massPerLength: 3.1, linearTransmittance: 0.35, localTransmittance: 6, material: "steel" },
  "self-supporting panels": {
    massPerLength: 1.6,
    linearTransmittance: 0.2,
    localTransmittance: 4.5,
    material: "galvanized steel",
  },
} as const satisfies Record<string, CasingFrame>;

/** Where these come from. */
export const casingFrameSource = "from-memory edges of casings as common in the trade";

/** Name of a frame. */
export type CasingFrameName = keyof typeof casingFrames;
/** The names, for a field's choices. */
export const casingFrameNames = [
  "thermally broken aluminium",
  "full thermal break",
  "steel tube",
  "self-supporting panels",
] as const satisfies readonly CasingFrameName[];

/** m²K/W of still air on a wall, W/m²K of it: inside a unit, outdoors, in a room. From memory. */
export const casingFilms = {
  insideResistance: 0.05,
  outsideResistance: 0.04,
  insideFilm: 20,
  outsideFilm: 8,
  source: "from-memory surface resistances of walls; the outside film is that of still air, where sweating starts",
} as const;
