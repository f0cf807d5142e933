import { finEfficiency, surfaceEfficiency } from "#component/finned-surface/fin-efficiency";
import {
  condensedWaterEnthalpy,
  dryBulbFromEnthalpy,
  enthalpyFromHumidityRatio,
  moistAirSpecificHeat,
} from "#fluid/moist-air";
import { saturationHumidityRatio, setSaturationHumidityRatios } from "#fluid/saturation";
import type { Coil } from "./coil.ts";
import type { CoilWork } from "./performance.ts";

/** J/kg, of vapour at 0 °C and what a kelvin takes off the latent heat: h_g − h_f of the air relations in use. */
const latentHeatAtZero = 2_501_000;
const latentHeatFall = 4186 - 1860;

/**
 * Latent heat that condensing vapour gives up at a temperature, by the air relations in use.
 *
 * @param temperature °C, -60…90: of the surface
 * @returns J/kg: h_g − h_f
 * @outside linear
 * @example latentHeat(10) // 2477740 ± 1
 * @source definition 2501 kJ/kg and the specific heats of vapour and water
 */
export function latentHeat(temperature: number): number {
  return latentHeatAtZero - latentHeatFall * temperature;
}

/** K by which a surface temperature may move in a pass without another being made, and the most passes. */
const farMove = 0.3;
const mostPasses = 8;

/**
 * Solves one element (the tubes of a row that belong to one water level) for the air and the liquid that enter it: dry,
 * wet by the enthalpy potential, or partly wet, whichever moves more heat. Results go to `work.element`, root and surface
 * temperature to `work.root` and `work.surface`, where the next solution starts.
 *
 * @param coil record: the coil
 * @param e count, 0…255: element of the coil
 * @param slot count, 0…4095: place of its surface temperatures in the work
 * @param passes count, 1…3: times that the wet surface temperature is improved
 * @param work record: air, pressure and liquid in `work.element`, coefficients in `work.c`
 * @outside keeps answering
 * @example (() => { const work = { c: { tubeCoefficient: 1000, tubeCoefficientSlope: 0, airCoefficient: 50, surfaceEfficiency: 1,
 *   airCapacity: 1000, liquidCapacity: 1e9, lanes: 1 }, element: { dryBulb: 20, humidityRatio: 0.005, liquidIn: 60, liquidMean: 60 }, liquid: [60], root: [60], surface: [60], wet: [0] }; solveElement({ insideRow: 1, foulingRow: 0, wallRow: 0,
 *   outsideRow: 10, width: [1], rows: 1, levels: 1 }, 0, 0, 1, work); return work.element.leavingDryBulb; })() // 31.3388 ± 1e-3
 * @source derived-here ashrae-hvac-2020-ch23 wet surface; the larger of dry and wet by braun-1989
 */
export function solveElement(coil: Coil, e: number, slot: number, passes: number, work: CoilWork): void {
  const { c, element } = work;
  const { liquidIn, liquidMean } = element;
  const inside =
    1 / ((c.tubeCoefficient + c.tubeCoefficientSlope * (liquidMean - work.liquid[0]!)) * coil.insideRow) +
    coil.foulingRow;
  element.behindRoot = inside + coil.wallRow;
  const wasWet = work.wet[slot] !== 0;
  solveDry(coil, e, slot, work);
  // No point of the surface is colder than the liquid: with that above the dew point nothing condenses.
  if (liquidIn >= element.dryBulb) return;
  if (element.wetnessIn >= element.humidityRatio) return;
  if (!wasWet && !canCondense(coil, e, work)) return;
  solveWet(coil, e, slot, passes, work);
}

function solveDry(coil: Coil, e: number, slot: number, work: CoilWork): void {
  const { c, element } = work;
  const { liquidIn, behindRoot } = element;
  const outside = 1 / (c.airCoefficient * c.surfaceEfficiency * coil.outsideRow);
  // Rows that share a level; a lane is the part of a tube's length that the fine grid takes at a time.
  const perLevel = coil.rows / coil.levels;
  const width = coil.width[e]! / c.lanes;
  // Air relaxes to the tube it passes; the tube's liquid warms along its length (air unmixed, liquid mixed: exact).
  const reach = 1 - Math.exp(-1 / ((outside + behindRoot) * c.airCapacity));
  const liquidShare = (coil.width[e]! / perLevel) * c.liquidCapacity;
  const slope = liquidShare * (1 - Math.exp((-reach * c.airCapacity * perLevel) / (c.lanes * c.liquidCapacity)));
  const heat = slope * (element.dryBulb - liquidIn);
  element.heat = heat;
  element.airSlope = slope;
  element.liquidSlope = slope;
  element.leavingDryBulb = element.dryBulb - heat / (width * c.airCapacity);
  element.leavingHumidityRatio = element.humidityRatio;
  element.condensateTemperature = 0;
  element.surfaceEfficiency = c.surfaceEfficiency;
  work.wet[slot] = 0;
  if (Number.isNaN(work.root[slot]!)) {
    const root = element.liquidMean + (heat / width) * behindRoot;
    work.root[slot] = root;
    work.surface[slot] = root + 0.2 * (element.dryBulb - root);
  }
}

