import { listOf, number, published, record, text } from "../schema/describe.ts";

const place = record(
  {
    name: text(),
    source: text("of the hours, as the file names it"),
    station: text(),
    latitude: number("degrees north"),
    longitude: number("degrees east"),
    timeZone: number("h from Greenwich"),
    elevation: number("m"),
  },
  "latitude",
  "longitude",
  "timeZone",
  "elevation",
);

const extreme = record({
  what: text("what stands out"),
  time: text("day, month and end of the hour, standard time"),
  hour: number("index of the hour, from 0"),
  dryBulb: number("°C"),
  wetBulb: number("°C"),
  dewPoint: number("°C"),
  humidityRatio: number("kg/kg"),
  enthalpy: number("J/kg"),
  pressure: number("Pa"),
});

const bin = record(
  {
    low: number("°C, included"),
    high: number("°C, not included"),
    hours: number(),
    night: number("hours ending at 1 to 8 o'clock"),
    day: number("9 to 16"),
    evening: number("17 to 24"),
    wetBulb: number("°C, mean; left out where there are no hours"),
    humidityRatio: number("kg/kg, mean"),
  },
  "wetBulb",
  "humidityRatio",
);

const summerDay = (moisture: string) => record({ dryBulb: number("°C"), [moisture]: number("°C") });

/** The published schema of `oncethrough weather --json`. */
export function weatherSchema(): object {
  return published("weather", "A year of weather, as printed by `oncethrough weather --json`; numbers in SI units", {
    ...record(
      {
        format: { const: "oncethrough weather 1" },
        origin: { enum: ["EPW", "CSV", "synthetic"] },
        place,
        hours: number("8760, or 8784 of a leap year"),
        repairs: listOf(
          record({ what: text(), count: number(), firstLine: number("of the file; 0 where it has none") }),
          "what had to be put right",
        ),
        notes: listOf(text()),
        extremes: listOf(extreme),
        hoursBelowFreezing: number(),
        degreeHours: record({ base: number("°C"), value: number("K·h") }),
        bins: listOf(bin, "by dry bulb, coldest first"),
        headerDesign: record(
          {
            source: text(),
            heatingDryBulb: number("°C, 99.6 %"),
            humidificationDewPoint: number("°C, 99.6 %"),
            dryBulbDay: summerDay("wetBulb"),
            wetBulbDay: summerDay("wetBulb"),
            dewPointDay: summerDay("dewPoint"),
          },
          "humidificationDewPoint",
        ),
      },
      "headerDesign",
    ),
  });
}
