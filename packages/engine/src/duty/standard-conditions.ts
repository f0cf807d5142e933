import { standardPressure } from "#fluid/atmosphere";
import type { Liquid } from "#fluid/liquid";
import { liquidDensity } from "#fluid/liquid";
import { humidityRatioFromRelativeHumidity, specificVolume } from "#fluid/moist-air";
import { saturationHumidityRatio } from "#fluid/saturation";
import {
  absoluteFromGaugePressure,
  absolutePressure,
  dryAirFlowFromStandardAirflow,
  gaugePressure,
  standardAirflow,
} from "#quantity/brand";
import { type AirState, humidityRatioOfAirState } from "./air-state.ts";
import type { Condition, ExhaustAir, LiquidSupply, ReturnAir, SetPoints, SteamSupply, Utilities } from "./condition.ts";
import type { Duty } from "./duty.ts";

/** A design day of the duty. */
export interface Day {
  readonly key: string;
  readonly name: string;
  readonly season: "cooling" | "heating";
  readonly outdoor: AirState;
}

/** The four design days of a duty, in the order in which they are shown. */
export function designDays(duty: Duty): readonly Day[] {
  const { dryBulbDay, wetBulbDay, dewPointDay } = duty.summer;
  return [
    { key: "dry-bulb-day", name: "dry-bulb day", season: "cooling", outdoor: dryBulbDay },
    { key: "wet-bulb-day", name: "wet-bulb day", season: "cooling", outdoor: wetBulbDay },
    { key: "dew-point-day", name: "dew-point day", season: "cooling", outdoor: dewPointDay },
    { key: "winter", name: "winter", season: "heating", outdoor: duty.winter },
  ];
}

const loadings = [
  { loading: 0, key: "0", words: "filters clean" },
  { loading: 0.5, key: "0.5", words: "filters half loaded" },
  { loading: 1, key: "1", words: "filters at change-out" },
] as const;

/**
 * The sixteen conditions at which every unit is solved: four design days at three filter loadings, minimum flow on the
 * wet-bulb day and in winter, and the fan stopped in winter with dampers closed and left as set. A unit of several `fans`
 * has one more: one of them out on the wet-bulb day with filters at change-out.
 * `fixedSpeed` (rev/s) is the speed of a drive without speed control; the flow then follows.
 */
export function standardConditions(duty: Duty, fixedSpeed: number | undefined, fans: number): readonly Condition[] {
  const days = designDays(duty);
  const loaded = days.flatMap((day) =>
    loadings.map(({ loading, key, words }) => ({
      ...conditionOfDay(duty, day, fixedSpeed),
      key: `${day.key}-${key}`,
      name: `${day.name}, ${words}`,
      filterLoading: loading,
    })),
  );
  const wetBulbDay = days[1]!;
  const winter = days[3]!;
  const atMinimum = [wetBulbDay, winter].map((day) => ({
    ...conditionOfDay(duty, day, undefined),
    key: `minimum-flow-${day.key}`,
    name: `minimum flow, ${day.name}`,
    flow: { mode: "flow held", dryAirFlow: supplyDryAirFlow(duty, day, "minimum") } as const,
  }));
  const stopped = (["closed", "as set"] as const).map((dampers) => stoppedCondition(duty, winter, dampers));
  const oneOut = fans > 1 ? [oneFanOutCondition(duty, wetBulbDay, fixedSpeed)] : [];
  return [...loaded, ...atMinimum, ...oneOut, ...stopped];
}

/**
 * A running condition of the day at design airflow and half-loaded filters, at the site's pressure unless the day has its own;
 * `name` and `key` are the day's.
 */
