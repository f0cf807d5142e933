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
import type { CoilBlock } from "./block.ts";
import { createCoilInlet } from "./state.ts";

/** m/s in the tubes beyond which no coil is run: the flow of a valve that stands open ends here. */
export const highestTubeVelocity = 2.4;

/** Room for the solutions of one coil; nothing of it outlives a rating. */
export interface CoilRoom {
  readonly inlet: CoilInlet;
  readonly work: CoilWork;
  readonly performance: CoilPerformance;
}

/** Room for the solutions of one coil. */
export function createCoilRoom(): CoilRoom {
  return { inlet: createCoilInlet(), work: createCoilWork(), performance: createPerformance() };
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
 * kg/s through one coil with its valve open: the flow given, or the one at which the coil changes the liquid by the
 * temperature given. Where even a trickle does not reach that change, or the velocity limit is met first, the flow of the
 * highest velocity stands.
 */
export function fullFlowOf(
  block: CoilBlock,
  supply: LiquidSupply,
  given: number | undefined,
  room: CoilRoom,
): { readonly flow: number; readonly basis: FullFlowBasis } {
  const { coil } = block;
  const density = liquidDensity(supply.liquid, supply.supplyTemperature);
  if (given !== undefined) return { flow: (given * density) / block.stacked, basis: "given" };
  if (supply.massFlow !== undefined) return { flow: supply.massFlow / block.stacked, basis: "given" };
  const most = highestTubeVelocity * density * coil.bore * coil.circuits;
  const wanted = supply.temperatureChange ?? Number.POSITIVE_INFINITY;
  const excess = (logarithm: number): number => {
    const performance = solveAtFlow(block, Math.exp(logarithm), room);
    return Math.abs(performance.leavingLiquid - room.inlet.liquidTemperature) - wanted;
  };
  const high = Math.log(most);
  const low = high - 6;
  if (excess(high) >= 0 || !(excess(low) > 0)) return { flow: most, basis: "highest velocity" };
  return { flow: Math.exp(findRoot(excess, low, high, 1e-7)), basis: "temperature change" };
}

/**
 * Share of the full flow at which one coil just reaches a leaving dry bulb; 1 when it cannot. The room's performance is
 * that of the flow found.
 */
export function throttledShare(block: CoilBlock, full: number, wanted: number, room: CoilRoom): number {
  const { inlet, performance } = room;
  const cools = inlet.liquidTemperature < inlet.dryBulb;
  solveAtFlow(block, full, room);
  const reached = performance.leavingDryBulb;
  if (cools ? !(reached < wanted) : !(reached > wanted)) return 1;
  const miss = (share: number): number =>
    (share <= 0 ? inlet.dryBulb : solveAtFlow(block, share * full, room).leavingDryBulb) - wanted;
  const share = findRoot(miss, 0, 1, 1e-9);
  solveAtFlow(block, share * full, room);
  return share;
}

/** Stroke of an equal-percentage valve (range 50 to 1) that passes a share of its full flow at steady pressure. */
export function equalPercentageStroke(share: number): number {
  const least = 1 / 50;
  if (share <= 0) return 0;
  return share < least ? share / least / 50 : Math.min(1, 1 + Math.log(share) / Math.log(50));
}
