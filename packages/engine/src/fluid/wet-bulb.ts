import type { AirRelations } from "./enhancement.ts";
import {
  DRY_AIR_SPECIFIC_HEAT,
  enthalpyFromHumidityRatio,
  HANDBOOK_ICE_ENTHALPY_AT_ZERO,
  ICE_ENTHALPY_AT_ZERO,
  ICE_SPECIFIC_HEAT,
  LIQUID_SPECIFIC_HEAT,
  VAPOUR_ENTHALPY_AT_ZERO,
  VAPOUR_SPECIFIC_HEAT,
} from "./moist-air.ts";
import { MASS_RATIO, saturatedVapourPressureAtFreezing, saturationHumidityRatio } from "./saturation.ts";
import { saturationCrossing, saturationGuess } from "./saturation-crossing.ts";

function iceEnthalpyAtZero(relations: AirRelations): number {
  return relations === "ideal" ? HANDBOOK_ICE_ENTHALPY_AT_ZERO : ICE_ENTHALPY_AT_ZERO;
}

/**
 * Enthalpy of the water or ice on the wick, against liquid at 0 °C.
 *
 * @param wetBulb °C, -60…100: temperature of the wick, ice below 0 °C
 * @param relations choice, enhanced or ideal: the ideal relations carry the handbook's rounded ice
 * @returns J/kg: enthalpy
 * @outside linear, keeps answering
 * @example wickEnthalpy(-10, "enhanced") // -354400
 * @source ashrae-hof-2021-ch1 eq. 33, 35
 */
export function wickEnthalpy(wetBulb: number, relations: AirRelations): number {
  return wetBulb < 0 ? iceEnthalpyAtZero(relations) + ICE_SPECIFIC_HEAT * wetBulb : LIQUID_SPECIFIC_HEAT * wetBulb;
}

/**
 * Humidity ratio from dry bulb and thermodynamic wet bulb: h + (Ws* − W) h_w* = hs*, the wick being ice below 0 °C.
 *
 * @param dryBulb °C, -60…90: dry-bulb temperature
 * @param wetBulb °C, -60…90: thermodynamic wet-bulb temperature, at most the dry bulb
 * @param pressure Pa, 50000…110000: absolute pressure
 * @param relations choice, enhanced or ideal: with or without the enhancement factor
 * @returns kg/kg: humidity ratio; negative when the wet bulb is lower than any air at that dry bulb can have
 * @outside −100…200 °C throws; a wet bulb above the dry bulb gives supersaturated air
 * @throws RangeError when the wet bulb is not a number in −100…200 °C
 * @example humidityRatioFromWetBulb(30, 22.0012, 101325) // 0.013375 ± 2e-5
 * @source ashrae-hof-2021-ch1 eq. 33, 35
 */
export function humidityRatioFromWetBulb(
  dryBulb: number,
  wetBulb: number,
  pressure: number,
  relations: AirRelations = "enhanced",
): number {
  const bulb = wickEnthalpy(wetBulb, relations);
  const saturated = saturationHumidityRatio(wetBulb, pressure, relations);
  return (
    (saturated * (VAPOUR_ENTHALPY_AT_ZERO + VAPOUR_SPECIFIC_HEAT * wetBulb - bulb) -
      DRY_AIR_SPECIFIC_HEAT * (dryBulb - wetBulb)) /
    (VAPOUR_ENTHALPY_AT_ZERO + VAPOUR_SPECIFIC_HEAT * dryBulb - bulb)
  );
}

/**
 * Thermodynamic wet bulb from dry bulb and humidity ratio. Near freezing two wet bulbs can give one humidity ratio,
 * water just above 0 °C and ice just below: the answer is then the water.
 *
 * @param dryBulb °C, -60…90: dry-bulb temperature
 * @param humidityRatio kg/kg, 0 or more: humidity ratio, vapour only
 * @param pressure Pa, 50000…110000: absolute pressure
 * @param relations choice, enhanced or ideal: with or without the enhancement factor
 * @returns °C: wet-bulb temperature, at most the dry bulb
 * @outside air at or above saturation answers with its dry bulb; bulbs below −100 °C answer −100 °C
 * @throws RangeError when an input is not a number
 * @example wetBulbFromHumidityRatio(30, 0.0133747, 101325) // 22.00 ± 0.02
 * @source ashrae-hof-2021-ch1 eq. 33, 35
 */
export function wetBulbFromHumidityRatio(
  dryBulb: number,
  humidityRatio: number,
  pressure: number,
  relations: AirRelations = "enhanced",
): number {
  const enthalpy = enthalpyFromHumidityRatio(dryBulb, humidityRatio);
  return Math.min(bulb(enthalpy, humidityRatio, pressure, relations), dryBulb);
}

