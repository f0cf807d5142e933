import { dryAirPressureDrop, wetToDry } from "#component/coil/air-pressure";
import type { Coil } from "#component/coil/coil";
import type { CoilInlet, CoilPerformance } from "#component/coil/performance";
import { peakToMeanAfterResistance } from "#component/fitting-loss";
import type { Liquid } from "#fluid/liquid";
import { airStream, settle } from "#fluid/mixing";
import { condensedWaterEnthalpy, dryBulbFromEnthalpy, enthalpyFromHumidityRatio } from "#fluid/moist-air";
import { saturationHumidityRatio } from "#fluid/saturation";
import type { Air } from "../air.ts";
import type { SectionRating } from "../contract.ts";
import { settleDryBulb } from "../settle-state.ts";
import { absolutePressure, actualAirflow, airDensity, endRating, enthalpyFlow } from "../station.ts";
import type { CoilBlock } from "./block.ts";

/** What every coil section reports about its air side. */
export interface CoilAirFigures extends SectionRating {
  /** Pa at this flow with the core dry and wet all over. */
  dryLoss: number;
  wetLoss: number;
  /** m/s on the fins where the flow peaks. */
  peakFaceVelocity: number;
}

/** Zeros for `CoilAirFigures`, to be spread. */
export const noCoilAirFigures = { dryLoss: 0, wetLoss: 0, peakFaceVelocity: 0 } as const;

/** Room that a coil's rating keeps between one call and the next. */
export function createCoilInlet(): CoilInlet {
  const liquid: Liquid = { substance: "water", massFraction: 0 };
  return {
    dryAirFlow: 0,
    dryBulb: 0,
    humidityRatio: 0,
    pressure: 0,
    coldestFilament: 0,
    liquid,
    liquidFlow: 0,
    liquidTemperature: 0,
  };
}

/** The air of one of the block's coils. */
export function setInletAir(block: CoilBlock, air: Air, inlet: CoilInlet): void {
  inlet.dryAirFlow = air.dryAirFlow / block.stacked;
  inlet.dryBulb = air.dryBulb;
  inlet.humidityRatio = air.humidityRatio;
  inlet.pressure = absolutePressure(air);
  inlet.coldestFilament = air.coldestFilament;
}

/** Sets the leaving air of a liquid coil from its performance (of one of `stacked` coils); energy closes exactly. */
export function setLeavingAir(block: CoilBlock, performance: CoilPerformance, out: SectionRating): void {
  const { entering, leaving } = out;
  const { stacked } = block;
  out.heatToAir = -performance.heat * stacked;
  out.waterToAir = -performance.condensate * stacked;
  out.waterEnthalpyToAir = -performance.condensateEnthalpy * stacked;
  leaving.humidityRatio = entering.humidityRatio - (performance.condensate * stacked) / entering.dryAirFlow;
  if (performance.condensate > 0 && entering.freeLiquid > 0) {
    // Drops and fog meet wet fins and drain with the condensate, as cold as they came.
    out.waterToAir -= entering.freeLiquid;
    out.waterEnthalpyToAir -= entering.freeLiquid * condensedWaterEnthalpy(entering.dryBulb);
    leaving.freeLiquid = 0;
  }
  closeEnergy(out);
  const filament = entering.coldestFilament < entering.dryBulb ? performance.leavingFilament : leaving.dryBulb;
  const coldest = performance.heat > 0 ? Math.max(filament, performance.coldestSurface) : filament;
  leaving.coldestFilament = Math.min(leaving.dryBulb, coldest);
}

/** Sets the dry bulb from heat and water that passed; drops that the warmer air can hold are taken up as vapour. */
export function closeEnergy(out: SectionRating): void {
  const { entering, leaving } = out;
  const enthalpy = enthalpyFlow(entering) + out.heatToAir + out.waterEnthalpyToAir;
  if (leaving.freeLiquid > 0 && out.heatToAir > 0) {
    const flow = entering.dryAirFlow;
    const water = leaving.humidityRatio + leaving.freeLiquid / flow;
    const state = settle(enthalpy / flow, water, absolutePressure(entering), airStream(flow, 0, 0));
    leaving.humidityRatio = state.humidityRatio;
    leaving.freeLiquid = state.freeWater * flow;
  }
  out.waterToAir -= settleDryBulb(leaving, enthalpy);
}

/**
 * °C that the fins have to give the air so that it is `wanted` at the end of the section: drops, fog or snow that it
 * carries take heat of the air when they are taken up as vapour.
 */
export function wantedBehindFins(entering: Air, wanted: number): number {
  const { dryAirFlow, dryBulb, humidityRatio, freeLiquid } = entering;
  if (freeLiquid === 0 || wanted <= dryBulb) return wanted;
  const carried = freeLiquid / dryAirFlow;
  const vapour = Math.min(humidityRatio + carried, saturationHumidityRatio(wanted, absolutePressure(entering)));
  const liquid = humidityRatio + carried - vapour;
  const enthalpy = enthalpyFromHumidityRatio(wanted, vapour) + liquid * condensedWaterEnthalpy(wanted);
  return dryBulbFromEnthalpy(enthalpy - carried * condensedWaterEnthalpy(dryBulb), humidityRatio);
}

/** Losses dry and wet, what of the wet one applies, and the leaving pressures. */
export function setCoilPressure(block: CoilBlock, wetShare: number, out: CoilAirFigures): void {
  const { entering, leaving } = out;
  const { coil } = block;
  const flow = entering.dryAirFlow / block.stacked;
  setCoilLosses(coil, flow, entering, leaving.dryBulb, out);
  out.totalPressureLoss = out.dryLoss + wetShare * (out.wetLoss - out.dryLoss);
  setFaceVelocity(block, out);
  endCoilRating(block, out);
}

/** Losses of one coil at its flow, dry and wet all over. */
export function setCoilLosses(
  coil: Coil,
  flow: number,
  entering: Air,
  leavingDryBulb: number,
  out: CoilAirFigures,
): void {
  const pressure = absolutePressure(entering);
  out.dryLoss = dryAirPressureDrop(coil, flow, entering.humidityRatio, entering.dryBulb, leavingDryBulb, pressure);
  out.wetLoss = out.dryLoss * wetToDry(coil, flow, (entering.dryBulb + leavingDryBulb) / 2);
}

/** Mean and peak velocity on the fins. */
export function setFaceVelocity(block: CoilBlock, out: CoilAirFigures): void {
  out.faceVelocity = actualAirflow(out.entering) / block.faceArea;
  out.peakFaceVelocity = out.faceVelocity * out.entering.peakToMeanVelocity;
}

/** The core evens the flow; the leaving pressures follow from the loss. */
export function endCoilRating(block: CoilBlock, out: CoilAirFigures): void {
  const head = 0.5 * airDensity(out.entering) * out.faceVelocity * out.faceVelocity;
  const coefficient = head > 0 ? Math.max(0, out.totalPressureLoss) / head : 0;
  out.leaving.peakToMeanVelocity = Math.max(1, peakToMeanAfterResistance(out.entering.peakToMeanVelocity, coefficient));
  endRating(out, block.cabinetArea);
}
