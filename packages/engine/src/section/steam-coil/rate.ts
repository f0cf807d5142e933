import type { SteamPerformance } from "#component/coil/steam-coil";
import { steamDistribution } from "#component/coil/steam-distribution";
import type { SteamSupply } from "#duty/condition";
import { steamLatentHeat, steamSaturationPressure, steamSaturationTemperature } from "#fluid/steam";
import { type Air, createAir } from "../air.ts";
import { createSectionRating, recordAtRest } from "../base-rating.ts";
import { closeEnergy, setCoilPressure, wantedBehindFins } from "../coil/state.ts";
import {
  noSteamCoilFigures,
  type SteamCoilFigures,
  setSteamAirFigures,
  setSteamFreeze,
  setSteamSide,
  shutOff,
  vacuumBreakerOpens,
} from "../coil/steam.ts";
import {
  createSteamRoom,
  type SteamRoom,
  solveAtSteam,
  solveAtSupply,
  steamTemperatureFor,
} from "../coil/steam-solve.ts";
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
  out.supplySteamTemperature = supply === undefined ? air.dryBulb : steamSaturationTemperature(supply.pressure);
  out.neededSteamTemperature = out.supplySteamTemperature;
  if (valve === "shut" || supply === undefined) shutOff(out);
  else if (valve === "open") runOpen(design, supply, room, out);
  else throttle(design, supply, wantedBehindFins(air, out.wantedLeaving), room, out);
  closeEnergy(out);
  if (valve !== "shut") out.leaving.coldestFilament = Math.min(out.leaving.dryBulb, out.leaving.coldestFilament);
  setCoilPressure(design.block, 0, out);
}

/** Adds what the coil could give, its steam side, and how it stands to frost. */
export function completeSteamCoil(design: SteamCoilDesign, at: SectionCondition, out: SteamCoilRating): void {
  const { block } = design;
  const supply = at.condition.utilities.steam;
  const room = roomOf(out, createSteamRoom);
  if (supply === undefined) solveOne(design, out.supplySteamTemperature, room, out, room.full);
  else solveOpen(design, supply, room, out, room.full);
  out.fullCapacity = room.full.heat * block.stacked;
  out.leavingDryBulb = out.leaving.dryBulb;
  const isOn = out.activeShare > 0;
  setSteamAirFigures(block, isOn ? room.performance : room.full, out);
  if (isOn && supply !== undefined) {
    out.loadShare = out.fullCapacity > 0 ? out.capacity / out.fullCapacity : 0;
    setSteamSide(design, supply, design.control === "modulating valve", out);
    // Where condensate stands, the tubes cool to the air.
    if (out.stalled === 1) out.coldestTubeWall = Math.min(out.coldestTubeWall, out.entering.coldestFilament);
  }
  setSteamFreeze(design, supply, 1, at, out);
}

/** One of the section's coils at a steam temperature. */
function solveOne(
  { block }: SteamCoilDesign,
  steamTemperature: number,
  room: SteamRoom,
  { entering }: SteamCoilRating,
  performance: SteamPerformance,
): void {
  solveAtSteam(block, entering.dryAirFlow / block.stacked, steamTemperature, room, entering, performance);
}

/** One of the section's coils with its valve open; gives the °C of the steam in its tubes. */
function solveOpen(
  design: SteamCoilDesign,
  { pressure }: SteamSupply,
  room: SteamRoom,
  { entering }: SteamCoilRating,
  performance: SteamPerformance,
): number {
  return solveAtSupply(design, entering.dryAirFlow / design.block.stacked, pressure, room, entering, performance);
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
function runOpen(design: SteamCoilDesign, supply: SteamSupply, room: SteamRoom, out: SteamCoilRating): void {
  out.neededSteamTemperature = solveOpen(design, supply, room, out, room.performance);
  runWhole(design, out.neededSteamTemperature, room, out);
}

/** The whole surface on steam of one temperature, as the room has solved it. */
function runWhole({ block }: SteamCoilDesign, temperature: number, { performance }: SteamRoom, out: SteamCoilRating) {
  out.steamTemperature = temperature;
  out.activeShare = 1;
  out.capacity = performance.heat * block.stacked;
  out.heatToAir = out.capacity;
  out.warmEnd = performance.leavingDryBulb;
  out.coldEnd = performance.leavingDryBulb;
  out.coldestTubeWall = performance.coldestTubeWall;
  out.leaving.coldestFilament = performance.leavingFilament;
}

/**
 * Steam throttled to the load: to vacuum, or, with a vacuum breaker, to part of the surface at about the atmosphere's; as it
 * is supplied where that is too little.
 */
function throttle(
  design: SteamCoilDesign,
  supply: SteamSupply,
  behindFins: number,
  room: SteamRoom,
  out: SteamCoilRating,
): void {
  const { block } = design;
  const { performance } = room;
  const { entering } = out;
  const needed = steamTemperatureFor(block, entering.dryAirFlow / block.stacked, behindFins, room, entering);
  if (needed >= out.supplySteamTemperature || takesMore(design, supply, needed, room)) {
    runOpen(design, supply, room, out);
    return;
  }
  out.neededSteamTemperature = needed;
  const lowest = steamSaturationTemperature(entering.barometricPressure - vacuumBreakerOpens);
  if (!(design.vacuumBreaker && needed < lowest)) {
    runWhole(design, needed, room, out);
    return;
  }
  const load = performance.heat * block.stacked;
  solveOne(design, lowest, room, out, performance);
  out.steamTemperature = lowest;
  out.activeShare = load / (performance.heat * block.stacked);
  out.capacity = load;
  out.heatToAir = load;
  out.warmEnd = performance.leavingDryBulb;
  out.coldEnd = entering.dryBulb;
  // Tubes that steam does not reach are as cold as the air that passes them, and pass it on unheated.
  out.coldestTubeWall = entering.coldestFilament;
  out.leaving.coldestFilament = entering.coldestFilament;
}

/** Whether inner tubes and orifices want more than the supply's pressure for the heat just solved at a steam temperature. */
function takesMore(
  { inner }: SteamCoilDesign,
  supply: SteamSupply,
  temperature: number,
  { performance, distribution }: SteamRoom,
): boolean {
  const inTubes = Math.max(1000, steamSaturationPressure(temperature));
  steamDistribution(inner.distributor, Math.max(0, performance.heat) / steamLatentHeat(inTubes), inTubes, distribution);
  return inTubes + distribution.loss > supply.pressure;
}
