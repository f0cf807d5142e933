import type { Condition } from "#duty/condition";
import type { FanDesign } from "#section/fan/design";
import { speedRange } from "#section/fan/notes";
import type { FanSectionRating } from "#section/fan/rate";
import { createUnitRating, rateUnit } from "#unit/rate-unit";
import type { UnitRating } from "#unit/rating";
import type { Unit } from "#unit/unit";
import { sectionWithRole } from "#unit/walk";

/** What the other fans still move when one has failed. */
export interface FanOutCase {
  readonly backdraftDampers: boolean;
  /** Of design airflow, with the others at the speed they had. */
  readonly shareAtSameSpeed: number;
  /** Of design airflow, with the others as fast as they may run, but no more than design. */
  readonly shareReached: number;
  /** rev/s of the others there, and what keeps them from more. */
  readonly fanSpeed: number;
  readonly limitedBy: "nothing" | "motor" | "class" | "speed control" | "fixed speed";
  /** Static pressure over the peak, and 1 where the others run steadily. */
  readonly pressureToPeak: number;
  readonly stable: number;
  /** W from the mains, all that turn. */
  readonly electricPower: number;
}

/** The array with one fan out, as it is built and with its dampers the other way. */
export interface FanOut {
  readonly count: number;
  /** As built first; empty for a single fan, which leaves nothing. */
  readonly cases: readonly FanOutCase[];
}

/** Solves the unit at a condition with one of its fans standing, with and without backdraft dampers. */
export function oneFanOut(unit: Unit, condition: Condition): FanOut {
  const index = sectionWithRole(unit, "fan");
  const design = unit.sections[index]!.design as FanDesign;
  if (design.count === 1) return { count: 1, cases: [] };
  const rating = rateUnit(unit, condition, createUnitRating(unit, condition));
  const speed = (rating.sections[index] as FanSectionRating).fanSpeed;
  if (!rating.solved || speed === 0) return { count: design.count, cases: [] };
  const cases = [design.backdraftDampers, !design.backdraftDampers].flatMap(
    (backdraftDampers) => caseOf(withDampers(unit, index, backdraftDampers), condition, index, speed) ?? [],
  );
  return { count: design.count, cases };
}

function withDampers(unit: Unit, index: number, backdraftDampers: boolean): Unit {
  const sections = unit.sections.map((section, place) =>
    place === index ? { ...section, design: { ...(section.design as FanDesign), backdraftDampers } } : section,
  );
  return { ...unit, sections };
}

function caseOf(unit: Unit, condition: Condition, index: number, speed: number): FanOutCase | undefined {
  const design = unit.sections[index]!.design as FanDesign;
  const atSpeed = (fanSpeed: number) => solved(unit, { ...condition, flow: { mode: "speed held", fanSpeed } });
  const same = atSpeed(speed);
  if (!same.solved) return undefined;
  const reached = design.speedControlled ? reachedBy(unit, condition, index, atSpeed) : undefined;
  const end = reached?.rating ?? same;
  const record = end.sections[index] as FanSectionRating;
  return {
    backdraftDampers: design.backdraftDampers,
    shareAtSameSpeed: shareOf(same),
    shareReached: shareOf(end),
    fanSpeed: record.fanSpeed,
    limitedBy: reached?.limitedBy ?? "fixed speed",
    pressureToPeak: record.pressureToPeak,
    stable: record.stable,
    electricPower: record.electricPower,
  };
}

/** The unit with the others as fast as design asks, or as they may run. */
function reachedBy(
  unit: Unit,
  condition: Condition,
  index: number,
  atSpeed: (speed: number) => UnitRating,
): { readonly rating: UnitRating; readonly limitedBy: FanOutCase["limitedBy"] } | undefined {
  const design = unit.sections[index]!.design as FanDesign;
  const control = speedRange(design)?.highest ?? Number.POSITIVE_INFINITY;
  const most = Math.min(design.maximumSpeed, control);
  const dryAirFlow = condition.externalStatic.designDryAirFlow;
  const held = solved(unit, { ...condition, flow: { mode: "flow held", dryAirFlow } });
  const isHeld = held.solved && recordOf(held, index).fanSpeed <= most && !isOverloaded(held, index);
  if (isHeld) return { rating: held, limitedBy: "nothing" };
  const byBuild = control < design.maximumSpeed ? "speed control" : "class";
  let rating = atSpeed(held.solved ? Math.min(most, recordOf(held, index).fanSpeed) : most);
  if (!rating.solved) return undefined;
  if (!isOverloaded(rating, index)) return { rating, limitedBy: byBuild };
  // Power goes nearly with the cube of speed along the unit's curve: a few steps settle.
  for (let count = 0; count < 6; count++) {
    const { motorAllowed, motorOutput, fanSpeed } = recordOf(rating, index);
    rating = atSpeed(fanSpeed * Math.cbrt(motorAllowed / motorOutput));
    if (!rating.solved) return undefined;
  }
  return { rating, limitedBy: "motor" };
}

function solved(unit: Unit, condition: Condition): UnitRating {
  const rating = createUnitRating(unit, condition);
  rating.operation.fansFailed = 1;
  return rateUnit(unit, condition, rating);
}

function recordOf(rating: UnitRating, index: number): FanSectionRating {
  return rating.sections[index] as FanSectionRating;
}

function isOverloaded(rating: UnitRating, index: number): boolean {
  const { motorOutput, motorAllowed } = recordOf(rating, index);
  return motorOutput > motorAllowed * (1 + 1e-9);
}

function shareOf(rating: UnitRating): number {
  return rating.supply.dryAirFlow / rating.condition.externalStatic.designDryAirFlow;
}
