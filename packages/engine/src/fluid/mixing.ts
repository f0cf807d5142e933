import { condensedWaterEnthalpy, dryBulbFromEnthalpy, enthalpyFromHumidityRatio } from "./moist-air.ts";
import { saturationHumidityRatio } from "./saturation.ts";
import { wetBulbFromEnthalpy } from "./wet-bulb.ts";

/** A flow of moist air; the water that is not vapour is carried as drops or ice. */
export interface AirStream {
  /** Flow of dry air, kg/s. */
  dryAirFlow: number;
  /** °C */
  dryBulb: number;
  /** Vapour per dry air, kg/kg. */
  humidityRatio: number;
  /** Drops or ice carried along per dry air, kg/kg. */
  freeWater: number;
  /** Of air, vapour and free water, J/kg dry air. */
  enthalpy: number;
}

/**
 * A stream of clear air, or of fog.
 *
 * @param dryAirFlow kg/s, 0 or more: flow of dry air
 * @param dryBulb °C, -60…90: dry-bulb temperature
 * @param humidityRatio kg/kg, 0 or more: vapour per dry air
 * @param freeWater kg/kg, 0 or more: drops or ice per dry air
 * @returns record: the stream with its enthalpy
 * @outside keeps answering
 * @example airStream(2, 20, 0.01).enthalpy // 45502 ± 1
 * @source ashrae-hof-2021-ch1 eq. 30
 */
export function airStream(dryAirFlow: number, dryBulb: number, humidityRatio: number, freeWater = 0): AirStream {
  const enthalpy = enthalpyFromHumidityRatio(dryBulb, humidityRatio) + freeWater * condensedWaterEnthalpy(dryBulb);
  return { dryAirFlow, dryBulb, humidityRatio, freeWater, enthalpy };
}

/**
 * State of air whose water and enthalpy are known but not how the water is shared between vapour and drops or ice:
 * clear if the air can hold it, else fog at saturation. Between drops and ice a fog stays at exactly 0 °C.
 *
 * @param enthalpy J/kg, -60000…8000000: enthalpy of air, vapour and free water per kg of dry air
 * @param totalWater kg/kg, 0 or more: vapour and free water per dry air
 * @param pressure Pa, 50000…110000: absolute pressure
 * @param out record, any: receives dry bulb, humidity ratio, free water and enthalpy
 * @returns record: out
 * @outside temperatures outside −100…105 °C throw or answer the nearer end
 * @throws RangeError when an input is not a number
 * @example settle(30000, 0.012, 101325, airStream(1, 0, 0)).freeWater // 0.00424 ± 5e-5
 * @source ashrae-hof-2021-ch1 eq. 33
 */
export function settle(enthalpy: number, totalWater: number, pressure: number, out: AirStream): AirStream {
  out.enthalpy = enthalpy;
  const clear = dryBulbFromEnthalpy(enthalpy, totalWater);
  // The wet-bulb equation of supersaturated air is the energy balance of its fog.
  const holds = clear >= -100 && totalWater <= saturationHumidityRatio(clear, pressure);
  const temperature = holds ? clear : wetBulbFromEnthalpy(enthalpy, totalWater, pressure);
  const most = saturationHumidityRatio(temperature, pressure);
  // Air a trace too moist for ice at 0 °C is not so for water: between the two it stays clear.
  const isClear = totalWater <= most;
  out.dryBulb = isClear ? clear : temperature;
  out.humidityRatio = isClear ? totalWater : most;
  out.freeWater = isClear ? 0 : totalWater - most;
  return out;
}

/**
 * Two streams mixed without heat from outside: dry air, water and enthalpy are kept, excess vapour turns into fog.
 *
 * @param first record, any: one stream
 * @param second record, any: the other stream
 * @param pressure Pa, 50000…110000: absolute pressure of the mixture
 * @param out record, any: receives the mixture; may be one of the two
 * @returns record: out
 * @outside temperatures outside −100…105 °C throw or answer the nearer end
 * @throws RangeError when both flows are zero or an input is not a number
 * @example mixAir(airStream(1, 30, 0.012), airStream(1, 10, 0.006), 101325, airStream(0, 0, 0)).dryBulb // 20.05 ± 0.05
 * @source ashrae-hof-2021-ch1 eq. 46
 */
export function mixAir(first: AirStream, second: AirStream, pressure: number, out: AirStream): AirStream {
  const dryAirFlow = first.dryAirFlow + second.dryAirFlow;
  if (!(dryAirFlow > 0)) {
    throw new RangeError(`mixing: dry-air flows ${first.dryAirFlow} and ${second.dryAirFlow} kg/s make no flow`);
  }
  const share = second.dryAirFlow / dryAirFlow;
  const rest = first.dryAirFlow / dryAirFlow;
  const enthalpy = rest * first.enthalpy + share * second.enthalpy;
  const totalWater = rest * (first.humidityRatio + first.freeWater) + share * (second.humidityRatio + second.freeWater);
  out.dryAirFlow = dryAirFlow;
  return settle(enthalpy, totalWater, pressure, out);
}
