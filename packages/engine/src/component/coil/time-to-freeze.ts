import { finMaterials, tubeMaterials } from "#component/finned-surface/material";
import { type Liquid, liquidDensity, liquidSpecificHeat } from "#fluid/liquid";
import type { Coil } from "./coil.ts";

/** J/kg K of tubes and of aluminium fins, W/m²K of liquid that stands in a tube, J/kg of ice that melts. */
const tubeSpecificHeat = 400;
const finSpecificHeat = 900;
const stillCoefficient = 200;
const heatOfMelting = 333_400;

/** s, one day: what lasts longer counts as no danger, and is reported as this. */
export const longestWait = 86_400;

/**
 * Shares of a running unit's airflow that still pass when its fan stops: through dampers that shut and leak, and through
 * dampers that stay open. Assumptions, from the draught of wind and building of some 25 Pa: it drives √(25/1000) = 0.16 of
 * the flow through an open unit that takes 1000 Pa; shut dampers of leakage class 1 pass 4 cfm/ft² at 1 in. of water, a
 * third of that at the draught, and double for worn seals is a hundredth of 400 fpm.
 */
export const leakThroughShutDampers = 0.01;
export const driftThroughOpenDampers = 0.16;

/**
 * Heat that a kelvin of a coil's first row holds: liquid that stands in it, tubes and fins.
 *
 * @param coil record: the coil
 * @param liquid record: what stands in it
 * @param fill share, 0…1: of the bore that it fills
 * @returns J/K: heat capacity of one row
 * @outside linear in the fill
 * @example rowHeatCapacity({ rows: 1, tubeVolume: 0.001, tubeMaterial: "copper", finMaterial: "aluminium", finThickness: 0, bank: { finArea: 9,
 *   tubeOutsideDiameter: 0.016, tubeInsideDiameter: 0.016, finnedLength: 1, tubesPerRow: 6 } }, { substance: "water", massFraction: 0 }, 1)
 *   // 4204 ± 15
 * @source definition
 */
export function rowHeatCapacity(coil: Coil, liquid: Liquid, fill: number): number {
  const { bank } = coil;
  const wall = (Math.PI / 4) * (bank.tubeOutsideDiameter ** 2 - bank.tubeInsideDiameter ** 2);
  const tubes = wall * bank.finnedLength * bank.tubesPerRow * tubeMaterials[coil.tubeMaterial].density;
  // The fins' area counts both faces.
  const fins = ((bank.finArea / coil.rows) * coil.finThickness * finMaterials[coil.finMaterial].density) / 2;
  const held = rowLiquidMass(coil, liquid, fill) * liquidSpecificHeat(liquid, 5);
  return held + tubes * tubeSpecificHeat + fins * finSpecificHeat;
}

/**
 * Heat that the water standing in a coil's first row gives off as it freezes.
 *
 * @param coil record: the coil
 * @param liquid record: what stands in it
 * @param fill share, 0…1: of the bore that it fills
 * @returns J: latent heat of one row
 * @outside linear in the fill
 * @example rowMeltingHeat({ rows: 2, tubeVolume: 0.002 }, { substance: "water", massFraction: 0 }, 1) // 333350 ± 200
 * @source definition latent heat of melting 333.4 kJ/kg
 */
export function rowMeltingHeat(coil: Coil, liquid: Liquid, fill: number): number {
  const water = liquid.substance === "water" ? 1 : 1 - liquid.massFraction;
  return rowLiquidMass(coil, liquid, fill) * water * heatOfMelting;
}

function rowLiquidMass(coil: Coil, liquid: Liquid, fill: number): number {
  return (liquidDensity(liquid, 0) * coil.tubeVolume * fill) / coil.rows;
}

/**
 * Conductance between the air that enters and a first row whose liquid stands: films of air and of still liquid in series,
 * with what the air itself can carry, so that a trickle of air takes no more than it brings.
 *
 * @param coil record: the coil
 * @param airCapacity W/K, 0…500000: of the air that passes
 * @param surface W/m²K, 0…500: air film times the efficiency of the surface
 * @returns W/K: of one row
 * @outside 0 without air or film
 * @example rowConductance({ outsideRow: 10, insideRow: 0.5, wallRow: 0 }, 1000, 40) // 76.88 ± 0.01
 * @source definition row at one temperature; 200 W/m²K of still liquid from-memory
 */
export function rowConductance(coil: Coil, airCapacity: number, surface: number): number {
  if (!(airCapacity > 0 && surface > 0)) return 0;
  const films = 1 / (1 / (surface * coil.outsideRow) + coil.wallRow + 1 / (stillCoefficient * coil.insideRow));
  return airCapacity * (1 - Math.exp(-films / airCapacity));
}

/**
 * How long liquid that has come to stand in a coil's tubes takes to the first ice: the row that meets the air first, its
 * liquid, tubes and fins cooling together. Liquid that is supercooled would freeze later, but all at once.
 *
 * @param heatCapacity J/K, 0…1e9: of the row, see `rowHeatCapacity`
 * @param conductance W/K, 0…1e6: between air and row, see `rowConductance`
 * @param start °C, -60…250: liquid and metal when the flow stops
 * @param air °C, -60…60: coldest filament that enters
 * @param freezePoint °C, -60…0: of the liquid
 * @returns s: time to the first ice, one day at most; 0 where it has begun
 * @outside keeps answering; a day in air no colder than the freezing point
 * @example firstIce(10000, 80, 10, -10, 0) // 86.64 ± 0.01
 * @source derived-here one capacity behind one resistance
 */
export function firstIce(
  heatCapacity: number,
  conductance: number,
  start: number,
  air: number,
  freezePoint: number,
): number {
  if (!(air < freezePoint)) return longestWait;
  if (!(start > freezePoint)) return 0;
  if (!(conductance > 0)) return longestWait;
  return Math.min(longestWait, (heatCapacity / conductance) * Math.log((start - air) / (freezePoint - air)));
}

/**
 * How long until a tube of the first row is frozen through: its first ice, then its water at the freezing point.
 *
 * @param first s, 0…86400: time to the first ice
 * @param meltingHeat J, 0…1e10: of the row, see `rowMeltingHeat`
 * @param conductance W/K, 0…1e6: between air and row
 * @param air °C, -60…60: coldest filament that enters
 * @param freezePoint °C, -60…0: of the liquid
 * @returns s: time to the frozen tube, one day at most
 * @outside keeps answering; a day in air no colder than the freezing point
 * @example frozenTube(86.64, 333400, 80, -10, 0) // 503.39 ± 0.01
 * @source derived-here latent heat through the same resistance
 */
export function frozenTube(
  first: number,
  meltingHeat: number,
  conductance: number,
  air: number,
  freezePoint: number,
): number {
  if (!(air < freezePoint && conductance > 0)) return longestWait;
  return Math.min(longestWait, first + meltingHeat / (conductance * (freezePoint - air)));
}
