import type { Coil } from "#component/coil/coil";
import {
  type FinMaterialName,
  finMaterials,
  type TubeMaterialName,
  tubeMaterials,
} from "#component/finned-surface/material";

/**
 * What a kilogram of tube or fin counts, and each end of a circuit, and each metre of turbulator. Invented: they rank coils
 * by what goes into them and are no one's prices; a shop's own take their place.
 */
export interface CoilPriceRates {
  readonly tube: Readonly<Record<TubeMaterialName, number>>;
  readonly fin: Readonly<Record<FinMaterialName, number>>;
  readonly circuitEnd: number;
  readonly turbulatorLength: number;
}

/** Invented rates: a kilogram of copper tube counts 1. */
export const inventedPriceRates: CoilPriceRates = {
  tube: { copper: 1, "stainless steel": 1.3, cupronickel: 1.8, "carbon steel": 0.5 },
  fin: {
    aluminium: 0.5,
    "hydrophilic-coated aluminium": 0.6,
    "epoxy-coated aluminium": 0.8,
    copper: 1.1,
    "stainless steel": 1.4,
  },
  circuitEnd: 0.1,
  turbulatorLength: 0.03,
};

/** The formula, for whoever shows the index. */
export const coilPriceFormula =
  "tube mass × rate + fin mass × rate + 0.1 for each circuit end + 0.03 for each metre of turbulator, the present coil 100; rates are invented and rank only";

/** kg of straight tubes and return bends, of one coil. */
export function coilTubeMass(coil: Coil): number {
  const { tubeOutsideDiameter, transversePitch } = coil.surface;
  const { tubeInsideDiameter } = coil.bank;
  const tubes = coil.rows * coil.tubesPerRow;
  const metal = (Math.PI * (tubeOutsideDiameter ** 2 - tubeInsideDiameter ** 2)) / 4;
  const length = tubes * coil.finnedLength + (tubes - coil.circuits) * 1.6 * transversePitch;
  return metal * length * tubeMaterials[coil.tubeMaterial].density;
}

/** kg of fins of one coil: both faces' area halved, times thickness. */
export function coilFinMass(coil: Coil): number {
  return (coil.bank.finArea / 2) * coil.finThickness * finMaterials[coil.finMaterial].density;
}

/** What one coil counts by the rates; no currency. */
export function coilPrice(coil: Coil, rates: CoilPriceRates = inventedPriceRates): number {
  const turbulators = coil.turbulators ? coil.rows * coil.tubesPerRow * coil.finnedLength : 0;
  return (
    coilTubeMass(coil) * rates.tube[coil.tubeMaterial] +
    coilFinMass(coil) * rates.fin[coil.finMaterial] +
    2 * coil.circuits * rates.circuitEnd +
    turbulators * rates.turbulatorLength
  );
}
