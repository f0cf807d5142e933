import { solveCoil } from "#component/coil/march";
import {
  type CoilInlet,
  type CoilPerformance,
  type CoilWork,
  createCoilWork,
  createPerformance,
} from "#component/coil/performance";
import type { LiquidSupply } from "#duty/condition";
import { liquidDensity } from "#fluid/liquid";
import { findRoot } from "#numerics/find-root";
import { findRootNear, type RootGuess } from "#numerics/find-root-near";
import type { CoilBlock } from "./block.ts";
import { createCoilInlet } from "./state.ts";

/** m/s in the tubes beyond which no coil is run: the flow of a valve that stands open ends here. */
export const highestTubeVelocity = 2.4;

/**
 * Room for the solutions of one coil. What was found last is the start of the next search, no more: answers agree within
 * the tolerances of the searches, whatever was rated before.
 */
export interface CoilRoom {
  readonly inlet: CoilInlet;
  readonly work: CoilWork;
  readonly performance: CoilPerformance;
  /** The same coil with its valve open. */
  readonly open: { readonly work: CoilWork; readonly performance: CoilPerformance };
  /** Logarithm of the flow (kg/s of one coil) with the valve open, and throttled to the air wanted. */
  readonly openFlow: RootGuess;
  readonly throttledFlow: RootGuess;
  /** °C of the liquid blended to the air wanted. */
  readonly blended: RootGuess;
  /** What the flow with the valve open was found for, and the flow. */
  readonly openFor: Float64Array;
  /** kg/s of one coil with its valve open, in the rating in hand; NaN where that could be left to its completion. */
  full: number;
}

/** Room for the solutions of one coil. */
export function createCoilRoom(): CoilRoom {
  return {
    inlet: createCoilInlet(),
    work: createCoilWork(),
    performance: createPerformance(),
    open: { work: createCoilWork(), performance: createPerformance() },
    openFlow: { at: Number.NaN, slope: 0 },
    throttledFlow: { at: Number.NaN, slope: 0 },
    blended: { at: Number.NaN, slope: 0 },
    openFor: new Float64Array(8).fill(Number.NaN),
    full: 0,
  };
}

/** How a coil's flow with the valve open came about. */
export type FullFlowBasis = "given" | "temperature change" | "highest velocity";

/** Solves one coil at a flow (kg/s of that coil). */
export function solveAtFlow(block: CoilBlock, flow: number, room: CoilRoom): CoilPerformance {
  room.inlet.liquidFlow = flow;
  solveCoil(block.coil, room.inlet, room.work, room.performance);
  return room.performance;
}

/**
 * Share of the temperature differences to which the two searches below are brought. Flows are then good to a millionth;
 * no valve is set and no flow measured to a thousandth.
 */
const searchTolerance = 2e-7;

/** Range of the search for the flow with the valve open, in its logarithm: down to a four-hundredth. */
const openRange = 6;

/** Whether the flow with the valve open is given, and not what changes the liquid by a given temperature. */
function isFlowGiven(supply: LiquidSupply, given: number | undefined): boolean {
  return given !== undefined || supply.massFlow !== undefined;
}

/** kg/s through one coil at the highest velocity in its tubes. */
function mostFlow({ coil }: CoilBlock, supply: LiquidSupply): number {
  const density = liquidDensity(supply.liquid, supply.supplyTemperature);
  return highestTubeVelocity * density * coil.bore * coil.circuits;
}

/**
 * kg/s through one coil with its valve open: the flow given (`given`, m³/s of all coils, or the supply's), or the one at which
 * the coil changes the liquid by the temperature given. Where even a trickle does not reach that change, or the velocity limit
 * is met first, it is the flow of the highest velocity.
 */
