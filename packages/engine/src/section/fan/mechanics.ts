import { bearingLife, bearingLoad, bearingRatingFromLife } from "#component/bearing-life";
import { sheavePairFromSpeed } from "#component/belt-drive";
import { beltRating, beltRunFromPower } from "#component/belt-life";
import { fanStartingTime, massFromDiameter } from "#component/fan-wheel";
import { beltSectionB } from "#standard/belt-rating";
import { motorAt } from "./base.ts";
import type { FanDesign } from "./design.ts";
import type { FanSectionRating } from "./rate.ts";

/** Belts of section B between motor and fan. */
export interface FanBelts {
  /** m, pitch diameters. */
  readonly motorSheave: number;
  readonly fanSheave: number;
  /** m, between the shafts. */
  readonly centreDistance: number;
  readonly count: number;
  /** rev/s of the wheel with the motor at full-load speed. */
  readonly fullLoadFanSpeed: number;
  /** m/s at the rim, at the point in hand. */
  readonly beltSpeed: number;
  /** N on the fan's sheave, all belts, at the point in hand. */
  readonly pull: number;
  /** s of running at the point in hand. */
  readonly life: number;
  /** The life is only known to be longer than this. */
  readonly lastsLonger: boolean;
}

/** Bearings of the fan's own shaft. */
export interface FanBearings {
  /** N, on the one beside the sheave. */
  readonly load: number;
  /** s that nine of ten must reach, and the basic dynamic load rating (N) that this asks. */
  readonly lifeWanted: number;
  readonly ratingWanted: number;
  /** Of the bearing that the job names; s. */
  readonly rating: number | undefined;
  readonly life: number | undefined;
}

/** What turns, and how long it lasts. */
export interface FanMechanics {
  /** kg m², of the wheel. */
  readonly inertia: number;
  /** s to the speed in hand: a line start, or the shortest ramp of a speed control. */
  readonly startingTime: number;
  readonly startedBy: "line" | "speed control";
  /** Undefined for a direct drive, and where no stocked pair of sheaves reaches the speed. */
  readonly belts: FanBelts | undefined;
  /** Undefined for a direct drive, whose motor carries the wheel. */
  readonly bearings: FanBearings | undefined;
  readonly source: string;
  readonly certainty: string;
}

/** Mean surplus of torque over rated torque, fan taken off: a squirrel-cage motor on the line, and held at rated current. */
const surplus = { line: 1.2, control: 0.67 } as const;
/** From a bearing to its sheave over the distance between the bearings. */
const overhang = 0.25;

/**
 * Inertia, starting time, belts and bearings of one fan at a point; the sheaves are those for `highestSpeed` (rev/s), the
 * fastest that the job asks of the wheel. Undefined when the fan stands.
 */
export function fanMechanics(
  design: FanDesign,
  rating: FanSectionRating,
  highestSpeed: number,
): FanMechanics | undefined {
  if (rating.fanSpeed === 0) return undefined;
  const { wheel, diameter } = design;
  const mass = massFromDiameter(wheel.wheelMass, wheel.referenceDiameter, diameter);
  const inertia = mass * (wheel.gyrationRadius * diameter) ** 2;
  const startedBy = design.speedControlled ? "speed control" : "line";
  const share = design.speedControlled ? surplus.control : surplus.line;
  const belts = design.drive === "belt" ? beltsOf(design, rating, highestSpeed) : undefined;
  return {
    inertia,
    startingTime: fanStartingTime(inertia, rating.fanSpeed, design.motorPower, share),
    startedBy,
    belts,
    bearings: design.drive === "belt" ? bearingsOf(design, rating, mass, belts?.pull ?? 0) : undefined,
    source: design.drive === "belt" ? "shigley-mechanical-engineering-design belts; iso-281 bearings" : "derived-here",
    certainty:
      design.drive === "belt"
        ? "from memory; masses are the record's, sheave overhung by a quarter of the distance between bearings"
        : "torque of the motor from memory, mass of the wheel the record's",
  };
}

function beltsOf(design: FanDesign, rating: FanSectionRating, highestSpeed: number): FanBelts | undefined {
  const { belts, motorSpeed } = design;
  const pair = sheavePairFromSpeed(motorSpeed, highestSpeed, belts.smallestSheave, belts.highestBeltSpeed);
  if (pair === undefined) return undefined;
  const { motorSheave, fanSheave } = pair;
  const centreDistance = centresOf(design, motorSheave, fanSheave);
  const each = beltRating(motorSheave, fanSheave, centreDistance, pair.beltSpeed);
  const count = Math.ceil((design.motorPower * belts.serviceFactor) / each);
  const beltSpeed = Math.PI * fanSheave * rating.fanSpeed;
  const run = beltRunFromPower(rating.shaftPower / count, motorSheave, fanSheave, centreDistance, beltSpeed);
  const { provedPasses } = beltSectionB;
  return {
    motorSheave,
    fanSheave,
    centreDistance,
    count,
    fullLoadFanSpeed: pair.fanSpeed,
    beltSpeed,
    pull: count * run.shaftForce,
    life: (run.life * Math.min(run.passes, provedPasses)) / run.passes,
    lastsLonger: run.passes > provedPasses,
  };
}

/** m: as the drawing has them; where it has none, a little more than the sheaves or the wheel need. */
function centresOf(design: FanDesign, motorSheave: number, fanSheave: number): number {
  const place = motorAt(design);
  const drawn = place === undefined ? 1.1 * design.diameter : Math.hypot(place.x, place.y);
  return Math.max(drawn, 0.55 * (motorSheave + fanSheave));
}

function bearingsOf(design: FanDesign, rating: FanSectionRating, mass: number, pull: number): FanBearings {
  const load = bearingLoad(mass, pull, overhang);
  const { bearingLoadRating, bearingLife: lifeWanted } = design;
  return {
    load,
    lifeWanted,
    ratingWanted: bearingRatingFromLife(lifeWanted, load, rating.fanSpeed),
    rating: bearingLoadRating,
    life: bearingLoadRating === undefined ? undefined : bearingLife(bearingLoadRating, load, rating.fanSpeed),
  };
}
