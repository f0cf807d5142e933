import type { Condition, LiquidSupply, SetPoints } from "#duty/condition";
import { type Reset, resetValue } from "#duty/schedule";
import { conditionOfDay } from "#duty/standard-conditions";
import { hourName } from "#weather/calendar";
import { airflowShare, outdoorOf, type YearPlan } from "./plan.ts";

/** The condition of an hour of the year, with the coils set for a season. */
export function conditionOfHour(plan: YearPlan, hour: number, season: "cooling" | "heating"): Condition {
  const { duty, hours, fixedSpeed } = plan;
  const outdoor = outdoorOf(plan, hour);
  const name = hourName(hour, hours);
  const day = { key: `hour-${hour}`, name, season, outdoor: dayState(outdoor) };
  const base = conditionOfDay(duty, day, fixedSpeed, plan.pressure[hour]!);
  return {
    ...base,
    outdoor,
    filterLoading: plan.filterLoading[hour]!,
    flow: flowOf(plan, hour, base),
    setPoints: setPointsAt(plan, outdoor.dryBulb, season, base.setPoints),
    utilities: utilitiesAt(plan, outdoor.dryBulb, base),
  };
}

function dayState({ dryBulb, humidityRatio }: Condition["outdoor"]) {
  return { dryBulb, humidityRatio, wetBulb: undefined, dewPoint: undefined, relativeHumidity: undefined };
}

function flowOf(plan: YearPlan, hour: number, base: Condition): Condition["flow"] {
  const share = airflowShare(plan, hour);
  if (share === 0) return { mode: "fan stopped", dampers: "closed", stackHeight: plan.duty.stackHeight };
  if (base.flow.mode !== "flow held") return base.flow;
  return { mode: "flow held", dryAirFlow: share * base.flow.dryAirFlow };
}

const reset = (points: Reset | undefined, outdoor: number, otherwise: number | undefined) =>
  points === undefined ? otherwise : resetValue(points, outdoor);

function setPointsAt({ duty }: YearPlan, outdoor: number, season: "cooling" | "heating", base: SetPoints): SetPoints {
  const { coilLeavingReset, supplyReset, winterSupplyReset } = duty.schedule;
  if (season === "heating") return { ...base, supply: reset(winterSupplyReset, outdoor, base.supply) };
  return {
    ...base,
    coolingCoilLeaving: reset(coilLeavingReset, outdoor, base.coolingCoilLeaving),
    supply: reset(supplyReset, outdoor, base.supply),
  };
}

function utilitiesAt({ duty, fullFlows }: YearPlan, outdoor: number, { utilities }: Condition): Condition["utilities"] {
  const { chilledWaterReset, heatingWaterReset, chilledWaterOffBelow } = duty.schedule;
  const isOff = chilledWaterOffBelow !== undefined && outdoor < chilledWaterOffBelow;
  const chilled = isOff ? undefined : utilities.chilledWater;
  return {
    steam: utilities.steam,
    chilledWater: chilled && supplied(chilled, chilledWaterReset, outdoor, fullFlows.chilledWater),
    heatingWater:
      utilities.heatingWater && supplied(utilities.heatingWater, heatingWaterReset, outdoor, fullFlows.heatingWater),
  };
}

/** Water as it is supplied in the hour; its full flow is one all year. */
function supplied(
  supply: LiquidSupply,
  points: Reset | undefined,
  outdoor: number,
  full: number | undefined,
): LiquidSupply {
  const supplyTemperature = points === undefined ? supply.supplyTemperature : resetValue(points, outdoor);
  if (full === undefined) return { ...supply, supplyTemperature };
  return { ...supply, supplyTemperature, temperatureChange: undefined, massFlow: full };
}
