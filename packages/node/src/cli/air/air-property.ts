import type { MoistAirState } from "@oncethrough/engine/fluid/moist-air-state";
import type { QuantityKind } from "@oncethrough/engine/quantity/kind";

/** A property of moist air as the command line knows it. */
export interface AirProperty {
  readonly key: keyof MoistAirState;
  readonly words: string;
  readonly quantity: QuantityKind;
  /** Unit of the number in JSON. */
  readonly unit: string;
}

/** The properties of which two make a state. */
export const givenProperties = [
  { key: "dryBulb", words: "dry bulb", quantity: "temperature", unit: "°C" },
  { key: "wetBulb", words: "wet bulb", quantity: "temperature", unit: "°C" },
  { key: "dewPoint", words: "dew point", quantity: "temperature", unit: "°C" },
  { key: "relativeHumidity", words: "relative humidity", quantity: "share", unit: "1" },
  { key: "humidityRatio", words: "humidity ratio", quantity: "humidityRatio", unit: "kg/kg dry air" },
  { key: "enthalpy", words: "enthalpy", quantity: "enthalpy", unit: "J/kg dry air" },
  { key: "specificVolume", words: "specific volume", quantity: "specificVolume", unit: "m³/kg dry air" },
] as const satisfies readonly AirProperty[];

/** Key of a property that may be given. */
export type GivenKey = (typeof givenProperties)[number]["key"];

/** All properties of a state, in the order in which they are printed. */
export const stateProperties: readonly AirProperty[] = [
  ...givenProperties,
  { key: "density", words: "density", quantity: "density", unit: "kg moist air/m³" },
  { key: "freeWater", words: "free water", quantity: "humidityRatio", unit: "kg/kg dry air" },
  { key: "pressure", words: "pressure", quantity: "absolutePressure", unit: "Pa" },
];
