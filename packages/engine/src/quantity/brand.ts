import { standardAirDensity } from "./standard-air.ts";

/*
 * Numbers of the same dimension that must not be put in each other's place. A brand costs nothing when the program
 * runs; it only stops the compiler from taking one for the other. A branded number is still a number.
 */
declare const brand: unique symbol;
type Branded<Name extends string> = number & { readonly [brand]: Name };

/** Pa against the surroundings. */
export type GaugePressure = Branded<"gauge pressure">;
/** Pa against vacuum. */
export type AbsolutePressure = Branded<"absolute pressure">;
/** °C. */
export type Temperature = Branded<"temperature">;
/** K between two temperatures. */
export type TemperatureDifference = Branded<"temperature difference">;
/** m³/s at the density that the air has. */
export type ActualAirflow = Branded<"actual airflow">;
/** m³/s at the density of standard air. */
export type StandardAirflow = Branded<"standard airflow">;
/** m², outside dimensions of a louver, damper or filter. */
export type GrossArea = Branded<"gross area">;
/** m² open between blades at their narrowest. */
export type FreeArea = Branded<"free area">;
/** m² of the opening in front of blades or fins, without frame. */
export type CoreArea = Branded<"core area">;

/**
 * Marks a number as gauge pressure.
 *
 * @param value Pa, any: pressure against the surroundings
 * @returns Pa: the same number
 * @example gaugePressure(103421) // 103421
 * @source definition
 */
export function gaugePressure(value: number): GaugePressure {
  return value as GaugePressure;
}

/**
 * Marks a number as absolute pressure.
 *
 * @param value Pa, at least 0: pressure against vacuum
 * @returns Pa: the same number
 * @outside nothing is checked
 * @example absolutePressure(101325) // 101325
 * @source definition
 */
export function absolutePressure(value: number): AbsolutePressure {
  return value as AbsolutePressure;
}

/**
 * Marks a number as temperature.
 *
 * @param value °C, at least -273.15: a temperature
 * @returns °C: the same number
 * @outside nothing is checked
 * @example temperature(20) // 20
 * @source definition
 */
export function temperature(value: number): Temperature {
  return value as Temperature;
}

/**
 * Marks a number as difference of temperatures.
 *
 * @param value K, any: a difference
 * @returns K: the same number
 * @example temperatureDifference(5) // 5
 * @source definition
 */
export function temperatureDifference(value: number): TemperatureDifference {
  return value as TemperatureDifference;
}

/**
 * Marks a number as actual airflow.
 *
 * @param value m³/s, any: airflow at the density that the air has
 * @returns m³/s: the same number
 * @example actualAirflow(8.5) // 8.5
 * @source definition
 */
export function actualAirflow(value: number): ActualAirflow {
  return value as ActualAirflow;
}

/**
 * Marks a number as standard airflow.
 *
 * @param value m³/s, any: airflow at the density of standard air
 * @returns m³/s: the same number
 * @example standardAirflow(8.5) // 8.5
 * @source definition
 */
export function standardAirflow(value: number): StandardAirflow {
  return value as StandardAirflow;
}

/**
 * Marks a number as gross area.
 *
 * @param value m², at least 0: area of the outside dimensions
 * @returns m²: the same number
 * @outside nothing is checked
 * @example grossArea(4) // 4
 * @source definition
 */
export function grossArea(value: number): GrossArea {
  return value as GrossArea;
}

/**
 * Marks a number as free area.
 *
 * @param value m², at least 0: area open between blades at their narrowest
 * @returns m²: the same number
 * @outside nothing is checked
 * @example freeArea(1.8) // 1.8
 * @source definition
 */
export function freeArea(value: number): FreeArea {
  return value as FreeArea;
}

/**
 * Marks a number as core area.
 *
 * @param value m², at least 0: area of the opening without frame
 * @returns m²: the same number
 * @outside nothing is checked
 * @example coreArea(3.6) // 3.6
 * @source definition
 */
export function coreArea(value: number): CoreArea {
  return value as CoreArea;
}

/**
 * Absolute pressure of a gauge pressure at a site.
 *
 * @param gauge Pa, above minus the barometric pressure: pressure against the surroundings
 * @param barometric Pa, 50000…110000: absolute pressure of the surroundings
 * @returns Pa: absolute pressure
 * @outside the sum is given all the same
 * @example absoluteFromGaugePressure(103421, 101325) // 204746
 * @source definition
 */
export function absoluteFromGaugePressure(gauge: GaugePressure, barometric: AbsolutePressure): AbsolutePressure {
  return (gauge + barometric) as AbsolutePressure;
}

/**
 * Gauge pressure of an absolute pressure at a site.
 *
 * @param absolute Pa, at least 0: pressure against vacuum
 * @param barometric Pa, 50000…110000: absolute pressure of the surroundings
 * @returns Pa: pressure against the surroundings
 * @outside the difference is given all the same
 * @example gaugeFromAbsolutePressure(204746, 101325) // 103421
 * @source definition
 */
export function gaugeFromAbsolutePressure(absolute: AbsolutePressure, barometric: AbsolutePressure): GaugePressure {
  return (absolute - barometric) as GaugePressure;
}

/**
 * Difference of two temperatures.
 *
 * @param higher °C, any: the temperature from which is taken
 * @param lower °C, any: the temperature that is taken off
 * @returns K: higher minus lower
 * @example differenceOfTemperatures(20, 15) // 5
 * @source definition
 */
export function differenceOfTemperatures(higher: Temperature, lower: Temperature): TemperatureDifference {
  return (higher - lower) as TemperatureDifference;
}

/**
 * Actual airflow that carries the mass of a standard airflow.
 *
 * @param standard m³/s, any: airflow at the density of standard air
 * @param density kg/m³, above 0: dry air per volume of the air as it is
 * @returns m³/s: airflow at that density
 * @outside a density of zero gives an infinite airflow
 * @example actualFromStandardAirflow(8, 0.9610) // 10.0011 ± 1e-3
 * @source definition
 */
export function actualFromStandardAirflow(standard: StandardAirflow, density: number): ActualAirflow {
  return ((standard * standardAirDensity) / density) as ActualAirflow;
}

/**
 * Standard airflow that carries the mass of an actual airflow.
 *
 * @param actual m³/s, any: airflow at the density that the air has
 * @param density kg/m³, above 0: dry air per volume of the air as it is
 * @returns m³/s: airflow at the density of standard air
 * @outside a density of zero gives no airflow
 * @example standardFromActualAirflow(10, 0.9610) // 7.9992 ± 1e-3
 * @source definition
 */
export function standardFromActualAirflow(actual: ActualAirflow, density: number): StandardAirflow {
  return ((actual * density) / standardAirDensity) as StandardAirflow;
}

/**
 * Mass of dry air that a standard airflow carries.
 *
 * @param standard m³/s, any: airflow at the density of standard air
 * @returns kg/s: dry air
 * @example dryAirFlowFromStandardAirflow(10) // 12.0139 ± 1e-3
 * @source definition
 */
export function dryAirFlowFromStandardAirflow(standard: StandardAirflow): number {
  return standard * standardAirDensity;
}
