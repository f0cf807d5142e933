import type { SteamPerformance } from "#component/coil/steam-coil";
import type { SteamSupply } from "#duty/condition";
import { steamSaturationTemperature } from "#fluid/steam";
import { findRoot } from "#numerics/find-root";
import { findRootNear } from "#numerics/find-root-near";
import { type Air, createAir } from "../air.ts";
import { createSectionRating, recordAtRest } from "../base-rating.ts";
import { closeEnergy, endCoilRating, setCoilLosses, setFaceVelocity, wantedBehindFins } from "../coil/state.ts";
import {
  noSteamCoilFigures,
  type SteamCoilFigures,
  setSteamAirFigures,
  setSteamFreeze,
  setSteamSide,
  shutOff,
} from "../coil/steam.ts";
import { createSteamRoom, type SteamRoom, solveAtSteam, solveAtSupply } from "../coil/steam-solve.ts";
import type { SectionCondition } from "../contract.ts";
import { roomOf } from "../room.ts";
import { actualAirflow, airDensity, beginRating } from "../station.ts";
import type { FaceBypassDesign } from "./design.ts";

/** A face-and-bypass coil at a condition. */
export interface FaceBypassRating extends SteamCoilFigures {
  wantedLeaving: number;
  /** Share of the air that passes the lanes. */
  faceShare: number;
  /** °C behind the lanes. */
  laneLeaving: number;
  /** m/s in the lanes' face and in the channels. */
  laneVelocity: number;
  bypassVelocity: number;
  /** Pa of either path with its dampers open; the higher one is what the section costs. */
  facePathLoss: number;
  bypassPathLoss: number;
}

const atRest = recordAtRest<FaceBypassRating>({
  ...createSectionRating(),
  ...noSteamCoilFigures,
  wantedLeaving: 0,
  faceShare: 1,
  laneLeaving: 0,
  laneVelocity: 0,
  bypassVelocity: 0,
  facePathLoss: 0,
  bypassPathLoss: 0,
});

/** A record to be filled. */
export function createFaceBypassRating(): FaceBypassRating {
  return { ...atRest, entering: createAir(), leaving: createAir() };
}

/** Velocity heads of the open face dampers, on the lanes' face. */
const faceDamperLoss = 1.5;

/** Rates the coil: steam stays full on while heat is wanted, and the dampers share the air. */
export function rateFaceBypass(design: FaceBypassDesign, air: Air, at: SectionCondition, out: FaceBypassRating): void {
  beginRating(air, out);
  const { block } = design;
  const supply = at.condition.utilities.steam;
  const room = roomOf(out, createSteamRoom);
  const most = 1 - design.damperLeakage;
  out.wantedLeaving = at.operation.heatingLeaving ?? air.dryBulb;
  out.supplySteamTemperature = supply === undefined ? air.dryBulb : steamSaturationTemperature(supply.pressure);
  out.neededSteamTemperature = out.supplySteamTemperature;
  if (supply === undefined || !steamIsOn(supply, air, at)) {
    out.faceShare = most;
    shutOff(out);
    out.laneLeaving = air.dryBulb;
    closeEnergy(out);
  } else {
    if (at.operation.fansRunning) leadOverFace(design, supply, most, room, out);
    else setShare(design, supply, most, room, out);
    setHeated(design, room, out);
  }
  setPaths(design, out);
  endCoilRating(block, out);
}

/** Adds what the coil could give, its steam side, and how it stands to frost. */
export function completeFaceBypass(design: FaceBypassDesign, at: SectionCondition, out: FaceBypassRating): void {
  const { block } = design;
  const supply = at.condition.utilities.steam;
  const room = roomOf(out, createSteamRoom);
  const most = 1 - design.damperLeakage;
  const isOn = out.activeShare === 1;
  solveShare(design, supply, most, room, out, room.full);
  setSteamAirFigures(block, isOn ? room.performance : room.full, out);
  out.fullCapacity = room.full.heat * block.stacked;
  out.leavingDryBulb = out.leaving.dryBulb;
  if (isOn && supply !== undefined) {
    out.loadShare = out.fullCapacity > 0 ? out.capacity / out.fullCapacity : 0;
    setSteamSide(design, supply, false, out);
  }
  // Whoever loses steam asks for heat: the dampers open the face as far as they go.
  setSteamFreeze(design, supply, most, at, out);
}

