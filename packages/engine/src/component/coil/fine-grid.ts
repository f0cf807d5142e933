import { condensedWaterEnthalpy, dryBulbFromEnthalpy, enthalpyFromHumidityRatio } from "#fluid/moist-air";
import { setLiquidSide, setRowAir } from "./coefficients.ts";
import { type Coil, layWaterPath } from "./coil.ts";
import { solveElement } from "./element.ts";
import { gatherPerformance } from "./gather.ts";
import { solveCoil } from "./march.ts";
import { type CoilInlet, type CoilPerformance, type CoilWork, createCoilWork } from "./performance.ts";

/** A coil laid out tube by tube along its length: every pass of the liquid by itself, each tube in lanes. */
export interface FineGrid {
  readonly coil: Coil;
  readonly fine: Coil;
  readonly lanes: number;
  readonly work: CoilWork;
  /** Elements in the liquid's order. */
  readonly order: Int32Array;
  /** °C and kg/kg of the air behind each element's lane, and behind each row's lane. */
  readonly leavingDryBulb: Float64Array;
  readonly leavingHumidityRatio: Float64Array;
  readonly rowDryBulb: Float64Array;
  readonly rowHumidityRatio: Float64Array;
  readonly condensateTemperature: Float64Array;
}

/** Sweeps after which the fine grid is handed back as it stands, and the share of the heat to which it is brought. */
const mostSweeps = 200;
const sweepTolerance = 1e-6;

/**
 * Lays a coil out on the fine grid, against which the row grid is proved.
 *
 * @param coil record: the coil
 * @param lanes count, 1…64: parts of each tube's length, air not mixed between them
 * @returns record: the grid with room to work
 * @outside keeps answering
 * @example layFineGrid({ rows: 2, passes: 6, flow: "counter" }, 4).order.length // 6
 * @source definition
 */
export function layFineGrid(coil: Coil, lanes: number): FineGrid {
  const fine: Coil = { ...coil, levels: coil.passes, ...layWaterPath(coil.rows, coil.passes, coil.flow) };
  const elements = fine.row.length;
  const order = Array.from({ length: elements }, (_, e) => e).sort((a, b) => fine.level[a]! - fine.level[b]!);
  const cells = elements * lanes;
  return {
    coil,
    fine,
    lanes,
    work: createCoilWork(Math.max(32, cells)),
    order: Int32Array.from(order),
    leavingDryBulb: new Float64Array(cells),
    leavingHumidityRatio: new Float64Array(cells),
    rowDryBulb: new Float64Array(coil.rows * lanes),
    rowHumidityRatio: new Float64Array(coil.rows * lanes),
    condensateTemperature: new Float64Array(cells),
  };
}

/**
 * Solves a coil on the fine grid: the row grid's answer is the start, then sweeps along the liquid's path until the heat
 * stands still. Liquid runs to and fro from pass to pass; air keeps to its lane through all rows.
 *
 * @param grid record: from `layFineGrid`
 * @param inlet record: air and liquid that enter
 * @param out record: receives the performance; walls and coefficients are those of the row grid
 * @example (() => { const out = {}; solveFineGrid({}, { dryAirFlow: 0, dryBulb: 30, liquidFlow: 2 }, out);
 *   return out.leavingDryBulb; })() // 30
 * @source derived-here
 */
export function solveFineGrid(grid: FineGrid, inlet: CoilInlet, out: CoilPerformance): void {
  const { fine, work, lanes } = grid;
  solveCoil(grid.coil, inlet, work, out);
  if (!(inlet.dryAirFlow > 0 && inlet.liquidFlow > 0)) return;
  const { c } = work;
  c.lanes = lanes;
  startFromRows(grid, inlet);
  work.root.fill(Number.NaN);
  let before = c.heat;
  let sweep = 0;
  for (; sweep < mostSweeps; sweep++) {
    sweepAlongLiquid(grid, inlet);
    const change = Math.abs(c.heat - before);
    before = c.heat;
    setLiquidSide(fine, inlet, inlet.liquidTemperature + c.heat / c.liquidCapacity, c);
    if (sweep >= 3 && change < sweepTolerance * Math.abs(c.heat)) break;
  }
  c.lanes = 1;
  work.levels = 0;
  gatherPerformance(grid.coil, inlet, work, out);
  out.iterations = sweep;
  out.converged = sweep < mostSweeps;
}