export function conditionOfDay(
  duty: Duty,
  day: Day,
  fixedSpeed: number | undefined,
  barometricPressure = sitePressure(duty),
): Condition {
  const designDryAirFlow = supplyDryAirFlow(duty, day, "design", barometricPressure);
  const humidityRatio = humidityRatioOfAirState(day.outdoor, barometricPressure);
  return {
    key: day.key,
    name: day.name,
    season: day.season,
    barometricPressure,
    outdoor: { dryBulb: day.outdoor.dryBulb, humidityRatio, windSpeed: 0, rain: 0, ...snowOf(duty, day) },
    returnAir: returnAirOf(duty, day, barometricPressure, humidityRatio),
    surroundings: surroundingsOf(duty, day, barometricPressure, humidityRatio),
    flow:
      fixedSpeed === undefined
        ? { mode: "flow held", dryAirFlow: designDryAirFlow }
        : { mode: "speed held", fanSpeed: fixedSpeed },
    filterLoading: 0.5,
    setPoints: setPointsOf(duty, day.season, barometricPressure),
    utilities: utilitiesOf(duty, barometricPressure),
    externalStatic: {
      atDesign: duty.externalStatic.pressure,
      fixed: duty.externalStatic.fixed,
      reserve: duty.externalStatic.reserve,
      designDryAirFlow,
    },
    exhaust: exhaustOf(duty, day, barometricPressure),
  };
}

/** Snow falls on winter days of frost, as the site says. */
function snowOf(duty: Duty, day: Day): Pick<Condition["outdoor"], "snow"> {
  const { snow } = duty.site;
  return day.season === "heating" && day.outdoor.dryBulb < 0 && snow !== "none" ? { snow } : {};
}

function oneFanOutCondition(duty: Duty, day: Day, fixedSpeed: number | undefined): Condition {
  const running = conditionOfDay(duty, day, fixedSpeed);
  const share = duty.redundancy.airflowWithOneFanOut;
  return {
    ...running,
    key: "one-fan-out",
    name: `one fan out, ${day.name}, filters at change-out`,
    filterLoading: 1,
    fansOut: { count: 1, leastDryAirFlow: share * running.externalStatic.designDryAirFlow },
  };
}

function stoppedCondition(duty: Duty, winter: Day, dampers: "closed" | "as set"): Condition {
  const running = conditionOfDay(duty, winter, undefined);
  return {
    ...running,
    key: `fan-stopped-dampers-${dampers === "closed" ? "closed" : "left-open"}`,
    name: `fan stopped in winter, dampers ${dampers === "closed" ? "closed" : "left open"}`,
    outdoor: { ...running.outdoor, windSpeed: duty.site.windSpeed },
    flow: { mode: "fan stopped", dampers, stackHeight: duty.stackHeight },
  };
}

/** Pa absolute at the site: the barometric pressure given, or the standard atmosphere's at the altitude. */
export function sitePressure(duty: Duty): number {
  return duty.site.barometricPressure ?? standardPressure(duty.site.altitude ?? 0);
}

/**
 * kg/s of dry air that the airflow of the duty means on a day. A standard airflow is dry air of standard density; an
 * actual airflow is taken at the plane's own state: outdoors, or supply air at its set point.
 */
export function supplyDryAirFlow(
  duty: Duty,
  day: Day,
  which: "design" | "minimum",
  barometricPressure = sitePressure(duty),
): number {
  const { design, minimum, basis, plane } = duty.supplyAirflow;
  const airflow = which === "design" ? design : (minimum ?? design);
  if (basis === "standard") return dryAirFlowFromStandardAirflow(standardAirflow(airflow));
  if (plane === "intake") {
    const humidityRatio = humidityRatioOfAirState(day.outdoor, barometricPressure);
    return airflow / specificVolume(day.outdoor.dryBulb, humidityRatio, barometricPressure);
  }
  const { coilLeaving, supply, winterSupply } = duty.setPoints;
  const dryBulb = day.season === "heating" ? winterSupply : (supply ?? coilLeaving ?? winterSupply);
  const outdoorHumidityRatio = humidityRatioOfAirState(day.outdoor, barometricPressure);
  const humidityRatio = Math.min(
    outdoorHumidityRatio,
    saturationHumidityRatio(coilLeaving ?? dryBulb, barometricPressure),
  );
  return airflow / specificVolume(dryBulb, humidityRatio, barometricPressure + duty.externalStatic.pressure);
}

