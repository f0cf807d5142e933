import { leakageFluxFromClass } from "#component/casing-leakage";
import { type Air, copyAir } from "#section/air";
import type { FanRating, MixingRating, SectionCondition, SectionRole } from "#section/contract";
import { type Leak, leakIntoStream } from "./leakage.ts";
import type { UnitRating } from "./rating.ts";
import type { Unit } from "./unit.ts";

/** Share of the barometric pressure below which no fan sucks: what asks for more is no passage for this flow. */
const lowestShare = 0.3;

/** A section would take more pressure than air has: the walk ends there. */
export class Choked extends Error {
  constructor(section: string) {
    super(`${section} is far too narrow for this flow: it would take more pressure than any fan gives`);
    this.name = "Choked";
  }
}

/** Index of the first section with the role, or −1. */
export function sectionWithRole(unit: Unit, role: SectionRole): number {
  return unit.sections.findIndex((section) => section.behaviour.role === role);
}

/** Air in front of the intake: outdoors, at rest but for the wind. */
export function startOutdoors(rating: UnitRating, intakeDryAirFlow: number, windPressure: number): Air {
  const air = rating.outdoors;
  const { condition } = rating;
  air.dryAirFlow = intakeDryAirFlow;
  air.dryBulb = condition.outdoor.dryBulb;
  air.humidityRatio = condition.outdoor.humidityRatio;
  air.freeLiquid = 0;
  air.barometricPressure = condition.barometricPressure;
  air.totalPressure = windPressure;
  air.staticPressure = windPressure;
  air.coldestFilament = condition.outdoor.dryBulb;
  air.peakToMeanVelocity = 1;
  return air;
}

/**
 * Rates the sections `first` up to and including `last` in airflow order, with the casing's leakage between them.
 * Section `first` is entered by what left the one before it at the last walk, or by the outdoor air.
 */
export function walk(unit: Unit, rating: UnitRating, first: number, last: number): void {
  const at: SectionCondition = { condition: rating.condition, operation: rating.operation };
  const flowArea = unit.frame.width * unit.frame.height;
  let air = first === 0 ? rating.outdoors : rating.between[first - 1]!;
  for (let index = first; index <= last; index++) {
    const section = unit.sections[index]!;
    const record = rating.sections[index]!;
    section.behaviour.rate(section.design, air, at, record);
    if (!(record.leaving.staticPressure > -lowestShare * air.barometricPressure)) throw new Choked(section.name);
    air = leakBehind(unit, rating, index, flowArea);
  }
  if (last === unit.sections.length - 1) copyAir(air, rating.supply);
}

function leakBehind(unit: Unit, rating: UnitRating, index: number, flowArea: number): Air {
  const leak: Leak = { dryAir: 0, drained: 0 };
  const section = unit.sections[index]!;
  const record = rating.sections[index]!;
  const air = rating.between[index]!;
  const isLast = index === unit.sections.length - 1;
  const wallPressure = wallPressureOf(unit, rating, index);
  const casingArea = 2 * (unit.frame.width + unit.frame.height) * section.layout.length;
  copyAir(record.leaving, air);
  const flow = casingArea * leakageFluxFromClass(unit.casing.leakageClass, Math.abs(wallPressure));
  leakIntoStream(air, rating.condition, wallPressure, flow, flowArea, leak);
  rating.leakage[index] = leak.dryAir;
  rating.drained[index] = leak.drained;
  if (isLast) {
    // The last section hands its air to the duct, whose area is the section's own: its pressures stay.
    air.staticPressure = record.leaving.staticPressure;
    air.totalPressure = record.leaving.totalPressure;
  }
  return air;
}

/** Pa of the section's compartment against its surroundings. */
export function wallPressureOf(unit: Unit, rating: UnitRating, index: number): number {
  const record = rating.sections[index]!;
  const own = unit.sections[index]!.behaviour.wallPressure;
  return own === undefined ? record.leaving.staticPressure : own(record);
}

/** The rating of the section at `index` as that of a mixing box. */
export function mixingRatingAt(rating: UnitRating, index: number): MixingRating {
  return rating.sections[index] as MixingRating;
}

/** The rating of the section at `index` as that of a fan. */
export function fanRatingAt(rating: UnitRating, index: number): FanRating {
  return rating.sections[index] as FanRating;
}
