import { moistAirSpecificHeat } from "#fluid/moist-air";
import { saturationHumidityRatio } from "#fluid/saturation";
import type { Coil } from "./coil.ts";
import { latentHeat } from "./element.ts";
import type { CoilInlet, CoilWork } from "./performance.ts";

/** What one row of a solved coil does; with several water levels in a row, its mean. */
export interface RowFigures {
  readonly row: number;
  /** °C and kg/kg of the air before and behind it. */
  readonly entering: number;
  readonly leaving: number;
  readonly enteringMoisture: number;
  readonly leavingMoisture: number;
  /** °C of the liquid where it enters the row's tubes and where it leaves them, and of the fins' root. */
  readonly liquidIn: number;
  readonly liquidOut: number;
  readonly root: number;
  /** Share of the row that is wet. */
  readonly wet: number;
  /** W/m²K of the air's film, as wet as it is, and of the liquid's. */
  readonly airFilm: number;
  readonly liquidFilm: number;
  readonly surfaceEfficiency: number;
  /** Rise of air potential θ = t + κ W_s per kelvin between liquid and root; 1 where dry. */
  readonly rise: number;
  /** W/K between air and liquid, by the air's potential, and over the air's capacity. */
  readonly conductance: number;
  readonly transferUnits: number;
  /** W into the liquid. */
  readonly heat: number;
}

/**
 * Row by row what a march came to: states, films, efficiencies and transfer units. Read from the work behind `solveCoil`.
 *
 * @param coil record: the coil
 * @param inlet record: air and liquid that entered
 * @param work record: as the solution left it
 * @returns list: the rows in airflow order; none where air or liquid stand
 * @outside keeps answering
 * @example rowFigures({ rows: 8 }, { dryAirFlow: 0, liquidFlow: 1 }, {}).length // 0
 * @source derived-here the resistances of each row of the march
 */
export function rowFigures(coil: Coil, inlet: CoilInlet, work: CoilWork): RowFigures[] {
  if (!(inlet.dryAirFlow > 0 && inlet.liquidFlow > 0)) return [];
  const rows: RowFigures[] = [];
  for (let r = 0; r < coil.rows; r++) rows.push(rowOf(coil, inlet, work, r));
  return rows;
}

function rowOf(coil: Coil, inlet: CoilInlet, work: CoilWork, r: number): RowFigures {
  const { c } = work;
  const entering = r === 0 ? inlet.dryBulb : work.rowDryBulb[r - 1]!;
  const enteringMoisture = r === 0 ? inlet.humidityRatio : work.rowHumidityRatio[r - 1]!;
  const capacity = inlet.dryAirFlow * moistAirSpecificHeat(enteringMoisture);
  const levels = { first: Number.POSITIVE_INFINITY, last: -1 };
  let [wet, efficiency, heat, root] = [0, 0, 0, 0];
  for (let e = 0; e < coil.row.length; e++) {
    if (coil.row[e] !== r) continue;
    const width = coil.width[e]!;
    levels.first = Math.min(levels.first, coil.level[e]!);
    levels.last = Math.max(levels.last, coil.level[e]!);
    wet += width * work.wet[e]!;
    // The march keeps the efficiency of the wet part; the rest of the row is dry.
    const dry = 1 - work.wet[e]!;
    efficiency += width * (dry * c.surfaceEfficiency + work.wet[e]! * work.efficiency[e]!);
    root += width * work.root[e]!;
    heat += work.heat[e]!;
  }
  const liquidIn = work.liquid[levels.first]!;
  const liquidOut = work.liquid[levels.last + 1]!;
  const mean = (liquidIn + liquidOut) / 2;
  const liquidFilm = c.tubeCoefficient + c.tubeCoefficientSlope * (mean - work.liquid[0]!);
  const airFilm = c.airCoefficient * (1 + wet * (c.wetFactor - 1));
  const behind = 1 / (liquidFilm * coil.insideRow) + coil.foulingRow + coil.wallRow;
  // On a dry row the root follows from its heat; the march keeps it only where it is wet.
  const dryRoot = mean + heat * behind;
  const rootMean = wet > 0 ? root : dryRoot;
  const rise = 1 + wet * (riseBetween(mean, rootMean, enteringMoisture, inlet.pressure) - 1);
  const conductance = 1 / (1 / (airFilm * efficiency * coil.outsideRow) + rise * behind);
  return {
    row: r + 1,
    entering,
    leaving: work.rowDryBulb[r]!,
    enteringMoisture,
    leavingMoisture: work.rowHumidityRatio[r]!,
    liquidIn,
    liquidOut,
    root: rootMean,
    wet,
    airFilm,
    liquidFilm,
    surfaceEfficiency: efficiency,
    rise,
    conductance,
    transferUnits: conductance / capacity,
    heat,
  };
}

function riseBetween(low: number, high: number, moisture: number, pressure: number): number {
  const difference = high - low;
  if (Math.abs(difference) < 1e-3) return 1;
  const kappa = latentHeat(low) / moistAirSpecificHeat(moisture);
  return 1 + (kappa * (saturationHumidityRatio(high, pressure) - saturationHumidityRatio(low, pressure))) / difference;
}
