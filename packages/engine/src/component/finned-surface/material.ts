/** What tubes and fins are made of: conductivity for the rating, density for masses. */
export interface CoilMaterial {
  /** W/m K near room temperature. */
  readonly conductivity: number;
  /** kg/m³. */
  readonly density: number;
}

/** Tube materials. */
export const tubeMaterials = {
  copper: { conductivity: 386, density: 8940 },
  "stainless steel": { conductivity: 15, density: 8000 },
  cupronickel: { conductivity: 50, density: 8900 },
  "carbon steel": { conductivity: 52, density: 7850 },
} as const satisfies Record<string, CoilMaterial>;

/** Fin materials. A coating is some micrometres thick: it changes how water clings and corrosion, not conduction. */
export const finMaterials = {
  aluminium: { conductivity: 220, density: 2700 },
  "hydrophilic-coated aluminium": { conductivity: 220, density: 2700 },
  "epoxy-coated aluminium": { conductivity: 220, density: 2700 },
  copper: { conductivity: 386, density: 8940 },
  "stainless steel": { conductivity: 15, density: 8000 },
} as const satisfies Record<string, CoilMaterial>;

/** Name of a tube material. */
export type TubeMaterialName = keyof typeof tubeMaterials;
/** Name of a fin material. */
export type FinMaterialName = keyof typeof finMaterials;

/** The names, for the fields that choose among them. */
export const tubeMaterialNames = Object.keys(tubeMaterials) as TubeMaterialName[];
/** Names of the fin materials. */
export const finMaterialNames = Object.keys(finMaterials) as FinMaterialName[];
