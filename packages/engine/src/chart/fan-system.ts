import type { Condition } from "#duty/condition";
import type { FanDesign } from "#section/fan/design";
import type { FanSectionRating } from "#section/fan/rate";
import { createUnitRating, rateUnit } from "#unit/rate-unit";
import type { UnitRating } from "#unit/rating";
import type { Unit } from "#unit/unit";

/** Where one fan of the unit works at a condition. */
export interface FanChartPoint {
  readonly key: string;
  readonly name: string;
  /** m³/s of one fan, Pa, W, kg/m³, rev/s. */
  readonly flow: number;
  readonly staticPressure: number;
  readonly shaftPower: number;
  readonly density: number;
  readonly speed: number;
}

/** What the unit and its ducts ask of one fan over the flow, at one filter loading. */
export interface FanSystemCurve {
  readonly words: string;
  readonly points: readonly FanChartPoint[];
}

/** The design of the unit's fan section; every unit has one. */
export function fanDesignOf(unit: Unit): FanDesign {
  return unit.sections[fanIndex(unit)]!.design as FanDesign;
}

function fanIndex(unit: Unit): number {
  const index = unit.sections.findIndex((section) => section.behaviour.role === "fan");
  if (index === -1) throw new RangeError("a unit without fan section");
  return index;
}

/** The point of a rating; undefined where the fan stands or the balance was not reached. */
export function fanChartPoint(unit: Unit, rating: UnitRating): FanChartPoint | undefined {
  const record = rating.sections[fanIndex(unit)] as FanSectionRating;
  if (!rating.solved || record.fanSpeed === 0) return undefined;
  return {
    key: rating.condition.key,
    name: rating.condition.name,
    flow: record.flowPerFan,
    staticPressure: record.staticPressure,
    shaftPower: record.shaftPower,
    density: record.density,
    speed: record.fanSpeed,
  };
}

/** Shares of design airflow at which a system curve is solved. */
const shares = [0.25, 0.5, 0.75, 1, 1.15, 1.3];

const loadings = [
  { loading: 0, words: "filters clean" },
  { loading: 0.5, words: "half loaded" },
  { loading: 1, words: "at change-out" },
] as const;

/**
 * System curves of a condition at three filter loadings, one at a time. The unit is solved anew at every flow, because
 * neither filters nor coils nor a fixed duct pressure follow the square of flow; flows at which it has no balance are left
 * out.
 */
export function* fanSystemCurves(unit: Unit, condition: Condition): Generator<FanSystemCurve, void> {
  const rating = createUnitRating(unit, condition);
  for (const { loading, words } of loadings) {
    const points = shares.flatMap((share) => {
      const dryAirFlow = share * condition.externalStatic.designDryAirFlow;
      rateUnit(unit, { ...condition, filterLoading: loading, flow: { mode: "flow held", dryAirFlow } }, rating);
      return fanChartPoint(unit, rating) ?? [];
    });
    yield { words, points };
  }
}

/** How many curves there are. */
export const systemCurveCount = loadings.length;
