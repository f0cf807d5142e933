import { dutyFields } from "#duty/duty";
import type { SectionKind } from "#section/contract";
import { sectionKinds } from "#section/kinds";
import { valuesOfText } from "#section/shipped.test-data";
import { assembleUnit } from "#unit/assemble";
import { casingFields } from "#unit/casing";
import type { Unit } from "#unit/unit";
import { readWeather } from "#weather/read-weather";
import { sampleEpw } from "#weather/sample.test-data";
import type { WeatherYear } from "#weather/weather-year";
import type { YearInput } from "./plan.ts";

const kinds = sectionKinds as unknown as readonly SectionKind[];

/** A unit of sections given as `[kind, fields]`, in a cabinet that does not leak. */
export function unitOf(sections: readonly (readonly [kind: string, text: string])[]): Unit {
  const written = sections.map(([name, text]) => {
    const kind = kinds.find((each) => each.name === name);
    if (kind === undefined) throw new Error(`no kind ${name}`);
    return { kind, name, values: valuesOfText(kind.fields, text) };
  });
  const casing = valuesOfText(casingFields, "width: 84 in\nheight: 72 in\nleakage class: 0");
  const { unit, problems } = assembleUnit(casing, written);
  if (unit === undefined) throw new Error(JSON.stringify(problems));
  return unit;
}

/** The duty of a small laboratory, invented; give what differs, by name of the field. */
export function dutyText(changes: Readonly<Record<string, string>> = {}): string {
  const lines: Record<string, string> = {
    tag: "T-1",
    site: "{ altitude: 300 ft, placement: roof }",
    "supply airflow": "{ design: 9000 scfm }",
    summer:
      "{ dry bulb day: { dry bulb: 94 °F, wet bulb: 77 °F }, wet bulb day: { dry bulb: 88 °F, wet bulb: 79 °F }, dew point day: { dry bulb: 84 °F, dew point: 76 °F } }",
    winter: "{ dry bulb: 10 °F, relative humidity: 70 % }",
    "set points": "{ coil leaving: 53 °F, winter supply: 58 °F }",
    "external static": "{ pressure: 2 in.wg }",
    utilities: "{ steam: { pressure at coil: 10 psig }, chilled water: { supply: 44 °F, rise: 12 F° } }",
    ...changes,
  };
  return Object.entries(lines)
    .map(([name, value]) => `${name}: ${value}`)
    .join("\n");
}

/** Filters, full steam with face and bypass, a chilled-water coil, a fan with speed control. */
export const usualSections = [
  ["filter bank", "medium: typical MERV 8 pleated 2 in"],
  ["steam coil with face and bypass", "rows: 1\nfins: 8 per in"],
  ["chilled-water coil", "surface: typical plain 5/8 in\nrows: 8\nfins: 10 per in\ncircuits: 56"],
  ["fan", "wheel: typical airfoil housed double inlet\ndiameter: 20 in\nclass: II\nmotor power: 20 hp\ndrive: belt"],
] as const;

const reading = readWeather(sampleEpw());
if (!reading.ok) throw new Error(reading.problem.what);
/** The made-up year of the weather tests. */
export const madeUpYear: WeatherYear = reading.weather;

/** Every so many hours of the made-up year, as if they were all: enough of every season, quick to solve. */
export function someHours(count: number, shift = 0): WeatherYear {
  const step = 8760 / count;
  const pick = (list: Float64Array) =>
    new Float64Array(count).map((_, index) => list[Math.min(8759, Math.floor(index * step + (index % 24)))]!);
  return {
    ...madeUpYear,
    hours: count,
    dryBulb: pick(madeUpYear.dryBulb).map((air) => air + shift),
    humidityRatio: pick(madeUpYear.humidityRatio),
    pressure: pick(madeUpYear.pressure),
    windSpeed: pick(madeUpYear.windSpeed),
  };
}

/** What a year of the usual unit needs; give what differs. */
export function sampleInput(
  weather: WeatherYear,
  duty: Readonly<Record<string, string>> = {},
  sections: Parameters<typeof unitOf>[0] = usualSections,
): YearInput {
  return { unit: unitOf(sections), duty: valuesOfText(dutyFields, dutyText(duty)), weather };
}
