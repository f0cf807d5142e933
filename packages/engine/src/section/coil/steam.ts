import {
  createSteamPerformance,
  createSteamWork,
  type SteamPerformance,
  type SteamWork,
  solveSteamCoil,
} from "#component/coil/steam-coil";
import {
  drainTemperature,
  dropLegPressure,
  stallAirTemperature,
  steamTemperatureNeeded,
} from "#component/coil/steam-side";
import { surfaceDistance } from "#component/finned-surface/family";
import type { SteamSupply } from "#duty/condition";
import { steamLatentHeat, steamSaturationPressure, steamSaturationTemperature } from "#fluid/steam";
import { choice, flag, quantity } from "#form/field";
import type { CoilBlock } from "./block.ts";
import { type CoilAirFigures, noCoilAirFigures } from "./state.ts";

/** Fields that coils on steam share. */
export const steamCoilFields = {
  dropLeg: quantity("length", {
    meaning: "Height from the coil's condensate outlet down to the trap",
    default: "14 in",
    minimum: "0 in",
    maximum: "6 ft",
  }),
  vacuumBreaker: flag({ meaning: "A vacuum breaker opens just below atmospheric pressure", default: true }),
  trap: choice(["float and thermostatic", "inverted bucket"], {
    meaning: "Kind of steam trap, one for each coil",
    default: "float and thermostatic",
  }),
} as const;

/** Pa below the atmosphere at which a swing-check vacuum breaker has opened, ¼ inHg. */
export const vacuumBreakerOpens = 847;

/** What every coil on steam reports. Flows are of all coils of the section together. */
export interface SteamCoilFigures extends CoilAirFigures {
  /** W into the air, and with the valve open at this airflow. */
  capacity: number;
  fullCapacity: number;
  loadShare: number;
  /** °C: of the steam at hand; that the load needs with the whole surface active; in the coil. */
  supplySteamTemperature: number;
  neededSteamTemperature: number;
  steamTemperature: number;
  /** Pa absolute in the coil, and against the atmosphere. */
  steamPressure: number;
  steamGaugePressure: number;
  /** kg/s of condensate, and that the traps must pass: load times their factor, at half a psi. */
  condensate: number;
  trapCapacity: number;
  condensateTemperature: number;
  effectiveness: number;
  /** Share of the surface that steam reaches; 1 unless a vacuum breaker lets air in. */
  activeShare: number;
  /** °C of the air behind the active and the inactive part. */
  warmEnd: number;
  coldEnd: number;
  /** 1 when the coil's pressure and the drop leg do not overcome the return: condensate stands in the tubes. */
  stalled: number;
  /** °C of entering air above which that is so at this airflow and set point. */
  stallAirTemperature: number;
  airReynolds: number;
  airCoefficient: number;
  finEfficiency: number;
  surfaceEfficiency: number;
  condensingCoefficient: number;
  rangeDistance: number;
  leavingDryBulb: number;
  coldestTubeWall: number;
  /** K of the coldest wall above 0 °C, where condensate freezes. */
  freezeMargin: number;
}

/** Zeros for `SteamCoilFigures`, to be spread. */
export const noSteamCoilFigures = {
  ...noCoilAirFigures,
  capacity: 0,
  fullCapacity: 0,
  loadShare: 0,
  supplySteamTemperature: 0,
  neededSteamTemperature: 0,
  steamTemperature: 0,
  steamPressure: 0,
  steamGaugePressure: 0,
  condensate: 0,
  trapCapacity: 0,
  condensateTemperature: 0,
  effectiveness: 0,
  activeShare: 0,
  warmEnd: 0,
  coldEnd: 0,
  stalled: 0,
  stallAirTemperature: 0,
  airReynolds: 0,
  airCoefficient: 0,
  finEfficiency: 1,
  surfaceEfficiency: 1,
  condensingCoefficient: 0,
  rangeDistance: 0,
  leavingDryBulb: 0,
  coldestTubeWall: 0,
  freezeMargin: 0,
} as const;

/** Room for the solutions of one coil on steam. */
export interface SteamRoom {
  readonly steam: SteamWork;
  readonly performance: SteamPerformance;
}

