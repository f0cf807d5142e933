import type { CoilAlternative } from "@oncethrough/engine/design/coil-alternative";
import type { RecoveryAlternative } from "@oncethrough/engine/design/recovery-alternative";
import type { SteamAlternative } from "@oncethrough/engine/design/steam-alternative";
import type { QuantityKind } from "@oncethrough/engine/quantity/kind";

/** A column of alternatives: as CSV in SI, and in the printed table where it has a heading. */
export interface AlternativeColumn<Alternative = never> {
  readonly name: string;
  readonly heading?: string;
  readonly quantity: QuantityKind | "words" | "count";
  readonly value: (each: Alternative) => string | number;
  /** How the table shows it where that differs. */
  readonly shown?: (each: Alternative) => string;
}

type Any = CoilAlternative | SteamAlternative | RecoveryAlternative;

const surface: AlternativeColumn<Any> = {
  name: "surface",
  heading: "surface",
  quantity: "words",
  value: (each) => each.surface,
  shown: (each) => each.surface.replace(/^typical /, "").replace(/ in\b/, "″"),
};
const rows: AlternativeColumn<Any> = { name: "rows", heading: "rows", quantity: "count", value: (each) => each.rows };
const fins: AlternativeColumn<Any> = {
  name: "fins [1/m]",
  heading: "fins",
  quantity: "pitch",
  value: (each) => each.fins,
};
const price: AlternativeColumn<Any> = {
  name: "price index",
  heading: "price",
  quantity: "count",
  value: (each) => each.priceIndex,
};
const leaving: AlternativeColumn<Any> = {
  name: "leaving dry bulb [°C]",
  heading: "leaving",
  quantity: "temperature",
  value: (each) => each.leavingDryBulb,
};
const capacity: AlternativeColumn<Any> = {
  name: "capacity [W]",
  heading: "capacity",
  quantity: "power",
  value: (each) => each.capacity,
};
const face: AlternativeColumn<Any> = {
  name: "face velocity [m/s]",
  quantity: "velocity",
  value: (each) => each.faceVelocity,
};
const air: AlternativeColumn<Any> = {
  name: "air pressure drop [Pa]",
  heading: "air",
  quantity: "pressureDifference",
  value: (each) => each.airPressureDrop,
};
const depth: AlternativeColumn<Any> = { name: "depth [m]", quantity: "length", value: (each) => each.depth };

type Circuited = CoilAlternative | RecoveryAlternative;
const circuits: AlternativeColumn<Circuited> = {
  name: "circuits",
  heading: "circuits",
  quantity: "words",
  value: (each) => each.circuits,
  shown: (each) => `${String(each.circuits).padStart(3)}${each.turbulators ? " wire" : ""}`,
};
const turbulators: AlternativeColumn<Circuited> = {
  name: "turbulators",
  quantity: "words",
  value: (each) => (each.turbulators ? "wire" : "none"),
};
const flow: AlternativeColumn<Circuited> = {
  name: "water flow [kg/s]",
  quantity: "massFlow",
  value: (each) => each.liquidMassFlow,
};
const tubes: AlternativeColumn<Circuited> = {
  name: "tube velocity [m/s]",
  heading: "tubes",
  quantity: "liquidVelocity",
  value: (each) => each.tubeVelocity,
};

const liquid: readonly AlternativeColumn<CoilAlternative>[] = [
  surface,
  rows,
  fins,
  circuits,
  turbulators,
  price,
  leaving,
  capacity,
  { name: "sensible capacity [W]", quantity: "power", value: (each) => each.sensibleCapacity },
  face,
  air,
  {
    name: "water pressure drop [Pa]",
    heading: "water",
    quantity: "liquidPressureDrop",
    value: (each) => each.liquidPressureDrop,
  },
  flow,
  { name: "leaving water [°C]", quantity: "temperature", value: (each) => each.liquidLeaving },
  tubes,
  depth,
];

const steam: readonly AlternativeColumn<SteamAlternative>[] = [
  surface,
  rows,
  fins,
  price,
  leaving,
  capacity,
  { name: "surplus [1]", heading: "surplus", quantity: "share", value: (each) => each.surplus },
  { name: "condensate [kg/s]", heading: "condensate", quantity: "massFlow", value: (each) => each.condensate },
  {
    name: "stalls above [°C]",
    heading: "stalls\nabove",
    quantity: "temperature",
    value: (each) => each.stallAirTemperature,
  },
  {
    name: "breaker open above [°C]",
    heading: "breaker\nabove",
    quantity: "temperature",
    value: (each) => each.breakerAirTemperature,
  },
  face,
  air,
  depth,
];

const recovery: readonly AlternativeColumn<RecoveryAlternative>[] = [
  surface,
  rows,
  fins,
  circuits,
  turbulators,
  price,
  leaving,
  capacity,
  {
    name: "temperature effectiveness [1]",
    heading: "effect.",
    quantity: "share",
    value: (each) => each.temperatureEffectiveness,
  },
  { name: "given up to frost [W]", quantity: "power", value: (each) => each.frostGivenUp },
  face,
  air,
  {
    name: "exhaust air pressure drop, dry [Pa]",
    quantity: "pressureDifference",
    value: (each) => each.exhaustPressureDrop,
  },
  {
    name: "loop pressure drop [Pa]",
    heading: "loop",
    quantity: "liquidPressureDrop",
    value: (each) => each.loopPressureDrop,
  },
  flow,
  tubes,
  depth,
];

/** The columns for a kind of coil. */
export function columnsOf(kind: string): readonly AlternativeColumn[] {
  if (kind.startsWith("steam")) return steam;
  return kind === "recovery coil" ? recovery : liquid;
}
