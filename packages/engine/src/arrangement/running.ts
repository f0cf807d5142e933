import { fanPressureFromFlow } from "#component/fan-performance";
import type { Condition } from "#duty/condition";
import type { FanDesign } from "#section/fan/design";
import { airDensity } from "#section/station";
import { createUnitRating, rateUnit } from "#unit/rate-unit";
import type { UnitRating } from "#unit/rating";
import type { Unit } from "#unit/unit";
import { sectionWithRole, wallPressureOf } from "#unit/walk";

/** The least and the greatest of a figure over the conditions at which the fan runs, with their keys. */
export interface Range {
  readonly least: number;
  readonly leastAt: string;
  readonly most: number;
  readonly mostAt: string;
}

/** What the structure feels of a section. */
export interface SectionRunning {
  readonly section: string;
  /** Pa of its compartment against the surroundings. */
  readonly wallPressure: Range;
  /** Pa of its leaving stream against the surroundings: what a pan stands under. */
  readonly staticPressure: Range;
  /** kg/s of water that drains from it. */
  readonly drained: Range;
}

/** Temperatures on both sides of a section's walls at a condition. */
export interface WallTemperatures {
  readonly section: number;
  readonly condition: string;
  readonly inside: { readonly dryBulb: number; readonly humidityRatio: number };
  readonly outside: { readonly dryBulb: number; readonly humidityRatio: number };
  readonly barometricPressure: number;
}

/** The unit over all its conditions, as far as steel cares. */
export interface Running {
  readonly sections: readonly SectionRunning[];
  readonly walls: readonly WallTemperatures[];
  /** rev/s of the wheel. */
  readonly fanSpeed: Range;
  /** Pa of total pressure that the fans add. */
  readonly fanRise: Range;
  /** m³/s of supply air. */
  readonly airflow: Range;
  /** Pa that the fans make at their highest speed when nothing flows, in the densest air of the conditions. */
  readonly shutOff: { readonly pressure: number; readonly condition: string };
  /** Keys of conditions that could not be solved; nothing of them counts. */
  readonly unsolved: readonly string[];
}

class Spread {
  private least = Number.POSITIVE_INFINITY;
  private most = Number.NEGATIVE_INFINITY;
  private leastAt = "";
  private mostAt = "";

  take(value: number, key: string): void {
    if (value < this.least) [this.least, this.leastAt] = [value, key];
    if (value > this.most) [this.most, this.mostAt] = [value, key];
  }

  range(): Range {
    const { least, leastAt, most, mostAt } = this;
    return leastAt === "" ? { least: 0, leastAt, most: 0, mostAt } : { least, leastAt, most, mostAt };
  }
}

/** The unit solved at one condition after the other, in one rating that is filled anew. */
export function* solvedInTurn(unit: Unit, conditions: readonly Condition[]): Generator<UnitRating> {
  const first = conditions[0];
  if (first === undefined) return;
  const rating = createUnitRating(unit, first);
  for (const condition of conditions) yield rateUnit(unit, condition, rating);
}

/** Keeps what walls, traps, springs and rails feel of a unit at its ratings; each is read before the next is asked for. */
export function runUnit(unit: Unit, ratings: Iterable<UnitRating>): Running {
  const spreads = unit.sections.map(() => ({ wall: new Spread(), static: new Spread(), drained: new Spread() }));
  const [speed, rise, airflow] = [new Spread(), new Spread(), new Spread()];
  const walls: WallTemperatures[] = [];
  const unsolved: string[] = [];
  let shutOff = { pressure: 0, condition: "" };
  const fan = sectionWithRole(unit, "fan");
  for (const rating of ratings) {
    const { key, flow } = rating.condition;
    if (flow.mode === "fan stopped") continue;
    if (!rating.solved) {
      unsolved.push(key);
      continue;
    }
    unit.sections.forEach((_, index) => {
      const spread = spreads[index]!;
      const record = rating.sections[index]!;
      spread.wall.take(wallPressureOf(unit, rating, index), key);
      spread.static.take(record.leaving.staticPressure, key);
      spread.drained.take(Math.max(0, -record.waterToAir), key);
      walls.push(wallTemperatures(rating, index, key));
    });
    speed.take(rating.operation.fanSpeed, key);
    rise.take(-rating.sections[fan]!.totalPressureLoss, key);
    airflow.take(rating.supplyActualAirflow, key);
    const pressure = shutOffPressure(unit, rating, fan);
    if (pressure > shutOff.pressure) shutOff = { pressure, condition: key };
  }
  const sections = unit.sections.map(({ name }, index) => ({
    section: name,
    wallPressure: spreads[index]!.wall.range(),
    staticPressure: spreads[index]!.static.range(),
    drained: spreads[index]!.drained.range(),
  }));
  return {
    sections,
    walls,
    fanSpeed: speed.range(),
    fanRise: rise.range(),
    airflow: airflow.range(),
    shutOff,
    unsolved,
  };
}

function wallTemperatures(rating: UnitRating, index: number, condition: string): WallTemperatures {
  const { leaving } = rating.sections[index]!;
  const { surroundings, barometricPressure } = rating.condition;
  return {
    section: index,
    condition,
    inside: { dryBulb: leaving.dryBulb, humidityRatio: leaving.humidityRatio },
    outside: surroundings,
    barometricPressure,
  };
}

/** Pa at no flow, at this condition's speed and density. */
function shutOffPressure(unit: Unit, rating: UnitRating, fan: number): number {
  const design = unit.sections[fan]!.design as FanDesign;
  const density = airDensity(rating.sections[fan]!.entering);
  return fanPressureFromFlow(design.wheel.curve, design.diameter, rating.operation.fanSpeed, density, 0);
}
