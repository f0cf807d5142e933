import {
  DRY_AIR_SPECIFIC_HEAT,
  ICE_ENTHALPY_AT_ZERO,
  ICE_SPECIFIC_HEAT,
  LIQUID_SPECIFIC_HEAT,
  VAPOUR_ENTHALPY_AT_ZERO,
  VAPOUR_SPECIFIC_HEAT,
} from "#fluid/moist-air";
import { saturationHumidityRatio } from "#fluid/saturation";
import type { Air } from "./air.ts";
import { absolutePressure } from "./station.ts";

/** °C: as warm as ice gets. */
const meltingIce = -1e-9;

/**
 * Sets the dry bulb of `air` so that its enthalpy flow is `enthalpyFlow` (W), vapour and free liquid as they stand.
 * Where the enthalpy lies between ice and water at 0 °C, the part of the liquid that has melted is taken out of the
 * stream (it drains at 0 °C, without enthalpy). Gives the kg/s that so drain, almost always 0.
 */
export function settleDryBulb(air: Air, enthalpyFlow: number): number {
  const { dryAirFlow, humidityRatio, freeLiquid } = air;
  const vapour = dryAirFlow * humidityRatio * VAPOUR_ENTHALPY_AT_ZERO;
  const heatFlow = dryAirFlow * (DRY_AIR_SPECIFIC_HEAT + humidityRatio * VAPOUR_SPECIFIC_HEAT);
  const asLiquid = (enthalpyFlow - vapour) / (heatFlow + freeLiquid * LIQUID_SPECIFIC_HEAT);
  if (asLiquid >= 0 || freeLiquid === 0) {
    air.dryBulb = asLiquid;
    return 0;
  }
  const asIce =
    (enthalpyFlow - vapour - freeLiquid * ICE_ENTHALPY_AT_ZERO) / (heatFlow + freeLiquid * ICE_SPECIFIC_HEAT);
  if (asIce < 0) {
    air.dryBulb = asIce;
    return 0;
  }
  const heat = enthalpyFlow - vapour;
  const ice = (heat - heatFlow * meltingIce) / (ICE_ENTHALPY_AT_ZERO + ICE_SPECIFIC_HEAT * meltingIce);
  air.freeLiquid = Math.min(freeLiquid, Math.max(0, ice));
  air.dryBulb = ice > 0 ? meltingIce : heat / heatFlow;
  return freeLiquid - air.freeLiquid;
}

/**
 * Sets dry bulb, humidity ratio and free liquid of `air` from its enthalpy flow (W) and vapour (kg/kg): what the air
 * cannot hold as vapour becomes fog, carried as free liquid. Liquid that is there already stays liquid: drops do not
 * evaporate in the moment that a section takes. Gives the kg/s of meltwater that drain, as `settleDryBulb` does.
 */
export function settleState(air: Air, enthalpyFlow: number, humidityRatio: number): number {
  const carried = air.freeLiquid;
  air.humidityRatio = humidityRatio;
  const drained = settleDryBulb(air, enthalpyFlow);
  const pressure = absolutePressure(air);
  if (humidityRatio <= saturationHumidityRatio(air.dryBulb, pressure)) return drained;
  return condense(air, enthalpyFlow, humidityRatio, carried, pressure);
}

/** Lets vapour condense until the air is just saturated: secant steps in the humidity ratio, each state exact in energy. */
function condense(air: Air, enthalpyFlow: number, humidityRatio: number, carried: number, pressure: number): number {
  let drained = 0;
  const excess = (vapour: number): number => {
    air.humidityRatio = vapour;
    air.freeLiquid = carried + air.dryAirFlow * (humidityRatio - vapour);
    drained = settleDryBulb(air, enthalpyFlow);
    return vapour - saturationHumidityRatio(air.dryBulb, pressure);
  };
  let high = humidityRatio;
  let highExcess = excess(high);
  let low = humidityRatio - highExcess;
  let lowExcess = excess(low);
  for (let count = 0; count < 60 && lowExcess !== highExcess; count++) {
    // The excess rises with the vapour kept; regula falsi with the Illinois halving keeps the root between.
    const next = low - (lowExcess * (high - low)) / (highExcess - lowExcess);
    const nextExcess = excess(next);
    if (Math.abs(nextExcess) < 1e-14) break;
    if (nextExcess > 0) {
      high = next;
      highExcess = nextExcess;
      lowExcess /= 2;
    } else {
      low = next;
      lowExcess = nextExcess;
      highExcess /= 2;
    }
  }
  return drained;
}
