import {
  condensedWaterEnthalpy,
  dryBulbFromEnthalpy,
  enthalpyFromHumidityRatio,
  moistAirSpecificHeat,
} from "./moist-air.ts";
import { saturationHumidityRatio } from "./saturation.ts";
import { saturatedDryBulbFromEnthalpy } from "./wet-bulb.ts";

/** What cooling air to a temperature takes and yields, per kg of dry air. */
export interface Cooling {
  /** kg/kg, of the cooled air */
  humidityRatio: number;
  /** kg/kg, water or ice taken out at the final temperature */
  condensate: number;
  /** J/kg, heat taken out of the air beyond what leaves with the condensate */
  heat: number;
}

/**
 * Cooling of air as a whole to a temperature: at constant humidity ratio down to the dew point, along saturation below
 * it, the condensate leaving at the final temperature. A coil does not cool air as a whole; this is the limiting case.
 *
 * @param dryBulb °C, -60…90: dry bulb before
 * @param humidityRatio kg/kg, 0 or more: humidity ratio before
 * @param target °C, -60…90: dry bulb after, at most the dry bulb before
 * @param pressure Pa, 50000…110000: absolute pressure
 * @returns record: humidity ratio after, condensate and heat per kg of dry air
 * @outside −100…200 °C throws
 * @throws RangeError when the target is not a number in −100…200 °C or above the dry bulb
 * @example cooling(30, 0.0229, 14, 101325).heat // 48800 ± 400
 * @source ashrae-hof-2021-ch1 eq. 42
 */
export function cooling(dryBulb: number, humidityRatio: number, target: number, pressure: number): Cooling {
  if (!(target <= dryBulb)) throw new RangeError(`cooling: target ${target} °C is not at most ${dryBulb} °C`);
  const after = Math.min(humidityRatio, saturationHumidityRatio(target, pressure));
  const condensate = humidityRatio - after;
  const heat =
    enthalpyFromHumidityRatio(dryBulb, humidityRatio) -
    enthalpyFromHumidityRatio(target, after) -
    condensate * condensedWaterEnthalpy(target);
  return { humidityRatio: after, condensate, heat };
}

/**
 * Dry bulb of air after heat is added or taken without condensation.
 *
 * @param dryBulb °C, -60…90: dry bulb before
 * @param humidityRatio kg/kg, 0 or more: humidity ratio, unchanged
 * @param heat J/kg, any: heat added per kg of dry air, negative when taken
 * @returns °C: dry bulb after
 * @outside keeps answering; below the dew point the air would fog, which `cooling` and `settle` know
 * @example heatedDryBulb(10, 0.005, 10150) // 20 ± 0.01
 * @source ashrae-hof-2021-ch1 eq. 30
 */
export function heatedDryBulb(dryBulb: number, humidityRatio: number, heat: number): number {
  return dryBulb + heat / moistAirSpecificHeat(humidityRatio);
}

/**
 * Dry bulb of air cooled to a given enthalpy: along constant humidity ratio while clear, then along saturation.
 *
 * @param enthalpy J/kg, -60000…8000000: enthalpy of the cooled air, vapour only
 * @param humidityRatio kg/kg, 0 or more: humidity ratio before
 * @param pressure Pa, 50000…110000: absolute pressure
 * @returns °C: dry bulb after
 * @outside temperatures outside −100…105 °C answer the nearer of the two
 * @throws RangeError when an input is not a number
 * @example cooledDryBulb(39370, 0.0229, 101325) // 14.0 ± 0.03
 * @source ashrae-hof-2021-ch1 eq. 30
 */
export function cooledDryBulb(enthalpy: number, humidityRatio: number, pressure: number): number {
  return Math.max(dryBulbFromEnthalpy(enthalpy, humidityRatio), saturatedDryBulbFromEnthalpy(enthalpy, pressure));
}
