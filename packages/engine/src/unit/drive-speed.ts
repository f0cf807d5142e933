import type { Condition } from "#duty/condition";
import { createUnitRating, rateUnit } from "./rate-unit.ts";
import type { Unit } from "./unit.ts";
import { sectionWithRole } from "./walk.ts";

/** What the unit has to know of a fan's drive. */
interface Drive {
  readonly speedControlled: boolean;
  /** rev/s. */
  readonly fixedSpeed: number | undefined;
  readonly count: number;
}

function driveOf(unit: Unit): Drive | undefined {
  return unit.sections[sectionWithRole(unit, "fan")]?.design as Drive | undefined;
}

/** Fans side by side in the unit's fan section. */
export function fansOf(unit: Unit): number {
  return driveOf(unit)?.count ?? 1;
}

/**
 * Speed (rev/s) of a drive without speed control: as the job says, or else the speed that gives the design flow on the
 * wet-bulb day with filters half loaded. Undefined for a speed-controlled drive, which holds the flow.
 */
export function driveSpeed(unit: Unit, conditions: readonly Condition[]): number | undefined {
  const drive = driveOf(unit);
  if (drive === undefined || drive.speedControlled) return undefined;
  if (drive.fixedSpeed !== undefined) return drive.fixedSpeed;
  const deciding = conditions.find((condition) => condition.key === "wet-bulb-day-0.5");
  if (deciding === undefined) return undefined;
  return rateUnit(unit, deciding, createUnitRating(unit, deciding)).operation.fanSpeed;
}
