import type { AirRelations } from "./enhancement.ts";
import { MASS_RATIO, saturatedVapourPressure } from "./saturation.ts";
import { ZERO_CELSIUS } from "./saturation-equation.ts";

/** Specific heat of dry air, J/kg K; of water vapour, J/kg K; enthalpy of vapour at 0 °C over liquid at 0 °C, J/kg. */
export const DRY_AIR_SPECIFIC_HEAT = 1006;
export const VAPOUR_SPECIFIC_HEAT = 1860;
export const VAPOUR_ENTHALPY_AT_ZERO = 2.501e6;
/** Specific heat of liquid water and of ice, J/kg K; enthalpy of ice at 0 °C over liquid at 0 °C, J/kg. */
export const LIQUID_SPECIFIC_HEAT = 4186;
export const ICE_SPECIFIC_HEAT = 2100;
export const ICE_ENTHALPY_AT_ZERO = -333_400;
/** The enthalpy of ice that is hidden in the rounded numbers of the handbook's wet-bulb equation (2830 = 2501 + 329). */
export const HANDBOOK_ICE_ENTHALPY_AT_ZERO = -329_000;
/** Gas constant of dry air, J/kg K, and molar mass of dry air over that of water. */
const DRY_AIR_GAS_CONSTANT = 287.042;
const VOLUME_RATIO = 1.607858;

/**
 * Humidity ratio of air at a relative humidity: mole fraction of vapour over that at saturation, same temperature and
 * pressure.
 *
 * @param dryBulb °C, -60…90: dry-bulb temperature
 * @param relativeHumidity 1, 0…1: relative humidity
 * @param pressure Pa, 50000…110000: absolute pressure
 * @param relations choice, enhanced or ideal: with or without the enhancement factor
 * @returns kg/kg: humidity ratio; Infinity where the vapour alone would exceed the pressure
 * @outside −100…200 °C throws; a relative humidity above 1 gives supersaturated air
 * @throws RangeError when the temperature is not a number in −100…200 °C
 * @example humidityRatioFromRelativeHumidity(30, 0.5, 101325) // 0.013375 ± 1e-5
 * @source ashrae-hof-2021-ch1 eq. 12, 20
 */
export function humidityRatioFromRelativeHumidity(
  dryBulb: number,
  relativeHumidity: number,
  pressure: number,
  relations: AirRelations = "enhanced",
): number {
  const vapour = relativeHumidity * saturatedVapourPressure(dryBulb, pressure, relations);
  return vapour < pressure ? (MASS_RATIO * vapour) / (pressure - vapour) : Number.POSITIVE_INFINITY;
}

/**
 * Pressure of the vapour in air, taken as its mole fraction times the pressure.
 *
 * @param humidityRatio kg/kg, 0 or more: humidity ratio
 * @param pressure Pa, 50000…110000: absolute pressure
 * @returns Pa: vapour pressure
 * @outside answers for any humidity ratio above −0.62
 * @example vapourPressureFromHumidityRatio(0.01, 101325) // 1603.3 ± 0.1
 * @source ashrae-hof-2021-ch1 eq. 20
 */
export function vapourPressureFromHumidityRatio(humidityRatio: number, pressure: number): number {
  return (pressure * humidityRatio) / (MASS_RATIO + humidityRatio);
}

/**
 * Relative humidity: mole fraction of vapour over that at saturation, same temperature and pressure.
 *
 * @param dryBulb °C, -60…90: dry-bulb temperature
 * @param humidityRatio kg/kg, 0 or more: humidity ratio
 * @param pressure Pa, 50000…110000: absolute pressure
 * @param relations choice, enhanced or ideal: with or without the enhancement factor
 * @returns 1: relative humidity; above 1 for supersaturated air
 * @outside −100…200 °C throws
 * @throws RangeError when the temperature is not a number in −100…200 °C
 * @example relativeHumidityFromHumidityRatio(30, 0.0133747, 101325) // 0.5 ± 5e-4
 * @source ashrae-hof-2021-ch1 eq. 12
 */
export function relativeHumidityFromHumidityRatio(
  dryBulb: number,
  humidityRatio: number,
  pressure: number,
  relations: AirRelations = "enhanced",
): number {
  return (
    vapourPressureFromHumidityRatio(humidityRatio, pressure) / saturatedVapourPressure(dryBulb, pressure, relations)
  );
}

/**
 * Enthalpy of moist air per mass of its dry air; zero for dry air and for liquid water at 0 °C.
 *
 * @param dryBulb °C, -60…90: dry-bulb temperature
 * @param humidityRatio kg/kg, 0 or more: humidity ratio, vapour only
 * @returns J/kg: enthalpy per kg of dry air
 * @outside the relation is linear and keeps answering
 * @example enthalpyFromHumidityRatio(20, 0.014761) // 57587 ± 40
 * @source ashrae-hof-2021-ch1 eq. 30
 */
