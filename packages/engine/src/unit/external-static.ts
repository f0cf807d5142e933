import type { Condition } from "#duty/condition";

/**
 * Pa that the duct system needs at a flow of `dryAirFlow` (kg/s): its fixed part, and the rest with the square of the
 * flow. A stopped fan meets no pressure controller: the fixed part falls away.
 */
export function externalStaticNeeded(condition: Condition, dryAirFlow: number): number {
  const { atDesign, fixed, designDryAirFlow } = condition.externalStatic;
  const share = dryAirFlow / designDryAirFlow;
  if (condition.flow.mode === "fan stopped") return atDesign * share * share;
  return fixed + (atDesign - fixed) * share * share;
}
