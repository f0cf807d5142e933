import {
  condensedWaterEnthalpy,
  dryBulbFromEnthalpy,
  enthalpyFromHumidityRatio,
  moistAirSpecificHeat,
} from "#fluid/moist-air";
import { saturationHumidityRatio } from "#fluid/saturation";
import { clearSums, setAirSide, setLiquidSide, setRowAir } from "./coefficients.ts";
import { type Coil, layWaterPath } from "./coil.ts";
import { solveElement } from "./element.ts";
import { gatherPerformance } from "./gather.ts";
import { addToBalance, clearBalance, largestImbalance, passRow } from "./level-balance.ts";
import { correctLiquid } from "./liquid-correction.ts";
import { solveCoil } from "./march.ts";
import { type CoilInlet, type CoilPerformance, type CoilWork, createCoilWork } from "./performance.ts";

/** A coil laid out tube by tube along its length: every pass of the liquid by itself, each tube in lanes. */
export interface FineGrid {
  readonly coil: Coil;
  readonly fine: Coil;
  readonly lanes: number;
  /** Element of the row grid that each element of the fine grid starts from. */
  readonly coarse: Int32Array;
  /** Room of the row grid, and of the fine one with a slot for each lane of each element. */
  readonly rows: CoilWork;
  readonly cells: CoilWork;
  /** °C and kg/kg of each lane's air before the row in hand, and sums of what the row's elements let out there. */
  readonly dryBulb: Float64Array;
  readonly humidityRatio: Float64Array;
  readonly mixedEnthalpy: Float64Array;
  readonly mixedMoisture: Float64Array;
}

/** Marches after which the fine grid is handed back as it stands. */
const mostMarches = 60;

/** K of liquid temperature and share of the heat to which the fine grid is brought. */
const liquidTolerance = 1e-4;
const heatTolerance = 1e-6;

/**
 * Lays a coil out on the fine grid, against which the row grid is proved.
 *
 * @param coil record: the coil
 * @param lanes count, 1…64: parts of each tube's length, air not mixed between them
 * @returns record: the grid with room to work
 * @outside keeps answering
 * @example layFineGrid({ rows: 2, passes: 6, levels: 2, flow: "counter", row: [0, 1], level: [1, 0] }, 4).coarse.length // 6
 * @source definition
 */
export function layFineGrid(coil: Coil, lanes: number): FineGrid {
  const fine: Coil = { ...coil, levels: coil.passes, ...layWaterPath(coil.rows, coil.passes, coil.flow) };
  const elements = fine.row.length;
  return {
    coil,
    fine,
    lanes,
    coarse: Int32Array.from({ length: elements }, (_, e) => coarseElement(coil, fine, e)),
    rows: createCoilWork(),
    cells: createCoilWork(elements * lanes, Math.max(16, fine.levels)),
    dryBulb: new Float64Array(lanes),
    humidityRatio: new Float64Array(lanes),
    mixedEnthalpy: new Float64Array(lanes),
    mixedMoisture: new Float64Array(lanes),
  };
}

/** The row grid's element in the same row whose level lies nearest. */
function coarseElement(coil: Coil, fine: Coil, e: number): number {
  const place = (fine.level[e]! + 0.5) / fine.levels;
  let nearest = -1;
  let least = Number.POSITIVE_INFINITY;
  for (let k = 0; k < coil.row.length; k++) {
    const away = Math.abs((coil.level[k]! + 0.5) / coil.levels - place);
    if (coil.row[k] === fine.row[e] && away < least) {
      nearest = k;
      least = away;
    }
  }
  return nearest;
}

/**
 * Solves a coil on the fine grid: marches along the rows with the air, which keeps to its lane through all of them, while the
 * liquid of each tube runs through its lanes to and fro from pass to pass. The row grid's answer is the start, and the same
 * Newton steps bring the temperatures between the passes into agreement with the heat.
 *
 * @param grid record: from `layFineGrid`
 * @param inlet record: air and liquid that enter
 * @param out record: receives the performance; walls and coefficients are those of the row grid
 * @example (() => { const out = {}; solveFineGrid({}, { dryAirFlow: 0, dryBulb: 30, liquidFlow: 2 }, out);
 *   return out.leavingDryBulb; })() // 30
 * @source derived-here
 */
