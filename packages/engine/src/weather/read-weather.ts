import { readCsvWeather } from "./csv.ts";
import { looksLikeEpw, readEpw } from "./epw.ts";
import { type WeatherReading, WeatherRefusal } from "./weather-year.ts";

/** What a file cannot say itself. */
export interface WeatherContext {
  /** Pa: for a CSV file without pressures. */
  readonly pressure?: number;
}

/** Reads a weather file, EPW or plain CSV: a whole year, or a reason why not. Never throws for anything a text may hold. */
export function readWeather(text: string, context: WeatherContext = {}): WeatherReading {
  const plain = text.replace(/^\uFEFF/, "");
  try {
    checkText(plain);
    return { ok: true, weather: looksLikeEpw(plain) ? readEpw(plain) : readCsvWeather(plain, context.pressure) };
  } catch (error) {
    if (error instanceof WeatherRefusal) return { ok: false, problem: error.problem };
    throw error;
  }
}

/** Tab, line ends, and the end-of-file sign of old systems. */
const usualControls = "\t\r\n\u001A";
/** Share of control signs from which a text is none. */
const mostControls = 0.01;

function checkText(text: string): void {
  const allowed =
    "an EPW file (it begins with LOCATION), or CSV with the columns time, dry bulb, and dew point or relative humidity";
  if (text.trim() === "") throw new WeatherRefusal(0, "the file is empty", allowed);
  if (text.startsWith("PK\u0003\u0004")) {
    throw new WeatherRefusal(0, "this is a ZIP archive", "the weather file inside it, unpacked");
  }
  const sample = text.slice(0, 4000);
  const controls = [...sample].filter((sign) => sign < " " && !usualControls.includes(sign)).length;
  if (controls > mostControls * sample.length) throw new WeatherRefusal(0, "this is no text", allowed);
}
