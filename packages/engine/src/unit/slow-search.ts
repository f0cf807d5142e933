import { findRoot } from "#numerics/find-root";
import type { UnitRating } from "./rating.ts";
import type { UnitSearch } from "./search.ts";
import { setCoils } from "./set-points.ts";
import type { Unit } from "./unit.ts";
import { fanRatingAt } from "./walk.ts";
import { holdsBalance, lackingAfterWalk, walkWhole } from "./whole-walk.ts";

/** Walks after which a balance that has not come will not come. */
const mostWalks = 60;

/**
 * Solves the unit step by step: at a held flow by walks that each mend what the one before has left, at a given speed or
 * with the fan stopped between two flows. Says in `reason` why there is no solution. Gives kg/s that leave the mixing box.
 */
export function solveSlowly(unit: Unit, rating: UnitRating, search: UnitSearch): number {
  search.rises.afterCooling = 0;
  search.rises.afterHeating = 0;
  setCoils(rating, search.rises);
  const { flow, externalStatic } = rating.condition;
  const design = externalStatic.designDryAirFlow;
  if (flow.mode === "flow held") return holdFlow(unit, rating, search, flow.dryAirFlow);
  search.fanRise = Number.NaN;
  if (flow.mode === "speed held") {
    const nowhere = "the fan at its fixed speed meets the duct system nowhere";
    return settleFlow(unit, rating, search, 0.05 * design, 2 * design, nowhere);
  }
  return settleFlow(unit, rating, search, 1e-4 * design, design, "nothing moves air through the stopped unit");
}

/** The fan's speed follows: `wanted` kg/s of dry air are to leave the unit against the duct system. */
function holdFlow(unit: Unit, rating: UnitRating, search: UnitSearch, wanted: number): number {
  const used = { afterCooling: 0, afterHeating: 0 };
  let total = wanted;
  search.fanRise = rating.condition.externalStatic.atDesign;
  let isReached = true;
  for (let count = 0; count < mostWalks; count++) {
    walkWhole(unit, rating, search, total);
    const lacking = lackingAfterWalk(rating, search);
    const added = -fanRatingAt(rating, search.fan).totalPressureLoss;
    isReached = Math.abs(added - search.fanRise) <= 1e-3 * Math.abs(search.fanRise) + 0.1;
    if (holdsBalance(rating, search, lacking, used)) {
      rating.solved = true;
      return total;
    }
    const missing = wanted - rating.supply.dryAirFlow;
    total += missing;
    // The machine's and the duct's losses follow about the square of the flow: what the next walk's flow will ask for.
    search.fanRise = (added + lacking) * (1 + (2 * missing) / wanted);
    Object.assign(used, search.rises);
    setCoils(rating, used);
  }
  rating.reason = isReached
    ? "flow, fan speed and set points did not come to rest"
    : "no fan speed reaches the pressure that this flow needs";
  return total;
}

/**
 * Finds the flow between `low` and `high` at which the duct system is met; pressure lacking grows with flow. The search
 * widens step by step from `low`, so that no trial asks for a pressure that air cannot have.
 */
function settleFlow(
  unit: Unit,
  rating: UnitRating,
  search: UnitSearch,
  low: number,
  high: number,
  whenNot: string,
): number {
  const used = { afterCooling: 0, afterHeating: 0 };
  const lackingAt = (total: number): number => {
    Object.assign(used, search.rises);
    setCoils(rating, used);
    walkWhole(unit, rating, search, total);
    return lackingAfterWalk(rating, search);
  };
  if (lackingAt(low) > 0) {
    rating.reason = whenNot;
    return low;
  }
  let below = low;
  let above = low;
  do {
    below = above;
    above = Math.min(high, 2 * above);
  } while (lackingAt(above) < 0 && above < high);
  if (lackingAt(above) < 0) {
    rating.reason = "the flow would be more than the search considers";
    return above;
  }
  // Set points that allow for fan heat come to rest at the flow found, and the flow with them.
  let root = findRoot(lackingAt, below, above, 1e-12 * high);
  for (let count = 0; count < 4 && !rating.solved; count++) {
    for (let again = 0; again < mostWalks / 4 && !rating.solved; again++) {
      rating.solved = holdsBalance(rating, search, lackingAt(root), used);
    }
    if (!rating.solved) root = findNear(lackingAt, root, below, above, 1e-12 * high);
  }
  if (!rating.solved) rating.reason = "set points did not come to rest";
  return root;
}

/** The root again, after the set points have moved it a little. */
function findNear(
  lackingAt: (total: number) => number,
  root: number,
  below: number,
  above: number,
  tolerance: number,
): number {
  const low = Math.max(below, 0.98 * root);
  const high = Math.min(above, 1.02 * root);
  if (lackingAt(low) < 0 && lackingAt(high) > 0) return findRoot(lackingAt, low, high, tolerance);
  return lackingAt(below) < 0 && lackingAt(above) > 0 ? findRoot(lackingAt, below, above, tolerance) : root;
}