export function solveFineGrid(grid: FineGrid, inlet: CoilInlet, out: CoilPerformance): void {
  const { fine, cells, rows, lanes } = grid;
  // From nothing each time, so that the answer does not depend on what was solved before.
  if (rows !== undefined) rows.levels = 0;
  solveCoil(grid.coil, inlet, rows, out);
  if (!(inlet.dryAirFlow > 0 && inlet.liquidFlow > 0)) return;
  const { c } = cells;
  setAirSide(fine, inlet, c);
  c.lanes = lanes;
  startFromRows(grid);
  const low = Math.min(inlet.liquidTemperature, inlet.dryBulb);
  const high = Math.max(inlet.liquidTemperature, inlet.dryBulb);
  let before = rows.c.heat;
  let march = 0;
  for (; march < mostMarches; march++) {
    setLiquidSide(fine, inlet, cells.liquid[fine.levels]!, c);
    const miss = marchLanes(grid, inlet, march === 0 ? 2 : 1);
    const change = Math.abs(c.heat - before);
    before = c.heat;
    if (miss < liquidTolerance && change < heatTolerance * Math.abs(before) + 1e-9) break;
    correctLiquid(fine.levels, cells.matrix, cells.imbalance, cells.liquid, low, high, march < 10 ? 1 : 0.4);
  }
  tellRows(grid);
  gatherPerformance(grid.coil, inlet, rows, out);
  out.iterations = march;
  out.converged = march < mostMarches;
}

/** Cells start with the surface temperatures of the row grid, passes with its liquid, read along the same path. */
function startFromRows({ coil, fine, lanes, coarse, rows, cells }: FineGrid): void {
  for (let l = 0; l <= fine.levels; l++) {
    const place = (l * coil.levels) / fine.levels;
    const from = Math.min(coil.levels - 1, Math.floor(place));
    cells.liquid[l] = rows.liquid[from]! + (place - from) * (rows.liquid[from + 1]! - rows.liquid[from]!);
  }
  for (let e = 0; e < fine.row.length; e++) {
    const k = coarse[e]!;
    const heat = (rows.heat[k]! * fine.width[e]!) / (coil.width[k]! * lanes);
    for (let slot = e * lanes; slot < (e + 1) * lanes; slot++) {
      cells.root[slot] = rows.root[k]!;
      cells.surface[slot] = rows.surface[k]!;
      cells.wet[slot] = rows.wet[k]!;
      cells.heat[slot] = heat;
    }
  }
}

/** One walk along the rows, all lanes abreast; returns the largest imbalance of a pass, K. */
function marchLanes(grid: FineGrid, inlet: CoilInlet, passes: number): number {
  const { fine, cells, lanes } = grid;
  const { c } = cells;
  cells.element.pressure = inlet.pressure;
  clearSums(c);
  clearBalance(cells, fine.levels);
  grid.dryBulb.fill(inlet.dryBulb);
  grid.humidityRatio.fill(inlet.humidityRatio);
  let first = fine.levels;
  let end = 0;
  let e = 0;
  for (let r = 0; r < fine.rows; r++) {
    let moisture = 0;
    for (let lane = 0; lane < lanes; lane++) moisture += grid.humidityRatio[lane]! / lanes;
    setRowAir(fine, moisture, c);
    grid.mixedEnthalpy.fill(0);
    grid.mixedMoisture.fill(0);
    for (; e < fine.row.length && fine.row[e] === r; e++) {
      const l = fine.level[e]!;
      walkTube(grid, inlet, e, passes);
      first = Math.min(first, Math.max(0, l - 1));
      end = Math.max(end, l);
      addToBalance(cells, fine.levels, l, first, end);
    }
    passRow(cells, first, end);
    mixLanes(grid, inlet);
  }
  return largestImbalance(cells, fine.levels);
}

/**
 * The lanes of one element in the order in which its liquid meets them; its heat and slopes as a whole are left in the work.
 * All tubes of a pass start with the pass's mixed liquid.
 */