function solveWet(coil: Coil, e: number, slot: number, passes: number, work: CoilWork): void {
  const { c, element } = work;
  const { pressure, liquidIn, liquidMean, liquidOut, wetnessIn, wetnessMean, behindRoot } = element;
  const { bank } = coil;
  const finShare = bank.finArea / bank.outsideArea;
  const lewis = coil.surface.lewisFactor;
  const air = element.dryBulb;
  const moisture = element.humidityRatio;
  const capacity = c.airCapacity;
  const perLevel = coil.rows / coil.levels;
  const width = coil.width[e]! / c.lanes;
  const liquidShare = (coil.width[e]! / perLevel) * c.liquidCapacity;
  let root = Math.min(air, Math.max(liquidIn, work.root[slot]!));
  let surface = Math.min(air, Math.max(root, work.surface[slot]!));
  // K of dry-bulb difference that a kg/kg of moisture is worth: θ = t + κ W is the driving potential in kelvin.
  const kappa = (latentHeatAtZero - latentHeatFall * surface) / moistAirSpecificHeat(moisture);
  const airPotential = air + kappa * moisture;
  const potential = airPotential - liquidIn - kappa * wetnessIn;
  // The chord of the saturation curve over the liquid's whole rise; it never reaches the air's own temperature.
  const liquidRise =
    liquidOut < air
      ? chord(kappa, liquidIn, wetnessIn, liquidOut, element.wetnessOut)
      : chord(kappa, liquidIn, wetnessIn, air, saturationHumidityRatio(air, pressure));

  const { pair, pairSaturated } = work;
  pair[0] = root;
  pair[1] = surface;
  recallSaturation(slot, work);
  let wetnessRoot = pairSaturated[0]!;
  let wetnessSurface = pairSaturated[1]!;
  const coefficient = c.airCoefficient * c.wetFactor;
  const { wetTransfers: transfers, wetSensibleReach: sensibleReach } = c;
  const latentReach = lewis === 1 ? sensibleReach : 1 - Math.exp(-transfers / lewis);
  const perHeat = 1 / width;
  const liquidReach = liquidShare / liquidRise;
  const seen = (capacity * perLevel * liquidRise) / (c.lanes * c.liquidCapacity);
  let heat = 0;
  let slope = 0;
  let efficiency = 1;
  let moved = 0;
  for (let pass = 0; pass < passes || (moved > farMove && pass < mostPasses); pass++) {
    const surfaceBefore = surface;
    const rootRise = chord(kappa, liquidMean, wetnessMean, root, wetnessRoot);
    const finRise = chord(kappa / lewis, root, wetnessRoot, surface, wetnessSurface);
    efficiency = surfaceEfficiency(
      finShare,
      finEfficiency(coefficient * finRise, coil.finConductivity, coil.finThickness, bank.finLength),
    );
    const reachOnSurface = meanReach(sensibleReach, latentReach, air - surface, kappa * (moisture - wetnessSurface));
    const outside = 1 / ((lewis === 1 ? transfers : -Math.log(1 - reachOnSurface)) * capacity * efficiency);
    const reach = 1 - Math.exp(-1 / ((outside + rootRise * behindRoot) * capacity));
    slope = liquidReach * (1 - Math.exp(-reach * seen));
    heat = slope * potential;
    const perWidth = heat * perHeat;
    root = Math.min(air, Math.max(liquidIn, liquidMean + perWidth * behindRoot));
    // The surface that would do the same if it were one temperature all over, by one Newton step on the saturation curve.
    const surfacePotential = airPotential - perWidth / (capacity * reachOnSurface);
    const miss = surfacePotential - surface - kappa * wetnessSurface;
    surface += miss / (1 + kappa * saturationSlope(surface, wetnessSurface));
    surface = Math.min(air, Math.max(root, surface));
    moved = Math.abs(surface - surfaceBefore);
    pair[0] = root;
    pair[1] = surface;
    setSaturationHumidityRatios(pair, 2, pressure, pairSaturated);
    wetnessRoot = pairSaturated[0]!;
    wetnessSurface = pairSaturated[1]!;
  }
  keepSaturation(slot, work);
  work.root[slot] = root;
  work.surface[slot] = surface;
  const wetShare = wetShareOf(moisture, surface, wetnessSurface);
  if (wetShare === 0) return;

  // The dry bulb has relaxed to the surface; moisture follows from energy. No more heat than leaves the air as moist as the
  // surface is.
  const leaving = surface + (air - surface) * (1 - sensibleReach);
  const drained = condensedWaterEnthalpy(surface);
  const enthalpy = enthalpyFromHumidityRatio(air, moisture);
  const flow = width * c.dryAirFlow;
  const driest = enthalpyFromHumidityRatio(leaving, wetnessSurface) + (moisture - wetnessSurface) * drained;
  if (!(heat > element.heat)) return;
  const wetHeat = Math.max(element.heat, Math.min(heat, flow * (enthalpy - driest)));
  const before = enthalpy - moisture * drained - wetHeat / flow - enthalpyFromHumidityRatio(leaving, 0);
  const perMoisture = enthalpyFromHumidityRatio(leaving, 1) - enthalpyFromHumidityRatio(leaving, 0) - drained;
  const wetLeaving = Math.min(moisture, Math.max(wetnessSurface, before / perMoisture));
  // Dry and wet solution are mixed by the wet share, and the dry bulb follows from energy.
  const dry = 1 - wetShare;
  element.heat = dry * element.heat + wetShare * wetHeat;
  element.airSlope = dry * element.airSlope + wetShare * slope;
  element.liquidSlope = dry * element.liquidSlope + wetShare * slope * liquidRise;
  element.leavingHumidityRatio = moisture - wetShare * (moisture - wetLeaving);
  const left = enthalpy - element.heat / flow - (moisture - element.leavingHumidityRatio) * drained;
  element.leavingDryBulb = dryBulbFromEnthalpy(left, element.leavingHumidityRatio);
  element.condensateTemperature = surface;
  element.surfaceEfficiency = efficiency;
  work.wet[slot] = wetShare;
}

