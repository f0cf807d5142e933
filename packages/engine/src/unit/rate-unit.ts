import type { Condition } from "#duty/condition";
import { density } from "#fluid/moist-air";
import { findRoot } from "#numerics/find-root";
import { standardAirDensity } from "#quantity/standard-air";
import { createAir } from "#section/air";
import { actualAirflow } from "#section/station";
import { readExternalStatic, settleFanSpeed, walkToMixingBox } from "./balance.ts";
import type { UnitRating } from "./rating.ts";
import { type Rises, readRises, setCoils } from "./set-points.ts";
import type { Unit } from "./unit.ts";
import { Choked, fanRatingAt, sectionWithRole, walk } from "./walk.ts";

/** Walks after which a balance that has not come will not come. */
const mostWalks = 60;
/** Flow balance, share of the flow. */
const flowTolerance = 1e-11;
/** Pressure balance, Pa: a hundred-millionth of a common fan pressure. */
const pressureTolerance = 1e-7;
/** Set point, K. */
const temperatureTolerance = 1e-7;
/** Wind pressure at the intake over velocity pressure; common practice for a wall or hood that faces the wind. */
const facingWind = 0.7;
const gravity = 9.80665;

/** A rating to be filled again and again for one unit. */
export function createUnitRating(unit: Unit, condition: Condition): UnitRating {
  return {
    condition,
    operation: {
      fanSpeed: 15,
      fansRunning: true,
      returnDryAirFlow: 0,
      dampers: "as set",
      returnDamperStop: "none",
      coolingLeaving: undefined,
      heatingLeaving: undefined,
      humidifierLeaving: undefined,
    },
    outdoors: createAir(),
    sections: unit.sections.map((section) => section.behaviour.createRating()),
    between: unit.sections.map(() => createAir()),
    leakage: new Float64Array(unit.sections.length),
    drained: new Float64Array(unit.sections.length),
    supply: createAir(),
    supplyActualAirflow: 0,
    supplyStandardAirflow: 0,
    outsideAirShare: 1,
    externalStaticNeeded: 0,
    externalStaticHeld: 0,
    fanElectricPower: 0,
    solved: false,
    reason: "not rated yet",
    walks: 0,
  };
}

/**
 * Solves the unit at a condition and fills `rating`: flows, pressures, states, set points. What the sections give is
 * exact in every walk; the walks repeat until flow, damper share, fan speed and set points agree with one another.
 * A balance that cannot be reached leaves `solved` false and says why in `reason`; the figures are then those of the
 * last walk and not to be relied on.
 */
export function rateUnit(unit: Unit, condition: Condition, rating: UnitRating): UnitRating {
  rating.condition = condition;
  rating.walks = 0;
  rating.solved = false;
  rating.reason = "";
  const { operation } = rating;
  const { flow } = condition;
  operation.fansRunning = flow.mode !== "fan stopped";
  operation.fansFailed = condition.fansOut?.count ?? 0;
  operation.dampers = flow.mode === "fan stopped" ? flow.dampers : "as set";
  const rises: Rises = { afterCooling: 0, afterHeating: 0 };
  setCoils(rating, rises);
  try {
    if (flow.mode === "flow held") {
      rateAtFlow(unit, rating, rises, flow.dryAirFlow);
      if (condition.fansOut !== undefined) slowToAllowed(unit, rating, rises);
    } else if (flow.mode === "speed held") rateAtSpeed(unit, rating, rises, flow.fanSpeed);
    else rateStopped(unit, rating, rises, flow.stackHeight);
    readSums(unit, rating);
  } catch (error) {
    if (!(error instanceof Choked)) throw error;
    rating.solved = false;
    rating.reason = error.message;
  }
  return rating;
}

/** One walk through the whole unit with `total` kg/s of dry air leaving the mixing box. */
function walkWhole(unit: Unit, rating: UnitRating, total: number): void {
  const next = walkToMixingBox(unit, rating, total, windPressureOf(rating.condition));
  walk(unit, rating, next, unit.sections.length - 1);
  rating.walks++;
}

/** Pa of wind at the intake. A running fan is not to count on wind, unless the condition says how the intake lies to it. */
function windPressureOf({ outdoor, barometricPressure, flow }: Condition): number {
  const coefficient = outdoor.windPressureCoefficient ?? (flow.mode === "fan stopped" ? facingWind : 0);
  if (coefficient === 0 || outdoor.windSpeed === 0) return 0;
  const outdoorDensity = density(outdoor.dryBulb, outdoor.humidityRatio, barometricPressure);
  return 0.5 * coefficient * outdoorDensity * outdoor.windSpeed ** 2;
}

/** The fan's speed follows: `wanted` kg/s of dry air are to leave the unit against the duct system. */
function rateAtFlow(unit: Unit, rating: UnitRating, rises: Rises, wanted: number): void {
  let total = wanted;
  rating.operation.fanSpeed ||= 15;
  for (let count = 0; count < mostWalks; count++) {
    walkWhole(unit, rating, total);
    const missing = wanted - rating.supply.dryAirFlow;
    const lacking = readExternalStatic(rating);
    readRises(unit, rating, rises);
    const moved = setCoils(rating, rises);
    const isSettled =
      Math.abs(missing) <= flowTolerance * wanted &&
      Math.abs(lacking) <= pressureTolerance &&
      moved <= temperatureTolerance;
    if (isSettled) {
      rating.solved = true;
      return;
    }
    total += missing;
    // The machine's and the duct's losses follow about the square of the flow: what the next walk's flow will ask for.
    const added = -fanRatingAt(rating, sectionWithRole(unit, "fan")).totalPressureLoss + lacking;
    const rise = added * (1 + (2 * missing) / wanted);
    if (!settleFanSpeed(unit, rating, rise, 1 + missing / wanted)) {
      walkWhole(unit, rating, total);
      rating.reason = "no fan speed reaches the pressure that this flow needs";
      return;
    }
  }
  walkWhole(unit, rating, total);
  readExternalStatic(rating);
  rating.reason = "flow, fan speed and set points did not come to rest";
}