export function fullFlowOf(block: CoilBlock, supply: LiquidSupply, given: number | undefined, room: CoilRoom): number {
  if (given !== undefined) return (given * liquidDensity(supply.liquid, supply.supplyTemperature)) / block.stacked;
  if (supply.massFlow !== undefined) return supply.massFlow / block.stacked;
  const most = mostFlow(block, supply);
  const wanted = supply.temperatureChange ?? Number.POSITIVE_INFINITY;
  if (isNewOpen(supply, wanted, room)) room.openFor[7] = openFlow(block, wanted, Math.log(most), room);
  return Math.min(most, room.openFor[7]!);
}

/**
 * Throttles one coil to a leaving dry bulb, or opens its valve where that is not reached. Of a coil that is to change its
 * liquid by a given temperature the open flow is not looked for while the throttled one changes it by more, and so is less.
 */
export function runThrottled(
  block: CoilBlock,
  supply: LiquidSupply,
  given: number | undefined,
  wanted: number,
  room: CoilRoom,
): void {
  const { inlet, performance, work, open } = room;
  if (isFlowGiven(supply, given)) {
    room.full = fullFlowOf(block, supply, given, room);
    throttledShare(block, room.full, wanted, room);
    return;
  }
  room.full = Number.NaN;
  throttledShare(block, mostFlow(block, supply), wanted, room);
  const flow = inlet.liquidFlow;
  const change = Math.abs(performance.leavingLiquid - inlet.liquidTemperature);
  if (change >= (supply.temperatureChange ?? Number.POSITIVE_INFINITY)) return;
  room.full = fullFlowOf(block, supply, given, room);
  work.liquid.set(open.work.liquid);
  solveAtFlow(block, Math.min(flow, room.full), room);
}

/** The flow with the valve open of a coil that has been run, and how it came about; looks for it where that was left open. */
export function completeFullFlow(
  block: CoilBlock,
  supply: LiquidSupply,
  given: number | undefined,
  room: CoilRoom,
): { readonly flow: number; readonly basis: FullFlowBasis } {
  const { inlet } = room;
  if (Number.isNaN(room.full)) {
    const flow = inlet.liquidFlow;
    room.full = fullFlowOf(block, supply, given, room);
    inlet.liquidFlow = flow;
  }
  if (isFlowGiven(supply, given)) return { flow: room.full, basis: "given" };
  const isMost = room.full > 0 && room.full >= mostFlow(block, supply);
  return { flow: room.full, basis: isMost ? "highest velocity" : "temperature change" };
}

/** Whether anything differs, to the last bit, from what the flow with the valve open was found for; notes it. */
function isNewOpen(supply: LiquidSupply, wanted: number, { inlet, openFor }: CoilRoom): boolean {
  const { liquid } = supply;
  const substance = liquid.substance === "water" ? 0 : liquid.substance === "ethylene glycol" ? 1 : 2;
  let isNew = noteDifference(openFor, 0, inlet.dryAirFlow);
  isNew = noteDifference(openFor, 1, inlet.dryBulb) || isNew;
  isNew = noteDifference(openFor, 2, inlet.humidityRatio) || isNew;
  isNew = noteDifference(openFor, 3, inlet.pressure) || isNew;
  isNew = noteDifference(openFor, 4, supply.supplyTemperature) || isNew;
  isNew = noteDifference(openFor, 5, wanted) || isNew;
  return noteDifference(openFor, 6, substance + liquid.massFraction / 2) || isNew;
}

function noteDifference(list: Float64Array, index: number, value: number): boolean {
  const differs = list[index] !== value;
  list[index] = value;
  return differs;
}

