import type { Condition } from "#duty/condition";
import { standardAirDensity } from "#quantity/standard-air";
import { createAir } from "#section/air";
import { shareRoom } from "#section/room";
import { actualAirflow } from "#section/station";
import { learn, solveQuickly } from "./quick-search.ts";
import type { UnitRating } from "./rating.ts";
import { searchOf, shareSearch, type UnitSearch } from "./search.ts";
import { solveSlowly } from "./slow-search.ts";
import type { Unit } from "./unit.ts";
import { Choked, fanRatingAt } from "./walk.ts";

/** A rating to be filled again and again for one unit; `like` is one of the same unit whose last solution is a near start. */
export function createUnitRating(unit: Unit, condition: Condition, like?: UnitRating): UnitRating {
  const rating = emptyRating(unit, condition);
  if (like === undefined) return rating;
  shareSearch(like, rating, unit);
  rating.sections.forEach((record, index) => {
    shareRoom(like.sections[index]!, record);
  });
  return rating;
}

function emptyRating(unit: Unit, condition: Condition): UnitRating {
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

/** A rating of its own for each condition, each started where the one before has ended; `like` is a near start for the first. */
export function ratingsOf(unit: Unit, conditions: readonly Condition[], like?: UnitRating): readonly UnitRating[] {
  let last = like;
  return conditions.map((condition) => {
    last = rateUnit(unit, condition, createUnitRating(unit, condition, last));
    return last;
  });
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
  if (flow.mode !== "flow held") operation.fanSpeed = flow.mode === "speed held" ? flow.fanSpeed : 0;
  const search = searchOf(rating, unit);
  try {
    solve(unit, rating, search);
    if (condition.fansOut !== undefined) slowToAllowed(unit, rating, search);
    readSums(unit, rating);
  } catch (error) {
    if (!(error instanceof Choked)) throw error;
    rating.solved = false;
    rating.reason = error.message;
  }
  return rating;
}

function solve(unit: Unit, rating: UnitRating, search: UnitSearch): void {
  search.isRated.fill(0);
  rating.solved = settlesQuickly(unit, rating, search);
  if (!rating.solved) {
    const total = solveSlowly(unit, rating, search);
    if (rating.solved) learn(rating, search, total);
  }
  for (let index = 0; index < unit.sections.length; index++) {
    const { behaviour, design } = unit.sections[index]!;
    behaviour.complete?.(design, rating, rating.sections[index]!);
  }
}

/** Times that the fans left are led to what they may turn: power settles by the cube root within a few. */
const mostLeads = 12;

/** Fans that would have to turn faster than they may, as another has failed, turn as fast as they may; flow follows. */
function slowToAllowed(unit: Unit, rating: UnitRating, search: UnitSearch): void {
  const fan = fanRatingAt(rating, search.fan);
  if (rating.solved && rating.operation.fanSpeed <= fan.speedAllowed * (1 + 1e-9)) return;
  const wanted = rating.condition;
  try {
    for (let count = 0; count < mostLeads; count++) {
      const { fanSpeed } = rating.operation;
      const isLed = count > 0 && rating.solved;
      if (isLed && fanSpeed <= fan.speedAllowed * (1 + 1e-9) && fanSpeed >= fan.speedAllowed * (1 - 1e-5)) return;
      rating.reason = "";
      rating.operation.fanSpeed = fan.speedAllowed * (1 - 2e-6);
      rating.condition = { ...wanted, flow: { mode: "speed held", fanSpeed: rating.operation.fanSpeed } };
      solve(unit, rating, search);
      if (!rating.solved) return;
    }
    rating.solved = false;
    rating.reason = "the fans left do not come to rest at what their motors may give";
  } finally {
    rating.condition = wanted;
  }
}

/** The quick search; a flow of its steps for which the unit is too narrow is none that the slower one need try. */
function settlesQuickly(unit: Unit, rating: UnitRating, search: UnitSearch): boolean {
  try {
    return solveQuickly(unit, rating, search);
  } catch (error) {
    if (!(error instanceof Choked)) throw error;
    return false;
  }
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
