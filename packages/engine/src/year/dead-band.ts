import type { Condition } from "#duty/condition";
import { rateUnit } from "#unit/rate-unit";
import type { UnitRating } from "#unit/rating";
import type { Unit } from "#unit/unit";

/** K by which a controller lets its set point slip before it starts what can only be on or off. */
const deadBand = 0.3;

/**
 * Solves the unit in an hour. Where steam can only be on, with more heat than is wanted, or off, with a breath less, no steady
 * state is the one asked for: the unit is then solved within the dead band of its controller.
 */
export function rateInDeadBand(unit: Unit, condition: Condition, rating: UnitRating): UnitRating {
  rateUnit(unit, condition, rating);
  const { supply } = condition.setPoints;
  if (rating.solved || supply === undefined) return rating;
  const slack = condition.season === "heating" ? -deadBand : deadBand;
  return rateUnit(unit, { ...condition, setPoints: { ...condition.setPoints, supply: supply + slack } }, rating);
}
