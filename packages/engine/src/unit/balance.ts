import { findRoot } from "#numerics/find-root";
import { findRootNear, type RootGuess } from "#numerics/find-root-near";
import { externalStaticNeeded } from "./external-static.ts";
import type { UnitRating } from "./rating.ts";
import type { UnitSearch } from "./search.ts";
import type { Unit } from "./unit.ts";
import { mixingRatingAt, startOutdoors, walk } from "./walk.ts";

/** Share of the flow to which the mixing box is balanced where its return flow is searched between two ends. */
const flowTolerance = 1e-12;
/** Pa to which it is balanced from a start nearby: with some ten Pascal of the paths, a return flow good to 1e-9. */
const pressureTolerance = 1e-8;
/** Pa of imbalance above which an actuated damper is at its end stop. */
const endStopTolerance = 1e-6;
/** Return flow over what leaves the box; negative where air leaves backwards through the return opening. */
const lowestReturn = -10;
const highestReturn = 0.995;

/**
 * Walks from the intake to the mixing box so that `total` kg/s of dry air leave it: finds the return flow at which the
 * return path and the intake path meet at one plenum pressure. Without a mixing box all of it comes through the intake.
 */
export function walkToMixingBox(
  unit: Unit,
  rating: UnitRating,
  search: UnitSearch,
  total: number,
  windPressure: number,
): number {
  const { operation, condition } = rating;
  const { mixing: index, returnShare } = search;
  if (index < 0) {
    operation.returnDryAirFlow = 0;
    startOutdoors(rating, total, windPressure);
    return 0;
  }
  const wanted = condition.returnAir.outsideAirShare;
  const imbalanceAt = (returnFlow: number): number => {
    operation.returnDryAirFlow = returnFlow;
    startOutdoors(rating, total - returnFlow, windPressure);
    walk(unit, rating, search, 0, index);
    return mixingRatingAt(rating, index).returnImbalance;
  };
  const box = unit.sections[index]!.design as { readonly control?: string; readonly hasReturn?: boolean };
  if (box.hasReturn === false) {
    imbalanceAt(0);
    return index + 1;
  }
  // An actuated pair holds the share by its angles; only where a damper is at its end stop an imbalance remains.
  const isDriven = box.control === "actuated" && condition.flow.mode !== "fan stopped";
  // A stopped unit's actuator is taken to have left its return damper open.
  operation.returnDamperStop = condition.flow.mode === "fan stopped" ? "open" : "none";
  if (isDriven) {
    const imbalance = imbalanceAt((1 - wanted) * total);
    if (Math.abs(imbalance) <= endStopTolerance) return index + 1;
    operation.returnDamperStop = imbalance < 0 ? "open" : "closed";
  }
  const atShare = (share: number): number => imbalanceAt(share * total);
  if (!Number.isNaN(findRootNear(atShare, returnShare, lowestReturn, highestReturn, pressureTolerance)))
    return index + 1;
  const guess = Number.isNaN(returnShare.at) ? 1 - wanted : returnShare.at;
  balanceReturn(imbalanceAt, guess * total, total, condition.externalStatic.designDryAirFlow);
  learnReturn(atShare, operation.returnDryAirFlow / total, returnShare);
  return index + 1;
}

/** Notes where the return share was found, and the slope there. */
function learnReturn(imbalanceAt: (share: number) => number, share: number, guess: RootGuess): void {
  const beside = 1e-4 * (Math.abs(share) + 0.01);
  const moved = imbalanceAt(share - beside);
  const found = imbalanceAt(share);
  guess.at = share;
  guess.slope = (found - moved) / beside;
}

/**
 * Finds the return flow at which `imbalanceAt` is zero; it falls as the flow grows. The flow is negative where air
 * leaves backwards through the return opening. Looks near the guess first.
 */
function balanceReturn(
  imbalanceAt: (returnFlow: number) => number,
  guess: number,
  total: number,
  design: number,
): void {
  const tolerance = flowTolerance * total;
  const reach = 0.02 * Math.abs(guess) + 1e-6 * total;
  const highest = highestReturn * total;
  let low = Math.min(guess - reach, highest);
  let high = Math.min(guess + reach, highest);
  if (!(imbalanceAt(low) > 0 && imbalanceAt(high) < 0)) {
    high = highest;
    if (imbalanceAt(high) >= 0) return;
    low = 0;
    // Widened step by step: what a far trial would ask of a closed damper is no pressure that air can have.
    for (let step = 0.1 * total; imbalanceAt(low) <= 0 && step < 10 * design; step *= 3) low -= step;
    if (imbalanceAt(low) <= 0) return;
  }
  imbalanceAt(findRoot(imbalanceAt, low, high, tolerance));
}

/** Reads the static pressure that the unit holds at its end and what the duct system needs there. */
export function readExternalStatic(rating: UnitRating): number {
  rating.externalStaticNeeded = externalStaticNeeded(rating.condition, rating.supply.dryAirFlow);
  rating.externalStaticHeld = rating.supply.staticPressure;
  return rating.externalStaticNeeded - rating.externalStaticHeld;
}
