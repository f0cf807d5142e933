import type { Condition } from "#duty/condition";
import type { LiquidCoilFigures } from "#section/coil/liquid";
import { createUnitRating, rateUnit } from "#unit/rate-unit";
import type { Unit } from "#unit/unit";

/** kg/s with the valve open, from the conditions of the duty; undefined where the duty gives the flow itself. */
export interface FullFlows {
  readonly chilledWater: number | undefined;
  readonly heatingWater: number | undefined;
}

/**
 * What a valve passes when open is one flow all year. Where the duty gives the change of temperature at full load
 * instead, it is the largest flow that the conditions of the duty come to.
 */
export function fullFlowsOf(unit: Unit, conditions: readonly Condition[]): FullFlows {
  const { chilledWater, heatingWater } = conditions[0]?.utilities ?? {};
  const isAsked = [chilledWater, heatingWater].some((supply) => supply?.temperatureChange !== undefined);
  if (!isAsked) return { chilledWater: undefined, heatingWater: undefined };
  let chilled = 0;
  let heating = 0;
  for (const condition of conditions) {
    if (condition.flow.mode === "fan stopped") continue;
    const rating = rateUnit(unit, condition, createUnitRating(unit, condition));
    if (!rating.solved) continue;
    unit.sections.forEach(({ kind }, index) => {
      const full = (rating.sections[index] as Partial<LiquidCoilFigures>).fullMassFlow ?? 0;
      if (kind === "chilled-water coil") chilled = Math.max(chilled, full);
      if (kind === "hot-water coil") heating = Math.max(heating, full);
    });
  }
  return {
    chilledWater: chilledWater?.temperatureChange !== undefined && chilled > 0 ? chilled : undefined,
    heatingWater: heatingWater?.temperatureChange !== undefined && heating > 0 ? heating : undefined,
  };
}