/** kg/s at which the change of the liquid is as wanted; the highest flow (its logarithm is `high`) where none is. */
function openFlow(block: CoilBlock, wanted: number, high: number, room: CoilRoom): number {
  const { inlet, open, openFlow: guess } = room;
  if (wanted === Number.POSITIVE_INFINITY) return Math.exp(high);
  const low = high - openRange;
  const tolerance = searchTolerance * wanted;
  const excess = (logarithm: number): number => {
    inlet.liquidFlow = Math.exp(logarithm);
    solveCoil(block.coil, inlet, open.work, open.performance);
    return Math.abs(open.performance.leavingLiquid - inlet.liquidTemperature) - wanted;
  };
  let root = findRootNear(excess, guess, low, high, tolerance);
  if (Number.isNaN(root)) {
    const least = excess(high);
    if (least >= 0) return Math.exp(high);
    // The change falls with about the two thirds power of the flow.
    guess.at = Math.max(low, high + 1.5 * Math.log((least + wanted) / wanted));
    guess.slope = -0.6 * wanted;
    root = findRootNear(excess, guess, low, high, tolerance);
    if (Number.isNaN(root)) {
      if (!(excess(low) > 0)) return Math.exp(high);
      root = findRoot(excess, low, high, 1e-7);
    }
  }
  return Math.exp(root);
}

/**
 * Share of the full flow at which one coil just reaches a leaving dry bulb; 1 when it cannot. The room's performance is
 * that of the flow found.
 */
function throttledShare(block: CoilBlock, full: number, wanted: number, room: CoilRoom): number {
  const { inlet, performance, throttledFlow: guess } = room;
  const most = Math.log(full);
  const tolerance = searchTolerance * Math.abs(wanted - inlet.dryBulb) + 1e-9;
  const missAt = (logarithm: number): number => solveAtFlow(block, Math.exp(logarithm), room).leavingDryBulb - wanted;
  const near = findRootNear(missAt, guess, most - openRange, most, tolerance);
  if (!Number.isNaN(near)) return Math.exp(near - most);
  const cools = inlet.liquidTemperature < inlet.dryBulb;
  solveAtFlow(block, full, room);
  const reached = performance.leavingDryBulb;
  if (cools ? !(reached < wanted) : !(reached > wanted)) return 1;
  // The heat goes with about the square root of the flow.
  const part = (wanted - inlet.dryBulb) / (reached - inlet.dryBulb);
  guess.at = most + 2 * Math.log(part);
  guess.slope = 0.5 * (wanted - inlet.dryBulb);
  const share = Math.exp(findRootNear(missAt, guess, most - openRange, most, tolerance) - most);
  if (!Number.isNaN(share)) return share;
  const miss = (share: number): number => (share <= 0 ? inlet.dryBulb - wanted : missAt(most + Math.log(share)));
  const found = findRoot(miss, 0, 1, 1e-9);
  solveAtFlow(block, found * full, room);
  return found;
}

/**
 * Blends the liquid that enters one coil at its full flow, to a leaving dry bulb; the supply's own where that is not reached.
 * The air's rise goes very nearly with that of the liquid over the air.
 */
export function blendTo(block: CoilBlock, wanted: number, room: CoilRoom): void {
  const { inlet, performance, blended: guess } = room;
  const hottest = inlet.liquidTemperature;
  const tolerance = searchTolerance * Math.abs(wanted - inlet.dryBulb) + 1e-9;
  const missAt = (temperature: number): number => {
    inlet.liquidTemperature = temperature;
    return solveAtFlow(block, room.full, room).leavingDryBulb - wanted;
  };
  if (!Number.isNaN(findRootNear(missAt, guess, inlet.dryBulb, hottest, tolerance))) return;
  const surplus = missAt(hottest);
  if (!(surplus > 0)) return;
  guess.slope = (performance.leavingDryBulb - inlet.dryBulb) / (hottest - inlet.dryBulb);
  guess.at = hottest - surplus / guess.slope;
  if (!Number.isNaN(findRootNear(missAt, guess, inlet.dryBulb, hottest, tolerance))) return;
  missAt(findRoot(missAt, inlet.dryBulb, hottest, 1e-8));
}

/** Stroke of an equal-percentage valve (range 50 to 1) that passes a share of its full flow at steady pressure. */
export function equalPercentageStroke(share: number): number {
  const least = 1 / 50;
  if (share <= 0) return 0;
  return share < least ? share / least / 50 : Math.min(1, 1 + Math.log(share) / Math.log(50));
}
