import {
  createSteamPerformance,
  createSteamWork,
  type SteamPerformance,
  type SteamWork,
  solveSteamCoil,
} from "#component/coil/steam-coil";
import { createSteamDistribution, type SteamDistribution } from "#component/coil/steam-distribution";
import { steamTemperatureNeeded } from "#component/coil/steam-side";
import { solveSteamSupply } from "#component/coil/steam-supply";
import type { RootGuess } from "#numerics/find-root-near";
import type { Air } from "../air.ts";
import type { CoilBlock } from "./block.ts";
import type { InnerTubes } from "./distributor.ts";

/** Room for the solutions of one coil on steam. */
export interface SteamRoom {
  readonly steam: SteamWork;
  readonly performance: SteamPerformance;
  /** The same coil with all the steam that there is. */
  readonly full: SteamPerformance;
  /** Share of the air over the lanes of a coil with face and bypass. */
  readonly faceShare: RootGuess;
  /** How the steam got into the tubes, as it was found last. */
  readonly distribution: SteamDistribution;
}

/** Room for the solutions of one coil on steam. */
export function createSteamRoom(): SteamRoom {
  return {
    steam: createSteamWork(),
    performance: createSteamPerformance(),
    full: createSteamPerformance(),
    faceShare: { at: Number.NaN, slope: 0 },
    distribution: createSteamDistribution(),
  };
}

/** Solves one coil at `dryAirFlow` kg/s of its own and a steam temperature; `entering` is the air. */
export function solveAtSteam(
  block: CoilBlock,
  dryAirFlow: number,
  steamTemperature: number,
  { steam }: SteamRoom,
  { dryBulb, humidityRatio, coldestFilament }: Air,
  out: SteamPerformance,
): void {
  solveSteamCoil(block.coil, dryAirFlow, dryBulb, humidityRatio, coldestFilament, steamTemperature, steam, out);
}

/** Solves one coil with its valve open on steam of a pressure at its connection; gives the °C of steam in the tubes. */
export function solveAtSupply(
  { block, inner }: { readonly block: CoilBlock; readonly inner: InnerTubes },
  dryAirFlow: number,
  pressure: number,
  { steam, distribution }: SteamRoom,
  entering: Air,
  out: SteamPerformance,
): number {
  return solveSteamSupply(block.coil, inner.distributor, dryAirFlow, entering, pressure, steam, distribution, out);
}

/**
 * Steam temperature at which one coil just reaches a leaving dry bulb, the whole surface active. The effectiveness hardly
 * changes with steam temperature, so that a few repetitions settle it; the room's performance is that of the answer.
 */
export function steamTemperatureFor(
  block: CoilBlock,
  dryAirFlow: number,
  wanted: number,
  room: SteamRoom,
  entering: Air,
): number {
  const { performance } = room;
  const needed = () => Math.max(0.1, steamTemperatureNeeded(entering.dryBulb, wanted, performance.effectiveness));
  let temperature = performance.effectiveness > 0 ? needed() : 100;
  for (let k = 0; k < 30; k++) {
    solveAtSteam(block, dryAirFlow, temperature, room, entering, performance);
    const next = needed();
    if (Math.abs(next - temperature) < 1e-9) break;
    temperature = next;
  }
  return temperature;
}
