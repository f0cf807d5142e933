import { printQuantity } from "@oncethrough/engine/quantity/print";
import { readWeather } from "@oncethrough/engine/weather/read-weather";
import type { Answer } from "./enquiry.ts";

/** What a weather file says of a duty: its place and the design days that its header quotes. */
export type FileDays =
  | { readonly ok: true; readonly answers: readonly Answer[]; readonly words: string }
  | { readonly ok: false; readonly problem: string };

/**
 * Reads place and design days out of a weather file. They are quoted by the file's header from climate tables and are no
 * statistics of its hours. Winter moisture is not in the header: near saturation is put down, to be corrected.
 */
export function daysOfWeatherFile(text: string): FileDays {
  const reading = readWeather(text);
  if (!reading.ok) return { ok: false, problem: `${reading.problem.what}; ${reading.problem.allowed}` };
  const { place, design } = reading.weather;
  if (design === undefined) return { ok: false, problem: "the file's header quotes no design days" };
  const { dryBulbDay, wetBulbDay, dewPointDay, heatingDryBulb, source } = design;
  const day = (path: string, dryBulb: number, name: string, moisture: number): readonly Answer[] => [
    { path: `${path}.dryBulb`, typed: temperature(dryBulb) },
    { path: `${path}.${name}`, typed: temperature(moisture) },
  ];
  const answers: Answer[] = [
    ...(place.elevation === undefined
      ? []
      : [{ path: "duty.site.altitude", typed: `${Math.round(place.elevation / metresPerFoot)} ft` }]),
    ...day("duty.summer.dryBulbDay", dryBulbDay.dryBulb, "wetBulb", dryBulbDay.wetBulb),
    ...day("duty.summer.wetBulbDay", wetBulbDay.dryBulb, "wetBulb", wetBulbDay.wetBulb),
    ...day("duty.summer.dewPointDay", dewPointDay.dryBulb, "dewPoint", dewPointDay.dewPoint),
    { path: "duty.winter.dryBulb", typed: temperature(heatingDryBulb) },
    { path: "duty.winter.relativeHumidity", typed: "80 %" },
  ];
  return {
    ok: true,
    answers,
    words: `design days of ${place.name}${source === "" ? "" : `, quoted from ${source}`}; no statistics of its hours`,
  };
}

const metresPerFoot = 0.3048;

function temperature(value: number): string {
  return printQuantity(value, "temperature", "ip").replace(/−/g, "-");
}
