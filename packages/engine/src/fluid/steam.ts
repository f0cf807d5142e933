import { chebyshevFit, evaluateFit, type Fit } from "#numerics/chebyshev";
import {
  liquidWater,
  steamSaturationPressureEquation,
  steamSaturationTemperatureEquation,
  steamVapour,
  type WaterState,
} from "./water-equation.ts";
import { waterConductivityEquation, waterViscosityEquation } from "./water-transport-equation.ts";

/** Range of the steam functions, Pa absolute. */
export const LOWEST_STEAM_PRESSURE = 1000;
export const HIGHEST_STEAM_PRESSURE = 1.7e6;

type Property = (temperature: number, pressure: number) => number;

const volume = (state: WaterState) => state.specificVolume;
const ofLiquid =
  (property: (state: WaterState, t: number) => number): Property =>
  (t, p) =>
    property(liquidWater(t, p), t);
const ofVapour =
  (property: (state: WaterState, t: number) => number): Property =>
  (t, p) =>
    property(steamVapour(t, p), t);

/** The equations along saturation as polynomials in ln(p), made when the module is read; errors are bounded in the tests. */
const LIQUID_ENTHALPY = saturationFit(ofLiquid((state) => state.enthalpy));
const VAPOUR_ENTHALPY = saturationFit(ofVapour((state) => state.enthalpy));
const LATENT_HEAT = saturationFit((t, p) => steamVapour(t, p).enthalpy - liquidWater(t, p).enthalpy);
const LOGARITHM_OF_VAPOUR_VOLUME = saturationFit(ofVapour((state) => Math.log(volume(state))));
const LIQUID_VOLUME = saturationFit(ofLiquid(volume));
const LIQUID_SPECIFIC_HEAT = saturationFit(ofLiquid((state) => state.specificHeat));
const LIQUID_VISCOSITY = saturationFit(ofLiquid((state, t) => Math.log(waterViscosityEquation(t, 1 / volume(state)))));
const LIQUID_CONDUCTIVITY = saturationFit(
  ofLiquid((state, t) => waterConductivityEquation(t, 1 / volume(state), state)),
);
const VAPOUR_VISCOSITY = saturationFit(ofVapour((state, t) => waterViscosityEquation(t, 1 / volume(state))));

function saturationFit(property: Property): Fit {
  const along = (logarithm: number) => {
    const pressure = Math.exp(logarithm);
    return property(steamSaturationTemperatureEquation(pressure), pressure);
  };
  return chebyshevFit(along, Math.log(LOWEST_STEAM_PRESSURE), Math.log(HIGHEST_STEAM_PRESSURE), 12);
}

function alongSaturation(fit: Fit, pressure: number): number {
  if (!(pressure >= LOWEST_STEAM_PRESSURE && pressure <= HIGHEST_STEAM_PRESSURE)) {
    throw new RangeError(
      `steam: absolute pressure ${pressure} Pa is outside ${LOWEST_STEAM_PRESSURE}…${HIGHEST_STEAM_PRESSURE} Pa`,
    );
  }
  return evaluateFit(fit, Math.log(pressure));
}

/**
 * Temperature at which steam condenses.
 *
 * @param absolutePressure Pa, 1000…1700000: absolute pressure
 * @returns °C: saturation temperature
 * @outside throws
 * @throws RangeError when the pressure is not a number in 1 kPa…1.7 MPa
 * @example steamSaturationTemperature(101325) // 99.974 ± 0.001
 * @source iapws-if97-2007 eq. 31
 */
export function steamSaturationTemperature(absolutePressure: number): number {
  if (!(absolutePressure >= LOWEST_STEAM_PRESSURE && absolutePressure <= HIGHEST_STEAM_PRESSURE)) {
    throw new RangeError(
      `steam: absolute pressure ${absolutePressure} Pa is outside ${LOWEST_STEAM_PRESSURE}…${HIGHEST_STEAM_PRESSURE} Pa`,
    );
  }
  return steamSaturationTemperatureEquation(absolutePressure);
}

/**
 * Pressure at which steam condenses at a temperature.
 *
 * @param temperature °C, 0…210: saturation temperature
 * @returns Pa: absolute pressure
 * @outside throws
 * @throws RangeError when the temperature is not a number in 0…210 °C
 * @example steamSaturationPressure(100) // 101418 ± 1
 * @source iapws-if97-2007 eq. 30
 */
export function steamSaturationPressure(temperature: number): number {
  if (!(temperature >= 0 && temperature <= 210)) {
    throw new RangeError(`steam: saturation temperature ${temperature} °C is outside 0…210 °C`);
  }
  return steamSaturationPressureEquation(temperature);
}

/**
 * Heat given off by steam that condenses to liquid at saturation.
 *
 * @param absolutePressure Pa, 1000…1700000: absolute pressure
 * @returns J/kg: latent heat
 * @outside throws
 * @throws RangeError when the pressure is not a number in 1 kPa…1.7 MPa
 * @example steamLatentHeat(101325) // 2256540 ± 100
 * @source iapws-if97-2007 eq. 7, 15
 */
