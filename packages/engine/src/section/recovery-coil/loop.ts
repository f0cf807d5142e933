import { solveCoil } from "#component/coil/march";
import {
  type CoilInlet,
  type CoilPerformance,
  type CoilWork,
  createCoilWork,
  createPerformance,
} from "#component/coil/performance";
import { findRoot } from "#numerics/find-root";
import { findRootNear, type RootGuess } from "#numerics/find-root-near";
import { createQuasiNewton, type QuasiNewton, quasiNewtonStep } from "#numerics/quasi-newton";
import type { CoilBlock } from "../coil/block.ts";
import { createCoilInlet } from "../coil/state.ts";
import type { RecoveryCoilDesign } from "./design.ts";

/** One of the loop's coils. */
export interface LoopCoil {
  readonly inlet: CoilInlet;
  readonly work: CoilWork;
  readonly performance: CoilPerformance;
}

/** The loop at one share of bypass. Temperatures of the liquid at its corners, °C. */
export interface Loop {
  readonly supply: LoopCoil;
  readonly exhaust: LoopCoil;
  /** Into the supply coil (out of the exhaust coil), out of it, and into the exhaust coil after the bypass. */
  intoSupply: number;
  outOfSupply: number;
  intoExhaust: number;
  /** Share of the loop's flow that the valve leads round the supply coil. */
  bypassShare: number;
  /** Liquid into the supply coil, the loop in balance, as it was found last. */
  readonly guess: RootGuess;
}

/** Most that the valve leads round the supply coil. */
export const mostBypass = 0.999;

/** Share of the difference between the two airs to which the loop is brought: its heat is then good to a millionth. */
const loopTolerance = 1e-7;

/** A loop's room: what was found last is where the next search starts. */
export function createLoop(): Loop {
  return {
    supply: createLoopCoil(),
    exhaust: createLoopCoil(),
    intoSupply: 0,
    outOfSupply: 0,
    intoExhaust: 0,
    bypassShare: 0,
    guess: { at: Number.NaN, slope: 0 },
  };
}

function createLoopCoil(): LoopCoil {
  return { inlet: createCoilInlet(), work: createCoilWork(), performance: createPerformance() };
}

/** Passes the liquid through both coils once; gives by how much it comes back warmer than it set out, K. */
function passLoop(design: RecoveryCoilDesign, loop: Loop, intoSupply: number): number {
  const { supply, exhaust } = loop;
  loop.intoSupply = intoSupply;
  loop.outOfSupply = passCoil(design.block, supply, (1 - loop.bypassShare) * design.loopFlow, intoSupply);
  loop.intoExhaust = loop.bypassShare * intoSupply + (1 - loop.bypassShare) * loop.outOfSupply;
  return passCoil(design.exhaust, exhaust, design.loopFlow, loop.intoExhaust) - intoSupply;
}

/** °C of the liquid that leaves the coils of a block. */
function passCoil(block: CoilBlock, { inlet, work, performance }: LoopCoil, flow: number, entering: number): number {
  inlet.liquidTemperature = entering;
  inlet.liquidFlow = flow / block.stacked;
  solveCoil(block.coil, inlet, work, performance);
  return performance.leavingLiquid;
}

/** Brings the loop into balance at a share of bypass: the exhaust coil gives the liquid what the supply coil takes. */
export function balanceLoop(design: RecoveryCoilDesign, loop: Loop, bypassShare: number): void {
  loop.bypassShare = bypassShare;
  const { guess, supply, exhaust } = loop;
  const low = Math.min(supply.inlet.dryBulb, exhaust.inlet.dryBulb);
  const high = Math.max(supply.inlet.dryBulb, exhaust.inlet.dryBulb);
  const miss = (intoSupply: number): number => passLoop(design, loop, intoSupply);
  const tolerance = loopTolerance * (high - low);
  if (!Number.isNaN(findRootNear(miss, guess, low, high, tolerance))) return;
  // Coils alike find the liquid in the middle; what it brings back falls by two thirds of what it takes more with it.
  guess.at = (low + high) / 2;
  guess.slope = -0.65;
  if (Number.isNaN(findRootNear(miss, guess, low, high, tolerance))) miss(findRoot(miss, low, high, 1e-9));
}

