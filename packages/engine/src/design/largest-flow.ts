import type { Condition } from "#duty/condition";
import type { FanDesign } from "#section/fan/design";
import type { FanSectionRating } from "#section/fan/rate";
import type { IntakeHoodRating } from "#section/intake-hood/rate";
import type { LouverRating } from "#section/louver/rate";
import { actualAirflow } from "#section/station";
import { createUnitRating, rateUnit } from "#unit/rate-unit";
import type { UnitRating } from "#unit/rating";
import type { Unit } from "#unit/unit";
import { sectionWithRole } from "#unit/walk";

/** A section of the intake at the largest flow. */
export interface IntakeAtMost {
  readonly section: string;
  readonly kind: string;
  /** m/s: in a hood's opening, in a louver's free area. */
  readonly velocity: number;
  /** Of a louver: onset of water penetration less that velocity, over the onset; negative beyond it. */
  readonly marginToOnset?: number;
}

/** The most air that the unit can draw: filters clean, the fan as fast as it can be led. */
export interface LargestFlow {
  /** rev/s, and whether the motor holds it below what class and speed control allow. */
  readonly fanSpeed: number;
  readonly limitedBy: "speed" | "motor";
  /** Of design airflow. */
  readonly share: number;
  /** kg/s that leave the unit, m³/s that enter it. */
  readonly dryAirFlow: number;
  readonly intakeAirflow: number;
  /** In airflow order. */
  readonly intake: readonly IntakeAtMost[];
}

/** Times that the fan is led to what its motor may give. */
const mostLeads = 8;
/** Share of speed at which it has come to rest. */
const settled = 1e-5;

/**
 * Solves the unit at a condition's weather with filters clean and its fan at `highestSpeed` (rev/s), or as fast as the
 * motor lets it; dampers as they are set. Undefined where it finds no balance.
 */
export function largestFlow(unit: Unit, condition: Condition, highestSpeed: number): LargestFlow | undefined {
  const index = sectionWithRole(unit, "fan");
  const design = unit.sections[index]!.design as FanDesign;
  const rating = createUnitRating(unit, condition);
  let fanSpeed = highestSpeed;
  for (let count = 0; count < mostLeads; count++) {
    rateUnit(unit, { ...condition, filterLoading: 0, flow: { mode: "speed held", fanSpeed } }, rating);
    if (!rating.solved) return undefined;
    const { speedAllowed } = rating.sections[index] as FanSectionRating;
    const next = Math.min(highestSpeed, speedAllowed);
    // A fixed speed is what it is: its motor is overloaded then, and the shortfalls say so.
    if (!design.speedControlled || Math.abs(next - fanSpeed) <= settled * next) break;
    fanSpeed = next;
  }
  return {
    fanSpeed,
    limitedBy: fanSpeed < highestSpeed * (1 - settled) ? "motor" : "speed",
    share: rating.supply.dryAirFlow / condition.externalStatic.designDryAirFlow,
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