export function steamLatentHeat(absolutePressure: number): number {
  return alongSaturation(LATENT_HEAT, absolutePressure);
}

/**
 * Enthalpy of dry saturated steam, zero for liquid at the triple point.
 *
 * @param absolutePressure Pa, 1000…1700000: absolute pressure
 * @returns J/kg: enthalpy
 * @outside throws
 * @throws RangeError when the pressure is not a number in 1 kPa…1.7 MPa
 * @example steamVapourEnthalpy(101325) // 2675531 ± 100
 * @source iapws-if97-2007 eq. 15
 */
export function steamVapourEnthalpy(absolutePressure: number): number {
  return alongSaturation(VAPOUR_ENTHALPY, absolutePressure);
}

/**
 * Enthalpy of the condensate at saturation, zero for liquid at the triple point.
 *
 * @param absolutePressure Pa, 1000…1700000: absolute pressure
 * @returns J/kg: enthalpy
 * @outside throws
 * @throws RangeError when the pressure is not a number in 1 kPa…1.7 MPa
 * @example steamLiquidEnthalpy(101325) // 418991 ± 50
 * @source iapws-if97-2007 eq. 7
 */
export function steamLiquidEnthalpy(absolutePressure: number): number {
  return alongSaturation(LIQUID_ENTHALPY, absolutePressure);
}

/**
 * Specific volume of dry saturated steam.
 *
 * @param absolutePressure Pa, 1000…1700000: absolute pressure
 * @returns m³/kg: specific volume
 * @outside throws
 * @throws RangeError when the pressure is not a number in 1 kPa…1.7 MPa
 * @example steamVapourSpecificVolume(101325) // 1.67330 ± 1e-4
 * @source iapws-if97-2007 eq. 15
 */
export function steamVapourSpecificVolume(absolutePressure: number): number {
  return Math.exp(alongSaturation(LOGARITHM_OF_VAPOUR_VOLUME, absolutePressure));
}

/**
 * Specific volume of the condensate at saturation.
 *
 * @param absolutePressure Pa, 1000…1700000: absolute pressure
 * @returns m³/kg: specific volume
 * @outside throws
 * @throws RangeError when the pressure is not a number in 1 kPa…1.7 MPa
 * @example steamLiquidSpecificVolume(101325) // 0.00104344 ± 1e-8
 * @source iapws-if97-2007 eq. 7
 */
export function steamLiquidSpecificVolume(absolutePressure: number): number {
  return alongSaturation(LIQUID_VOLUME, absolutePressure);
}

/**
 * Specific heat of the condensate at saturation.
 *
 * @param absolutePressure Pa, 1000…1700000: absolute pressure
 * @returns J/kg K: specific heat at constant pressure
 * @outside throws
 * @throws RangeError when the pressure is not a number in 1 kPa…1.7 MPa
 * @example steamLiquidSpecificHeat(101325) // 4216.6 ± 0.2
 * @source iapws-if97-2007 eq. 7
 */
export function steamLiquidSpecificHeat(absolutePressure: number): number {
  return alongSaturation(LIQUID_SPECIFIC_HEAT, absolutePressure);
}

/**
 * Dynamic viscosity of the condensate at saturation.
 *
 * @param absolutePressure Pa, 1000…1700000: absolute pressure
 * @returns Pa·s: dynamic viscosity
 * @outside throws
 * @throws RangeError when the pressure is not a number in 1 kPa…1.7 MPa
 * @example steamLiquidViscosity(101325) // 0.00028166 ± 1e-8
 * @source iapws-r12-08 eq. 10
 */
export function steamLiquidViscosity(absolutePressure: number): number {
  return Math.exp(alongSaturation(LIQUID_VISCOSITY, absolutePressure));
}

/**
 * Thermal conductivity of the condensate at saturation.
 *
 * @param absolutePressure Pa, 1000…1700000: absolute pressure
 * @returns W/mK: thermal conductivity
 * @outside throws
 * @throws RangeError when the pressure is not a number in 1 kPa…1.7 MPa
 * @example steamLiquidConductivity(101325) // 0.67721 ± 2e-4
 * @source iapws-r15-11 eq. 15
 */
export function steamLiquidConductivity(absolutePressure: number): number {
  return alongSaturation(LIQUID_CONDUCTIVITY, absolutePressure);
}

/**
 * Dynamic viscosity of dry saturated steam.
 *
 * @param absolutePressure Pa, 1000…1700000: absolute pressure
 * @returns Pa·s: dynamic viscosity
 * @outside throws
 * @throws RangeError when the pressure is not a number in 1 kPa…1.7 MPa
 * @example steamVapourViscosity(101325) // 0.0000122313 ± 1e-9
 * @source iapws-r12-08 eq. 10
 */
export function steamVapourViscosity(absolutePressure: number): number {
  return alongSaturation(VAPOUR_VISCOSITY, absolutePressure);
}
