import { fanPeakPower } from "#component/fan-performance";
import type { Condition } from "#duty/condition";
import { findRoot } from "#numerics/find-root";
import type { FanDesign } from "#section/fan/design";
import { driveEfficiencyOf, type FanSectionRating } from "#section/fan/rate";
import { speedRange } from "#section/fan/speed-range";
import { createUnitRating, rateUnit } from "#unit/rate-unit";
import type { Unit } from "#unit/unit";
import { sectionWithRole } from "#unit/walk";

/** The fan where the unit asks it to work at a share of design airflow. */
export interface FanRangePoint {
  /** Of design airflow. */
  readonly share: number;
  readonly filterLoading: number;
  /** rev/s. */
  readonly fanSpeed: number;
  readonly pressureToPeak: number;
  readonly flowToStable: number;
  readonly motorLoad: number;
  readonly frequencyRatio: number;
}

/** The most that a job asks: rev/s of the wheel, kg/m³ of the air before it, and the least share of design airflow. */
export interface FanExtremes {
  readonly speed: number;
  readonly density: number;
  readonly leastShare: number;
}

/** How the fan stands over all the speeds at which it may be run. */
export interface FanRange {
  /** rev/s between which class, speed control and motor let it run; both the same for a fixed speed. */
  readonly lowestSpeed: number;
  readonly highestSpeed: number;
  /** Along the unit's own curves, filters clean and at change-out, largest flow first. */
  readonly points: readonly FanRangePoint[];
  /** Within the flows that the job asks: where the static pressure comes nearest to the peak at its speed, and where the flow to the smallest steady one. */
  readonly nearestPeak: FanRangePoint | undefined;
  readonly leastSteady: FanRangePoint | undefined;
  /** Share of design airflow at which the fan comes to the smallest steady flow; undefined where it does nowhere. */
  readonly unsteadyBelow: number | undefined;
  /** rev/s above which something on the curve overloads the motor; undefined where nothing does up to the highest speed. */
  readonly overloadAbove: number | undefined;
  /** rev/s: natural frequency of the springs, and where they begin to isolate; 0 on a rigid base. */
  readonly resonance: number;
  readonly isolatesAbove: number;
}

/** Shares of design airflow that are solved besides the least, from the largest: each starts from the one before. */
const shares = [1, 0.85, 0.7, 0.55, 0.4, 0.25, 0.12] as const;

/**
 * Follows the fan along the unit's curves over the whole range of speed, filters clean and at change-out. The
 * heaviest air that the fan meets decides the overload.
 */
export function fanRange(unit: Unit, condition: Condition, met: FanExtremes): FanRange {
  const index = sectionWithRole(unit, "fan");
  const design = unit.sections[index]!.design as FanDesign;
  const wanted = design.speedControlled ? sharesDownTo(met.leastShare) : [undefined];
  const points = [0, 1].flatMap((loading) => pointsAt(unit, condition, index, loading, wanted));
  const { lowest, highest } = speedsOf(design, met.speed);
  const asked = points.filter((each) => each.share >= met.leastShare * (1 - 1e-6) || !design.speedControlled);
  const overload = overloadSpeed(design, met.density, motorAllowedAt(unit, condition, index));
  return {
    lowestSpeed: lowest,
    highestSpeed: highest,
    points,
    nearestPeak: extreme(asked, (each) => each.pressureToPeak),
    leastSteady: extreme(asked, (each) => -each.flowToStable),
    unsteadyBelow: unsteadyShare(points),
    overloadAbove: overload < highest * (1 - 1e-6) ? overload : undefined,
    resonance: design.naturalFrequency,
    isolatesAbove: Math.SQRT2 * design.naturalFrequency,
  };
}

function sharesDownTo(least: number): readonly number[] {
  return [...new Set([...shares, least])].sort((one, other) => other - one);
}

/** Points at one filter loading; at the condition's own speed where no share is given. */
function pointsAt(
  unit: Unit,
  condition: Condition,
  index: number,
  filterLoading: number,
  wanted: readonly (number | undefined)[],
): readonly FanRangePoint[] {
  const design = condition.externalStatic.designDryAirFlow;
  const rating = createUnitRating(unit, condition);
  return wanted.flatMap((share) => {
    const flow = share === undefined ? condition.flow : ({ mode: "flow held", dryAirFlow: share * design } as const);
    rateUnit(unit, { ...condition, filterLoading, flow }, rating);
    const record = rating.sections[index] as FanSectionRating;
    if (!rating.solved || record.fanSpeed === 0) return [];
    const { fanSpeed, pressureToPeak, flowToStable, motorLoad, frequencyRatio } = record;
    return {
      share: rating.supply.dryAirFlow / design,
      filterLoading,
      fanSpeed,
      pressureToPeak,
      flowToStable,
      motorLoad,
      frequencyRatio,
    };
  });
}

/** Sheaves are chosen so that a motor at full-load speed turns the wheel as fast as the job asks. */
function speedsOf(design: FanDesign, fastest: number): { readonly lowest: number; readonly highest: number } {
  if (!design.speedControlled) return { lowest: fastest, highest: fastest };
  const { lowestSpeed, highestSpeed } = design.speedControl;
  const { lowest, highest } = speedRange(design) ?? { lowest: lowestSpeed * fastest, highest: highestSpeed * fastest };
  return { lowest, highest: Math.min(highest, design.maximumSpeed) };
}

function motorAllowedAt(unit: Unit, condition: Condition, index: number): number {
  const rating = rateUnit(unit, condition, createUnitRating(unit, condition));
  return (rating.sections[index] as FanSectionRating).motorAllowed;
}

/** rev/s at which the highest power on the curve is just what the motor may give. */
function overloadSpeed(design: FanDesign, density: number, allowed: number): number {
  const over = (speed: number) => {
    const peak = fanPeakPower(design.wheel.curve, design.diameter, speed, density);
    return peak / driveEfficiencyOf(design, peak) - allowed;
  };
  return findRoot(over, 0.1, 500, 1e-9);
}

/** The largest flow at which a curve of the unit passes the smallest steady flow, straight between two solved ones. */
function unsteadyShare(points: readonly FanRangePoint[]): number | undefined {
  let found: number | undefined;
  for (const [index, point] of points.entries()) {
    if (point.flowToStable >= 1) continue;
    const before = points[index - 1];
    const steady = before?.filterLoading === point.filterLoading && before.flowToStable > 1 ? before : undefined;
    const way = steady === undefined ? 0 : (1 - point.flowToStable) / (steady.flowToStable - point.flowToStable);
    const share = point.share + way * ((steady?.share ?? 0) - point.share);
    if (found === undefined || share > found) found = share;
  }
  return found;
}

function extreme(points: readonly FanRangePoint[], of: (point: FanRangePoint) => number): FanRangePoint | undefined {
  return points.toSorted((one, other) => of(other) - of(one))[0];
}
