import { humidityRatioFromRelativeHumidity } from "#fluid/moist-air";
import { saturationHumidityRatio } from "#fluid/saturation";
import { humidityRatioFromWetBulb } from "#fluid/wet-bulb";
import { type GroupCheck, quantity, type ValuesOf } from "#form/field";
import { printQuantity } from "#quantity/print";

/** A state of air as a person knows it: dry bulb and one measure of moisture. */
export const airStateFields = {
  dryBulb: quantity("temperature", { meaning: "Dry-bulb temperature", minimum: "-76 °F", maximum: "194 °F" }),
  wetBulb: quantity("temperature", {
    meaning: "Wet-bulb temperature",
    optional: true,
    minimum: "-76 °F",
    maximum: "194 °F",
  }),
  dewPoint: quantity("temperature", {
    meaning: "Dew-point temperature",
    optional: true,
    minimum: "-76 °F",
    maximum: "194 °F",
  }),
  relativeHumidity: quantity("share", {
    meaning: "Relative humidity",
    optional: true,
    minimum: "0 %",
    maximum: "100 %",
  }),
  humidityRatio: quantity("humidityRatio", {
    meaning: "Humidity ratio",
    optional: true,
    minimum: "0 g/kg",
    maximum: "300 g/kg",
  }),
} as const;

/** A state as given: dry bulb and one measure of moisture. */
export type AirState = ValuesOf<typeof airStateFields>;

const moistureNames = ["wetBulb", "dewPoint", "relativeHumidity", "humidityRatio"] as const;

/** One measure of moisture, no more; wet bulb and dew point not above dry bulb. */
export const checkAirState: GroupCheck = (values, say) => {
  const given = moistureNames.filter((name) => values[name] !== undefined);
  const allowed = "one of `wet bulb`, `dew point`, `relative humidity`, `humidity ratio`";
  if (given.length === 0) say(undefined, "the moisture of the air is not given", allowed);
  if (given.length > 1) say(given[1], "the moisture of the air is given twice", allowed);
  const dryBulb = values.dryBulb as number;
  for (const name of ["wetBulb", "dewPoint"] as const) {
    const value = values[name] as number | undefined;
    if (value !== undefined && value > dryBulb + 1e-9) {
      const words = name === "wetBulb" ? "wet bulb" : "dew point";
      say(
        name,
        `the ${words} is above the dry bulb, which no air can be`,
        `at most the dry bulb, ${printQuantity(dryBulb, "temperature", "ip")} (${printQuantity(dryBulb, "temperature", "si")})`,
      );
    }
  }
};

/** kg/kg of the state at `pressure` (Pa absolute). */
export function humidityRatioOfAirState(state: AirState, pressure: number): number {
  if (state.humidityRatio !== undefined) return state.humidityRatio;
  if (state.wetBulb !== undefined) return humidityRatioFromWetBulb(state.dryBulb, state.wetBulb, pressure);
  if (state.dewPoint !== undefined) return saturationHumidityRatio(state.dewPoint, pressure);
  return humidityRatioFromRelativeHumidity(state.dryBulb, state.relativeHumidity ?? 0, pressure);
}