/** Every lane starts with the air of the row grid. */
function startFromRows(grid: FineGrid, inlet: CoilInlet): void {
  const { fine, lanes, work } = grid;
  for (let r = 0; r < fine.rows; r++) {
    grid.rowDryBulb.fill(work.rowDryBulb[r]!, r * lanes, (r + 1) * lanes);
    grid.rowHumidityRatio.fill(work.rowHumidityRatio[r]!, r * lanes, (r + 1) * lanes);
  }
  for (let e = 0; e < fine.row.length; e++) {
    const r = fine.row[e]!;
    grid.leavingDryBulb.fill(work.rowDryBulb[r]!, e * lanes, (e + 1) * lanes);
    grid.leavingHumidityRatio.fill(work.rowHumidityRatio[r]!, e * lanes, (e + 1) * lanes);
  }
  work.liquid[0] = inlet.liquidTemperature;
}

/** One sweep from pass to pass; all tubes of a pass start with the pass's mixed liquid. */
function sweepAlongLiquid(grid: FineGrid, inlet: CoilInlet): void {
  const { fine, order, work } = grid;
  const { c } = work;
  c.heat = 0;
  c.sensibleHeat = 0;
  c.condensate = 0;
  c.condensateEnthalpy = 0;
  c.wetRows = 0;
  c.wetEfficiency = 0;
  let liquid = inlet.liquidTemperature;
  let at = 0;
  for (let pass = 0; pass < fine.levels; pass++) {
    let heat = 0;
    for (; at < order.length && fine.level[order[at]!] === pass; at++)
      heat += sweepTube(grid, inlet, order[at]!, liquid);
    liquid += heat / c.liquidCapacity;
  }
}

/** The lanes of one element in the order in which its liquid meets them; returns its heat, W. */
function sweepTube(grid: FineGrid, inlet: CoilInlet, e: number, liquidIn: number): number {
  const { fine, lanes, work } = grid;
  const { c, element } = work;
  const r = fine.row[e]!;
  const backwards = fine.level[e]! % 2 === 1;
  setRowAir(fine, r === 0 ? inlet.humidityRatio : grid.rowHumidityRatio[(r - 1) * lanes]!, c);
  const share = ((fine.width[e]! * fine.levels) / fine.rows) * c.liquidCapacity;
  let liquid = liquidIn;
  let sum = 0;
  for (let step = 0; step < lanes; step++) {
    const lane = backwards ? lanes - 1 - step : step;
    element.dryBulb = r === 0 ? inlet.dryBulb : grid.rowDryBulb[(r - 1) * lanes + lane]!;
    element.humidityRatio = r === 0 ? inlet.humidityRatio : grid.rowHumidityRatio[(r - 1) * lanes + lane]!;
    const slot = e * lanes + lane;
    const guess = work.heat[slot]! / share;
    solveElement(fine, e, slot, inlet.pressure, liquid, liquid + guess / 2, 2, work);
    work.heat[slot] = element.heat;
    grid.leavingDryBulb[slot] = element.leavingDryBulb;
    grid.leavingHumidityRatio[slot] = element.leavingHumidityRatio;
    const drained =
      ((fine.width[e]! * inlet.dryAirFlow) / lanes) * (element.humidityRatio - element.leavingHumidityRatio);
    c.condensate += drained;
    c.condensateEnthalpy += drained === 0 ? 0 : drained * condensedWaterEnthalpy(element.condensateTemperature);
    c.wetRows += (fine.width[e]! / lanes) * work.wet[slot]!;
    c.wetEfficiency += (fine.width[e]! / lanes) * work.wet[slot]! * element.surfaceEfficiency;
    mixLane(grid, r, lane);
    liquid += element.heat / share;
    sum += element.heat;
  }
  c.heat += sum;
  c.sensibleHeat += sensible(grid, inlet, e);
  return sum;
}

/** Air behind a row's lane: what the row's elements let out there, mixed. */
function mixLane(grid: FineGrid, r: number, lane: number): void {
  const { fine, lanes } = grid;
  let enthalpy = 0;
  let moisture = 0;
  for (let e = 0; e < fine.row.length; e++) {
    if (fine.row[e] !== r) continue;
    const slot = e * lanes + lane;
    const width = fine.width[e]!;
    moisture += width * grid.leavingHumidityRatio[slot]!;
    enthalpy += width * enthalpyFromHumidityRatio(grid.leavingDryBulb[slot]!, grid.leavingHumidityRatio[slot]!);
  }
  grid.rowDryBulb[r * lanes + lane] = dryBulbFromEnthalpy(enthalpy, moisture);
  grid.rowHumidityRatio[r * lanes + lane] = moisture;
}

function sensible(grid: FineGrid, inlet: CoilInlet, e: number): number {
  const { fine, lanes, work } = grid;
  const r = fine.row[e]!;
  let difference = 0;
  for (let lane = 0; lane < lanes; lane++) {
    const before = r === 0 ? inlet.dryBulb : grid.rowDryBulb[(r - 1) * lanes + lane]!;
    difference += before - grid.leavingDryBulb[e * lanes + lane]!;
  }
  return (difference / lanes) * fine.width[e]! * work.c.airCapacity;
}