/** Search for the share of bypass: liquid into the supply coil (over the two airs' difference) and share, together. */
export interface BypassSearch {
  readonly both: QuasiNewton;
  readonly value: Float64Array;
  isKnown: boolean;
}

/** Room for the search. */
export function createBypassSearch(): BypassSearch {
  return { both: createQuasiNewton(2), value: new Float64Array(2), isKnown: false };
}

/**
 * Finds the share at which `surplusOf(loop)` (K) vanishes, the loop in balance; surplus falls as more is led round, and is
 * above zero without. Ends at the most that the valve can do.
 */
export function findBypass(
  design: RecoveryCoilDesign,
  loop: Loop,
  surplusOf: (loop: Loop) => number,
  search: BypassSearch,
): void {
  if (search.isKnown && settleBoth(design, loop, surplusOf, search)) return;
  search.isKnown = false;
  const surplus = (share: number): number => {
    balanceLoop(design, loop, share);
    return surplusOf(loop);
  };
  if (surplus(mostBypass) >= 0) return;
  const share = findRoot(surplus, 0, mostBypass, 1e-7);
  surplus(share);
  learnSlopes(design, loop, surplusOf, search);
  if (!settleBoth(design, loop, surplusOf, search)) surplus(share);
}

/** Slopes by differences about the share found. */
function learnSlopes(
  design: RecoveryCoilDesign,
  loop: Loop,
  surplusOf: (loop: Loop) => number,
  search: BypassSearch,
): void {
  const { both } = search;
  const range = loop.exhaust.inlet.dryBulb - loop.supply.inlet.dryBulb;
  both.at[0] = (loop.intoSupply - loop.supply.inlet.dryBulb) / range;
  both.at[1] = loop.bypassShare;
  const step = 0.003;
  valuesAt(design, loop, surplusOf, search, range);
  const [miss, surplus] = search.value as unknown as [number, number];
  for (let j = 0; j < 2; j++) {
    const held = both.at[j]!;
    const moved = j === 1 && held > 0.5 ? -step : step;
    both.at[j] = held + moved;
    valuesAt(design, loop, surplusOf, search, range);
    both.slopes[j] = (search.value[0]! - miss) / moved;
    both.slopes[2 + j] = (search.value[1]! - surplus) / moved;
    both.at[j] = held;
  }
  search.isKnown = true;
}

/** Steps of both unknowns together; false where they do not settle within what the valve can do. */
function settleBoth(
  design: RecoveryCoilDesign,
  loop: Loop,
  surplusOf: (loop: Loop) => number,
  search: BypassSearch,
): boolean {
  const { both, value } = search;
  const range = loop.exhaust.inlet.dryBulb - loop.supply.inlet.dryBulb;
  both.steps = 0;
  for (let count = 0; count < 10; count++) {
    if (!(both.at[1]! >= 0 && both.at[1]! <= mostBypass && both.at[0]! > 0 && both.at[0]! < 1)) return false;
    valuesAt(design, loop, surplusOf, search, range);
    if (Math.abs(value[0]!) <= loopTolerance && Math.abs(value[1]!) <= loopTolerance) return true;
    if (!quasiNewtonStep(both, value, 0.3)) return false;
  }
  return false;
}

/** Imbalance and surplus over the two airs' difference, at the search's unknowns. */
function valuesAt(
  design: RecoveryCoilDesign,
  loop: Loop,
  surplusOf: (loop: Loop) => number,
  { both, value }: BypassSearch,
  range: number,
): void {
  loop.bypassShare = both.at[1]!;
  value[0] = passLoop(design, loop, loop.supply.inlet.dryBulb + both.at[0]! * range) / range;
  value[1] = surplusOf(loop) / range;
}
