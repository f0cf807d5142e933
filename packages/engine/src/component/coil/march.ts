import { liquidSpecificHeat } from "#fluid/liquid";
import {
  condensedWaterEnthalpy,
  dryBulbFromEnthalpy,
  enthalpyFromHumidityRatio,
  moistAirSpecificHeat,
} from "#fluid/moist-air";
import { saturationHumidityRatio, setSaturationHumidityRatios } from "#fluid/saturation";
import { clearSums, setAirSide, setLiquidSide, setRowAir } from "./coefficients.ts";
import type { Coil } from "./coil.ts";
import { solveElement } from "./element.ts";
import { gatherPerformance } from "./gather.ts";
import { addToBalance, clearBalance, largestImbalance, passRow } from "./level-balance.ts";
import { correctLiquid } from "./liquid-correction.ts";
import type { CoilInlet, CoilPerformance, CoilWork } from "./performance.ts";

/** Iterations after which a march that has not settled is handed back as it stands. */
const mostIterations = 60;

/** Iterations after which a march that swings takes part of each step. */
const settledSteps = 10;

/** K of liquid temperature and share of the heat to which a march is brought. */
const liquidTolerance = 1e-5;
const heatTolerance = 5e-6;

/** Marches after which the liquid's coefficients stay as they are: its outlet then moves by thousandths of a kelvin. */
const liquidSettled = 3;

/**
 * Solves a coil on the row grid: marches along the rows with the air, each element dry, wet or partly wet, and corrects
 * the liquid's temperatures between the passes by Newton steps until they agree with the heat. Heats and cools, water and
 * glycol, counter and parallel flow. Energy and water balance to rounding.
 *
 * @param coil record: the coil
 * @param inlet record: air and liquid that enter
 * @param work record: room for the march; the solution before is the start when the coil has as many levels
 * @param out record: receives the performance
 * @outside keeps answering; a march that does not settle says so in `converged`
 * @example (() => { const out = {}; solveCoil({}, { dryAirFlow: 0, dryBulb: 30, liquidFlow: 2 }, {}, out);
 *   return out.leavingDryBulb; })() // 30
 * @source derived-here row march with the enthalpy potential; ashrae-hvac-2020-ch23
 */
export function solveCoil(coil: Coil, inlet: CoilInlet, work: CoilWork, out: CoilPerformance): void {
  out.converged = true;
  out.iterations = 0;
  if (!(inlet.dryAirFlow > 0 && inlet.liquidFlow > 0)) {
    standStill(inlet, out);
    if (inlet.dryAirFlow > 0) tellAirSide(coil, inlet, work, out);
    return;
  }
  const elements = coil.row.length;
  if (work.levels !== coil.levels || work.elements !== elements || !warmStartFits(coil, inlet, work)) {
    startCold(coil, inlet, work);
  }
  setAirSide(coil, inlet, work.c);
  const low = Math.min(inlet.liquidTemperature, inlet.dryBulb);
  const high = Math.max(inlet.liquidTemperature, inlet.dryBulb);
  let before = Number.NaN;
  for (let k = 0; k < mostIterations; k++) {
    if (k < liquidSettled) setLiquidSide(coil, inlet, work.liquid[coil.levels]!, work.c);
    const miss = march(coil, inlet, work, k < 2 ? 2 : 1);
    out.iterations = k + 1;
    const change = Math.abs(work.c.heat - before);
    before = work.c.heat;
    if (miss < liquidTolerance && change <= heatTolerance * Math.abs(before) + 1e-9) break;
    if (k === mostIterations - 1) out.converged = miss < 1e-3;
    else correctLiquid(coil.levels, work.matrix, work.imbalance, work.liquid, low, high, k < settledSteps ? 1 : 0.4);
  }
  gatherPerformance(coil, inlet, work, out);
}

/** A coil without flow on one side changes nothing; its tubes take the temperature of the coldest air. */
function standStill(inlet: CoilInlet, out: CoilPerformance): void {
  out.heat = 0;
  out.sensibleHeat = 0;
  out.condensate = 0;
  out.condensateEnthalpy = 0;
  out.leavingDryBulb = inlet.dryBulb;
  out.leavingHumidityRatio = inlet.humidityRatio;
  out.leavingFilament = inlet.coldestFilament;
  out.leavingLiquid = inlet.liquidTemperature;
  out.airReynolds = 0;
  out.airCoefficient = 0;
  out.wetFactor = 1;
  out.finEfficiency = 1;
  out.surfaceEfficiency = 1;
  out.wetSurfaceEfficiency = 1;
  out.tubeCoefficient = 0;
  out.tubeReynolds = 0;
  out.tubeVelocity = 0;
  out.wetShare = 0;
  const still = inlet.liquidFlow > 0 ? inlet.liquidTemperature : inlet.coldestFilament;
  out.coldestTubeWall = still;
  out.coldestSurface = still;
}

/** What the air's film is on tubes whose liquid stands. */
function tellAirSide(coil: Coil, inlet: CoilInlet, work: CoilWork, out: CoilPerformance): void {
  const { c } = work;
  setAirSide(coil, inlet, c);
  out.airReynolds = c.airReynolds;
  out.airCoefficient = c.airCoefficient;
  out.finEfficiency = c.finEfficiency;
  out.surfaceEfficiency = c.surfaceEfficiency;
  out.wetSurfaceEfficiency = c.surfaceEfficiency;
}

