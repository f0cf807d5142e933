import type { CoilAlternative } from "@oncethrough/engine/design/coil-alternative";
import type { RecoveryAlternative } from "@oncethrough/engine/design/recovery-alternative";
import type { SteamAlternative } from "@oncethrough/engine/design/steam-alternative";
import type { QuantityKind } from "@oncethrough/engine/quantity/kind";

/** A field of an alternative, of whichever kind of coil. */
export type AlternativeField = keyof CoilAlternative | keyof SteamAlternative | keyof RecoveryAlternative;

/** One figure of an alternative: for the schema, as a column of the CSV in SI, in the printed table where it has a heading. */
interface AlternativeFigure {
  readonly quantity: QuantityKind | "words" | "count";
  /** What the schema says of it: unit first. */
  readonly says: string;
  /** Name in the CSV; left out there where it has none. */
  readonly name?: string;
  readonly heading?: string;
}

/** Every figure that any kind of coil tells, once. */
export const alternativeFigures: Readonly<Record<AlternativeField, AlternativeFigure>> = {
  surface: { quantity: "words", says: "name of the catalogue record", name: "surface", heading: "surface" },
  rows: { quantity: "count", says: "count", name: "rows", heading: "rows" },
  fins: { quantity: "pitch", says: "1/m", name: "fins [1/m]", heading: "fins" },
  circuits: { quantity: "words", says: "count, of one coil", name: "circuits", heading: "circuits" },
  turbulators: { quantity: "words", says: "wire inserts in the tubes", name: "turbulators" },
  tubesPerRow: { quantity: "count", says: "count, of one coil or lane" },
  passes: { quantity: "count", says: "count" },
  present: { quantity: "words", says: "the coil as the file has it" },
  priceIndex: {
    quantity: "count",
    says: "the present coil, or both coils of a loop, 100, by invented rates",
    name: "price index",
    heading: "price",
  },
  leavingDryBulb: {
    quantity: "temperature",
    says: "°C, valve open",
    name: "leaving dry bulb [°C]",
    heading: "leaving",
  },
  capacity: {
    quantity: "power",
    says: "W, all coils or lanes, valve open; of a loop between the two airs",
    name: "capacity [W]",
    heading: "capacity",
  },
  sensibleCapacity: { quantity: "power", says: "W", name: "sensible capacity [W]" },
  leavingHumidityRatio: { quantity: "humidityRatio", says: "kg/kg" },
  surplus: {
    quantity: "share",
    says: "share of the capacity that the leaving air wanted does not need",
    name: "surplus [1]",
    heading: "surplus",
  },
  condensate: { quantity: "massFlow", says: "kg/s, valve open", name: "condensate [kg/s]", heading: "condensate" },
  stallAirTemperature: {
    quantity: "temperature",
    says: "°C of entering air above which it stalls at the leaving air wanted",
    name: "stalls above [°C]",
    heading: "stalls\nabove",
  },
  breakerAirTemperature: {
    quantity: "temperature",
    says: "°C of entering air above which its vacuum breaker stands open",
    name: "breaker open above [°C]",
    heading: "breaker\nabove",
  },
  temperatureEffectiveness: {
    quantity: "share",
    says: "change of the air over the difference of the two airs",
    name: "temperature effectiveness [1]",
    heading: "effect.",
  },
  frostGivenUp: { quantity: "power", says: "W that the frost limit takes off it", name: "given up to frost [W]" },
  faceVelocity: { quantity: "velocity", says: "m/s, of the air as it enters", name: "face velocity [m/s]" },
  airPressureDrop: {
    quantity: "pressureDifference",
    says: "Pa, as wet as the coil is",
    name: "air pressure drop [Pa]",
    heading: "air",
  },
  exhaustPressureDrop: {
    quantity: "pressureDifference",
    says: "Pa of the exhaust air over dry fins",
    name: "exhaust air pressure drop, dry [Pa]",
  },
  liquidPressureDrop: {
    quantity: "liquidPressureDrop",
    says: "Pa between connections",
    name: "water pressure drop [Pa]",
    heading: "water",
  },
  loopPressureDrop: {
    quantity: "liquidPressureDrop",
    says: "Pa in both coils",
    name: "loop pressure drop [Pa]",
    heading: "loop",
  },
  liquidMassFlow: { quantity: "massFlow", says: "kg/s, all stacked coils, or of the loop", name: "water flow [kg/s]" },
  liquidVolumeFlow: { quantity: "liquidFlow", says: "m³/s, all stacked coils" },
  liquidLeaving: { quantity: "temperature", says: "°C", name: "leaving water [°C]" },
  tubeVelocity: {
    quantity: "liquidVelocity",
    says: "m/s in the section's coil",
    name: "tube velocity [m/s]",
    heading: "tubes",
  },
  carryOverShare: {
    quantity: "share",
    says: "peak face velocity over the one that throws water; 0 for heating",
  },
  rangeDistance: { quantity: "share", says: "distance from the correlation's range, 0 inside" },
  depth: { quantity: "length", says: "m along the flow with the casing", name: "depth [m]" },
};

const onlyLiquid: readonly (keyof CoilAlternative)[] = [
  "sensibleCapacity",
  "leavingHumidityRatio",
  "liquidPressureDrop",
  "liquidVolumeFlow",
  "liquidLeaving",
  "carryOverShare",
];
const onlySteam: readonly (keyof SteamAlternative)[] = [
  "surplus",
  "condensate",
  "stallAirTemperature",
  "breakerAirTemperature",
];
const onlyLoop: readonly (keyof RecoveryAlternative)[] = [
  "temperatureEffectiveness",
  "frostGivenUp",
  "exhaustPressureDrop",
  "loopPressureDrop",
];
const circuited: readonly (keyof CoilAlternative & keyof RecoveryAlternative)[] = [
  "circuits",
  "turbulators",
  "passes",
  "liquidMassFlow",
  "tubeVelocity",
];

const every = Object.keys(alternativeFigures) as AlternativeField[];
const without = (...fields: readonly (readonly AlternativeField[])[]) =>
  every.filter((field) => !fields.some((each) => each.includes(field)));

/** The fields of each sort of coil, in the order of the table. */
export const alternativeFields = {
  liquid: without(onlySteam, onlyLoop),
  steam: without(onlyLiquid, onlyLoop, circuited),
  loop: without(onlyLiquid, onlySteam),
} as const;

/** The fields of a kind of coil. */
export function fieldsOf(kind: string): readonly AlternativeField[] {
  if (kind.startsWith("steam")) return alternativeFields.steam;
  return kind === "recovery coil" ? alternativeFields.loop : alternativeFields.liquid;
}
