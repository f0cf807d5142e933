import { finMaterials, tubeMaterials } from "#component/finned-surface/material";
import { type Liquid, liquidDensity, liquidSpecificHeat } from "#fluid/liquid";
import type { Coil } from "./coil.ts";

/** J/kg K of tubes and of aluminium fins, W/m²K of liquid that stands in a tube, J/kg of ice that melts. */
const tubeSpecificHeat = 400;
const finSpecificHeat = 900;
const stillCoefficient = 200;
const heatOfMelting = 333_400;

/** Seconds until the first ice, and until the tubes are solid. */
export interface FreezeTimes {
  readonly firstIce: number;
  readonly solid: number;
}

/**
 * How long liquid that has come to stand in a coil's tubes takes to freeze in air that goes on flowing: the row that meets
 * the air first, its liquid, tubes and fins cooling together, then its water freezing at the freezing point.
 *
 * @param coil record: the coil
 * @param liquid record: what stands in it
 * @param surface W/m²K, 0.5…500: air film times the efficiency of the surface, at the air's present flow
 * @param air °C, -60…0: coldest filament that enters
 * @param start °C, -40…150: liquid and metal when the flow stops
 * @param freezePoint °C, -60…0: of the liquid
 * @returns record: s; Infinity in air no colder than the freezing point
 * @outside keeps answering
 * @example freezeTimes({ rows: 1, tubeVolume: 0.001, outsideRow: 10, insideRow: 0.5, wallRow: 0, bore: 0.000173, tubeMaterial:
 *   "copper", finMaterial: "aluminium", finThickness: 0.000165, bank: { finArea: 9, tubeOutsideDiameter: 0.015875,
 *   tubeInsideDiameter: 0.014859, finnedLength: 1, tubesPerRow: 6 } }, { substance: "water", massFraction: 0 }, 40, -10, 10, 0)
 *   .firstIce // 54 ± 6
 * @source derived-here one capacity behind two films; latent heat of melting 333.4 kJ/kg
 */
export function freezeTimes(
  coil: Coil,
  liquid: Liquid,
  surface: number,
  air: number,
  start: number,
  freezePoint: number,
): FreezeTimes {
  if (!(air < freezePoint)) return { firstIce: Number.POSITIVE_INFINITY, solid: Number.POSITIVE_INFINITY };
  const { bank } = coil;
  const mass = (liquidDensity(liquid, 0) * coil.tubeVolume) / coil.rows;
  const wall = (Math.PI / 4) * (bank.tubeOutsideDiameter ** 2 - bank.tubeInsideDiameter ** 2);
  const tubes = wall * bank.finnedLength * bank.tubesPerRow * tubeMaterials[coil.tubeMaterial].density;
  const fins = ((bank.finArea / coil.rows) * coil.finThickness * finMaterials[coil.finMaterial].density) / 2;
  const capacity = mass * liquidSpecificHeat(liquid, 5) + tubes * tubeSpecificHeat + fins * finSpecificHeat;
  const resistance = 1 / (surface * coil.outsideRow) + coil.wallRow + 1 / (stillCoefficient * coil.insideRow);
  const firstIce = start > freezePoint ? capacity * resistance * Math.log((start - air) / (freezePoint - air)) : 0;
  const water = liquid.substance === "water" ? 1 : 1 - liquid.massFraction;
  return { firstIce, solid: firstIce + (mass * water * heatOfMelting * resistance) / (freezePoint - air) };
}