/** Room for the solutions of one coil on steam. */
export function createSteamRoom(): SteamRoom {
  return { steam: createSteamWork(), performance: createSteamPerformance() };
}

/** Solves one coil at `dryAirFlow` kg/s of its own and a steam temperature; `out.entering` is the air. */
export function solveAtSteam(
  block: CoilBlock,
  dryAirFlow: number,
  steamTemperature: number,
  room: SteamRoom,
  out: CoilAirFigures,
): SteamPerformance {
  const { dryBulb, humidityRatio, coldestFilament } = out.entering;
  solveSteamCoil(
    block.coil,
    dryAirFlow,
    dryBulb,
    humidityRatio,
    coldestFilament,
    steamTemperature,
    room.steam,
    room.performance,
  );
  return room.performance;
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
  out: CoilAirFigures,
): number {
  const { performance } = room;
  const entering = out.entering.dryBulb;
  let temperature = Math.max(0.1, steamTemperatureNeeded(entering, wanted, performance.effectiveness));
  for (let k = 0; k < 30; k++) {
    solveAtSteam(block, dryAirFlow, temperature, room, out);
    const next = Math.max(0.1, steamTemperatureNeeded(entering, wanted, performance.effectiveness));
    const change = Math.abs(next - temperature);
    temperature = next;
    if (change < 1e-9) break;
  }
  solveAtSteam(block, dryAirFlow, temperature, room, out);
  return temperature;
}

/** Pressure, condensate, trap and drainage of the steam side from the heat and the steam temperature in the coil. */
export function setSteamSide(
  fields: { readonly dropLeg: number; readonly trap: "float and thermostatic" | "inverted bucket" },
  supply: SteamSupply,
  modulates: boolean,
  out: SteamCoilFigures,
): void {
  const { barometricPressure } = out.entering;
  out.steamPressure = Math.max(1000, steamSaturationPressure(out.steamTemperature));
  out.steamGaugePressure = out.steamPressure - barometricPressure;
  out.condensate = out.capacity / steamLatentHeat(out.steamPressure);
  // Float and thermostatic traps on modulated steam see their load at half a psi with three times in hand, else twice.
  out.trapCapacity = out.condensate * (modulates || fields.trap === "inverted bucket" ? 3 : 2);
  out.condensateTemperature = steamSaturationTemperature(out.steamPressure);
  const pushes = out.steamPressure + dropLegPressure(fields.dropLeg);
  out.stalled = out.capacity > 0 && pushes <= supply.condensateReturnPressure ? 1 : 0;
  out.stallAirTemperature = stallAirTemperature(
    out.leavingDryBulb,
    out.effectiveness,
    drainTemperature(supply.condensateReturnPressure, fields.dropLeg),
  );
}

/** Figures of the air side from the performance. */
export function setSteamAirFigures(block: CoilBlock, performance: SteamPerformance, out: SteamCoilFigures): void {
  out.effectiveness = performance.effectiveness;
  out.airReynolds = performance.airReynolds;
  out.airCoefficient = performance.airCoefficient;
  out.finEfficiency = performance.finEfficiency;
  out.surfaceEfficiency = performance.surfaceEfficiency;
  out.condensingCoefficient = performance.condensingCoefficient;
  const { surface, bank } = block.coil;
  out.rangeDistance = performance.airReynolds > 0 ? surfaceDistance(surface, bank, performance.airReynolds) : 0;
}

/** A coil that steam does not reach: it passes the air as it is. */
export function shutOff(out: SteamCoilFigures): void {
  const { dryBulb, coldestFilament } = out.entering;
  Object.assign(out, {
    capacity: 0,
    loadShare: 0,
    steamTemperature: dryBulb,
    steamPressure: out.entering.barometricPressure,
    steamGaugePressure: 0,
    condensate: 0,
    trapCapacity: 0,
    condensateTemperature: dryBulb,
    activeShare: 0,
    warmEnd: dryBulb,
    coldEnd: dryBulb,
    stalled: 0,
    stallAirTemperature: dryBulb,
    coldestTubeWall: coldestFilament,
    freezeMargin: coldestFilament,
  });
}