function walkTube(grid: FineGrid, inlet: CoilInlet, e: number, passes: number): void {
  const { fine, lanes, cells } = grid;
  const { c, element } = cells;
  const width = fine.width[e]! / lanes;
  const cools = inlet.liquidTemperature < inlet.dryBulb;
  const backwards = fine.level[e]! % 2 === 1;
  const share = ((fine.width[e]! * fine.levels) / fine.rows) * c.liquidCapacity;
  let liquid = cells.liquid[fine.level[e]!]!;
  // What a kelvin more of entering liquid, and of air in all lanes, makes of the liquid before the lane in hand.
  let byLiquid = 1;
  let byAir = 0;
  for (let step = 0; step < lanes; step++) {
    const lane = backwards ? lanes - 1 - step : step;
    const slot = e * lanes + lane;
    element.dryBulb = grid.dryBulb[lane]!;
    element.humidityRatio = grid.humidityRatio[lane]!;
    const half = cells.heat[slot]! / (2 * share);
    element.liquidIn = liquid;
    element.liquidMean = liquid + half;
    element.liquidOut = liquid + 2 * half;
    element.wetnessIn = cools ? saturationHumidityRatio(liquid, inlet.pressure) : Number.POSITIVE_INFINITY;
    element.wetnessMean = cools
      ? saturationHumidityRatio(element.liquidMean, inlet.pressure)
      : Number.POSITIVE_INFINITY;
    element.wetnessOut = cools ? saturationHumidityRatio(element.liquidOut, inlet.pressure) : Number.POSITIVE_INFINITY;
    solveElement(fine, e, slot, passes, cells);
    cells.heat[slot] = element.heat;
    gatherCell(grid, inlet, lane, slot, width);
    liquid += element.heat / share;
    byAir += (element.airSlope - element.liquidSlope * byAir) / share;
    byLiquid *= 1 - element.liquidSlope / share;
  }
  element.heat = (liquid - cells.liquid[fine.level[e]!]!) * share;
  element.airSlope = byAir * share;
  element.liquidSlope = (1 - byLiquid) * share;
  c.heat += element.heat;
}

/** Adds the cell in hand to the sums of the march and to the air behind its lane. */
function gatherCell(grid: FineGrid, inlet: CoilInlet, lane: number, slot: number, width: number): void {
  const { c, element, wet } = grid.cells;
  const { leavingDryBulb, leavingHumidityRatio } = element;
  const drained = width * inlet.dryAirFlow * (element.humidityRatio - leavingHumidityRatio);
  c.condensate += drained;
  c.condensateEnthalpy += drained === 0 ? 0 : drained * condensedWaterEnthalpy(element.condensateTemperature);
  c.wetRows += width * wet[slot]!;
  c.wetEfficiency += width * wet[slot]! * element.surfaceEfficiency;
  const laneShare = width * grid.lanes;
  grid.mixedMoisture[lane]! += laneShare * leavingHumidityRatio;
  grid.mixedEnthalpy[lane]! += laneShare * enthalpyFromHumidityRatio(leavingDryBulb, leavingHumidityRatio);
}

/** Air behind a row, lane by lane: what the row's elements let out there, mixed. */
function mixLanes(grid: FineGrid, inlet: CoilInlet): void {
  const { lanes, cells } = grid;
  for (let lane = 0; lane < lanes; lane++) {
    const moisture = grid.mixedMoisture[lane]!;
    const leaving = dryBulbFromEnthalpy(grid.mixedEnthalpy[lane]!, moisture);
    const capacity = (inlet.dryAirFlow / lanes) * moistAirSpecificHeat(grid.humidityRatio[lane]!);
    cells.c.sensibleHeat += capacity * (grid.dryBulb[lane]! - leaving);
    grid.dryBulb[lane] = leaving;
    grid.humidityRatio[lane] = moisture;
  }
}

/** Hands the sums over to the row grid's room, from which the performance is gathered. */
function tellRows({ rows, cells }: FineGrid): void {
  const { c } = rows;
  c.heat = cells.c.heat;
  c.sensibleHeat = cells.c.sensibleHeat;
  c.condensate = cells.c.condensate;
  c.condensateEnthalpy = cells.c.condensateEnthalpy;
  c.wetRows = cells.c.wetRows;
  c.wetEfficiency = cells.c.wetEfficiency;
  c.liquidCapacity = cells.c.liquidCapacity;
}
