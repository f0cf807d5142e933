import type { Catalogue } from "@oncethrough/engine/catalogue/read-catalogue";
import { type AirState, humidityRatioOfAirState } from "@oncethrough/engine/duty/air-state";
import type { Duty } from "@oncethrough/engine/duty/duty";
import { designDays, sitePressure } from "@oncethrough/engine/duty/standard-conditions";
import { dewPointFromHumidityRatio } from "@oncethrough/engine/fluid/dew-point";
import { relativeHumidityFromHumidityRatio } from "@oncethrough/engine/fluid/moist-air";
import { saturationHumidityRatio } from "@oncethrough/engine/fluid/saturation";
import { wetBulbFromHumidityRatio } from "@oncethrough/engine/fluid/wet-bulb";
import { textKey } from "@oncethrough/engine/form/key";
import type { UnitSystem } from "@oncethrough/engine/quantity/kind";
import { displayUnit, fromDisplay, toDisplay } from "@oncethrough/engine/quantity/print";
import { type BenchState, isStale } from "./bench-state.ts";
import { errorsOf } from "./sound-job.ts";
import { fieldsEdited, noticed } from "./transitions.ts";

/** What tells the moisture of a design day in its job. */
export type Moisture = "wetBulb" | "dewPoint" | "relativeHumidity" | "humidityRatio";

/** A design day as a point that a hand can take. */
export interface DayPoint {
  /** `wet-bulb-day`, as in the keys of its conditions. */
  readonly key: string;
  readonly name: string;
  /** Where it stands in the job: `duty.summer.wetBulbDay`. */
  readonly path: string;
  readonly moisture: Moisture;
  /** °C and kg/kg. */
  readonly dryBulb: number;
  readonly humidityRatio: number;
  /** `88 °F, wet bulb 81 °F`, as they would be typed. */
  readonly words: string;
}

const paths: Readonly<Record<string, string>> = {
  "dry-bulb-day": "duty.summer.dryBulbDay",
  "wet-bulb-day": "duty.summer.wetBulbDay",
  "dew-point-day": "duty.summer.dewPointDay",
  winter: "duty.winter",
};

/** The four design days of a duty as points. */
export function dayPoints(duty: Duty, system: UnitSystem): readonly DayPoint[] {
  return designDays(duty).map(({ key, name, outdoor }) => {
    const moisture = moistureOf(outdoor);
    const place = { dryBulb: outdoor.dryBulb, humidityRatio: humidityRatioOfAirState(outdoor, sitePressure(duty)) };
    const typed = { dryBulb: typedReading(outdoor.dryBulb, "temperature", system) };
    const measure = typedReading(outdoor[moisture]!, kinds[moisture], system);
    const words = `${typed.dryBulb}, ${textKey(moisture)} ${measure}`;
    return { key, name, path: paths[key]!, moisture, ...place, words };
  });
}

/** The day nearest to a state of air that the job can say in round figures: what its two fields would be typed as. */
export interface DayTyped {
  readonly dryBulb: string;
  readonly moisture: string;
  readonly words: string;
  /** °C and kg/kg of what is typed. */
  readonly state: { readonly dryBulb: number; readonly humidityRatio: number };
}

/** Rounds a state to what would be typed; never wetter than saturated air. */
export function dayTyped(
  moisture: Moisture,
  dryBulb: number,
  humidityRatio: number,
  pressure: number,
  system: UnitSystem,
): DayTyped {
  const roundDryBulb = rounded(dryBulb, "temperature", system);
  const most = saturationHumidityRatio(roundDryBulb, pressure);
  const ratio = Math.min(Math.max(humidityRatio, 1e-5), most);
  const measure = measureOf(moisture, roundDryBulb, ratio, pressure);
  const ceiling = measureOf(moisture, roundDryBulb, most, pressure);
  const roundMeasure = Math.min(rounded(measure, kinds[moisture], system), ceiling);
  const typed = typedReading(roundDryBulb, "temperature", system);
  const typedMeasure = typedReading(roundMeasure, kinds[moisture], system);
  return {
    dryBulb: typed,
    moisture: typedMeasure,
    words: `${typed}, ${textKey(moisture)} ${typedMeasure}`,
    state: {
      dryBulb: roundDryBulb,
      humidityRatio: humidityRatioOfAirState(stateOf(moisture, roundDryBulb, roundMeasure), pressure),
    },
  };
}