function steamIsOn(supply: SteamSupply, air: Air, at: SectionCondition): boolean {
  if (!at.operation.fansRunning) return supply.valveFails === "open";
  const wanted = at.operation.heatingLeaving;
  return wanted !== undefined && wanted > air.dryBulb;
}

/** One lane with a share of the air, its heat of its own flow; gives the °C of the steam in its tubes. */
function solveShare(
  design: FaceBypassDesign,
  supply: SteamSupply | undefined,
  share: number,
  room: SteamRoom,
  { entering, supplySteamTemperature }: FaceBypassRating,
  performance: SteamPerformance,
): number {
  const { block } = design;
  const flow = (share * entering.dryAirFlow) / block.stacked;
  if (supply !== undefined) return solveAtSupply(design, flow, supply.pressure, room, entering, performance);
  solveAtSteam(block, flow, supplySteamTemperature, room, entering, performance);
  return supplySteamTemperature;
}

/** K of mixed air to which the share is brought: a hundred millionth of what the steam gives. */
const riseTolerance = 2e-9;

/** Leads as much air over the lanes as gives the mixture the dry bulb wanted, within what the dampers can do. */
function leadOverFace(
  design: FaceBypassDesign,
  supply: SteamSupply,
  most: number,
  room: SteamRoom,
  out: FaceBypassRating,
): void {
  const least = design.damperLeakage;
  const wanted = wantedBehindFins(out.entering, out.wantedLeaving);
  const rise = (share: number): number => {
    setShare(design, supply, share, room, out);
    return share * (room.performance.leavingDryBulb - out.entering.dryBulb) - (wanted - out.entering.dryBulb);
  };
  // Whichever way it ends, the last share that was set is the answer.
  if (!Number.isNaN(findRootNear(rise, room.faceShare, least, most, riseTolerance))) return;
  if (rise(most) <= 0) return;
  if (rise(least) >= 0) return;
  const share = findRoot(rise, least, most, 1e-10);
  setShare(design, supply, share, room, out);
  room.faceShare.at = share;
  room.faceShare.slope = room.performance.leavingDryBulb - out.entering.dryBulb;
}

/** Leads a share of the air over the lanes. */
function setShare(
  design: FaceBypassDesign,
  supply: SteamSupply,
  share: number,
  room: SteamRoom,
  out: FaceBypassRating,
): void {
  out.faceShare = share;
  out.steamTemperature = solveShare(design, supply, share, room, out, room.performance);
}

function setHeated(design: FaceBypassDesign, room: SteamRoom, out: FaceBypassRating): void {
  const { performance } = room;
  out.activeShare = 1;
  out.capacity = performance.heat * design.block.stacked;
  out.heatToAir = out.capacity;
  out.laneLeaving = performance.leavingDryBulb;
  out.warmEnd = performance.leavingDryBulb;
  out.coldEnd = out.entering.dryBulb;
  out.coldestTubeWall = performance.coldestTubeWall;
  closeEnergy(out);
  // What has gone round the lanes is as cold as it came, and mixes as well as the section lets it.
  const cold = out.entering.coldestFilament;
  const mean = out.leaving.dryBulb;
  out.leaving.coldestFilament = Math.min(mean, mean - (1 - design.mixingEffectiveness) * (mean - cold));
}

function setPaths(design: FaceBypassDesign, out: FaceBypassRating): void {
  const { block } = design;
  const { entering, faceShare } = out;
  setCoilLosses(block.coil, (faceShare * entering.dryAirFlow) / block.stacked, entering, out.laneLeaving, out);
  setFaceVelocity(block, out);
  const airflow = actualAirflow(entering);
  const half = 0.5 * airDensity(entering);
  out.laneVelocity = (faceShare * airflow) / block.faceArea;
  out.bypassVelocity = ((1 - faceShare) * airflow) / design.bypassArea;
  out.facePathLoss = out.dryLoss + faceDamperLoss * half * out.laneVelocity ** 2;
  out.bypassPathLoss = design.bypassLoss * half * out.bypassVelocity ** 2;
  out.totalPressureLoss = Math.max(out.facePathLoss, out.bypassPathLoss);
}
