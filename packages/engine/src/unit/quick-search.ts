import type { QuasiNewton } from "#numerics/quasi-newton";
import { quasiNewtonStep } from "#numerics/quasi-newton";
import type { UnitRating } from "./rating.ts";
import type { Known, UnitSearch } from "./search.ts";
import { setCoils } from "./set-points.ts";
import type { Unit } from "./unit.ts";
import { fanRatingAt } from "./walk.ts";
import { drivingPressure, holdsBalance, lackingAfterWalk, walkWhole } from "./whole-walk.ts";

/** Walks after which a search that has not settled is left to the slower one. */
const mostWalks = 16;
/** Longest step: of the flow by this share, of the pressure by this part of what was expected, of the rise by ten times it in K. */
const longestStep = 1;
/** Change of the flow, as a share, that is not worth another walk through the coils: a tenth of what the balance asks. */
const smallestStep = 1e-8;
/** K of rise that count as one unknown. */
const riseUnit = 10;

const values = new Float64Array(3);

/**
 * Solves the unit by steps of all unknowns together: flow, what the fan is to add, and rise behind the coil of the season,
 * starting from what was found last for this way to run it. False where that does not settle; the rating is then to be
 * solved by the search that is slower and surer.
 */
export function solveQuickly(unit: Unit, rating: UnitRating, search: UnitSearch): boolean {
  const { mode } = rating.condition.flow;
  const known = knownFor(rating, search);
  if (mode === "flow held") startHeld(rating, search, known);
  else if (!startFree(rating, search, known)) return false;
  const { unknowns } = known;
  unknowns.steps = 0;
  for (let count = 0; count < mostWalks; count++) {
    if (!placeUnknowns(rating, search, known)) break;
    walkWhole(unit, rating, search, known.flow * Math.exp(unknowns.at[0]!));
    const lacking = lackingAfterWalk(rating, search);
    if (!readValues(rating, search, known, lacking)) break;
    if (holdsBalance(rating, search, lacking, known.rises)) {
      known.isKnown = true;
      return true;
    }
    if (!quasiNewtonStep(unknowns, values, longestStep)) break;
    keepFlow(unknowns);
  }
  known.isKnown = false;
  return false;
}

function knownFor({ condition }: UnitRating, search: UnitSearch): Known {
  const { flow } = condition;
  if (flow.mode === "flow held") return search.held;
  if (flow.mode === "speed held") return search.free;
  return flow.dampers === "closed" ? search.stoppedClosed : search.stoppedAsSet;
}

/** The fan's speed follows: unknown are flow, pressure and rise. */
function startHeld({ condition }: UnitRating, { held }: UnitSearch, known: Known): void {
  const { flow, externalStatic } = condition;
  if (flow.mode !== "flow held") return;
  const { at, slopes } = held.unknowns;
  if (known.isKnown) {
    // The pressure follows about the square of the flow.
    const share = flow.dryAirFlow / known.flow;
    known.pressure *= at[1]! * share * share;
  } else {
    at[0] = 0;
    at[2] = 0;
    known.rises.afterCooling = 1;
    known.rises.afterHeating = 1;
    known.pressure = externalStatic.atDesign + 800;
    // Missing flow; missing pressure, which the duct asks for with the square of the flow; missing rise, of fan heat.
    slopes.set([-1, 0, 0, 1.9, -1, 0, 0, 0.1, -1]);
  }
  at[1] = 1;
  known.flow = flow.dryAirFlow;
  at[2] = riseOf(condition.season, known) / riseUnit;
}

/** The flow follows from a given speed, or from wind and warm air: unknown are flow and rise. */
function startFree(rating: UnitRating, search: UnitSearch, known: Known): boolean {
  const { condition } = rating;
  const { unknowns } = known;
  search.fanRise = Number.NaN;
  if (!known.isKnown && !guessFree(rating, search, known)) return false;
  known.pressure = condition.flow.mode === "speed held" ? pressureAdded(rating, search) : drivingPressure(rating);
  if (!(known.pressure > 0)) return false;
  unknowns.at[1] = riseOf(condition.season, known) / riseUnit;
  return true;
}

/** Share of the flow through open dampers that about leaks through closed ones. */
const leakShare = 0.05;

