import type { RootGuess } from "#numerics/find-root-near";
import { createQuasiNewton, type QuasiNewton } from "#numerics/quasi-newton";
import type { Unit } from "./unit.ts";

/** K of rise from the leaving plane of the last coil of each role to the supply. */
export interface Rises {
  afterCooling: number;
  afterHeating: number;
}

/** Unknowns of one way to run the unit, as they were found last. */
export interface Known {
  readonly unknowns: QuasiNewton;
  /** False before the first solution, and after a search that failed. */
  isKnown: boolean;
  /** What the unknowns are counted against: kg/s of dry air, and Pa. */
  flow: number;
  pressure: number;
  /** K from the coils to the supply. */
  readonly rises: Rises;
}

/**
 * What a rating remembers between one condition and the next, and between the walks of one condition: where to start. The
 * answers agree within the tolerances of the search, whatever was rated before.
 */
export interface UnitSearch {
  readonly unit: Unit;
  readonly mixing: number;
  readonly fan: number;
  readonly lastCooling: number;
  readonly lastHeating: number;
  /** Share of return air by dry-air flow. */
  readonly returnShare: RootGuess;
  readonly held: Known;
  readonly free: Known;
  readonly stoppedAsSet: Known;
  readonly stoppedClosed: Known;
  /** K that the last set points were made with; the rating's own, so that no list is made for each. */
  readonly rises: Rises;
  /** Pa that the fan is to add, set just before it is rated; NaN: its speed is given. */
  fanRise: number;
  /** 1 for sections rated at this condition, and the set points (NaN: none) that they were rated with. */
  readonly isRated: Uint8Array;
  readonly ratedAt: Float64Array;
}

/** Room for the search of one unit. */
export function createSearch(unit: Unit): UnitSearch {
  const roleOf = (role: string) => unit.sections.findIndex((section) => section.behaviour.role === role);
  const lastOf = (role: string) => unit.sections.findLastIndex((section) => section.behaviour.role === role);
  return {
    unit,
    mixing: roleOf("mixing"),
    fan: roleOf("fan"),
    lastCooling: lastOf("cooling"),
    lastHeating: lastOf("heating"),
    returnShare: { at: Number.NaN, slope: 0 },
    held: createKnown(3),
    free: createKnown(2),
    stoppedAsSet: createKnown(2),
    stoppedClosed: createKnown(2),
    rises: { afterCooling: 0, afterHeating: 0 },
    fanRise: Number.NaN,
    isRated: new Uint8Array(unit.sections.length),
    ratedAt: new Float64Array(3 * unit.sections.length),
  };
}

function createKnown(count: number): Known {
  return {
    unknowns: createQuasiNewton(count),
    isKnown: false,
    flow: 0,
    pressure: 0,
    rises: { afterCooling: 0, afterHeating: 0 },
  };
}

const searches = new WeakMap<object, UnitSearch>();

/** The search that belongs to a rating; a new one where the rating is used for another unit. */
export function searchOf(rating: object, unit: Unit): UnitSearch {
  let search = searches.get(rating);
  if (search?.unit !== unit) {
    search = createSearch(unit);
    searches.set(rating, search);
  }
  return search;
}

/** Lets a rating start where another one of the same unit has ended. */
export function shareSearch(from: object, to: object, unit: Unit): void {
  searches.set(to, searchOf(from, unit));
}
