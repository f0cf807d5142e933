import { type AirState, humidityRatioOfAirState } from "#duty/air-state";
import type { Duty } from "#duty/duty";
import { sitePressure } from "#duty/standard-conditions";
import { syntheticYear } from "#weather/synthetic";
import type { WeatherYear } from "#weather/weather-year";

/** A year made up from the design days of a duty, for when no file is at hand. */
export function syntheticYearOfDuty(duty: Duty): WeatherYear {
  const pressure = sitePressure(duty);
  const state = (air: AirState) => ({ dryBulb: air.dryBulb, humidityRatio: humidityRatioOfAirState(air, pressure) });
  const { dryBulbDay, wetBulbDay, dewPointDay } = duty.summer;
  return syntheticYear({
    dryBulbDay: state(dryBulbDay),
    wetBulbDay: state(wetBulbDay),
    dewPointDay: state(dewPointDay),
    winter: state(duty.winter),
    pressure,
  });
}