/**
 * Thermodynamic wet bulb from enthalpy and humidity ratio. Where the water is more than the air can hold at that
 * enthalpy, the same equation gives the temperature of the fog: saturated air with the rest as drops or ice.
 *
 * @param enthalpy J/kg, -60000…8000000: enthalpy per kg of dry air
 * @param humidityRatio kg/kg, 0 or more: all water, vapour and free, per kg of dry air
 * @param pressure Pa, 50000…110000: absolute pressure
 * @param relations choice, enhanced or ideal: with or without the enhancement factor
 * @returns °C: wet-bulb temperature; exactly 0 where a fog is part drops, part ice
 * @outside bulbs outside −100…105 °C answer the nearer of the two
 * @throws RangeError when an input is not a number
 * @example wetBulbFromEnthalpy(64361, 0.0133747, 101325) // 22.00 ± 0.02
 * @source ashrae-hof-2021-ch1 eq. 33, 35
 */
export function wetBulbFromEnthalpy(
  enthalpy: number,
  humidityRatio: number,
  pressure: number,
  relations: AirRelations = "enhanced",
): number {
  return bulb(enthalpy, humidityRatio, pressure, relations);
}

/**
 * Temperature at which saturated air (no free water) has a given enthalpy: the inverse of the saturation curve that
 * coil surfaces follow.
 *
 * @param enthalpy J/kg, -60000…8000000: enthalpy per kg of dry air
 * @param pressure Pa, 50000…110000: absolute pressure
 * @param relations choice, enhanced or ideal: with or without the enhancement factor
 * @returns °C: temperature of saturated air
 * @outside temperatures outside −100…105 °C answer the nearer of the two
 * @throws RangeError when an input is not a number
 * @example saturatedDryBulbFromEnthalpy(57558, 101325) // 20.00 ± 0.02
 * @source ashrae-hof-2021-ch1 eq. 30
 */
export function saturatedDryBulbFromEnthalpy(
  enthalpy: number,
  pressure: number,
  relations: AirRelations = "enhanced",
): number {
  checkNumbers(enthalpy, 0, pressure);
  const vapour = saturatedVapourPressureAtFreezing(pressure, relations);
  const overIce = enthalpy < (VAPOUR_ENTHALPY_AT_ZERO * MASS_RATIO * vapour) / (pressure - vapour);
  const t = saturationCrossing(
    -enthalpy,
    DRY_AIR_SPECIFIC_HEAT,
    VAPOUR_ENTHALPY_AT_ZERO,
    VAPOUR_SPECIFIC_HEAT,
    pressure,
    saturationGuess(enthalpy, 0, 0, pressure),
    overIce,
    relations,
  );
  return overIce ? Math.min(t, 0) : Math.max(t, 0);
}

function checkNumbers(enthalpy: number, humidityRatio: number, pressure: number): void {
  if (!(Number.isFinite(enthalpy) && Number.isFinite(humidityRatio) && pressure > 0)) {
    throw new RangeError(
      `wet bulb: no answer for enthalpy ${enthalpy} J/kg, humidity ratio ${humidityRatio} kg/kg, pressure ${pressure} Pa`,
    );
  }
}

/** Wet bulb, water where water can be, else ice; between the two exactly 0 °C (only fog gets there). */
function bulb(h: number, W: number, pressure: number, relations: AirRelations): number {
  checkNumbers(h, W, pressure);
  // Surplus of enthalpy over a water bulb of 0 °C, whose liquid has none: positive means that the bulb is water.
  const vapour = saturatedVapourPressureAtFreezing(pressure, relations);
  const surplus = h - ((MASS_RATIO * vapour) / (pressure - vapour)) * VAPOUR_ENTHALPY_AT_ZERO;
  if (surplus >= 0) {
    const c = LIQUID_SPECIFIC_HEAT;
    const t = saturationCrossing(
      -h,
      DRY_AIR_SPECIFIC_HEAT + W * c,
      VAPOUR_ENTHALPY_AT_ZERO,
      VAPOUR_SPECIFIC_HEAT - c,
      pressure,
      saturationGuess(h, W, c, pressure),
      false,
      relations,
    );
    return Math.max(t, 0);
  }
  const iceAtZero = iceEnthalpyAtZero(relations);
  const t = saturationCrossing(
    -h + W * iceAtZero,
    DRY_AIR_SPECIFIC_HEAT + W * ICE_SPECIFIC_HEAT,
    VAPOUR_ENTHALPY_AT_ZERO - iceAtZero,
    VAPOUR_SPECIFIC_HEAT - ICE_SPECIFIC_HEAT,
    pressure,
    saturationGuess(h, W, 0, pressure),
    true,
    relations,
  );
  return t >= -Number.EPSILON ? 0 : t;
}
