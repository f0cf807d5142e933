import type { FilterMedium } from "#component/filter-medium";
import type { Condition } from "#duty/condition";
import type { Duty } from "#duty/duty";
import { isOccupied } from "#duty/schedule";
import { sitePressure, standardConditions } from "#duty/standard-conditions";
import { specificVolume } from "#fluid/moist-air";
import { saturationHumidityRatio } from "#fluid/saturation";
import { standardAirDensity } from "#quantity/standard-air";
import type { Judge } from "#rule/judge";
import { driveSpeed } from "#unit/drive-speed";
import type { Unit } from "#unit/unit";
import { weekdayOf } from "#weather/calendar";
import type { WeatherYear } from "#weather/weather-year";
import { type FullFlows, fullFlowsOf } from "./full-flow.ts";

/** What a year is of: the machine, what is asked of it, the weather. */
export interface YearInput {
  readonly unit: Unit;
  readonly duty: Duty;
  readonly weather: WeatherYear;
  /** Rules to hold every hour against; none when left out. */
  readonly judge?: Judge;
}

/** A year made ready: what is known of every hour before the unit is solved. */
export interface YearPlan extends YearInput {
  readonly hours: number;
  /** Outdoor air at the site: Pa and kg/kg; dry bulbs are the weather's. */
  readonly pressure: Float64Array;
  readonly humidityRatio: Float64Array;
  /** 1 where the hour is occupied. */
  readonly occupied: Uint8Array;
  /** 0 clean … 1 at change-out, at the middle of the hour; hours before which the filters were changed. */
  readonly filterLoading: Float64Array;
  readonly filterChanges: readonly number[];
  /** rev/s of a drive without speed control. */
  readonly fixedSpeed: number | undefined;
  readonly fullFlows: FullFlows;
  readonly notes: readonly string[];
}

/** Share by which the weather's pressure may differ from the site's before it is said. */
const pressureGrace = 0.02;

/**
 * Makes a year ready. The weather's pressures are brought to the site's altitude by their mean; filters load by the dust
 * that the scheduled airflow carries, so that every hour is known before the unit is solved.
 */
export function planYear({ unit, duty, weather, judge }: YearInput): YearPlan {
  const { hours } = weather;
  const mean = weather.pressure.reduce((sum, value) => sum + value, 0) / hours;
  const site = sitePressure(duty);
  const scale = site / mean;
  const pressure = weather.pressure.map((value) => value * scale);
  const humidityRatio = weather.humidityRatio.map((ratio, hour) =>
    Math.min(ratio, saturationHumidityRatio(weather.dryBulb[hour]!, pressure[hour]!)),
  );
  const occupied = new Uint8Array(hours);
  for (let hour = 0; hour < hours; hour++) {
    occupied[hour] = Number(isOccupied(duty.schedule, weekdayOf(hour, weather.firstWeekday), (hour % 24) + 1));
  }
  const fixedSpeed = driveSpeed(unit, standardConditions(duty, undefined, 1));
  const fullFlows = fullFlowsOf(unit, standardConditions(duty, fixedSpeed, 1));
  const plan = { unit, duty, weather, hours, pressure, humidityRatio, occupied, fixedSpeed, fullFlows };
  const far = Math.abs(scale - 1) > pressureGrace;
  const notes = [
    ...weather.notes,
    ...(far
      ? [
          `the weather was taken at ${(100 / scale).toFixed(0)} % of the site's pressure: its pressures are brought to the site's altitude, its temperatures are not`,
        ]
      : []),
    ...(fixedSpeed !== undefined && duty.schedule.unoccupiedFan === "runs"
      ? ["the fan has no speed control: its flow does not follow the schedule"]
      : []),
  ];
  return { ...plan, ...loadFilters(plan), notes, ...(judge === undefined ? {} : { judge }) };
}

/** Share of the design airflow that the schedule asks for in an hour; 0 where the fan stands. */
export function airflowShare(plan: Pick<YearPlan, "duty" | "occupied" | "fixedSpeed">, hour: number): number {
  const { schedule, supplyAirflow } = plan.duty;
  if (plan.occupied[hour] === 1) return 1;
  if (schedule.unoccupiedFan === "stops") return 0;
  if (plan.fixedSpeed !== undefined) return 1;
  return schedule.unoccupiedAirflow ?? (supplyAirflow.minimum ?? supplyAirflow.design) / supplyAirflow.design;
}

/** What loading has to know of a filter bank. */
interface Bank {
  readonly medium: FilterMedium;
  readonly prefilter: FilterMedium | undefined;
  readonly panelArea: number;
  readonly dustConcentration: number;
}

/** Loading of the filters hour by hour: that of the bank which fills first, since all are changed together. */
function loadFilters(
  plan: Pick<
    YearPlan,
    "unit" | "duty" | "weather" | "hours" | "pressure" | "humidityRatio" | "occupied" | "fixedSpeed"
  >,
): Pick<YearPlan, "filterLoading" | "filterChanges"> {
  const { unit, duty, weather, hours } = plan;
  const banks = unit.sections.filter(({ kind }) => kind === "filter bank").map(({ design }) => design as Bank);
  // Loading by a kilogram of dry air per kilogram of it in a cubic metre: dust over what the panels hold.
  const rate = Math.max(0, ...banks.map(loadingPerVolume));
  const every = duty.schedule.filtersChangedEvery;
  const loading = new Float64Array(hours);
  const changes: number[] = [];
  const design = duty.supplyAirflow.design * standardAirDensity;
  let now = duty.schedule.filterLoadingAtStart;
  let age = 0;
  for (let hour = 0; hour < hours; hour++) {
    const volume = specificVolume(weather.dryBulb[hour]!, plan.humidityRatio[hour]!, plan.pressure[hour]!);
    const added = rate * airflowShare(plan, hour) * design * volume * 3600;
    const due = every === undefined ? now + added / 2 > 1 : age >= every;
    if (due && banks.length > 0) {
      changes.push(hour);
      now = 0;
      age = 0;
    }
    loading[hour] = now + added / 2;
    now += added;
    age += 3600;
  }
  return { filterLoading: loading, filterChanges: changes };
}

/** Share of the way to change-out by a cubic metre of dusty air. */
function loadingPerVolume({ medium, prefilter, panelArea, dustConcentration }: Bank): number {
  const first = prefilter ?? medium;
  return (dustConcentration * first.arrestance) / (first.dustHolding * panelArea);
}

/** The state of the outdoor air at the site in an hour, as a condition has it. */
export function outdoorOf({ weather, humidityRatio }: YearPlan, hour: number): Condition["outdoor"] {
  return {
    dryBulb: weather.dryBulb[hour]!,
    humidityRatio: humidityRatio[hour]!,
    windSpeed: weather.windSpeed[hour]!,
    rain: 0,
  };
}
