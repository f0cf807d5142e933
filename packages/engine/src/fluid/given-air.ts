import { COLDEST_SATURATION } from "./saturation-equation.ts";

/** Two properties of moist air; the others stay out. */
export interface GivenAir {
  /** °C */
  readonly dryBulb?: number;
  /** °C, thermodynamic */
  readonly wetBulb?: number;
  /** °C */
  readonly dewPoint?: number;
  /** 0…1 */
  readonly relativeHumidity?: number;
  /** kg/kg, vapour only */
  readonly humidityRatio?: number;
  /** J/kg dry air */
  readonly enthalpy?: number;
  /** m³/kg dry air */
  readonly specificVolume?: number;
  /** kg/kg, vapour and free water of a fog */
  readonly totalWater?: number;
}

/** Limits of the moist-air states served here, °C and Pa. */
export const COLDEST_AIR = -60;
export const HOTTEST_AIR = 90;
export const LOWEST_AIR_PRESSURE = 50_000;
export const HIGHEST_AIR_PRESSURE = 110_000;

const WORDS: Record<keyof GivenAir, string> = {
  dryBulb: "dry bulb",
  wetBulb: "wet bulb",
  dewPoint: "dew point",
  relativeHumidity: "relative humidity",
  humidityRatio: "humidity ratio",
  enthalpy: "enthalpy",
  specificVolume: "specific volume",
  totalWater: "total water",
};
const NAMES = Object.keys(WORDS) as (keyof GivenAir)[];

/** Rounding allowed when a pair lies on the edge of the possible. */
const EDGE = 1e-9;

/**
 * The error for air that cannot be.
 *
 * @param reason text, any: why not
 * @returns record: the error to throw
 * @outside not applicable
 * @example impossible("wet bulb is above the dry bulb").message // "moist air: wet bulb is above the dry bulb"
 * @source definition
 */
export function impossible(reason: string): RangeError {
  return new RangeError(`moist air: ${reason}`);
}

/**
 * The reason that water boils.
 *
 * @param temperature °C, any: temperature at which vapour was to be saturated
 * @param pressure Pa, any: absolute pressure
 * @returns text: the reason
 * @outside not applicable
 * @example boils(85, 50000) // "at 85 °C and 50000 Pa the vapour alone would exceed the pressure: water boils"
 * @source definition
 */
export function boils(temperature: number, pressure: number): string {
  return `at ${say(temperature)} °C and ${say(pressure)} Pa the vapour alone would exceed the pressure: water boils`;
}

/**
 * The reason that two properties do not make a state.
 *
 * @param first text, any: name of a property
 * @param second text, any: name of another
 * @returns text: the reason
 * @outside not applicable
 * @example dependent("dew point", "humidity ratio") // "dew point and humidity ratio are not independent: at a pressure each fixes the other"
 * @source definition
 */
export function dependent(first: string, second: string): string {
  return `${first} and ${second} are not independent: at a pressure each fixes the other`;
}

/**
 * A figure in a message: six digits are enough to find it again.
 *
 * @param value any unit, any: the figure
 * @returns text: the figure
 * @outside not applicable
 * @example say(21.4567891) // "21.4568"
 * @source definition
 */
export function say(value: number): string {
  return String(Number(value.toPrecision(6)));
}

/**
 * Whether a value lies below an edge by more than rounding.
 *
 * @param value any unit, any: the value
 * @param edge same unit, any: the edge
 * @returns flag: true when below, and for what is not a number
 * @outside not applicable
 * @example below(19.9999999999, 20) // false
 * @source definition
 */
export function below(value: number, edge: number): boolean {
  return !(value >= edge - EDGE * (1 + Math.abs(edge)));
}

/**
 * Whether a value lies above an edge by more than rounding.
 *
 * @param value any unit, any: the value
 * @param edge same unit, any: the edge
 * @returns flag: true when above, and for what is not a number
 * @outside not applicable
 * @example above(20.1, 20) // true
 * @source definition
 */
export function above(value: number, edge: number): boolean {
  return !(value <= edge + EDGE * (1 + Math.abs(edge)));
}

/**
 * Checks that exactly two properties are given and each of them is a number that some air can have.
 *
 * @param given record, two properties: what is known of the air
 * @returns count: the number of properties, 2
 * @outside throws
 * @throws RangeError with the reason
 * @example checkGiven({ dryBulb: 20, relativeHumidity: 0.5 }) // 2
 * @source definition
 */
export function checkGiven(given: GivenAir): number {
  const names = NAMES.filter((name) => given[name] !== undefined);
  if (names.length !== 2) {
    const found = names.length === 0 ? "none is given" : `given: ${names.map((name) => WORDS[name]).join(", ")}`;
    throw impossible(`exactly two of ${NAMES.map((name) => WORDS[name]).join(", ")} are needed; ${found}`);
  }
  for (const name of names) {
    const value = given[name]!;
    if (!Number.isFinite(value)) throw impossible(`${WORDS[name]} ${value} is not a number`);
    if (name === "relativeHumidity" && !(value >= 0 && value <= 1)) {
      throw impossible(`relative humidity ${say(value)} is outside 0…1`);
    }
    if ((name === "humidityRatio" || name === "totalWater") && value < 0) {
      throw impossible(`${WORDS[name]} ${say(value)} kg/kg is negative`);
    }
    if ((name === "wetBulb" || name === "dewPoint") && !(value >= COLDEST_SATURATION && value <= HOTTEST_AIR)) {
      throw impossible(`${WORDS[name]} ${say(value)} °C is outside ${COLDEST_SATURATION}…${HOTTEST_AIR} °C`);
    }
  }
  return names.length;
}

/**
 * Checks that a dry bulb lies within the range served.
 *
 * @param dryBulb °C, -60…90: dry-bulb temperature
 * @param words text, any: how the message begins
 * @returns °C: the dry bulb
 * @outside throws
 * @throws RangeError outside −60…90 °C
 * @example checkDryBulb(20, "dry bulb is") // 20
 * @source definition
 */
export function checkDryBulb(dryBulb: number, words: string): number {
  if (!(dryBulb >= COLDEST_AIR && dryBulb <= HOTTEST_AIR)) {
    throw impossible(`${words} ${say(dryBulb)} °C, which is outside ${COLDEST_AIR}…${HOTTEST_AIR} °C`);
  }
  return dryBulb;
}
