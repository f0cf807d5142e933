import { choice, factor, group, quantity, text, type ValuesOf } from "#form/field";
import { standardAirDensity } from "#quantity/standard-air";
import { airStateFields, checkAirState, humidityRatioOfAirState } from "./air-state.ts";
import type { Condition } from "./condition.ts";
import type { Duty } from "./duty.ts";
import { conditionOfDay } from "./standard-conditions.ts";

/** A condition that the user adds to the standard ones. What is left out is as on the design day of the season. */
export const ownConditionFields = {
  name: text({ meaning: "Name of the condition", longest: 80 }),
  season: choice(["cooling", "heating"], { meaning: "Whether the coils cool or heat" }),
  outdoor: group(airStateFields, { meaning: "Outdoor air", check: checkAirState }),
  airflow: quantity("standardAirflow", {
    meaning: "Supply airflow, standard air; design when left out",
    optional: true,
  }),
  fanSpeed: quantity("rotationalSpeed", { meaning: "Fan speed held; the flow then follows", optional: true }),
  fan: choice(["runs", "stopped"], { meaning: "Whether the fan runs", default: "runs" }),
  dampers: choice(["as set", "closed"], { meaning: "What the dampers do when the fan is stopped", default: "as set" }),
  exhaust: choice(["runs", "stopped"], {
    meaning: "Whether the exhaust runs of which heat is recovered; stopped shows the unit without recovery",
    default: "runs",
  }),
  windSpeed: quantity("velocity", {
    meaning: "Wind onto the intake",
    default: "0 mph",
    minimum: "0 mph",
    maximum: "200 mph",
  }),
  rain: quantity("velocity", {
    meaning: "Rain at the intake, depth by time",
    default: "0 in/h",
    minimum: "0 in/h",
    maximum: "12 in/h",
  }),
  filterLoading: factor({ meaning: "Filters, 0 clean to 1 at change-out", default: 0.5, minimum: 0, maximum: 1 }),
} as const;

/** The list's item, with what must hold together. */
export const ownConditionField = group(ownConditionFields, {
  meaning: "A condition of the user's own",
  check: (values, say) => {
    if (values.airflow !== undefined && values.fanSpeed !== undefined) {
      say("fanSpeed", "both airflow and fan speed are given", "one of `airflow` and `fan speed`");
    }
  },
});

/** A condition as the user wrote it, in SI. */
export type OwnCondition = ValuesOf<typeof ownConditionFields>;

/** kg/m³ of water, to turn a depth of rain into mass. */
const rainDensity = 1000;

/** The condition that the user wrote, completed from the duty. `fixedSpeed` as for the standard conditions. */
export function conditionOfUser(duty: Duty, own: OwnCondition, fixedSpeed: number | undefined): Condition {
  const day = { key: own.name, name: own.name, season: own.season, outdoor: own.outdoor };
  const base = conditionOfDay(duty, day, own.fanSpeed ?? (own.airflow === undefined ? fixedSpeed : undefined));
  const humidityRatio = humidityRatioOfAirState(own.outdoor, base.barometricPressure);
  return {
    ...base,
    key: `own-${own.name.toLowerCase().replace(/[^a-z0-9.]+/g, "-")}`,
    outdoor: { dryBulb: own.outdoor.dryBulb, humidityRatio, windSpeed: own.windSpeed, rain: own.rain * rainDensity },
    filterLoading: own.filterLoading,
    exhaust: own.exhaust === "stopped" ? undefined : base.exhaust,
    flow:
      own.fan === "stopped"
        ? { mode: "fan stopped", dampers: own.dampers, stackHeight: duty.stackHeight }
        : own.airflow === undefined
          ? base.flow
          : { mode: "flow held", dryAirFlow: own.airflow * standardAirDensity },
  };
}
