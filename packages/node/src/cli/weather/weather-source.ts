import type { WeatherContext } from "@oncethrough/engine/weather/read-weather";
import { readWeather } from "@oncethrough/engine/weather/read-weather";
import type { WeatherYear } from "@oncethrough/engine/weather/weather-year";
import { readTextFile, readTextStream } from "#files/read-text";
import type { Streams } from "../session.ts";

/** Bytes taken of a weather file: enough that a file of every quarter hour is refused for what it is. */
const mostBytes = 32 * 1024 * 1024;

/** The weather of a file (or of standard input, `-`), or one line that says why it is none. */
export async function loadWeather(
  name: string,
  streams: Streams,
  context: WeatherContext = {},
): Promise<{ readonly weather: WeatherYear } | { readonly refusal: string }> {
  const text =
    name === "-"
      ? await readTextStream(streams.input, "standard input", mostBytes)
      : await readTextFile(name, { most: mostBytes, orLatin: true });
  const reading = readWeather(text, context);
  if (reading.ok) return { weather: reading.weather };
  const { line, what, allowed } = reading.problem;
  const place = line > 0 ? `${name}:${line}` : name;
  return { refusal: `${place}: ${what}; needed: ${allowed}` };
}
