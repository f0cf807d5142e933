import { leakageFluxFromClass } from "#component/casing-leakage";
import { type Air, copyAir, isSameAir } from "#section/air";
import type { FanRating, MixingRating, SectionCondition, SectionRole } from "#section/contract";
import type { FanDesign } from "#section/fan/design";
import { fanSpeedForPressure } from "#section/fan/rise";
import { actualAirflow, airDensity } from "#section/station";
import { type Leak, leakIntoStream } from "./leakage.ts";
import type { UnitRating } from "./rating.ts";
import type { UnitSearch } from "./search.ts";
import type { Unit } from "./unit.ts";

/** Share of the barometric pressure below which no fan sucks: what asks for more is no passage for this flow. */
const lowestShare = 0.3;

/** °C beyond which no air handler's air is: a fan far too small that is turned ever faster heats it there. */
const hottestAir = 150;

/** A section would take more pressure than air has, or heat it beyond what any unit bears: the walk ends there. */
export class Choked extends Error {
  constructor(section: string, isTooHot = false) {
    const why = isTooHot
      ? `is far too small for this flow: it would heat the air beyond ${hottestAir} °C`
      : "is far too narrow for this flow: it would take more pressure than any fan gives";
    super(`${section} ${why}`);
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
 * Section `first` is entered by what left the one before it at the last walk, or by the outdoor air. What the search has
 * rated at this condition already, with the same air to the last bit and the same set points, stands as it is.
 */
export function walk(unit: Unit, rating: UnitRating, search: UnitSearch, first: number, last: number): void {
  const at: SectionCondition = rating;
  let air = first === 0 ? rating.outdoors : rating.between[first - 1]!;
  for (let index = first; index <= last; index++) {
    const section = unit.sections[index]!;
    const record = rating.sections[index]!;
    if (!stands(rating, search, index, air)) {
      if (index === search.fan && !Number.isNaN(search.fanRise)) setFanSpeed(unit, rating, index, air, search.fanRise);
      section.behaviour.rate(section.design, air, at, record);
      const isTooHot = !(record.leaving.dryBulb < hottestAir);
      if (isTooHot || !(record.leaving.staticPressure > -lowestShare * air.barometricPressure)) {
        search.isRated[index] = 0;
        throw new Choked(section.name, isTooHot);
      }
      leakBehind(unit, rating, index);
    }
    air = rating.between[index]!;
  }
  if (last === unit.sections.length - 1) copyAir(air, rating.supply);
}

/** Whether the section's record is that of this air and these set points; notes them where it is not. */
function stands(rating: UnitRating, { isRated, ratedAt, mixing, fan }: UnitSearch, index: number, air: Air): boolean {
  if (index === mixing || index === fan) return false;
  const { coolingLeaving, heatingLeaving, humidifierLeaving } = rating.operation;
  const i = 3 * index;
  const same =
    isRated[index] === 1 &&
    isSame(ratedAt[i]!, coolingLeaving) &&
    isSame(ratedAt[i + 1]!, heatingLeaving) &&
    isSame(ratedAt[i + 2]!, humidifierLeaving) &&
    isSameAir(air, rating.sections[index]!.entering);
  if (same) return true;
  isRated[index] = 1;
  ratedAt[i] = coolingLeaving ?? Number.NaN;
  ratedAt[i + 1] = heatingLeaving ?? Number.NaN;
  ratedAt[i + 2] = humidifierLeaving ?? Number.NaN;
  return false;
}

function isSame(noted: number, now: number | undefined): boolean {
  return now === undefined ? Number.isNaN(noted) : noted === now;
}

/** rev/s: fastest wheel that a search for a speed considers. */
export const fastestWheel = 150;

/** Sets the wheel's speed so that the fan, entered by `air`, adds `rise` Pa of total pressure, as near as wheels come. */
function setFanSpeed(unit: Unit, rating: UnitRating, index: number, air: Air, rise: number): void {
  const design = unit.sections[index]!.design as FanDesign;
  const failed = Math.min(rating.operation.fansFailed ?? 0, design.count - 1);
  const speed = fanSpeedForPressure(design, actualAirflow(air), rise, airDensity(air), failed);
  rating.operation.fanSpeed = Math.min(fastestWheel, speed);
}

const leak: Leak = { dryAir: 0, drained: 0 };

function leakBehind(unit: Unit, rating: UnitRating, index: number): void {
  const section = unit.sections[index]!;
  const record = rating.sections[index]!;
  const air = rating.between[index]!;
  const { width, height } = unit.frame;
  const isLast = index === unit.sections.length - 1;
  const wallPressure = wallPressureOf(unit, rating, index);
  const casingArea = 2 * (width + height) * section.layout.length;
  copyAir(record.leaving, air);
  const flow = casingArea * leakageFluxFromClass(unit.casing.leakageClass, Math.abs(wallPressure));
  leakIntoStream(air, rating.condition, wallPressure, flow, width * height, leak);
  rating.leakage[index] = leak.dryAir;
  rating.drained[index] = leak.drained;
  if (isLast) {
    // The last section hands its air to the duct, whose area is the section's own: its pressures stay.
    air.staticPressure = record.leaving.staticPressure;
    air.totalPressure = record.leaving.totalPressure;
  }
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
