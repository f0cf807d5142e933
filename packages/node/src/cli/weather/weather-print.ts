import type { QuantityKind } from "@oncethrough/engine/quantity/kind";
import { displayUnit, printNumber, printQuantity } from "@oncethrough/engine/quantity/print";
import type { HeaderDesign } from "@oncethrough/engine/weather/header-design";
import { glued, wrapped } from "../ink.ts";
import type { Style } from "../rate/rate-print.ts";
import { type Column, printTable } from "../table.ts";
import type { WeatherOutput } from "./weather-output.ts";

/** A year of weather for a person: repairs, extremes, bins, and the header's design days in the words of a duty. */
export function printWeather(output: WeatherOutput, style: Style): string {
  const parts = [
    printHead(output, style),
    printExtremes(output, style),
    printBins(output, style),
    output.headerDesign === undefined ? "" : printDesign(output.headerDesign, style),
  ];
  return parts.filter((part) => part !== "").join("\n\n");
}

function printHead(output: WeatherOutput, { ink, system, columns }: Style): string {
  const { place, hours, origin, repairs, notes } = output;
  const where = [place.name, place.source, place.station === "" ? "" : `station ${place.station}`];
  const elevation = place.elevation === undefined ? "" : `, ${elevationText(place.elevation, system)}`;
  const title = `${where.filter((part) => part !== "").join(", ")}${elevation}`;
  const degree = output.degreeHours;
  const kelvinHours = system === "ip" ? 1.8 * degree.value : degree.value;
  const unit = system === "ip" ? "F°·h" : "K·h";
  const cold = `${output.hoursBelowFreezing} of ${hours} hours below freezing; ${Math.round(kelvinHours).toLocaleString("en-US")} ${unit} below ${printQuantity(degree.base, "temperature", system)}`;
  const mended = repairs.map(({ what, count, firstLine }) => {
    const line = firstLine > 0 ? `, first on line ${firstLine}` : "";
    return `put right ${count} ×: ${what}${line}`;
  });
  const clean = repairs.length === 0 && origin !== "synthetic" ? ["nothing had to be put right"] : mended;
  return [ink.strong(title), cold, ...clean, ...notes].map((line) => wrapped(line, columns)).join("\n");
}

function elevationText(elevation: number, system: "ip" | "si"): string {
  return system === "ip"
    ? `${Math.round(elevation / 0.3048).toLocaleString("en-US")} ft`
    : `${Math.round(elevation)} m`;
}

function printExtremes({ extremes }: WeatherOutput, { ink, system }: Style): string {
  const temperature = displayUnit("temperature", system);
  const columns: Column[] = [
    { name: "hour that stands out", align: "left" },
    { name: "ends", align: "left" },
    { name: "dry bulb", unit: temperature, align: "right" },
    { name: "wet bulb", unit: temperature, align: "right" },
    { name: "dew point", unit: temperature, align: "right" },
    { name: "moisture", unit: displayUnit("humidityRatio", system), align: "right" },
    { name: "enthalpy", unit: displayUnit("enthalpy", system), align: "right" },
    { name: "pressure", unit: displayUnit("absolutePressure", system), align: "right" },
  ];
  const rows = extremes.map((each) => {
    const say = (value: number, kind: QuantityKind) => printNumber(value, kind, system);
    return [
      each.what,
      each.time,
      say(each.dryBulb, "temperature"),
      say(each.wetBulb, "temperature"),
      say(each.dewPoint, "temperature"),
      say(each.humidityRatio, "humidityRatio"),
      say(each.enthalpy, "enthalpy"),
      say(each.pressure, "absolutePressure"),
    ];
  });
  return printTable(columns, rows, ink);
}

function printBins({ bins }: WeatherOutput, { ink, system }: Style): string {
  const temperature = displayUnit("temperature", system);
  const columns: Column[] = [
    { name: "dry bulb\nfrom", unit: temperature, align: "right" },
    { name: "\nto", unit: temperature, align: "right" },
    { name: "hours", align: "right" },
    { name: "1–8", unit: "o'clock", align: "right" },
    { name: "9–16", align: "right" },
    { name: "17–24", align: "right" },
    { name: "mean\nwet bulb", unit: temperature, align: "right" },
    { name: "mean\nmoisture", unit: displayUnit("humidityRatio", system), align: "right" },
  ];
  const rows = bins.map(({ low, high, hours, night, day, evening, wetBulb, humidityRatio }) => [
    printNumber(low, "temperature", system),
    printNumber(high, "temperature", system),
    ink.strong(String(hours)),
    String(night),
    String(day),
    String(evening),
    wetBulb === undefined ? "–" : printNumber(wetBulb, "temperature", system),
    humidityRatio === undefined ? "–" : printNumber(humidityRatio, "humidityRatio", system),
  ]);
  return printTable(columns, rows, ink);
}

/** The header's design conditions as they would stand in a duty. */
function printDesign(design: HeaderDesign, { ink, system, columns }: Style): string {
  const say = (value: number) => glued(printQuantity(value, "temperature", system));
  const { dryBulbDay, wetBulbDay, dewPointDay, heatingDryBulb, humidificationDewPoint } = design;
  const winterDewPoint = Math.min(heatingDryBulb, humidificationDewPoint ?? heatingDryBulb);
  const words = `design days for a duty, from the file's header (${design.source || "source not named"}): climate tables of the station, no statistics of the hours above. A typical year hardly reaches them.`;
  const lines = [
    "summer:",
    `  dry bulb day: { dry bulb: ${say(dryBulbDay.dryBulb)}, wet bulb: ${say(dryBulbDay.wetBulb)} }`,
    `  wet bulb day: { dry bulb: ${say(wetBulbDay.dryBulb)}, wet bulb: ${say(wetBulbDay.wetBulb)} }`,
    `  dew point day: { dry bulb: ${say(dewPointDay.dryBulb)}, dew point: ${say(dewPointDay.dewPoint)} }`,
    `winter: { dry bulb: ${say(heatingDryBulb)}, dew point: ${say(winterDewPoint)} }`,
  ];
  return `${ink.quiet(wrapped(words, columns))}\n${lines.join("\n").replaceAll("\u00a0", " ")}`;
}