/** A start from the held flow: as much at a given speed; at rest what the draught then brings through about the same passages. */
function guessFree(rating: UnitRating, { held }: UnitSearch, known: Known): boolean {
  if (!held.isKnown) return false;
  const { flow } = rating.condition;
  const { at } = held.unknowns;
  let total = held.flow * Math.exp(at[0]!);
  if (flow.mode === "fan stopped") {
    total *= Math.sqrt(drivingPressure(rating) / (at[1]! * held.pressure));
    if (flow.dampers === "closed") total *= leakShare;
  } else Object.assign(known.rises, held.rises);
  if (!(total > 0)) return false;
  setFree(known, total, rating);
  return true;
}

/** Sets the unknown flow where it follows from speed or draught, and how what is lacking goes with it. */
function setFree(known: Known, total: number, { condition }: UnitRating): void {
  const { at, slopes } = known.unknowns;
  known.flow = condition.externalStatic.designDryAirFlow;
  at[0] = Math.log(total / known.flow);
  // At a given speed the fan's pressure falls while the resistance rises; at rest all goes with the square of the flow.
  slopes.set([condition.flow.mode === "speed held" ? 3 : 2, 0, 0, -1]);
}

/** Pa that the fan added last; what is commonly met where this rating has none yet. */
function pressureAdded(rating: UnitRating, { fan }: UnitSearch): number {
  const added = -fanRatingAt(rating, fan).totalPressureLoss;
  return added > 1 ? added : rating.condition.externalStatic.atDesign + 800;
}

function riseOf(season: "cooling" | "heating", { rises }: Known): number {
  return season === "cooling" ? rises.afterCooling : rises.afterHeating;
}

/** Gives the unknowns to the unit; false where they are none that a unit can have. */
function placeUnknowns(rating: UnitRating, search: UnitSearch, known: Known): boolean {
  const { at } = known.unknowns;
  const last = at.length - 1;
  if (!(Math.abs(at[0]!) < 12 && Math.abs(at[last]!) < 20)) return false;
  if (last === 2) search.fanRise = at[1]! * known.pressure;
  const rise = at[last]! * riseUnit;
  if (rating.condition.season === "cooling") known.rises.afterCooling = rise;
  else known.rises.afterHeating = rise;
  setCoils(rating, known.rises);
  return true;
}

/** What is still wrong after a walk, all about of the size of a share; false where there is no telling. */
function readValues(rating: UnitRating, search: UnitSearch, known: Known, lacking: number): boolean {
  const { flow, season } = rating.condition;
  const last = known.unknowns.at.length - 1;
  if (flow.mode === "flow held") {
    values[0] = (flow.dryAirFlow - rating.supply.dryAirFlow) / flow.dryAirFlow;
    values[1] = lacking / known.pressure;
  } else if (flow.mode === "speed held") values[0] = lacking / known.pressure;
  // What resists follows about the square of the flow, over four decades of it.
  else values[0] = Math.log((lacking + known.pressure) / known.pressure);
  const { rises } = search;
  const found = season === "cooling" ? rises.afterCooling : rises.afterHeating;
  values[last] = found / riseUnit - known.unknowns.at[last]!;
  return Number.isFinite(values[0]! + values[1]! + values[last]!);
}

/** Leaves the flow where it is when its step is not worth a walk through all coils. */
function keepFlow({ at, step }: QuasiNewton): void {
  if (Math.abs(step[0]!) >= smallestStep) return;
  at[0]! -= step[0]!;
  step[0] = 0;
}

/** Notes what the slower search has found, as the start of the next quick one. */
export function learn(rating: UnitRating, search: UnitSearch, total: number): void {
  const known = knownFor(rating, search);
  const { at, slopes } = known.unknowns;
  const { flow, season } = rating.condition;
  known.rises.afterCooling = search.rises.afterCooling;
  known.rises.afterHeating = search.rises.afterHeating;
  known.isKnown = true;
  at[at.length - 1] = riseOf(season, known) / riseUnit;
  if (flow.mode === "flow held") {
    known.flow = flow.dryAirFlow;
    known.pressure = search.fanRise;
    at[0] = Math.log(total / known.flow);
    at[1] = 1;
    slopes.set([-1, 0, 0, 1.9, -1, 0, 0, 0.1, -1]);
    return;
  }
  setFree(known, total, rating);
}
