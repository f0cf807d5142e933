import type { Coil } from "./coil.ts";

/** K/W of a whole coil: air film with fins, metal, liquid film; the published form of worked examples. */
export interface CoilResistances {
  readonly air: number;
  readonly metal: number;
  readonly liquid: number;
}

const rows = 16;

/**
 * A coil of which only three resistances are known, as counterflow in sixteen steps: the same march as for a built coil,
 * with surface all at one temperature (the fins' efficiency is inside the air's resistance) and wet and dry alike.
 *
 * @param resistances record: K/W of the whole coil
 * @param lewisFactor factor, 0.6…1.4: Le^(2/3)
 * @returns record: a coil for `solveCoil`
 * @outside keeps answering
 * @example resistanceCoil({ air: 0.0005, metal: 0.0001, liquid: 0.0003 }, 1).given.air // 125
 * @source ulg-coil-course three resistances in series
 */
export function resistanceCoil(resistances: CoilResistances, lewisFactor: number): Coil {
  const each = Array.from({ length: rows }, (_, index) => index);
  const bank = {
    rows,
    tubesPerRow: 1,
    finnedLength: 1,
    transversePitch: 0.04,
    longitudinalPitch: 0.035,
    staggered: true,
    tubeOutsideDiameter: 0.016,
    tubeWall: 0.0005,
    finPitch: 0.002,
    finThickness: 0.00015,
    collars: false,
    finnedHeight: 1,
    tubeInsideDiameter: 0.015,
    collarDiameter: 0.016,
    depth: 0.56,
    faceArea: 1,
    finArea: 0,
    primaryArea: rows,
    outsideArea: rows,
    bareArea: rows,
    insideArea: rows,
    freeFlowArea: 0.5,
    freeFlowShare: 0.5,
    hydraulicDiameter: 0.003,
    finLength: 0,
  };
  return {
    surface: { ...plainSurface, lewisFactor },
    rows,
    tubesPerRow: 1,
    finnedLength: 1,
    finsPerLength: 500,
    finThickness: 0.00015,
    finMaterial: "aluminium",
    tubeWall: 0.0005,
    tubeMaterial: "copper",
    circuits: 1,
    flow: "counter",
    turbulators: false,
    foulingInside: 0,
    foulingOutside: 0,
    bank,
    tubeConductivity: 386,
    finConductivity: 220,
    passes: rows,
    levels: rows,
    row: Int32Array.from(each),
    level: Int32Array.from(each, (r) => rows - 1 - r),
    width: new Float64Array(rows).fill(1),
    outsideRow: 1,
    insideRow: 1,
    wallRow: resistances.metal * rows,
    foulingRow: 0,
    bore: 0.000177,
    tubeVolume: 0,
    given: { air: 1 / (resistances.air * rows), tube: 1 / (resistances.liquid * rows) },
  };
}

/** A surface whose correlations are not asked. */
const plainSurface = {
  head: { name: "three resistances", typical: false, basis: "published", source: "", date: "", note: "" },
  pattern: "plain",
  tubeOutsideDiameter: 0.016,
  tubeWall: 0.0005,
  tubeMaterial: "copper",
  transversePitch: 0.04,
  longitudinalPitch: 0.035,
  staggered: true,
  finMaterial: "aluminium",
  finThickness: 0.00015,
  collars: false,
  correlation: "Wang-Chi-Chang 2000",
  isChosen: false,
  heatFactor: 1,
  frictionFactor: 1,
  contactResistance: 0,
  tubeHeatFactor: 1,
  wetHeat: "none",
  wetHeatFactor: 1,
  lewisFactor: 1,
  wetFriction: "common practice",
  wetFrictionFactor: undefined,
  tested: undefined,
} as const;
