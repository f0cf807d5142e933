import { COLDEST_AIR, HIGHEST_AIR_PRESSURE, HOTTEST_AIR, LOWEST_AIR_PRESSURE } from "#fluid/given-air";
import { saturationHumidityRatio } from "#fluid/saturation";
import { hourName } from "./calendar.ts";
import { dewPointReference, type MoistureReference, moistureFrom } from "./moisture.ts";
import { type RepairCount, WeatherRefusal } from "./weather-year.ts";

/** Hours as a file has them; what it lacks is not a number. */
export interface RawHours {
  /** Line of the file of each hour, for messages; 0 where a row is missing. */
  readonly lines: Int32Array;
  readonly dryBulb: Float64Array;
  readonly dewPoint: Float64Array;
  /** Share, 0…1. */
  readonly relativeHumidity: Float64Array;
  readonly pressure: Float64Array;
  readonly windSpeed: Float64Array;
}

/** Room for a number of hours, nothing known yet. */
export function createRawHours(hours: number): RawHours {
  const unknown = () => new Float64Array(hours).fill(Number.NaN);
  return {
    lines: new Int32Array(hours),
    dryBulb: unknown(),
    dewPoint: unknown(),
    relativeHumidity: unknown(),
    pressure: unknown(),
    windSpeed: unknown(),
  };
}

/** Hours in a row that may be filled in between their neighbours. */
const longestGap = 6;
/** Share of the year that may be filled in. */
const mostFilled = 0.02;

/** The hours made whole. */
export interface SettledHours {
  readonly dryBulb: Float64Array;
  readonly humidityRatio: Float64Array;
  readonly pressure: Float64Array;
  readonly windSpeed: Float64Array;
  readonly notes: readonly string[];
}

/**
 * Fills short gaps, clamps what no air can be, and turns moisture into humidity ratios. `fallbackPressure` (Pa) stands in
 * where the file gives none.
 */
export function settleHours(
  raw: RawHours,
  fallbackPressure: number,
  given: MoistureReference | undefined,
  repairs: RepairCount,
): SettledHours {
  fillGaps(raw, raw.dryBulb, "dry bulb", repairs);
  const pressure = settlePressure(raw, fallbackPressure, repairs);
  const { reference, note } =
    given === undefined
      ? dewPointReference(raw.dryBulb, raw.dewPoint, raw.relativeHumidity)
      : { reference: given, note: undefined };
  const humidityRatio = settleMoisture(raw, pressure, reference, repairs);
  const windSpeed = raw.windSpeed.map((speed) => (speed >= 0 && speed < 100 ? speed : 0));
  const notes = [
    ...(note === undefined ? [] : [note]),
    ...spikeNotes(humidityRatio),
    ...pressureNotes(pressure, fallbackPressure),
  ];
  return { dryBulb: raw.dryBulb, humidityRatio, pressure, windSpeed, notes };
}

/** Puts values between their neighbours into short gaps of `values`; refuses long ones. */
function fillGaps(raw: RawHours, values: Float64Array, what: string, repairs: RepairCount): void {
  const hours = values.length;
  let filled = 0;
  let from = 0;
  while (from < hours) {
    if (!Number.isNaN(values[from]!)) {
      from++;
      continue;
    }
    let to = from;
    while (to < hours && Number.isNaN(values[to]!)) to++;
    const length = to - from;
    const line = raw.lines[from]!;
    filled += length;
    if (length > longestGap || length === hours) {
      const words = `${what} is missing for ${length} hours in a row, from the hour that ends ${hourName(from, hours)}`;
      throw new WeatherRefusal(line, words, `at most ${longestGap} missing hours in a row`);
    }
    // The year closes on itself: what lies before 1 January is 31 December.
    const before = values[from > 0 ? from - 1 : hours - 1]!;
    const after = values[to < hours ? to : 0]!;
    const left = Number.isNaN(before) ? after : before;
    const right = Number.isNaN(after) ? before : after;
    for (let k = 0; k < length; k++) values[from + k] = left + ((right - left) * (k + 1)) / (length + 1);
    repairs.add(`${what} missing, put between its neighbours`, line, length);
    from = to;
  }
  if (filled > mostFilled * hours) {
    const words = `${what} is missing for ${filled} of ${hours} hours`;
    throw new WeatherRefusal(0, words, `at most ${Math.floor(mostFilled * hours)} hours filled in`);
  }
}

