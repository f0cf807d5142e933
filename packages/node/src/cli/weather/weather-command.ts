import { weatherChart } from "@oncethrough/engine/chart/weather-chart";
import { svgText } from "@oncethrough/engine/drawing/svg-text";
import { standardPressure } from "@oncethrough/engine/fluid/atmosphere";
import { parseQuantity } from "@oncethrough/engine/quantity/parse";
import { writeTextFile } from "#files/write-text";
import { exitCode, UsageProblem } from "../exit-code.ts";
import { textInk } from "../ink.ts";
import type { Style } from "../rate/rate-print.ts";
import { type Given, operand, optionFlag, optionText, printJson, type Streams, unitSystem } from "../session.ts";
import { weatherOutput } from "./weather-output.ts";
import { printWeather } from "./weather-print.ts";
import { loadWeather } from "./weather-source.ts";

/** `oncethrough weather`: what an hourly weather file holds. */
export async function weatherCommand(given: Given, streams: Streams): Promise<number> {
  const loaded = await loadWeather(operand(given, 0), streams, pressureOf(given));
  if ("refusal" in loaded) {
    streams.errors(`${loaded.refusal}\n`);
    return exitCode.found;
  }
  const { weather } = loaded;
  const system = unitSystem(given);
  const output = weatherOutput(weather, system);
  const picture = optionText(given, "svg");
  if (picture !== undefined) {
    await writeTextFile(picture, svgText(weatherChart({ weather, system, width: 760, height: 560 })));
  }
  if (optionFlag(given, "json")) printJson(streams, output);
  else {
    const style: Style = { system, ink: textInk(streams.colour), columns: Math.min(streams.columns, 120) };
    streams.output(`${printWeather(output, style)}\n`);
  }
  return exitCode.fine;
}

/** Pressure for files that have none, from the altitude given. */
function pressureOf(given: Given): { readonly pressure?: number } {
  const typed = optionText(given, "altitude");
  if (typed === undefined) return {};
  const parsed = parseQuantity(typed, "length");
  if (!parsed.ok) throw new UsageProblem(`--altitude: ${parsed.problem}; allowed: ${parsed.allowed}`);
  return { pressure: standardPressure(parsed.value) };
}
