import { choice, factor, type GroupCheck, group, quantity, type ValuesOf } from "#form/field";

/** A temperature that follows the outdoor dry bulb: two points, straight between them, held beyond. */
const resetFields = {
  coldOutdoor: quantity("temperature", { meaning: "Outdoor dry bulb at and below which the first value holds" }),
  whenCold: quantity("temperature", { meaning: "The value there" }),
  warmOutdoor: quantity("temperature", { meaning: "Outdoor dry bulb at and above which the second value holds" }),
  whenWarm: quantity("temperature", { meaning: "The value there" }),
} as const;

/** A reset as read. */
export type Reset = ValuesOf<typeof resetFields>;

const checkReset: GroupCheck = (values, say) => {
  if ((values.warmOutdoor as number) <= (values.coldOutdoor as number)) {
    say("warmOutdoor", "it is not above the cold end", "an outdoor dry bulb above `cold outdoor`");
  }
};

const reset = (meaning: string) => group(resetFields, { meaning, optional: true, check: checkReset });

/** How the unit runs over the year. Everything has a laboratory's default, so that all of it may be left out. */
export const scheduleFields = {
  occupiedDays: choice(["weekdays", "six days", "every day"], {
    meaning: "Days with occupied hours: Monday to Friday, to Saturday, or all",
    default: "weekdays",
  }),
  occupiedFrom: quantity("time", {
    meaning: "Start of the occupied hours, from midnight, standard time",
    default: "7 h",
    minimum: "0 h",
    maximum: "24 h",
  }),
  occupiedTo: quantity("time", {
    meaning: "End of the occupied hours",
    default: "19 h",
    minimum: "0 h",
    maximum: "24 h",
  }),
  unoccupiedAirflow: quantity("share", {
    meaning: "Airflow outside the occupied hours, of the design airflow; the minimum airflow when left out",
    optional: true,
    minimum: "10 %",
    maximum: "100 %",
  }),
  unoccupiedFan: choice(["runs", "stops"], {
    meaning: "What the fan does outside the occupied hours; where hoods stand it runs",
    default: "runs",
  }),
  changeover: quantity("temperature", {
    meaning: "Outdoor dry bulb from which on the summer set points hold; by need when left out",
    optional: true,
    minimum: "20 °F",
    maximum: "90 °F",
  }),
  coilLeavingReset: reset("Air leaving the cooling coil by outdoor dry bulb, instead of the set point"),
  supplyReset: reset("Summer supply air by outdoor dry bulb, instead of the set point"),
  winterSupplyReset: reset("Winter supply air by outdoor dry bulb, instead of the set point"),
  chilledWaterReset: reset("Chilled-water supply by outdoor dry bulb"),
  heatingWaterReset: reset("Heating-water supply by outdoor dry bulb"),
  chilledWaterOffBelow: quantity("temperature", {
    meaning: "Outdoor dry bulb below which the chilled-water plant stands still; never when left out",
    optional: true,
    minimum: "-20 °F",
    maximum: "80 °F",
  }),
  filtersChangedEvery: quantity("time", {
    meaning: "Filters are changed after this time; when they are at change-out, when left out",
    optional: true,
    minimum: "7 d",
    maximum: "2000 d",
  }),
  filterLoadingAtStart: factor({
    meaning: "Filters on 1 January, 0 clean to 1 at change-out",
    default: 0.5,
    minimum: 0,
    maximum: 1,
  }),
} as const;

/** A schedule as read. */
export type Schedule = ValuesOf<typeof scheduleFields>;

/** Occupied hours must have a length. */
export const checkSchedule: GroupCheck = (values, say) => {
  if ((values.occupiedTo as number) < (values.occupiedFrom as number)) {
    say("occupiedTo", "the occupied hours end before they begin", "a time not before `occupied from`");
  }
};

/** True where the hour that ends at `hour` (1…24) of a weekday (0 Sunday … 6 Saturday) is occupied. */
export function isOccupied(schedule: Schedule, weekday: number, hour: number): boolean {
  const { occupiedDays, occupiedFrom, occupiedTo } = schedule;
  if (occupiedDays !== "every day" && weekday === 0) return false;
  if (occupiedDays === "weekdays" && weekday === 6) return false;
  const middle = 3600 * (hour - 0.5);
  return middle > occupiedFrom && middle < occupiedTo;
}

/** °C that a reset asks for in outdoor air of `outdoor` °C. */
export function resetValue(points: Reset, outdoor: number): number {
  const way = (outdoor - points.coldOutdoor) / (points.warmOutdoor - points.coldOutdoor);
  return points.whenCold + Math.min(1, Math.max(0, way)) * (points.whenWarm - points.whenCold);
}
