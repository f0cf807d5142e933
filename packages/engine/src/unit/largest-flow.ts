import type { Condition } from "#duty/condition";
import type { FanSectionRating } from "#section/fan/rate";
import type { IntakeHoodRating } from "#section/intake-hood/rate";
import type { LouverRating } from "#section/louver/rate";
import { actualAirflow } from "#section/station";
import { createUnitRating, rateUnit } from "./rate-unit.ts";
import type { UnitRating } from "./rating.ts";
import type { Unit } from "./unit.ts";
import { sectionWithRole } from "./walk.ts";

/** A section of the intake at the largest flow. */
export interface IntakeAtMost {
  readonly section: string;
  readonly kind: string;
  /** m/s: in a hood's opening, in a louver's free area. */
  readonly velocity: number;
  /** Of a louver: onset of water penetration less that velocity, over the onset; negative beyond it. */
  readonly marginToOnset?: number;
}

/** The most air that a unit can draw: filters clean, the fan as fast as it can be led. */
export interface LargestFlow {
  /** rev/s. */
  readonly fanSpeed: number;
  /** Of design airflow. */
  readonly share: number;
  /** kg/s that leave the unit, m³/s that enter it. */
  readonly dryAirFlow: number;
  readonly intakeAirflow: number;
  /** In airflow order. */
  readonly intake: readonly IntakeAtMost[];
}

/**
 * rev/s of the fastest that the fan turns at solved conditions, 0 where it never does: the maximum to which its speed
 * control is set at start-up.
 */
export function fastestFanSpeed(ratings: Iterable<UnitRating>): number {
  let fastest = 0;
  for (const { solved, operation, condition } of ratings)
    if (solved && condition.flow.mode !== "fan stopped") fastest = Math.max(fastest, operation.fanSpeed);
  return fastest;
}

/** A condition's weather with filters just changed while the fan still turns as fast as it may; dampers as they are set. */
export function atLargestFlow(condition: Condition, fanSpeed: number): Condition {
  return {
    ...condition,
    key: `${condition.key}-highest-speed`,
    name: `${condition.name}, fan at its highest speed`,
    filterLoading: 0,
    flow: { mode: "speed held", fanSpeed },
  };
}

/** Conditions of the largest flow that can occur, on every day of the job; none where no fan runs. */
export function largestFlowConditions(ratings: readonly UnitRating[]): readonly Condition[] {
  const fanSpeed = fastestFanSpeed(ratings);
  if (fanSpeed === 0) return [];
  return ratings
    .filter(({ solved, condition }) => solved && condition.filterLoading === 0 && condition.flow.mode === "flow held")
    .map(({ condition }) => atLargestFlow(condition, fanSpeed));
}

/** What is told of a unit solved at its largest flow. */
export function largestFlowOf(unit: Unit, rating: UnitRating): LargestFlow {
  return {
    fanSpeed: rating.operation.fanSpeed,
    share: rating.supply.dryAirFlow / rating.condition.externalStatic.designDryAirFlow,
    dryAirFlow: rating.supply.dryAirFlow,
    intakeAirflow: actualAirflow(rating.outdoors),
    intake: intakeOf(unit, rating),
  };
}

function intakeOf(unit: Unit, rating: UnitRating): readonly IntakeAtMost[] {
  return unit.sections.flatMap(({ kind, name: section }, index): readonly IntakeAtMost[] => {
    const record = rating.sections[index];
    if (kind === "intake hood") return [{ section, kind, velocity: (record as IntakeHoodRating).openingVelocity }];
    if (kind !== "louver") return [];
    const { freeVelocity: velocity, marginToOnset } = record as LouverRating;
    return [{ section, kind, velocity, marginToOnset }];
  });
}

/** Times that the fan is led to what its motor may give. */
const mostLeads = 8;
/** Share of speed at which it has come to rest. */
const settled = 1e-5;

/**
 * Solves the unit at its largest flow with a speed control whose maximum nobody has set: at `highestSpeed` (rev/s), or as
 * fast as the motor lets it. Undefined where it finds no balance.
 */
export function rateUnsetSpeed(unit: Unit, condition: Condition, highestSpeed: number): UnitRating | undefined {
  const index = sectionWithRole(unit, "fan");
  const rating = createUnitRating(unit, condition);
  let fanSpeed = highestSpeed;
  for (let count = 0; count < mostLeads; count++) {
    rateUnit(unit, atLargestFlow(condition, fanSpeed), rating);
    if (!rating.solved) return undefined;
    const next = Math.min(highestSpeed, (rating.sections[index] as FanSectionRating).speedAllowed);
    if (Math.abs(next - fanSpeed) <= settled * next) break;
    fanSpeed = next;
  }
  return rating;
}
