import { dewPointFromHumidityRatio } from "./dew-point.ts";
import type { AirRelations } from "./enhancement.ts";
import type { GivenAir } from "./given-air.ts";
import {
  condensedWaterEnthalpy,
  enthalpyFromHumidityRatio,
  relativeHumidityFromHumidityRatio,
  specificVolume,
} from "./moist-air.ts";
import { resolveAir } from "./resolve-air.ts";
import { wetBulbFromHumidityRatio } from "./wet-bulb.ts";

/** Everything about one state of moist air. Per-mass values are per kg of dry air. */
export interface MoistAirState {
  /** °C */
  dryBulb: number;
  /** °C, thermodynamic */
  wetBulb: number;
  /** °C, frost point below 0; −100 for air still drier than that */
  dewPoint: number;
  /** 0…1 */
  relativeHumidity: number;
  /** kg/kg, vapour only */
  humidityRatio: number;
  /** J/kg, free water included */
  enthalpy: number;
  /** m³/kg */
  specificVolume: number;
  /** kg/m³, of air, vapour and free water together */
  density: number;
  /** Pa */
  pressure: number;
  /** kg/kg, drops or ice of a fog */
  freeWater: number;
}

/**
 * State of moist air from any two independent properties and the pressure. A fog is described by its total water with
 * its dry bulb or its enthalpy; humidity ratio always means vapour.
 *
 * @param given record, two properties: of dryBulb, wetBulb, dewPoint (°C), relativeHumidity, humidityRatio (kg/kg), enthalpy (J/kg), specificVolume (m³/kg), totalWater (kg/kg)
 * @param pressure Pa, 50000…110000: absolute pressure
 * @param relations choice, enhanced or ideal: with or without the enhancement factor
 * @returns record: the state
 * @outside throws
 * @throws RangeError with the reason when there are not two properties, when they fix one another, when no air can have both, or when pressure or dry bulb lies outside 50…110 kPa, −60…90 °C
 * @example moistAirState({ dryBulb: 30, wetBulb: 22.0012 }, 101325).relativeHumidity // 0.5 ± 0.002
 * @source ashrae-hof-2021-ch1 eq. 20 to 36
 */
export function moistAirState(given: GivenAir, pressure: number, relations: AirRelations = "enhanced"): MoistAirState {
  const air = resolveAir(given, pressure, relations);
  const { dryBulb, humidityRatio, freeWater } = air;
  const volume = specificVolume(dryBulb, humidityRatio, pressure);
  const state: MoistAirState = {
    dryBulb,
    wetBulb: dryBulb,
    dewPoint: dryBulb,
    relativeHumidity: 1,
    humidityRatio,
    enthalpy: enthalpyFromHumidityRatio(dryBulb, humidityRatio),
    specificVolume: volume,
    density: (1 + humidityRatio + freeWater) / volume,
    pressure,
    freeWater,
  };
  if (freeWater > 0) {
    // Between drops and ice only the given enthalpy says how much is frozen.
    state.enthalpy = given.enthalpy ?? state.enthalpy + freeWater * condensedWaterEnthalpy(dryBulb);
    return state;
  }
  state.wetBulb = given.wetBulb ?? wetBulbFromHumidityRatio(dryBulb, humidityRatio, pressure, relations);
  state.dewPoint = given.dewPoint ?? Math.min(dewPointFromHumidityRatio(humidityRatio, pressure, relations), dryBulb);
  state.relativeHumidity =
    given.relativeHumidity ??
    Math.min(relativeHumidityFromHumidityRatio(dryBulb, humidityRatio, pressure, relations), 1);
  return state;
}
