import { liquidDensity, liquidViscosity } from "#fluid/liquid";
import { settle } from "#fluid/mixing";
import { condensedWaterEnthalpy, dryBulbFromEnthalpy, enthalpyFromHumidityRatio } from "#fluid/moist-air";
import { saturationHumidityRatio } from "#fluid/saturation";
import { tubeCoefficient } from "./coefficients.ts";
import type { Coil } from "./coil.ts";
import type { CoilInlet, CoilPerformance, CoilWork } from "./performance.ts";

/**
 * Writes sums and mean values of the last march into the performance; what leaves follows from the balances alone.
 *
 * @param coil record: the coil
 * @param inlet record: air and liquid that enter
 * @param work record: after the march
 * @param out record: receives the performance
 * @example (() => { const out = {}; gatherPerformance({ rows: 0, row: [], bank: { tubeInsideDiameter: 0.015 }, bore: 0.00018, circuits: 1,
 *   finnedLength: 1, turbulators: false, surface: { tubeHeatFactor: 1 } }, { dryAirFlow: 1, dryBulb: 30, humidityRatio: 0.01,
 *   coldestFilament: 30, liquid: { substance: "water", massFraction: 0 }, liquidFlow: 1, liquidTemperature: 10 },
 *   { c: { heat: 10246, condensate: 0, condensateEnthalpy: 0, liquidCapacity: 4190 }, liquid: [10] }, out);
 *   return out.leavingDryBulb; })() // 20 ± 1e-3
 * @source definition balances
 */
export function gatherPerformance(coil: Coil, inlet: CoilInlet, work: CoilWork, out: CoilPerformance): void {
  const { c } = work;
  out.heat = c.heat;
  out.sensibleHeat = c.sensibleHeat;
  out.condensate = c.condensate;
  out.condensateEnthalpy = c.condensateEnthalpy;
  out.leavingHumidityRatio = inlet.humidityRatio - c.condensate / inlet.dryAirFlow;
  const entering = enthalpyFromHumidityRatio(inlet.dryBulb, inlet.humidityRatio);
  const leaving = entering - (c.heat + c.condensateEnthalpy) / inlet.dryAirFlow;
  out.leavingDryBulb = dryBulbFromEnthalpy(leaving, out.leavingHumidityRatio);
  if (c.condensate > 0) drainFog(inlet, leaving, work, out);
  out.leavingLiquid = inlet.liquidTemperature + c.heat / c.liquidCapacity;
  out.airReynolds = c.airReynolds;
  out.airCoefficient = c.airCoefficient;
  out.wetFactor = c.wetFactor;
  out.finEfficiency = c.finEfficiency;
  out.surfaceEfficiency = c.surfaceEfficiency;
  const mean = (inlet.liquidTemperature + out.leavingLiquid) / 2;
  out.tubeCoefficient = tubeCoefficient(coil, inlet.liquid, inlet.liquidFlow, mean);
  const massFlux = inlet.liquidFlow / (coil.circuits * coil.bore);
  out.tubeVelocity = massFlux / liquidDensity(inlet.liquid, mean);
  out.tubeReynolds = (massFlux * coil.bank.tubeInsideDiameter) / liquidViscosity(inlet.liquid, mean);
  gatherWalls(coil, inlet, work, out);
}

/**
 * Air that was near saturation and met a much colder surface would leave as fog: the straight line to the surface passes
 * above the saturation curve. The fins catch it; it drains with the condensate and its heat stays in the air.
 */
function drainFog(inlet: CoilInlet, enthalpy: number, work: CoilWork, out: CoilPerformance): void {
  const { pressure, dryAirFlow } = inlet;
  if (out.leavingHumidityRatio <= saturationHumidityRatio(out.leavingDryBulb, pressure)) return;
  const { fog } = work;
  settle(enthalpy, out.leavingHumidityRatio, pressure, fog);
  out.leavingDryBulb = fog.dryBulb;
  out.leavingHumidityRatio = fog.humidityRatio;
  out.condensate += fog.freeWater * dryAirFlow;
  out.condensateEnthalpy += fog.freeWater * dryAirFlow * condensedWaterEnthalpy(fog.dryBulb);
  out.sensibleHeat = dryAirFlow * work.c.specificHeat * (inlet.dryBulb - fog.dryBulb);
}

/** Coldest wall and surface, the wet share, and what is left of the cold filament behind the rows. */
function gatherWalls(coil: Coil, inlet: CoilInlet, work: CoilWork, out: CoilPerformance): void {
  const { c, liquid } = work;
  let coldestWall = Number.POSITIVE_INFINITY;
  let coldestSurface = Number.POSITIVE_INFINITY;
  let colder = Math.min(0, inlet.coldestFilament - inlet.dryBulb);
  const outside = 1 / (c.airCoefficient * c.surfaceEfficiency * coil.outsideRow);
  let e = 0;
  for (let r = 0; r < coil.rows; r++) {
    let reach = 0;
    for (; e < coil.row.length && coil.row[e] === r; e++) {
      const l = coil.level[e]!;
      const coefficient = c.tubeCoefficient + c.tubeCoefficientSlope * ((liquid[l]! + liquid[l + 1]!) / 2 - liquid[0]!);
      const film = 1 / (coefficient * coil.insideRow);
      const behind = film + coil.foulingRow + coil.wallRow;
      const flux = work.heat[e]! / coil.width[e]! + colder / (outside + behind);
      for (let end = 0; end < 2; end++) {
        const there = liquid[l + end]!;
        coldestWall = Math.min(coldestWall, there + flux * (film + coil.foulingRow));
        coldestSurface = Math.min(coldestSurface, there + flux * behind);
      }
      reach += coil.width[e]! * (1 - Math.exp(-1 / ((outside + behind) * c.airCapacity)));
    }
    colder *= 1 - reach;
  }
  out.wetShare = c.wetRows / coil.rows;
  out.wetSurfaceEfficiency = c.wetRows > 0 ? c.wetEfficiency / c.wetRows : c.surfaceEfficiency;
  out.coldestTubeWall = coldestWall;
  out.coldestSurface = coldestSurface;
  out.leavingFilament = out.leavingDryBulb + colder;
}
