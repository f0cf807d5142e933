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
  const state = resolveAir(given, pressure, relations, emptyState(pressure));
  const { dryBulb, humidityRatio, freeWater } = state;
  const enthalpy = enthalpyFromHumidityRatio(dryBulb, humidityRatio);
  const volume = specificVolume(dryBulb, humidityRatio, pressure);
  state.specificVolume = volume;
  state.density = (1 + humidityRatio + freeWater) / volume;
  if (freeWater > 0) {
    state.wetBulb = dryBulb;
    state.dewPoint = dryBulb;
    state.relativeHumidity = 1;
    // Between drops and ice only the given enthalpy says how much is frozen.
    state.enthalpy = given.enthalpy ?? enthalpy + freeWater * condensedWaterEnthalpy(dryBulb);
    return state;
  }
  state.enthalpy = enthalpy;
  state.wetBulb = given.wetBulb ?? wetBulbFromHumidityRatio(dryBulb, humidityRatio, pressure, relations);
  state.dewPoint = given.dewPoint ?? Math.min(dewPointFromHumidityRatio(humidityRatio, pressure, relations), dryBulb);
  state.relativeHumidity =
    given.relativeHumidity ??
    Math.min(relativeHumidityFromHumidityRatio(dryBulb, humidityRatio, pressure, relations), 1);
  return state;
}

function emptyState(pressure: number): MoistAirState {
  return {
    dryBulb: 0,
    wetBulb: 0,
    dewPoint: 0,
    relativeHumidity: 0,
    humidityRatio: 0,
    enthalpy: 0,
    specificVolume: 0,
    density: 0,
    pressure,
    freeWater: 0,
  };
}
