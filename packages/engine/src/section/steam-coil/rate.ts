import type { SteamSupply } from "#duty/condition";
import { steamSaturationTemperature } from "#fluid/steam";
import { type Air, createAir } from "../air.ts";
import { createSectionRating, recordAtRest } from "../base-rating.ts";
import { closeEnergy, setCoilPressure, wantedBehindFins } from "../coil/state.ts";
import {
  createSteamRoom,
  noSteamCoilFigures,
  type SteamCoilFigures,
  type SteamRoom,
  setSteamAirFigures,
  setSteamFreeze,
  setSteamSide,
  shutOff,
  solveAtSteam,
  steamTemperatureFor,
  vacuumBreakerOpens,
} from "../coil/steam.ts";
import type { SectionCondition } from "../contract.ts";
import { roomOf } from "../room.ts";
import { beginRating } from "../station.ts";
import type { SteamCoilDesign } from "./design.ts";

/** A steam coil at a condition. */
export interface SteamCoilRating extends SteamCoilFigures {
  /** °C wanted behind the coil; what enters when no heat is wanted. */
  wantedLeaving: number;
}

const atRest = recordAtRest<SteamCoilRating>({ ...createSectionRating(), ...noSteamCoilFigures, wantedLeaving: 0 });

/** A record to be filled. */
export function createSteamCoilRating(): SteamCoilRating {
  return { ...atRest, entering: createAir(), leaving: createAir() };
}

/** How the valve stands. */
type Valve = "shut" | "open" | "throttled";

/** Rates the coil: its valve throttles, opens or shuts, and the steam side follows. */
export function rateSteamCoil(design: SteamCoilDesign, air: Air, at: SectionCondition, out: SteamCoilRating): void {
  beginRating(air, out);
  const supply = at.condition.utilities.steam;
  const valve = valveStand(design, air, supply, at);
  out.wantedLeaving = at.operation.heatingLeaving ?? air.dryBulb;
  const room = roomOf(out, createSteamRoom);
  const flow = air.dryAirFlow / design.block.stacked;
  out.supplySteamTemperature = supply === undefined ? air.dryBulb : steamSaturationTemperature(supply.pressure);
  out.neededSteamTemperature = out.supplySteamTemperature;
  const { performance } = room;
  solveAtSteam(design.block, flow, out.supplySteamTemperature, room, out);
  setSteamAirFigures(design.block, performance, out);
  out.fullCapacity = performance.heat * design.block.stacked;
  const behindFins = wantedBehindFins(air, out.wantedLeaving);
  const opens = valve === "open" || performance.leavingDryBulb <= behindFins;
  if (valve === "shut" || supply === undefined) {
    out.leavingDryBulb = air.dryBulb;
    shutOff(out);
    closeEnergy(out);
  } else {
    if (opens) runOpen(design, room, out);
    else throttle(design, flow, behindFins, room, out);
    closeEnergy(out);
    out.leavingDryBulb = out.leaving.dryBulb;
    out.loadShare = out.fullCapacity > 0 ? out.capacity / out.fullCapacity : 0;
    setSteamSide(design, supply, design.control === "modulating valve", out);
    settleCold(air, out);
  }
  out.leavingDryBulb = out.leaving.dryBulb;
  setCoilPressure(design.block, 0, out);
  setSteamFreeze(design, supply, 1, at, out);
}

function valveStand(design: SteamCoilDesign, air: Air, supply: SteamSupply | undefined, at: SectionCondition): Valve {
  if (supply === undefined) return "shut";
  if (!at.operation.fansRunning) return supply.valveFails === "open" ? "open" : "shut";
  const wanted = at.operation.heatingLeaving;
  if (wanted === undefined || !(wanted > air.dryBulb)) return "shut";
  if (design.control === "modulating valve") return "throttled";
  return air.dryBulb <= design.opensBelow ? "open" : "shut";
}

/** The whole surface on steam as it is supplied. */
function runOpen(design: SteamCoilDesign, { performance }: SteamRoom, out: SteamCoilRating): void {
  out.steamTemperature = out.supplySteamTemperature;
  out.activeShare = 1;
  out.capacity = performance.heat * design.block.stacked;
  out.heatToAir = out.capacity;
  out.warmEnd = performance.leavingDryBulb;
  out.coldEnd = performance.leavingDryBulb;
  out.coldestTubeWall = performance.coldestTubeWall;
  out.leaving.coldestFilament = performance.leavingFilament;
}

/** Steam throttled to the load: to vacuum, or, with a vacuum breaker, to part of the surface at about the atmosphere's. */
function throttle(
  design: SteamCoilDesign,
  flow: number,
  behindFins: number,
  room: SteamRoom,
  out: SteamCoilRating,
): void {
  const { block } = design;
  const { performance } = room;
  out.neededSteamTemperature = steamTemperatureFor(block, flow, behindFins, room, out);
  const load = performance.heat * block.stacked;
  const lowest = steamSaturationTemperature(out.entering.barometricPressure - vacuumBreakerOpens);
  if (!(design.vacuumBreaker && out.neededSteamTemperature < lowest)) {
    runOpen(design, room, out);
    out.steamTemperature = out.neededSteamTemperature;
    setSteamAirFigures(block, performance, out);
    return;
  }
  solveAtSteam(block, flow, lowest, room, out);
  setSteamAirFigures(block, performance, out);
  out.steamTemperature = lowest;
  out.activeShare = load / (performance.heat * block.stacked);
  out.capacity = load;
  out.heatToAir = load;
  out.warmEnd = performance.leavingDryBulb;
  out.coldEnd = out.entering.dryBulb;
  // Tubes that steam does not reach are as cold as the air that passes them, and pass it on unheated.
  out.coldestTubeWall = out.entering.coldestFilament;
  out.leaving.coldestFilament = out.entering.coldestFilament;
}

/** Where condensate stands, the tubes cool to the air; the filament is never above the mean. */
function settleCold(air: Air, out: SteamCoilRating): void {
  if (out.stalled === 1) out.coldestTubeWall = Math.min(out.coldestTubeWall, air.coldestFilament);
  out.leaving.coldestFilament = Math.min(out.leaving.dryBulb, out.leaving.coldestFilament);
}