function returnAirOf(duty: Duty, day: Day, pressure: number, outdoorHumidityRatio: number): ReturnAir {
  const given = duty.returnAir;
  if (given === undefined) {
    return {
      dryBulb: day.outdoor.dryBulb,
      humidityRatio: outdoorHumidityRatio,
      staticPressure: 0,
      outsideAirShare: 1,
    };
  }
  const state = day.season === "cooling" ? given.summer : given.winter;
  return {
    dryBulb: state.dryBulb,
    humidityRatio: humidityRatioOfAirState(state, pressure),
    staticPressure: given.staticPressure,
    outsideAirShare: duty.outsideAirShare,
  };
}

function surroundingsOf(duty: Duty, day: Day, pressure: number, outdoorHumidityRatio: number) {
  const { placement, indoorDryBulb, indoorRelativeHumidity } = duty.site;
  if (placement !== "indoor") return { dryBulb: day.outdoor.dryBulb, humidityRatio: outdoorHumidityRatio };
  return {
    dryBulb: indoorDryBulb,
    humidityRatio: humidityRatioFromRelativeHumidity(indoorDryBulb, indoorRelativeHumidity, pressure),
  };
}

function setPointsOf(duty: Duty, season: "cooling" | "heating", pressure: number): SetPoints {
  const { coilLeaving, supply, maximumDewPoint, winterSupply, winterMinimumDewPoint } = duty.setPoints;
  const cooling = season === "cooling";
  const atDewPoint = (dewPoint: number | undefined) =>
    dewPoint === undefined ? undefined : saturationHumidityRatio(dewPoint, pressure);
  return {
    heatingCoilLeaving: undefined,
    coolingCoilLeaving: cooling ? coilLeaving : undefined,
    supply: cooling ? supply : winterSupply,
    supplyMaximumHumidityRatio: cooling ? atDewPoint(maximumDewPoint) : undefined,
    supplyMinimumHumidityRatio: cooling ? undefined : atDewPoint(winterMinimumDewPoint),
  };
}

function utilitiesOf(duty: Duty, barometricPressure: number): Utilities {
  const { steam, chilledWater, heatingWater } = duty.utilities;
  return {
    steam: steam && steamSupply(steam, barometricPressure),
    chilledWater: chilledWater && liquidSupply(chilledWater, chilledWater.rise),
    heatingWater: heatingWater && liquidSupply(heatingWater, heatingWater.drop),
  };
}

function steamSupply(steam: NonNullable<Duty["utilities"]["steam"]>, barometricPressure: number): SteamSupply {
  const site = absolutePressure(barometricPressure);
  return {
    pressure: absoluteFromGaugePressure(gaugePressure(steam.pressureAtCoil), site),
    condensateReturnPressure: absoluteFromGaugePressure(gaugePressure(steam.condensateReturnPressure), site),
    valveFails: steam.valveFails,
  };
}

function liquidSupply(
  given: NonNullable<Duty["utilities"]["chilledWater"]> | NonNullable<Duty["utilities"]["heatingWater"]>,
  temperatureChange: number | undefined,
): LiquidSupply {
  const liquid: Liquid =
    given.glycol === "none"
      ? { substance: "water", massFraction: 0 }
      : { substance: given.glycol, massFraction: given.concentration };
  return {
    liquid,
    supplyTemperature: given.supply,
    temperatureChange,
    massFlow: given.flow === undefined ? undefined : given.flow * liquidDensity(liquid, given.supply),
    valveFails: given.valveFails,
    pumpRunsWhenStopped: given.pumpRunsWhenStopped,
  };
}

function exhaustOf(duty: Duty, day: Day, pressure: number): ExhaustAir | undefined {
  const given = duty.exhaust;
  if (given === undefined) return undefined;
  const state = day.season === "cooling" ? given.summer : given.winter;
  return {
    dryAirFlow: dryAirFlowFromStandardAirflow(standardAirflow(given.airflow)),
    dryBulb: state.dryBulb,
    humidityRatio: humidityRatioOfAirState(state, pressure),
  };
}
