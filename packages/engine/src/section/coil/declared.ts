import { dryAirPressureDrop, wetToDry } from "#component/coil/air-pressure";
import { liquidPressureDrop } from "#component/coil/liquid-pressure";
import { solveSteamSupply } from "#component/coil/steam-supply";
import { standardPressure } from "#fluid/atmosphere";
import { type Liquid, liquidDensity } from "#fluid/liquid";
import { density, specificVolume } from "#fluid/moist-air";
import { steamLatentHeat, steamSaturationPressure } from "#fluid/steam";
import { wetBulbFromHumidityRatio } from "#fluid/wet-bulb";
import { standardAirDensity } from "#quantity/standard-air";
import type { Air } from "../air.ts";
import { type DeclaredCircumstance, type DeclaredComparison, type DeclaredLine, declaredLine } from "../declared.ts";
import { absolutePressure, actualAirflow, airDensity } from "../station.ts";
import type { CoilBlock } from "./block.ts";
import {
  type DeclaredLiquidCoil,
  type DeclaredSteamCoil,
  declaredHumidityRatio,
  declaredLiquid,
} from "./declared-fields.ts";
import { buildRemarks, liquidRemarks, steamRemarks } from "./declared-remarks.ts";
import type { LiquidCoilFigures } from "./liquid.ts";
import type { SteamCoilFigures, SteamPiping } from "./steam.ts";
import { createSteamRoom } from "./steam-solve.ts";
import { type CoilRoom, createCoilRoom, solveAtFlow } from "./valve.ts";

/** By which a certified coil may miss, from memory: total capacity, pressure drops; a leaving air so much in K. */
const tolerances = { capacity: 0.05, pressureDrop: 0.15, leaving: 0.6 } as const;
const source = "from-memory tolerances of certified coils";

/** A coil with liquid in its tubes, as its section holds it. */
export interface LiquidCoilBuilt {
  readonly block: CoilBlock;
  /** m, inside diameter of the connections. */
  readonly connection: number;
  readonly declaredRating: DeclaredLiquidCoil | undefined;
}

/** kg/s of dry air over one coil at the declared point. */
function dryAirFlowOf(
  { airflow, basis, altitude, enteringDryBulb }: DeclaredLiquidCoil | DeclaredSteamCoil,
  humidityRatio: number,
  stacked: number,
): number {
  const perVolume =
    basis === "standard"
      ? standardAirDensity
      : 1 / specificVolume(enteringDryBulb, humidityRatio, standardPressure(altitude));
  return (airflow * perVolume) / stacked;
}

/**
 * Holds a declared point against our rating of the section's coil at that very point, and says what of it differs at the
 * condition in hand; undefined where the job declares none. `liquid` is what flows in the job.
 */
export function compareDeclaredLiquid(
  built: LiquidCoilBuilt,
  rating: LiquidCoilFigures,
  liquid: Liquid | undefined,
): DeclaredComparison | undefined {
  const { block, declaredRating: point } = built;
  if (point === undefined) return undefined;
  const room = createCoilRoom();
  solveDeclared(block, point, room);
  const { number, revision } = point;
  return {
    number,
    revision,
    at: "both at the declared airflow, altitude, entering air, liquid and flow",
    lines: liquidLines(built, point, room),
    circumstances: liquidCircumstances(point, rating, liquid),
    remarks: [
      ...buildRemarks(block.coil, point),
      ...liquidRemarks(point, dryAirFlowOf(point, declaredHumidityRatio(point), 1), liquid, {
        wetShare: room.performance.wetShare,
        wetToDry: wetToDry(block.coil, room.inlet.dryAirFlow, point.enteringDryBulb),
      }),
    ],
    source,
  };
}

/** Our rating of one coil at the declared point, in `room`. */
function solveDeclared(block: CoilBlock, point: DeclaredLiquidCoil, room: CoilRoom): void {
  const { inlet } = room;
  const liquid = declaredLiquid(point);
  inlet.humidityRatio = declaredHumidityRatio(point);
  inlet.dryAirFlow = dryAirFlowOf(point, inlet.humidityRatio, block.stacked);
  inlet.dryBulb = point.enteringDryBulb;
  inlet.coldestFilament = point.enteringDryBulb;
  inlet.pressure = standardPressure(point.altitude);
  inlet.liquid = liquid;
  inlet.liquidTemperature = point.enteringLiquid;
  solveAtFlow(block, (point.flow * liquidDensity(liquid, point.enteringLiquid)) / block.stacked, room);
}

