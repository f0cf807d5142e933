import type { Condition } from "#duty/condition";
import { createUnitRating, rateUnit } from "#unit/rate-unit";
import type { Unit } from "#unit/unit";

/** What share of outside air results at one flow, filter state and wind. */
export interface ShareRow {
  readonly words: string;
  /** Share of the condition's flow, filter loading 0…1, m/s of wind and how the intake lies to it. */
  readonly flowShare: number;
  readonly filterLoading: number;
  readonly windSpeed: number;
  readonly windPressureCoefficient: number;
  /** What came out: share by dry air, kg/s of dry air from the return opening (negative backwards), °C of its filament. */
  readonly share: number;
  readonly returnDryAirFlow: number;
  readonly solved: boolean;
}

/** Pressure over velocity pressure of wind on the wall of an intake, and in the lee of it: common practice, no source. */
const windward = 0.7;
const leeward = -0.5;

/**
 * The share that the dampers give away from a condition: at less flow, with filters clean to change-out, and with wind of
 * `windSpeed` m/s onto the intake and away from it. The pressure in the return duct stays as the condition has it.
 */
export function shareTable(unit: Unit, condition: Condition, windSpeed: number): readonly ShareRow[] {
  const calm = { flowShare: 1, filterLoading: condition.filterLoading, windSpeed: 0, windPressureCoefficient: 0 };
  const flows = condition.flow.mode === "flow held" ? [0.8, 0.6, 0.4] : [];
  const gust = { ...calm, windSpeed };
  return [
    { ...calm, words: "as the condition has it" },
    ...flows.map((flowShare) => ({ ...calm, flowShare, words: `${Math.round(100 * flowShare)} % of the flow` })),
    { ...calm, filterLoading: 0, words: "filters clean" },
    { ...calm, filterLoading: 1, words: "filters at change-out" },
    { ...gust, windPressureCoefficient: windward, words: "wind onto the intake" },
    { ...gust, windPressureCoefficient: leeward, words: "intake in the lee" },
  ].map((row) => rowOf(unit, condition, row));
}

function rowOf(
  unit: Unit,
  condition: Condition,
  row: Omit<ShareRow, "share" | "returnDryAirFlow" | "solved">,
): ShareRow {
  const { flowShare, filterLoading, windSpeed, windPressureCoefficient } = row;
  const { flow } = condition;
  const changed: Condition = {
    ...condition,
    filterLoading,
    outdoor: { ...condition.outdoor, windSpeed, windPressureCoefficient },
    flow: flow.mode === "flow held" ? { ...flow, dryAirFlow: flowShare * flow.dryAirFlow } : flow,
  };
  const rating = rateUnit(unit, changed, createUnitRating(unit, changed));
  const { outsideAirShare, operation, solved } = rating;
  return { ...row, share: outsideAirShare, returnDryAirFlow: operation.returnDryAirFlow, solved };
}
