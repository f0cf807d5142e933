import { solveCoil } from "#component/coil/march";
import { findRoot } from "#numerics/find-root";
import type { CoilRoom } from "../coil/valve.ts";
import type { RecoveryCoilDesign } from "./design.ts";

/** The loop in balance. Temperatures of the liquid at its four corners, °C. */
export interface LoopState {
  /** Into the supply coil (out of the exhaust coil), out of it, and into the exhaust coil after the bypass. */
  intoSupply: number;
  outOfSupply: number;
  intoExhaust: number;
  /** Share of the loop's flow that the valve leads round the supply coil. */
  bypassShare: number;
}

/** Solves the supply coil with what the valve leaves it, and mixes; gives the liquid into the exhaust coil. */
function passSupply(design: RecoveryCoilDesign, supply: CoilRoom, state: LoopState, intoSupply: number): number {
  supply.inlet.liquidTemperature = intoSupply;
  supply.inlet.liquidFlow = ((1 - state.bypassShare) * design.loopFlow) / design.block.stacked;
  solveCoil(design.block.coil, supply.inlet, supply.work, supply.performance);
  state.intoSupply = intoSupply;
  state.outOfSupply = supply.performance.leavingLiquid;
  state.intoExhaust = state.bypassShare * intoSupply + (1 - state.bypassShare) * state.outOfSupply;
  return state.intoExhaust;
}

/** Brings the loop into balance at a share of bypass: the exhaust coil gives the liquid what the supply coil takes. */
export function balanceLoop(
  design: RecoveryCoilDesign,
  supply: CoilRoom,
  exhaust: CoilRoom,
  bypassShare: number,
  state: LoopState,
): void {
  state.bypassShare = bypassShare;
  const miss = (intoSupply: number): number => {
    exhaust.inlet.liquidTemperature = passSupply(design, supply, state, intoSupply);
    exhaust.inlet.liquidFlow = design.loopFlow / design.exhaust.stacked;
    solveCoil(design.exhaust.coil, exhaust.inlet, exhaust.work, exhaust.performance);
    return exhaust.performance.leavingLiquid - intoSupply;
  };
  const low = Math.min(supply.inlet.dryBulb, exhaust.inlet.dryBulb);
  const high = Math.max(supply.inlet.dryBulb, exhaust.inlet.dryBulb);
  miss(findRoot(miss, low, high, 1e-9));
}