/** A day one step of its dry bulb or of its moisture on. */
export function dayNudged(
  point: DayPoint,
  by: { readonly dryBulb: number; readonly moisture: number },
  pressure: number,
  system: UnitSystem,
): DayTyped {
  const { dryBulb, humidityRatio, moisture } = point;
  const warmer = dryBulb + by.dryBulb * stepOf("temperature", system);
  const measure = measureOf(moisture, dryBulb, humidityRatio, pressure) + by.moisture * stepOf(kinds[moisture], system);
  const isShare = kinds[moisture] !== "temperature";
  const possible = isShare ? Math.min(Math.max(measure, 0), 1) : Math.min(measure, warmer);
  const state = stateOf(moisture, warmer, possible);
  return dayTyped(moisture, warmer, humidityRatioOfAirState(state, pressure), pressure, system);
}

/** A design day put elsewhere: one named step that writes its two fields; refused in words where the duty forbids it. */
export function dayMoved(state: BenchState, key: string, day: DayTyped, catalogue: Catalogue): BenchState {
  const duty = state.sound?.job.duty;
  const point = duty === undefined ? undefined : dayPoints(duty, state.system).find((each) => each.key === key);
  if (point === undefined || point.words === day.words) return state;
  if (isStale(state)) {
    return noticed(state, { text: "the text has errors; mend them before a day is moved", weight: "caution" });
  }
  const changes = [
    { path: `${point.path}.dryBulb`, typed: day.dryBulb },
    { path: `${point.path}.${point.moisture}`, typed: day.moisture },
  ];
  const next = fieldsEdited(state, `${point.name} ${day.words}`, changes, catalogue);
  if (!isStale(next)) return next;
  const problem = errorsOf(next.reading)[0];
  return noticed(state, { text: `not ${point.name} ${day.words}: ${problem?.problem}`, weight: "caution" });
}

const kinds = {
  wetBulb: "temperature",
  dewPoint: "temperature",
  relativeHumidity: "share",
  humidityRatio: "humidityRatio",
} as const;

type Kind = (typeof kinds)[Moisture];

/** In the units that are shown: half degrees, whole per cents, whole grains. */
const steps: Readonly<Record<Kind, Readonly<Record<UnitSystem, number>>>> = {
  temperature: { ip: 0.5, si: 0.2 },
  share: { ip: 1, si: 1 },
  humidityRatio: { ip: 1, si: 0.1 },
};

function stepOf(kind: Kind, system: UnitSystem): number {
  return fromDisplay(steps[kind][system], kind, system) - fromDisplay(0, kind, system);
}

function rounded(value: number, kind: Kind, system: UnitSystem): number {
  const step = steps[kind][system];
  return fromDisplay(Math.round(toDisplay(value, kind, system) / step) * step, kind, system);
}

function typedReading(value: number, kind: Kind, system: UnitSystem): string {
  return `${Number(toDisplay(value, kind, system).toFixed(2))} ${displayUnit(kind, system)}`;
}

function moistureOf(state: AirState): Moisture {
  const given = (Object.keys(kinds) as Moisture[]).find((name) => state[name] !== undefined);
  return given ?? "relativeHumidity";
}

function measureOf(moisture: Moisture, dryBulb: number, humidityRatio: number, pressure: number): number {
  switch (moisture) {
    case "wetBulb":
      return wetBulbFromHumidityRatio(dryBulb, humidityRatio, pressure);
    case "dewPoint":
      return dewPointFromHumidityRatio(humidityRatio, pressure);
    case "relativeHumidity":
      return relativeHumidityFromHumidityRatio(dryBulb, humidityRatio, pressure);
    case "humidityRatio":
      return humidityRatio;
  }
}

function stateOf(moisture: Moisture, dryBulb: number, measure: number): AirState {
  return {
    dryBulb,
    wetBulb: undefined,
    dewPoint: undefined,
    relativeHumidity: undefined,
    humidityRatio: undefined,
    [moisture]: measure,
  };
}