function liquidLines(
  { block, connection }: LiquidCoilBuilt,
  point: DeclaredLiquidCoil,
  { inlet, performance }: CoilRoom,
): readonly DeclaredLine[] {
  const { coil, stacked } = block;
  const { dryAirFlow, dryBulb, humidityRatio, pressure, liquid, liquidFlow } = inlet;
  const { leavingDryBulb, leavingHumidityRatio, leavingLiquid, wetShare } = performance;
  const dry = dryAirPressureDrop(coil, dryAirFlow, humidityRatio, dryBulb, leavingDryBulb, pressure);
  const wetter = wetShare * (wetToDry(coil, dryAirFlow, (dryBulb + leavingDryBulb) / 2) - 1);
  const mean = (inlet.liquidTemperature + leavingLiquid) / 2;
  const wetBulb = () => wetBulbFromHumidityRatio(leavingDryBulb, leavingHumidityRatio, pressure);
  const isWet = point.airPressureDropOf === "wet fins";
  return [
    declaredLine("total capacity", "power", point.capacity, Math.abs(performance.heat) * stacked, tolerances.capacity),
    ...given(point.sensibleCapacity, (their) =>
      declaredLine("sensible capacity", "power", their, Math.abs(performance.sensibleHeat) * stacked),
    ),
    ...given(point.leavingDryBulb, (their) =>
      declaredLine("leaving dry bulb", "temperature", their, leavingDryBulb, tolerances.leaving),
    ),
    ...given(point.leavingWetBulb, (their) =>
      declaredLine("leaving wet bulb", "temperature", their, wetBulb(), tolerances.leaving),
    ),
    ...given(point.leavingLiquid, (their) => declaredLine("leaving liquid", "temperature", their, leavingLiquid)),
    ...given(point.airPressureDrop, (their) =>
      declaredLine(
        `air pressure drop, ${point.airPressureDropOf}`,
        "pressureDifference",
        their,
        isWet ? dry * (1 + wetter) : dry,
        tolerances.pressureDrop,
      ),
    ),
    ...given(point.liquidPressureDrop, (their) =>
      declaredLine(
        "liquid pressure drop",
        "liquidPressureDrop",
        their,
        liquidPressureDrop(coil, liquid, liquidFlow, mean, connection),
        tolerances.pressureDrop,
      ),
    ),
  ];
}

/** A line where the supplier gives the figure, none where not. */
function given(value: number | undefined, line: (value: number) => DeclaredLine): readonly DeclaredLine[] {
  return value === undefined ? [] : [line(value)];
}

function liquidCircumstances(
  point: DeclaredLiquidCoil,
  rating: LiquidCoilFigures,
  liquid: Liquid | undefined,
): readonly DeclaredCircumstance[] {
  const cools = point.enteringLiquid < point.enteringDryBulb;
  const runsAlike = rating.capacity > 0 && cools === rating.liquidEntering < rating.entering.dryBulb;
  if (!runsAlike || liquid === undefined) return [];
  const { entering } = rating;
  const humidityRatio = declaredHumidityRatio(point);
  const wetBulb = wetBulbFromHumidityRatio(entering.dryBulb, entering.humidityRatio, absolutePressure(entering));
  const warmer = (here: number, declared: number) => (cools ? here > declared : here < declared);
  const temperature = (what: string, declared: number, here: number): DeclaredCircumstance => ({
    ...{ what, quantity: "temperature", declared, here },
    asksMore: warmer(here, declared),
  });
  const flow = rating.fullMassFlow / liquidDensity(liquid, rating.liquidEntering);
  const glycol = liquid.massFraction;
  return differing([
    ...airCircumstances(point, humidityRatio, entering),
    temperature("entering dry bulb", point.enteringDryBulb, entering.dryBulb),
    ...(point.enteringWetBulb === undefined || !cools
      ? []
      : [temperature("entering wet bulb", point.enteringWetBulb, wetBulb)]),
    temperature("entering liquid", point.enteringLiquid, rating.liquidEntering),
    {
      what: "liquid flow, valve open",
      quantity: "liquidFlow",
      declared: point.flow,
      here: flow,
      asksMore: flow < point.flow,
    },
    {
      what: "glycol by mass",
      quantity: "share",
      declared: point.concentration,
      here: glycol,
      asksMore: glycol > point.concentration,
    },
  ]);
}