/** Times that the fans left are led to what they may turn: power settles by the cube root within a few. */
const mostLeads = 12;

/** Fans that would have to turn faster than they may, as another has failed, turn as fast as they may; flow follows. */
function slowToAllowed(unit: Unit, rating: UnitRating, rises: Rises): void {
  const fan = fanRatingAt(rating, sectionWithRole(unit, "fan"));
  if (rating.solved && rating.operation.fanSpeed <= fan.speedAllowed * (1 + 1e-9)) return;
  for (let count = 0; count < mostLeads; count++) {
    const { fanSpeed } = rating.operation;
    const isLed = count > 0 && rating.solved;
    if (isLed && fanSpeed <= fan.speedAllowed * (1 + 1e-9) && fanSpeed >= fan.speedAllowed * (1 - 1e-5)) return;
    rating.solved = false;
    rating.reason = "";
    rateAtSpeed(unit, rating, rises, fan.speedAllowed * (1 - 2e-6));
    if (!rating.solved) return;
  }
  rating.solved = false;
  rating.reason = "the fans left do not come to rest at what their motors may give";
}

/** The fan turns at `speed`; the flow follows from the duct system. */
function rateAtSpeed(unit: Unit, rating: UnitRating, rises: Rises, speed: number): void {
  rating.operation.fanSpeed = speed;
  const design = rating.condition.externalStatic.designDryAirFlow;
  let moved = 0;
  const lackingAt = (total: number): number => {
    walkWhole(unit, rating, total);
    readRises(unit, rating, rises);
    moved = setCoils(rating, rises);
    return readExternalStatic(rating);
  };
  settleFlow(
    rating,
    lackingAt,
    0.05 * design,
    2 * design,
    "the fan at its fixed speed meets the duct system nowhere",
    () => moved,
  );
}

/** Wind and the warm column downstream move what air still moves. */
function rateStopped(unit: Unit, rating: UnitRating, rises: Rises, stackHeight: number): void {
  const { condition, operation } = rating;
  operation.fanSpeed = 0;
  const { outdoor, barometricPressure } = condition;
  const outdoorDensity = density(outdoor.dryBulb, outdoor.humidityRatio, barometricPressure);
  const column = density(condition.returnAir.dryBulb, condition.returnAir.humidityRatio, barometricPressure);
  const stackPressure = Math.max(0, (outdoorDensity - column) * gravity * stackHeight);
  const design = condition.externalStatic.designDryAirFlow;
  let moved = 0;
  const lackingAt = (total: number): number => {
    walkWhole(unit, rating, total);
    readRises(unit, rating, rises);
    moved = setCoils(rating, rises);
    return readExternalStatic(rating) - stackPressure;
  };
  settleFlow(rating, lackingAt, 1e-4 * design, design, "nothing moves air through the stopped unit", () => moved);
}

/**
 * Finds the flow between `low` and `high` at which the duct system is met; pressure lacking grows with flow. The search
 * widens step by step from `low`, so that no trial asks for a pressure that air cannot have. `setCoilsMoved` gives the K
 * by which the last trial moved the set points.
 */
function settleFlow(
  rating: UnitRating,
  lackingAt: (total: number) => number,
  low: number,
  high: number,
  whenNot: string,
  setCoilsMoved: () => number,
): void {
  if (lackingAt(low) > 0) {
    rating.reason = whenNot;
    return;
  }
  let below = low;
  let above = low;
  do {
    below = above;
    above = Math.min(high, 2 * above);
  } while (lackingAt(above) < 0 && above < high);
  if (lackingAt(above) < 0) {
    rating.reason = "the flow would be more than the search considers";
    return;
  }
  const root = findRoot(lackingAt, below, above, 1e-12 * high);
  // Set points that allow for fan heat come to rest at the flow found.
  for (let count = 0; count < mostWalks && !rating.solved; count++) {
    lackingAt(root);
    rating.solved = setCoilsMoved() <= temperatureTolerance;
  }
  if (!rating.solved) rating.reason = "set points did not come to rest";
}

function readSums(unit: Unit, rating: UnitRating): void {
  const { supply, operation, outdoors } = rating;
  rating.supplyActualAirflow = actualAirflow(supply);
  rating.supplyStandardAirflow = supply.dryAirFlow / standardAirDensity;
  const returned = Math.max(0, operation.returnDryAirFlow);
  rating.outsideAirShare = outdoors.dryAirFlow / (outdoors.dryAirFlow + returned);
  let power = 0;
  unit.sections.forEach((section, index) => {
    if (section.behaviour.role === "fan") power += fanRatingAt(rating, index).electricPower;
  });
  rating.fanElectricPower = power;
}
