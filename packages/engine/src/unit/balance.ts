import { findRoot } from "#numerics/find-root";
import { copyAir, createAir } from "#section/air";
import { externalStaticNeeded } from "./external-static.ts";
import type { UnitRating } from "./rating.ts";
import type { Unit } from "./unit.ts";
import { fanRatingAt, mixingRatingAt, sectionWithRole, startOutdoors, walk } from "./walk.ts";

/** Share of the flow to which the mixing box is balanced. */
const flowTolerance = 1e-12;
/** Pa of imbalance above which an actuated damper is at its end stop. */
const endStopTolerance = 1e-6;
/** Fastest wheel that the search for a speed considers, rev/s. */
const fastestWheel = 150;

/**
 * Walks from the intake to the mixing box so that `total` kg/s of dry air leave it: finds the return flow at which the
 * return path and the intake path meet at one plenum pressure. Without a mixing box all of it comes through the intake.
 */
export function walkToMixingBox(unit: Unit, rating: UnitRating, total: number, windPressure: number): number {
  const { operation, condition } = rating;
  const index = sectionWithRole(unit, "mixing");
  if (index < 0) {
    operation.returnDryAirFlow = 0;
    startOutdoors(rating, total, windPressure);
    return 0;
  }
  const wanted = condition.returnAir.outsideAirShare;
  const imbalanceAt = (returnFlow: number): number => {
    operation.returnDryAirFlow = returnFlow;
    startOutdoors(rating, total - returnFlow, windPressure);
    walk(unit, rating, 0, index);
    return mixingRatingAt(rating, index).returnImbalance;
  };
  const guess = rating.walks > 0 ? operation.returnDryAirFlow : (1 - wanted) * total;
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
  balanceReturn(imbalanceAt, guess, total, condition.externalStatic.designDryAirFlow);
  return index + 1;
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
  const highest = 0.995 * total;
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

/**
 * Finds the wheel speed at which the fan, entered by `flowFactor` times the flow of the last walk, adds `rise` Pa of
 * total pressure. Gives false when no speed within reach does. The fan's rating is that of the search afterwards: a walk
 * has to follow.
 */
export function settleFanSpeed(unit: Unit, rating: UnitRating, rise: number, flowFactor: number): boolean {
  const index = sectionWithRole(unit, "fan");
  const section = unit.sections[index]!;
  const record = fanRatingAt(rating, index);
  const at = { condition: rating.condition, operation: rating.operation };
  const entering = copyAir(index === 0 ? rating.outdoors : rating.between[index - 1]!, createAir());
  entering.dryAirFlow *= flowFactor;
  const lacking = (speed: number): number => {
    rating.operation.fanSpeed = speed;
    section.behaviour.rate(section.design, entering, at, record);
    return -record.totalPressureLoss - rise;
  };
  const now = rating.operation.fanSpeed;
  const low = 0.97 * now;
  const high = 1.03 * now;
  if (lacking(low) < 0 && lacking(high) > 0) {
    lacking(findRoot(lacking, low, high, 1e-12 * now));
    return true;
  }
  if (lacking(0.02) > 0 || lacking(fastestWheel) < 0) {
    rating.operation.fanSpeed = now;
    lacking(now);
    return false;
  }
  lacking(findRoot(lacking, 0.02, fastestWheel, 1e-11));
  return true;
}

/** Reads the static pressure that the unit holds at its end and what the duct system needs there. */
export function readExternalStatic(rating: UnitRating): number {
  rating.externalStaticNeeded = externalStaticNeeded(rating.condition, rating.supply.dryAirFlow);
  rating.externalStaticHeld = rating.supply.staticPressure;
  return rating.externalStaticNeeded - rating.externalStaticHeld;
}