/** Reads saturation at the pair's temperatures: what the slot's last solution has ended with, where it began there now. */
function recallSaturation(slot: number, work: CoilWork): void {
  const { askedAt, saturated, pair, pairSaturated } = work;
  const { pressure } = work.element;
  if (work.saturatedPressure !== pressure) {
    askedAt.fill(Number.NaN);
    work.saturatedPressure = pressure;
  }
  const i = 2 * slot;
  if (askedAt[i] === pair[0] && askedAt[i + 1] === pair[1]) {
    pairSaturated[0] = saturated[i]!;
    pairSaturated[1] = saturated[i + 1]!;
  } else setSaturationHumidityRatios(pair, 2, pressure, pairSaturated);
}

/** Keeps the pair's saturation for the slot's next solution. */
function keepSaturation(slot: number, { askedAt, saturated, pair, pairSaturated }: CoilWork): void {
  const i = 2 * slot;
  askedAt[i] = pair[0]!;
  askedAt[i + 1] = pair[1]!;
  saturated[i] = pairSaturated[0]!;
  saturated[i + 1] = pairSaturated[1]!;
}

/** Rise of the potential θ = t + κ W_s per kelvin between two temperatures, or at them when they are one. */
function chord(kappa: number, low: number, wetnessLow: number, high: number, wetnessHigh: number): number {
  const difference = high - low;
  if (Math.abs(difference) > 0.01) return 1 + (kappa * (wetnessHigh - wetnessLow)) / difference;
  return 1 + kappa * saturationSlope(low, wetnessLow);
}

/** 1/K, dW_s/dt by Clausius and Clapeyron with Magnus' exponent; good to a part in a hundred, where it only guides. */
function saturationSlope(temperature: number, wetness: number): number {
  const reach = 243.12 + temperature;
  return (wetness * (1 + wetness / 0.622) * 17.62 * 243.12) / (reach * reach);
}

/** Reach of heat and moisture together, weighted by what each has to give. */
function meanReach(sensible: number, latent: number, byHeat: number, byMoisture: number): number {
  if (sensible === latent || !(byHeat + byMoisture > 1e-6)) return sensible;
  const mean = (sensible * byHeat + latent * byMoisture) / (byHeat + byMoisture);
  return Math.min(0.999999999, Math.max(Math.min(sensible, latent), Math.min(Math.max(sensible, latent), mean)));
}

/**
 * Whether water can condense: the dry fin's mean is colder than the dew point. What a fin's cold root would condense
 * before that, its warm rim would give back.
 */
function canCondense(coil: Coil, e: number, work: CoilWork): boolean {
  const { c, element } = work;
  const perWidth = (element.heat * c.lanes) / coil.width[e]!;
  const root = element.liquidMean + perWidth * element.behindRoot;
  const middle = (element.dryBulb + element.leavingDryBulb) / 2;
  const mean = Math.max(root, middle - perWidth / (c.airCoefficient * coil.outsideRow));
  return saturationHumidityRatio(mean, element.pressure) < element.humidityRatio;
}

/** K below the dew point at which a fin's mean surface counts as wet all over. */
const fullyWetBelow = 0.5;

/**
 * How much of an element is wet, from its wet solution: nothing where the wet fin's mean would be at the dew point (no film
 * forms, and the dry solution holds), everything half a kelvin below it, as the condensate of the cold roots runs down over
 * the rest. The ramp keeps heat and moisture without a step where a row turns wet.
 */
function wetShareOf(moisture: number, surface: number, wetnessSurface: number): number {
  const above = moisture - wetnessSurface;
  return above > 0 ? Math.min(1, above / (fullyWetBelow * saturationSlope(surface, wetnessSurface))) : 0;
}
