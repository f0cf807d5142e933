import type { Condition } from "#duty/condition";

/**
 * Pa of static pressure that the unit has to hold at its end at a flow of `dryAirFlow` (kg/s): what the duct system needs,
 * and the reserve. A stopped fan meets no pressure controller and keeps no reserve: the duct resists with the square of
 * the flow.
 */
export function externalStaticNeeded(condition: Condition, dryAirFlow: number): number {
  const { atDesign, fixed } = condition.externalStatic;
  const square = flowSquared(condition, dryAirFlow);
  if (condition.flow.mode === "fan stopped") return atDesign * square;
  return fixed + (atDesign - fixed) * square + reserveAt(condition, dryAirFlow);
}

/**
 * Pa that the fan is able to give beyond what the duct system is said to need: resistance nobody has foreseen, so that it
 * goes with the square of the flow.
 */
export function reserveAt(condition: Condition, dryAirFlow: number): number {
  if (condition.flow.mode === "fan stopped") return 0;
  return (condition.externalStatic.reserve ?? 0) * flowSquared(condition, dryAirFlow);
}

function flowSquared(condition: Condition, dryAirFlow: number): number {
  const share = dryAirFlow / condition.externalStatic.designDryAirFlow;
  return share * share;
}
