import { listOf, number, published, record, text } from "../schema/describe.ts";

const coefficients = {
  flow: number("flow over disc area and tip speed"),
  pressure: number("static pressure over ρu²/2"),
  power: number("shaft power over ρu³/2 and disc area"),
};

const test = record({
  diameter: number("m"),
  speed: number("rev/s of the speed with the most points"),
  density: number("kg/m³ there"),
  bestEfficiency: number("static, 0 to 1"),
  stableShare: number("smallest steady flow over that at best efficiency"),
  stableFrom: { enum: ["peak pressure", "first point"] },
  tested: listOf(
    record({
      ...coefficients,
      line: number("of the table"),
      speed: number("rev/s"),
      outlier: text("why it stands out; empty where it does not"),
    }),
    "rows by rising flow coefficient",
  ),
  points: listOf(record(coefficients), "of the curve"),
  scatter: listOf(
    record({
      speed: number("rev/s"),
      points: number("within the flows of the other curve"),
      pressure: number("root mean square over the peak"),
      pressureFarthest: number("over the peak"),
      power: number("root mean square over the peak"),
      powerFarthest: number("over the peak"),
    }),
    "speeds against the one with the most points",
  ),
});

/** The published schema of `oncethrough import-fan --json`. */
export function importFanSchema(): object {
  return published("import-fan", "A shop's fan test as a record, as printed by `oncethrough import-fan --json`", {
    ...record(
      {
        format: { const: "oncethrough import-fan 1" },
        problems: listOf(
          record({ line: number("of the table"), problem: text(), needed: text() }),
          "why no record was made; empty where one was",
        ),
        name: text("of the record"),
        record: text("as a catalogue file holds it"),
        test,
      },
      "name",
      "record",
      "test",
    ),
  });
}