/** Whether the temperatures of the last solution lie between those that enter now. */
function warmStartFits(coil: Coil, inlet: CoilInlet, work: CoilWork): boolean {
  const low = Math.min(inlet.liquidTemperature, inlet.dryBulb);
  const high = Math.max(inlet.liquidTemperature, inlet.dryBulb);
  const last = work.liquid[coil.levels]!;
  if (!(last >= low && last <= high)) return false;
  const shift = inlet.liquidTemperature - work.liquid[0]!;
  for (let l = 0; l <= coil.levels; l++) work.liquid[l] = Math.min(high, Math.max(low, work.liquid[l]! + shift));
  work.liquid[0] = inlet.liquidTemperature;
  return true;
}

/** A straight rise of the liquid by nine tenths of what the air could give, or to four fifths of the way to the air. */
function startCold(coil: Coil, inlet: CoilInlet, work: CoilWork): void {
  const { levels } = coil;
  const { dryBulb, humidityRatio, liquidTemperature, pressure } = inlet;
  const wetness = saturationHumidityRatio(Math.min(90, Math.max(-90, liquidTemperature)), pressure);
  const coldest = enthalpyFromHumidityRatio(liquidTemperature, Math.min(humidityRatio, wetness));
  const given = inlet.dryAirFlow * (enthalpyFromHumidityRatio(dryBulb, humidityRatio) - coldest);
  const taken = inlet.liquidFlow * liquidSpecificHeat(inlet.liquid, liquidTemperature);
  const most = 0.8 * (dryBulb - liquidTemperature);
  const rise = 0.9 * (given / taken);
  const end = Math.abs(rise) < Math.abs(most) ? rise : most;
  for (let l = 0; l <= levels; l++) work.liquid[l] = liquidTemperature + (end * l) / levels;
  work.root.fill(Number.NaN);
  work.surface.fill(Number.NaN);
  work.levels = levels;
  work.elements = coil.row.length;
}

/** How moist saturated air would be at the liquid's temperatures; nothing condenses on liquid that heats. */
function setWetness(work: CoilWork, levels: number, inlet: CoilInlet): void {
  const { liquid, wetness, middle, middleWetness } = work;
  if (!(inlet.liquidTemperature < inlet.dryBulb)) {
    wetness.fill(Number.POSITIVE_INFINITY);
    middleWetness.fill(Number.POSITIVE_INFINITY);
    return;
  }
  for (let l = 0; l < levels; l++) middle[l] = (liquid[l]! + liquid[l + 1]!) / 2;
  setSaturationHumidityRatios(liquid, levels + 1, inlet.pressure, wetness);
  setSaturationHumidityRatios(middle, levels, inlet.pressure, middleWetness);
}

/** One walk along the rows with the liquid temperatures as they stand; returns the largest imbalance of a level, K. */
function march(coil: Coil, inlet: CoilInlet, work: CoilWork, passes: number): number {
  const { c, element, liquid, wetness, middleWetness } = work;
  const { levels } = coil;
  clearSums(c);
  clearBalance(work, levels);
  element.pressure = inlet.pressure;
  setWetness(work, levels, inlet);
  let dryBulb = inlet.dryBulb;
  let humidityRatio = inlet.humidityRatio;
  // The air knows only of the levels that it has passed: from `first` up to before `end`.
  let first = levels;
  let end = 0;
  let e = 0;
  for (let r = 0; r < coil.rows; r++) {
    setRowAir(coil, humidityRatio, c);
    let mixedEnthalpy = 0;
    let mixedMoisture = 0;
    for (; e < coil.row.length && coil.row[e] === r; e++) {
      const l = coil.level[e]!;
      const width = coil.width[e]!;
      element.dryBulb = dryBulb;
      element.humidityRatio = humidityRatio;
      element.liquidIn = liquid[l]!;
      element.liquidOut = liquid[l + 1]!;
      element.liquidMean = (liquid[l]! + liquid[l + 1]!) / 2;
      element.wetnessIn = wetness[l]!;
      element.wetnessMean = middleWetness[l]!;
      element.wetnessOut = wetness[l + 1]!;
      solveElement(coil, e, e, passes, work);
      work.heat[e] = element.heat;
      work.efficiency[e] = element.surfaceEfficiency;
      c.heat += element.heat;
      c.wetRows += width * work.wet[e]!;
      c.wetEfficiency += width * work.wet[e]! * element.surfaceEfficiency;
      const drained = width * inlet.dryAirFlow * (humidityRatio - element.leavingHumidityRatio);
      c.condensate += drained;
      const carried = drained === 0 ? 0 : drained * condensedWaterEnthalpy(element.condensateTemperature);
      c.condensateEnthalpy += carried;
      mixedMoisture += width * element.leavingHumidityRatio;
      mixedEnthalpy += width * enthalpyFromHumidityRatio(element.leavingDryBulb, element.leavingHumidityRatio);
      first = Math.min(first, Math.max(0, l - 1));
      end = Math.max(end, l);
      addToBalance(work, levels, l, first, end);
    }
    passRow(work, first, end);
    const leaving = dryBulbFromEnthalpy(mixedEnthalpy, mixedMoisture);
    c.sensibleHeat += c.dryAirFlow * moistAirSpecificHeat(humidityRatio) * (dryBulb - leaving);
    dryBulb = leaving;
    humidityRatio = mixedMoisture;
    work.rowDryBulb[r] = dryBulb;
    work.rowHumidityRatio[r] = humidityRatio;
  }
  return largestImbalance(work, levels);
}
