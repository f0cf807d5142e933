import { type FinnedSurface, type RatedSurface, ratedSurface } from "#component/finned-surface/family";
import { type FinnedBank, finnedBank } from "#component/finned-surface/finned-bank";
import {
  type FinMaterialName,
  finMaterials,
  type TubeMaterialName,
  tubeMaterials,
} from "#component/finned-surface/material";

/** What a coil is built of: surface, size, circuits, and what lies on its walls. */
export interface CoilMake {
  readonly surface: FinnedSurface & { readonly isChosen?: boolean };
  readonly rows: number;
  readonly tubesPerRow: number;
  /** m, between tube sheets. */
  readonly finnedLength: number;
  /** 1/m. */
  readonly finsPerLength: number;
  readonly finThickness: number;
  readonly finMaterial: FinMaterialName;
  readonly tubeWall: number;
  readonly tubeMaterial: TubeMaterialName;
  readonly circuits: number;
  readonly flow: "counter" | "parallel";
  readonly turbulators: boolean;
  /** m²K/W on the area it lies on. */
  readonly foulingInside: number;
  readonly foulingOutside: number;
}

/** A coil ready for the march: its bank, its water path, the resistances that do not change with flow. */
export interface Coil extends CoilMake {
  readonly surface: RatedSurface;
  readonly bank: FinnedBank;
  readonly tubeConductivity: number;
  readonly finConductivity: number;
  /** Straight tubes that the liquid runs through one after the other. */
  readonly passes: number;
  /** Steps of the liquid from its inlet to its outlet that the march knows: passes, at most one per row. */
  readonly levels: number;
  /** Elements in airflow order; element e belongs to row `row[e]` and water level `level[e]`, `width[e]` of the row's tubes. */
  readonly row: Int32Array;
  readonly level: Int32Array;
  readonly width: Float64Array;
  /** m², of one row. */
  readonly outsideRow: number;
  readonly insideRow: number;
  /** K/W of one row: tube wall with the joint to the fins and fouling outside; fouling inside. */
  readonly wallRow: number;
  readonly foulingRow: number;
  /** m², bore of one tube. */
  readonly bore: number;
  /** m³, of liquid in tubes and return bends. */
  readonly tubeVolume: number;
  /** Coefficients known from a test, W/m²K, instead of those of the correlations. */
  readonly given?: { readonly air: number; readonly tube: number };
}

/**
 * Builds a coil: checks that the circuits divide its tubes, works out areas and resistances, and lays the water path
 * over the rows. Any whole number of passes is taken: with fewer passes than rows several rows share a pass.
 *
 * @param make record: what the coil is built of
 * @returns record: the coil
 * @outside throws
 * @throws RangeError naming what cannot be built and what would do
 * @example buildCoil({ rows: 8, tubesPerRow: 16, circuits: 32, finnedLength: 0.6096, finsPerLength: 464.567, finThickness: 0.000165,
 *   finMaterial: "aluminium", tubeWall: 0.000635, tubeMaterial: "copper", flow: "counter", foulingInside: 0, foulingOutside: 0,
 *   surface: { pattern: "plain", transversePitch: 0.0381, longitudinalPitch: 0.033, staggered: true, tubeOutsideDiameter: 0.015875, collars: false, contactResistance: 0 } })
 *   .levels // 4
 * @source definition
 */
