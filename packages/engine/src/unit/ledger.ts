import type { SectionRating } from "#section/contract";
import type { Loss } from "#section/loss";
import { actualAirflow, airDensity } from "#section/station";
import { reserveAt } from "./external-static.ts";
import type { UnitRating } from "./rating.ts";
import type { Unit, UnitSection } from "./unit.ts";
import { fanRatingAt, sectionWithRole } from "./walk.ts";

/** A loss where it arises, and what it leaves. */
export interface LedgerLine extends Loss {
  /** Name of the section as in the job. */
  readonly section: string;
  /** Loss over the velocity pressure in its area; 0 where the air stands. */
  readonly coefficient: number;
  /** Pa of total pressure against the surroundings behind it; that before it for what lies beside the path. */
  readonly behind: number;
}

/**
 * Every loss and gain of total pressure from outdoors to the end of the unit, and what the fan serves with it:
 *
 *     fan total = losses + duct system + reserve + velocity pressure at the end − pressure before the intake
 *     fan static = fan total − velocity pressure in the fan's outlet
 */
export interface PressureLedger {
  readonly lines: readonly LedgerLine[];
  /** Pa before the intake: what the wind brings; 0 in calm air. */
  readonly intake: number;
  /** Pa of all losses on the path of the supply air, the fan's own inlet and outlet included. */
  readonly losses: number;
  /** Pa of static pressure at the end of the unit: for the duct system, and kept as reserve. */
  readonly ductSystem: number;
  readonly reserve: number;
  /** At the end of the unit: Pa, m², m/s, kg/m³. */
  readonly velocityPressure: number;
  readonly endArea: number;
  readonly endVelocity: number;
  readonly endDensity: number;
  /** Pa that the fan adds; the velocity pressure in its outlet, 0 for wheels without one; the difference. */
  readonly fanTotal: number;
  readonly fanOutletVelocityPressure: number;
  readonly fanStatic: number;
}

/** The pressure ledger of a unit that has been rated. */
export function pressureLedger(unit: Unit, rating: UnitRating): PressureLedger {
  const fan = fanRatingAt(rating, sectionWithRole(unit, "fan"));
  const lines = ledgerLines(unit, rating);
  const taken = lines.filter((line) => line.isBeside === undefined && line.isFan === undefined);
  const { supply, condition } = rating;
  const velocityPressure = supply.totalPressure - supply.staticPressure;
  const endDensity = airDensity(supply);
  const endVelocity = Math.sqrt((2 * Math.max(0, velocityPressure)) / endDensity);
  const reserve = reserveAt(condition, supply.dryAirFlow);
  return {
    lines,
    intake: rating.outdoors.totalPressure,
    losses: taken.reduce((sum, line) => sum + line.pressure, 0),
    ductSystem: rating.externalStaticHeld - reserve,
    reserve,
    velocityPressure,
    endArea: endVelocity > 0 ? rating.supplyActualAirflow / endVelocity : 0,
    endVelocity,
    endDensity,
    fanTotal: fan.fanTotalPressure,
    fanOutletVelocityPressure: fan.outletVelocityPressure,
    fanStatic: fan.staticPressure,
  };
}

function ledgerLines(unit: Unit, rating: UnitRating): readonly LedgerLine[] {
  let behind = rating.outdoors.totalPressure;
  return unit.sections.flatMap((section, index) =>
    lossesOf(section, rating, index).map((loss): LedgerLine => {
      if (loss.isBeside === undefined) behind -= loss.pressure;
      const head = 0.5 * loss.density * loss.velocity * loss.velocity;
      return { section: section.name, ...loss, coefficient: head > 0 ? Math.abs(loss.pressure) / head : 0, behind };
    }),
  );
}

function lossesOf(section: UnitSection, rating: UnitRating, index: number): readonly Loss[] {
  const record = rating.sections[index]!;
  const { behaviour, design } = section;
  return behaviour.losses?.(design, record) ?? [wholeSection(section, record)];
}

/** A kind that does not tell its losses apart: all of it, on the section's own velocity. */
function wholeSection(section: UnitSection, record: SectionRating): Loss {
  const { faceVelocity, entering } = record;
  return {
    part: section.kind,
    pressure: record.totalPressureLoss,
    plane: "face",
    area: faceVelocity > 0 ? actualAirflow(entering) / faceVelocity : 0,
    velocity: faceVelocity,
    density: airDensity(entering),
    source: "definition the section's own working",
  };
}