/** Airflow on the basis declared, and density, for which a fan and a pressure drop ask. */
function airCircumstances(
  point: DeclaredLiquidCoil | DeclaredSteamCoil,
  humidityRatio: number,
  entering: Air,
): readonly DeclaredCircumstance[] {
  const { airflow, basis, altitude, enteringDryBulb } = point;
  const here = basis === "standard" ? entering.dryAirFlow / standardAirDensity : actualAirflow(entering);
  return [
    {
      what: `airflow, ${basis}`,
      quantity: basis === "standard" ? "standardAirflow" : "actualAirflow",
      declared: airflow,
      here,
      asksMore: here > airflow,
    },
    {
      what: "density of the entering air",
      quantity: "density",
      declared: density(enteringDryBulb, humidityRatio, standardPressure(altitude)),
      here: airDensity(entering),
      asksMore: false,
    },
  ];
}

/** K, shares of flows and density, and points of glycol that rounding and reading explain. */
const rounding = { temperature: 0.3, share: 0.005, flow: 0.015 } as const;

/** What differs by more than rounding. */
function differing(all: readonly DeclaredCircumstance[]): readonly DeclaredCircumstance[] {
  return all.filter(({ quantity, declared, here }) => {
    const apart = Math.abs(here - declared);
    if (quantity === "temperature") return apart > rounding.temperature;
    if (quantity === "gaugePressure") return apart > 1500;
    return quantity === "share" ? apart > rounding.share : apart > rounding.flow * declared;
  });
}

/** Holds a declared point of a steam coil against our rating of the section's coil with its valve open. */
export function compareDeclaredSteam(
  { block, inner, declaredRating: point }: SteamPiping & { readonly declaredRating: DeclaredSteamCoil | undefined },
  rating: SteamCoilFigures,
  steamPressure: number | undefined,
): DeclaredComparison | undefined {
  if (point === undefined) return undefined;
  const { coil, stacked } = block;
  const barometer = standardPressure(point.altitude);
  const pressure = barometer + point.steamPressure;
  const flow = dryAirFlowOf(point, 0, stacked);
  const { enteringDryBulb: cold, number, revision } = point;
  const air = { dryBulb: cold, humidityRatio: 0, coldestFilament: cold };
  const { steam, distribution, performance: out } = createSteamRoom();
  const inTubes = steamSaturationPressure(
    solveSteamSupply(coil, inner.distributor, flow, air, pressure, steam, distribution, out),
  );
  const heat = out.heat * stacked;
  return {
    number,
    revision,
    at: "both at the declared airflow, altitude, entering air and steam pressure, valve open",
    lines: [
      declaredLine("total capacity", "power", point.capacity, heat, tolerances.capacity),
      ...given(point.leavingDryBulb, (their) =>
        declaredLine("leaving dry bulb", "temperature", their, out.leavingDryBulb, tolerances.leaving),
      ),
      ...given(point.airPressureDrop, (their) =>
        declaredLine(
          "air pressure drop",
          "pressureDifference",
          their,
          dryAirPressureDrop(coil, flow, 0, cold, out.leavingDryBulb, barometer),
          tolerances.pressureDrop,
        ),
      ),
      ...given(point.condensate, (their) =>
        declaredLine("condensate", "massFlow", their, heat / steamLatentHeat(inTubes), tolerances.capacity),
      ),
    ],
    circumstances: steamCircumstances(point, rating, steamPressure),
    remarks: [...buildRemarks(coil, point), ...steamRemarks(point, flow * stacked, pressure)],
    source,
  };
}

function steamCircumstances(
  point: DeclaredSteamCoil,
  { capacity, entering }: SteamCoilFigures,
  steamPressure: number | undefined,
): readonly DeclaredCircumstance[] {
  if (!(capacity > 0) || steamPressure === undefined) return [];
  const gauge = steamPressure - entering.barometricPressure;
  return differing([
    ...airCircumstances(point, 0, entering),
    {
      what: "entering dry bulb",
      quantity: "temperature",
      declared: point.enteringDryBulb,
      here: entering.dryBulb,
      asksMore: entering.dryBulb < point.enteringDryBulb,
    },
    {
      what: "steam pressure",
      quantity: "gaugePressure",
      declared: point.steamPressure,
      here: gauge,
      asksMore: gauge < point.steamPressure,
    },
  ]);
}