export function enthalpyFromHumidityRatio(dryBulb: number, humidityRatio: number): number {
  return DRY_AIR_SPECIFIC_HEAT * dryBulb + humidityRatio * (VAPOUR_ENTHALPY_AT_ZERO + VAPOUR_SPECIFIC_HEAT * dryBulb);
}

/**
 * Dry bulb of moist air from its enthalpy, all water being vapour.
 *
 * @param enthalpy J/kg, -60000…8000000: enthalpy per kg of dry air
 * @param humidityRatio kg/kg, 0 or more: humidity ratio, vapour only
 * @returns °C: dry-bulb temperature
 * @outside the relation is linear and keeps answering
 * @example dryBulbFromEnthalpy(57585, 0.014761) // 20.0 ± 0.05
 * @source ashrae-hof-2021-ch1 eq. 30
 */
export function dryBulbFromEnthalpy(enthalpy: number, humidityRatio: number): number {
  return (enthalpy - VAPOUR_ENTHALPY_AT_ZERO * humidityRatio) / moistAirSpecificHeat(humidityRatio);
}

/**
 * Specific heat of moist air per mass of its dry air.
 *
 * @param humidityRatio kg/kg, 0 or more: humidity ratio, vapour only
 * @returns J/kg K: specific heat per kg of dry air
 * @outside keeps answering
 * @example moistAirSpecificHeat(0.01) // 1024.6 ± 1e-9
 * @source ashrae-hof-2021-ch1 eq. 30
 */
export function moistAirSpecificHeat(humidityRatio: number): number {
  return DRY_AIR_SPECIFIC_HEAT + VAPOUR_SPECIFIC_HEAT * humidityRatio;
}

/**
 * Specific volume of moist air per mass of its dry air.
 *
 * @param dryBulb °C, -60…90: dry-bulb temperature
 * @param humidityRatio kg/kg, 0 or more: humidity ratio, vapour only
 * @param pressure Pa, 50000…110000: absolute pressure
 * @returns m³/kg: volume per kg of dry air
 * @outside ideal gas at any state
 * @example specificVolume(20, 0.014761, 101325) // 0.8498 ± 5e-4
 * @source ashrae-hof-2021-ch1 eq. 26
 */
export function specificVolume(dryBulb: number, humidityRatio: number, pressure: number): number {
  return (DRY_AIR_GAS_CONSTANT * (dryBulb + ZERO_CELSIUS) * (1 + VOLUME_RATIO * humidityRatio)) / pressure;
}

/**
 * Density of moist air: mass of air and vapour together per volume.
 *
 * @param dryBulb °C, -60…90: dry-bulb temperature
 * @param humidityRatio kg/kg, 0 or more: humidity ratio, vapour only
 * @param pressure Pa, 50000…110000: absolute pressure
 * @returns kg/m³: density of the moist air
 * @outside ideal gas at any state
 * @example density(20, 0.014761, 101325) // 1.1941 ± 1e-3
 * @source ashrae-hof-2021-ch1 eq. 11
 */
export function density(dryBulb: number, humidityRatio: number, pressure: number): number {
  return (1 + humidityRatio) / specificVolume(dryBulb, humidityRatio, pressure);
}

/**
 * Dry bulb of moist air from its specific volume.
 *
 * @param volume m³/kg, 0.5…10: volume per kg of dry air
 * @param humidityRatio kg/kg, 0 or more: humidity ratio, vapour only
 * @param pressure Pa, 50000…110000: absolute pressure
 * @returns °C: dry-bulb temperature
 * @outside ideal gas at any state
 * @example dryBulbFromSpecificVolume(0.85, 0.01, 101325) // 22.16 ± 0.05
 * @source ashrae-hof-2021-ch1 eq. 26
 */
export function dryBulbFromSpecificVolume(volume: number, humidityRatio: number, pressure: number): number {
  return (volume * pressure) / (DRY_AIR_GAS_CONSTANT * (1 + VOLUME_RATIO * humidityRatio)) - ZERO_CELSIUS;
}

/**
 * Enthalpy of condensed water against liquid at 0 °C: liquid from 0 °C up, ice below.
 *
 * @param temperature °C, -60…100: temperature of the water or ice
 * @returns J/kg: enthalpy
 * @outside linear, keeps answering
 * @example condensedWaterEnthalpy(10) // 41860
 * @source ashrae-hof-2021-ch1 eq. 33; heat of melting 333.4 kJ/kg
 */
export function condensedWaterEnthalpy(temperature: number): number {
  return temperature < 0 ? ICE_ENTHALPY_AT_ZERO + ICE_SPECIFIC_HEAT * temperature : LIQUID_SPECIFIC_HEAT * temperature;
}
