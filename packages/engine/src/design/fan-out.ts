import type { Condition } from "#duty/condition";
import type { FanDesign } from "#section/fan/design";
import type { FanSectionRating } from "#section/fan/rate";
import { highestSpeed } from "#section/fan/speed-range";
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
  const { fansOut: _, ...whole } = condition;
  const rating = rateUnit(unit, whole, createUnitRating(unit, whole));
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
  const out: Condition = { ...condition, fansOut: condition.fansOut ?? { count: 1, leastDryAirFlow: 0 } };
  const same = rateUnit(unit, { ...out, flow: { mode: "speed held", fanSpeed: speed } }, createUnitRating(unit, out));
  if (!same.solved) return undefined;
  const dryAirFlow = condition.externalStatic.designDryAirFlow;
  const end = design.speedControlled
    ? rateUnit(unit, { ...out, flow: { mode: "flow held", dryAirFlow } }, createUnitRating(unit, out))
    : same;
  if (!end.solved) return undefined;
  const record = end.sections[index] as FanSectionRating;
  return {
    backdraftDampers: design.backdraftDampers,
    shareAtSameSpeed: shareOf(same),
    shareReached: shareOf(end),
    fanSpeed: record.fanSpeed,
    limitedBy: design.speedControlled ? limitOf(design, record, shareOf(end)) : "fixed speed",
    pressureToPeak: record.pressureToPeak,
    stable: record.stable,
    electricPower: record.electricPower,
  };
}

/** What keeps the others from moving design airflow. */
function limitOf(design: FanDesign, record: FanSectionRating, share: number): FanOutCase["limitedBy"] {
  if (share > 1 - 1e-6) return "nothing";
  const most = highestSpeed(design);
  if (record.speedAllowed < most * (1 - 1e-9)) return "motor";
  return most < design.maximumSpeed ? "speed control" : "class";
}

function shareOf(rating: UnitRating): number {
  return rating.supply.dryAirFlow / rating.condition.externalStatic.designDryAirFlow;
}