export function buildCoil(make: CoilMake): Coil {
  const { surface } = make;
  const bank = finnedBank({
    rows: make.rows,
    tubesPerRow: make.tubesPerRow,
    finnedLength: make.finnedLength,
    transversePitch: surface.transversePitch,
    longitudinalPitch: surface.longitudinalPitch,
    staggered: surface.staggered,
    tubeOutsideDiameter: surface.tubeOutsideDiameter,
    tubeWall: make.tubeWall,
    finPitch: 1 / make.finsPerLength,
    finThickness: make.finThickness,
    collars: surface.collars,
  });
  const tubes = make.rows * make.tubesPerRow;
  const passes = tubes / make.circuits;
  if (!(Number.isInteger(make.circuits) && make.circuits >= 1 && Number.isInteger(passes))) {
    throw new RangeError(
      `${make.circuits} circuits do not divide ${make.rows} rows of ${make.tubesPerRow} tubes; ${circuitChoices(make.rows, make.tubesPerRow).join(", ")} do`,
    );
  }
  const levels = Math.min(passes, make.rows);
  const tubeConductivity = tubeMaterials[make.tubeMaterial].conductivity;
  const insideRow = bank.insideArea / make.rows;
  const outsideRow = bank.outsideArea / make.rows;
  const bore = (Math.PI * bank.tubeInsideDiameter ** 2) / 4;
  const bend = 1.6 * surface.transversePitch;
  const wallRow =
    Math.log(surface.tubeOutsideDiameter / bank.tubeInsideDiameter) /
      (2 * Math.PI * tubeConductivity * make.finnedLength * make.tubesPerRow) +
    surface.contactResistance / (bank.bareArea / make.rows) +
    make.foulingOutside / outsideRow;
  const { row, level, width } = layWaterPath(make.rows, levels, make.flow);
  return {
    surface: ratedSurface(surface, bank),
    rows: make.rows,
    tubesPerRow: make.tubesPerRow,
    finnedLength: make.finnedLength,
    finsPerLength: make.finsPerLength,
    finThickness: make.finThickness,
    finMaterial: make.finMaterial,
    tubeWall: make.tubeWall,
    tubeMaterial: make.tubeMaterial,
    circuits: make.circuits,
    flow: make.flow,
    turbulators: make.turbulators,
    foulingInside: make.foulingInside,
    foulingOutside: make.foulingOutside,
    bank,
    tubeConductivity,
    finConductivity: finMaterials[make.finMaterial].conductivity,
    passes,
    levels,
    row,
    level,
    width,
    outsideRow,
    insideRow,
    wallRow,
    foulingRow: make.foulingInside / insideRow,
    bore,
    tubeVolume: bore * (tubes * make.finnedLength + (tubes - make.circuits) * bend),
  };
}

/**
 * Numbers of circuits that divide a coil's tubes into passes that all circuits share, from one tube row's worth down and
 * up: those between a quarter of the tubes per row and four times.
 *
 * @param rows count, 1…16: tube rows
 * @param tubesPerRow count, 1…400: tubes in a row
 * @returns list: numbers of circuits, rising
 * @outside a list of those that divide, whatever the numbers
 * @example circuitChoices(8, 16).length // 7
 * @source definition
 */
export function circuitChoices(rows: number, tubesPerRow: number): number[] {
  const choices: number[] = [];
  const tubes = rows * tubesPerRow;
  for (let circuits = 1; circuits <= Math.min(tubes, 4 * tubesPerRow); circuits++) {
    if (tubes % circuits === 0 && circuits >= tubesPerRow / 16) choices.push(circuits);
  }
  return choices;
}

/**
 * Which rows meet which water levels, and how much of the row: rows and levels divide the same depth evenly.
 *
 * @param rows count, 1…16: tube rows, in airflow order
 * @param levels count, 1…400: levels, in the liquid's order
 * @param flow choice: counter or parallel
 * @returns record: row, level and width of each element, in airflow order
 * @outside keeps answering
 * @example layWaterPath(8, 6, "counter").width[1] // 0.6666666666667 ± 1e-12
 * @source definition
 */
export function layWaterPath(rows: number, levels: number, flow: "counter" | "parallel") {
  const row: number[] = [];
  const level: number[] = [];
  const width: number[] = [];
  for (let r = 0; r < rows; r++) {
    for (let l = 0; l < levels; l++) {
      const place = flow === "counter" ? levels - 1 - l : l;
      // In whole numbers of 1/(rows·levels) of the depth, so that nothing is left by rounding.
      const shared = Math.min((r + 1) * levels, (place + 1) * rows) - Math.max(r * levels, place * rows);
      if (shared <= 0) continue;
      row.push(r);
      level.push(l);
      width.push(shared / levels);
    }
  }
  return { row: Int32Array.from(row), level: Int32Array.from(level), width: Float64Array.from(width) };
}
