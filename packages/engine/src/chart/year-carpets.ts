import type { QuantityKind, UnitSystem } from "#quantity/kind";
import { displayUnit, groupedNumber, toDisplay } from "#quantity/print";
import type { Ink } from "#section/display";
import type { WeatherYear } from "#weather/weather-year";
import type { HourLists } from "#year/hour-figures";
import type { YearHours } from "#year/year-hours";
import { type CarpetClass, type CarpetList, carpetPlot } from "./carpet-plot.ts";
import { niceRange, niceStep, tickText } from "./ticks.ts";
import { yearTitle } from "./year-title.ts";

/** What pictures ask of a solved year; plain data, so that it may come from a worker. */
export interface PicturedYear {
  readonly lists: HourLists;
  readonly unsolved: YearHours["unsolved"];
  readonly plan: Pick<YearHours["plan"], "hours" | "humidityRatio" | "pressure"> & {
    readonly weather: Pick<WeatherYear, "dryBulb" | "origin">;
  };
}

/** What a year's pictures are drawn on. */
export interface YearPictureOptions {
  readonly year: PicturedYear;
  readonly system: UnitSystem;
  /** pt. */
  readonly width: number;
}

const standing: CarpetClass = { key: "standing", words: "fan stands", ink: "quiet", tone: 0 };

/** Share of hours at either end that do not stretch a scale. */
const spared = 0.01;
const mostClasses = 6;

/** Leaving air hour by hour; hours in which what is asked of it is not held stand out. */
export function leavingAirCarpet({ year, system, width }: YearPictureOptions): CarpetList {
  const { supplyDryBulb, running, missed, solved } = year.lists;
  const readings = Array.from(supplyDryBulb, (value) => toDisplay(value, "temperature", system));
  const shown = readings.filter((_, hour) => running[hour] === 1 && missed[hour] === 0).sort((a, b) => a - b);
  const at = (share: number) => shown[Math.floor(share * (shown.length - 1))] ?? 0;
  const { low, step, ticks } = niceRange(at(spared), at(1 - spared), mostClasses - 1, 2);
  const count = Math.max(1, ticks.length - 1);
  const steps = Array.from({ length: count }, (_, of): CarpetClass => {
    const from = low + of * step;
    const said = `${tickText(from, step)} to ${tickText(from + step, step)} ${displayUnit("temperature", system)}`;
    return { key: `step-${of}`, words: said, ink: "heat", tone: toneOf(of, count) };
  });
  const notHeld: CarpetClass = { key: "missed", words: "asked and not held", ink: "fail", tone: 1 };
  const unsolved: CarpetClass = { key: "unsolved", words: "not solved", ink: "outline", tone: 1 };
  const classes = [...steps, notHeld, ...(year.unsolved.length === 0 ? [] : [unsolved])];
  return carpetPlot({
    key: "leaving-air",
    title: yearTitle("Leaving air", year.plan.weather.origin === "synthetic"),
    remark: "day by day, hours upwards",
    hours: year.plan.hours,
    width,
    classes: [...classes, ...standingClass(year)],
    classOf: (hour) => {
      if (solved[hour] === 0) return count + 1;
      if (running[hour] === 0) return classes.length;
      if (missed[hour]! > 0) return count;
      return Math.min(count - 1, Math.max(0, Math.floor((readings[hour]! - low) / step + 1e-6)));
    },
  });
}

/** What the coils give and take, by steps of a round load. */
export function coilLoadCarpet({ year, system, width }: YearPictureOptions): CarpetList {
  const { chilledWaterHeat, steamHeat, heatingWaterHeat, running } = year.lists;
  const heating = steamHeat.map((heat, hour) => heat + heatingWaterHeat[hour]!);
  const cold = loadScale(chilledWaterHeat, "cooling", "moisture", system);
  const warm = loadScale(heating, "heating", "heat", system);
  return carpetPlot({
    key: "coil-load",
    title: yearTitle("Coil load", year.plan.weather.origin === "synthetic"),
    remark: "the larger of cooling and heating; blank: neither",
    hours: year.plan.hours,
    width,
    classes: [...cold.classes, ...warm.classes],
    classOf: (hour) => {
      const [cooled, heated] = [chilledWaterHeat[hour]!, heating[hour]!];
      if (running[hour] === 0 || (cooled <= 0 && heated <= 0)) return -1;
      return cooled >= heated ? cold.partOf(cooled) : cold.classes.length + warm.partOf(heated);
    },
  });
}

/** Four steps, or a few more or less, of a round load up to the highest. */
function loadScale(list: Float64Array, what: string, ink: Ink, system: UnitSystem) {
  const peak = toDisplay(most(list), "power", system);
  const step = peak > 0 ? niceStep(peak, 4) : 1;
  const count = peak > 0 ? Math.ceil(peak / step - 1e-9) : 0;
  const classes = Array.from({ length: count }, (_, of): CarpetClass => {
    const limit = groupedNumber((of + 1) * step, 3);
    return {
      key: `${what}-${of}`,
      words: `${what} to ${limit} ${displayUnit("power", system)}`,
      ink,
      tone: toneOf(of, count),
    };
  });
  const partOf = (load: number) => Math.min(count - 1, Math.floor(toDisplay(load, "power", system) / step));
  return { classes, partOf };
}

/** Tones of the steps away from freezing: what is near is dark, what chilled water does all summer is faint. */
const nearTones = [0.85, 0.6, 0.35, 0.13] as const;

/** Kelvins of the coldest coil wall above freezing, where air of frost can reach it. */
export function freezeMarginCarpet({ year, system, width }: YearPictureOptions): CarpetList {
  const { freezeMargin, running } = year.lists;
  const kind: QuantityKind = "temperatureDifference";
  const limits = system === "ip" ? [0, 2, 5, 10, 20] : [0, 1, 3, 6, 12];
  const near = limits.slice(1).map((limit, of): CarpetClass => {
    const words = `${limits[of]} to ${limit} ${displayUnit(kind, system)}`;
    return { key: `near-${of}`, words, ink: "water", tone: nearTones[of]! };
  });
  const frozen: CarpetClass = { key: "below", words: "a wall below freezing", ink: "fail", tone: 1 };
  const far: CarpetClass = { key: "far", words: "more, or no water", ink: "water", tone: 0 };
  const classes = [frozen, ...near, far];
  return carpetPlot({
    key: "freeze-margin",
    title: yearTitle("Freeze margin", year.plan.weather.origin === "synthetic"),
    remark: "of the coil wall nearest to freezing",
    hours: year.plan.hours,
    width,
    classes: [...classes, ...standingClass(year)],
    classOf: (hour) => {
      if (running[hour] === 0) return classes.length;
      const margin = toDisplay(freezeMargin[hour]!, kind, system);
      if (margin < 0) return 0;
      const of = limits.findIndex((limit) => margin < limit);
      return of < 0 ? near.length + 1 : of;
    },
  });
}

function standingClass({ lists }: PicturedYear): readonly CarpetClass[] {
  return lists.running.includes(0) ? [standing] : [];
}

function toneOf(place: number, count: number): number {
  return count === 1 ? 0.3 : Number((0.12 + (0.76 * place) / (count - 1)).toFixed(2));
}

function most(list: Float64Array): number {
  return list.reduce((highest, value) => Math.max(highest, value), 0);
}
