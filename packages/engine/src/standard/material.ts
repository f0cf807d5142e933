/** What a part is made of, as far as masses and stiffness need it. */
export interface Material {
  /** kg/m³, as built in: of wool and foam in their panel. */
  readonly density: number;
  /** W/m K, where heat through it is counted. */
  readonly conductivity?: number;
  /** Pa, Young's modulus, where it carries. */
  readonly stiffness?: number;
  /** True where standing water and salt attack it without a coat. */
  readonly rusts: boolean;
}

/** Materials of parts. Densities and moduli of common tables, from memory; foam and wool as common in panels. */
export const materials = {
  steel: { density: 7850, stiffness: 200e9, conductivity: 50, rusts: true },
  "galvanized steel": { density: 7850, stiffness: 200e9, conductivity: 50, rusts: true },
  "stainless steel 304": { density: 8000, stiffness: 193e9, conductivity: 15, rusts: false },
  "stainless steel 316": { density: 8000, stiffness: 193e9, conductivity: 15, rusts: false },
  aluminium: { density: 2700, stiffness: 69e9, conductivity: 160, rusts: false },
  copper: { density: 8940, rusts: false },
  cupronickel: { density: 8900, rusts: false },
  brass: { density: 8500, rusts: false },
  "cast iron": { density: 7200, rusts: true },
  "polyurethane foam": { density: 40, conductivity: 0.025, rusts: false },
  "mineral wool": { density: 64, conductivity: 0.037, rusts: false },
  glass: { density: 2500, rusts: false },
  rubber: { density: 1200, rusts: false },
  "filter medium": { density: 40, rusts: false },
  "motor, mixed": { density: 4000, rusts: true },
  mixed: { density: 2000, rusts: false },
  water: { density: 1000, rusts: false },
  dust: { density: 500, rusts: false },
} as const satisfies Record<string, Material>;

/** Name of a material. */
export type MaterialName = keyof typeof materials;

/** Where the densities come from. */
export const materialSource = "from-memory densities of common tables";

/** Metals that sheet is kept in. */
export const sheetMetals = [
  "galvanized steel",
  "stainless steel 304",
  "stainless steel 316",
  "aluminium",
] as const satisfies readonly MaterialName[];
/** One of them. */
export type SheetMetal = (typeof sheetMetals)[number];

/** Fillings of double-wall panels. */
export const panelCores = ["polyurethane foam", "mineral wool"] as const satisfies readonly MaterialName[];