function settlePressure(raw: RawHours, fallback: number, repairs: RepairCount): Float64Array {
  const { pressure } = raw;
  const all = pressure.every((value) => Number.isNaN(value));
  for (let k = 0; k < pressure.length; k++) {
    const value = pressure[k]!;
    if (value >= LOWEST_AIR_PRESSURE && value <= HIGHEST_AIR_PRESSURE) continue;
    pressure[k] = fallback;
    if (!all) repairs.add("pressure missing or out of range, taken from the elevation", raw.lines[k]!);
  }
  if (all) repairs.add("no pressure given, taken from the elevation", 0, pressure.length);
  return pressure;
}

function settleMoisture(
  raw: RawHours,
  pressure: Float64Array,
  reference: MoistureReference,
  repairs: RepairCount,
): Float64Array {
  const { dryBulb, dewPoint, relativeHumidity, lines } = raw;
  const hours = dryBulb.length;
  const ratio = new Float64Array(hours).fill(Number.NaN);
  for (let k = 0; k < hours; k++) {
    const air = dryBulb[k]!;
    if (air < COLDEST_AIR || air > HOTTEST_AIR) {
      throw new WeatherRefusal(lines[k]!, `a dry bulb of ${air} °C`, `${COLDEST_AIR} to ${HOTTEST_AIR} °C`);
    }
    let dew = dewPoint[k]!;
    if (Number.isNaN(dew) && Number.isNaN(relativeHumidity[k]!)) continue;
    if (dew > air) {
      repairs.add("dew point above the dry bulb, lowered to it", lines[k]!);
      dew = air;
    }
    if (Number.isNaN(dew)) repairs.add("dew point missing, taken from the relative humidity", lines[k]!);
    const wet = moistureFrom(air, dew, relativeHumidity[k]!, pressure[k]!, reference);
    const most = saturationHumidityRatio(air, pressure[k]!);
    if (wet > most * (1 + 1e-9) && dew < air - 0.05) {
      repairs.add("moister than air over ice can be, lowered to saturation", lines[k]!);
    }
    ratio[k] = Math.min(wet, most);
  }
  fillGaps(raw, ratio, "moisture", repairs);
  for (let k = 0; k < hours; k++) ratio[k] = Math.min(ratio[k]!, saturationHumidityRatio(dryBulb[k]!, pressure[k]!));
  return ratio;
}

/** kg/kg by which an hour has to stand above both neighbours to look like an error of the record. */
const spike = 0.003;

function spikeNotes(ratio: Float64Array): readonly string[] {
  const hours = ratio.length;
  const found: number[] = [];
  for (let k = 1; k < hours - 1; k++) {
    if (ratio[k]! - Math.max(ratio[k - 1]!, ratio[k + 1]!) > spike) found.push(k);
  }
  if (found.length === 0) return [];
  const shown = found.slice(0, 3).map((k) => hourName(k, hours));
  const rest = found.length > 3 ? `, and ${found.length - 3} more` : "";
  return [
    `single hours far moister than both neighbours may be errors of the record, and they set every peak of moisture: ${shown.join("; ")}${rest}`,
  ];
}

/** Share by which the mean pressure may differ from the elevation's before it is said. */
const pressureGrace = 0.05;

function pressureNotes(pressure: Float64Array, fallback: number): readonly string[] {
  const mean = pressure.reduce((sum, value) => sum + value, 0) / pressure.length;
  const share = mean / fallback - 1;
  if (Math.abs(share) <= pressureGrace) return [];
  return [
    `the mean pressure of the hours is ${(100 * share).toFixed(1)} % off that of the elevation given; the hours' own is used`,
  ];
}
