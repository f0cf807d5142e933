import { findRoot } from "#numerics/find-root";
import { dewPointFromVapourPressure } from "./dew-point.ts";
import type { AirRelations } from "./enhancement.ts";
import {
  above,
  below,
  boils,
  COLDEST_AIR,
  checkDryBulb,
  checkGiven,
  dependent,
  type GivenAir,
  HIGHEST_AIR_PRESSURE,
  HOTTEST_AIR,
  impossible,
  LOWEST_AIR_PRESSURE,
  say,
} from "./given-air.ts";
import {
  DRY_AIR_SPECIFIC_HEAT,
  dryBulbFromEnthalpy,
  dryBulbFromSpecificVolume,
  enthalpyFromHumidityRatio,
  humidityRatioFromRelativeHumidity,
  relativeHumidityFromHumidityRatio,
  specificVolume,
  VAPOUR_ENTHALPY_AT_ZERO,
  VAPOUR_SPECIFIC_HEAT,
  vapourPressureFromHumidityRatio,
} from "./moist-air.ts";
import { saturationHumidityRatio } from "./saturation.ts";
import { COLDEST_SATURATION } from "./saturation-equation.ts";
import { humidityRatioFromWetBulb, wetBulbFromEnthalpy, wetBulbFromHumidityRatio, wickEnthalpy } from "./wet-bulb.ts";

/** Dry bulb, vapour and free water: what fixes everything else at a pressure. */
export interface ResolvedAir {
  dryBulb: number;
  humidityRatio: number;
  freeWater: number;
}

/**
 * Dry bulb, vapour and free water from two given properties; refuses what no air can be.
 *
 * @param given record, two properties: what is known of the air
 * @param pressure Pa, 50000…110000: absolute pressure
 * @param relations choice, enhanced or ideal: with or without the enhancement factor
 * @param air record, any: receives dry bulb, humidity ratio and free water
 * @returns record: air
 * @outside throws
 * @throws RangeError with the reason
 * @example resolveAir({ dewPoint: 10, relativeHumidity: 0.5 }, 101325, "enhanced", { dryBulb: 0, humidityRatio: 0, freeWater: 0 }).dryBulb // 20.9 ± 0.2
 * @source ashrae-hof-2021-ch1 eq. 20 to 36
 */
export function resolveAir<Air extends ResolvedAir>(
  given: GivenAir,
  pressure: number,
  relations: AirRelations,
  air: Air,
): Air {
  if (!(pressure >= LOWEST_AIR_PRESSURE && pressure <= HIGHEST_AIR_PRESSURE)) {
    throw impossible(`pressure ${pressure} Pa is outside ${LOWEST_AIR_PRESSURE}…${HIGHEST_AIR_PRESSURE} Pa`);
  }
  air.freeWater = 0;
  if (given.dryBulb !== undefined && given.wetBulb !== undefined && onlyBulbs(given)) {
    fromBulbs(given.dryBulb, given.wetBulb, pressure, relations, air);
    return air;
  }
  checkGiven(given);
  if (given.dryBulb !== undefined) fromDryBulb(given.dryBulb, given, pressure, relations, air);
  else if (given.totalWater !== undefined) fromTotalWater(given.totalWater, given, pressure, relations, air);
  else if (given.wetBulb !== undefined) fromWetBulb(given.wetBulb, given, pressure, relations, air);
  else if (given.dewPoint !== undefined) fromDewPoint(given.dewPoint, given, pressure, relations, air);
  else if (given.relativeHumidity !== undefined) {
    fromRelativeHumidity(given.relativeHumidity, given, pressure, relations, air);
  } else if (given.humidityRatio !== undefined) fromHumidityRatio(given.humidityRatio, given, pressure, relations, air);
  else fromEnthalpyAndVolume(given.enthalpy!, given.specificVolume!, pressure, relations, air);
  return air;
}

/** The commonest pair of all takes a short way. */
function onlyBulbs(given: GivenAir): boolean {
  return (
    given.dewPoint === undefined &&
    given.relativeHumidity === undefined &&
    given.humidityRatio === undefined &&
    given.enthalpy === undefined &&
    given.specificVolume === undefined &&
    given.totalWater === undefined
  );
}

/** Sets a clear state, refusing humidity ratios below nothing and above saturation. */
function setClear(air: ResolvedAir, t: number, W: number, pressure: number, relations: AirRelations, by: string): void {
  if (below(W, 0)) throw impossible(`${by} would need air drier than dry (humidity ratio ${say(W)} kg/kg)`);
  const most = saturationHumidityRatio(t, pressure, relations);
  if (above(W, most)) {
    throw impossible(
      `${by} would need ${say(W)} kg/kg of vapour, but air at ${say(t)} °C and ${say(pressure)} Pa holds at most ` +
        `${say(most)} kg/kg (a fog is given by its total water)`,
    );
  }
  air.dryBulb = t;
  air.humidityRatio = W < 0 ? 0 : Math.min(W, most);
}

function fromBulbs(t: number, wetBulb: number, pressure: number, relations: AirRelations, air: ResolvedAir): void {
  checkDryBulb(t, "dry bulb is");
  if (above(wetBulb, t)) throw impossible(`wet bulb ${say(wetBulb)} °C is above the dry bulb ${say(t)} °C`);
  if (!(wetBulb >= COLDEST_SATURATION)) throw impossible(`wet bulb ${wetBulb} °C is below ${COLDEST_SATURATION} °C`);
  const W = humidityRatioFromWetBulb(t, Math.min(wetBulb, t), pressure, relations);
  if (W === Number.POSITIVE_INFINITY) throw impossible(boils(wetBulb, pressure));
  if (below(W, 0)) {
    const lowest = wetBulbFromHumidityRatio(t, 0, pressure, relations);
    throw impossible(
      `wet bulb ${say(wetBulb)} °C is below ${say(lowest)} °C, which even dry air has at a dry bulb of ${say(t)} °C`,
    );
  }
  air.dryBulb = t;
  air.humidityRatio = Math.max(W, 0);
}

function fromDryBulb(t: number, given: GivenAir, pressure: number, relations: AirRelations, air: ResolvedAir): void {
  checkDryBulb(t, "dry bulb is");
  if (given.dewPoint !== undefined) {
    const { dewPoint } = given;
    if (above(dewPoint, t)) throw impossible(`dew point ${say(dewPoint)} °C is above the dry bulb ${say(t)} °C`);
    const W = saturationHumidityRatio(Math.min(dewPoint, t), pressure, relations);
    if (W === Number.POSITIVE_INFINITY) throw impossible(boils(dewPoint, pressure));
    setClear(air, t, W, pressure, relations, "the dew point");
  } else if (given.relativeHumidity !== undefined) {
    const W = humidityRatioFromRelativeHumidity(t, given.relativeHumidity, pressure, relations);
    if (W === Number.POSITIVE_INFINITY) throw impossible(boils(t, pressure));
    setClear(air, t, W, pressure, relations, "the relative humidity");
  } else if (given.humidityRatio !== undefined) {
    setClear(air, t, given.humidityRatio, pressure, relations, "the humidity ratio");
  } else if (given.enthalpy !== undefined) {
    const W = (given.enthalpy - DRY_AIR_SPECIFIC_HEAT * t) / (VAPOUR_ENTHALPY_AT_ZERO + VAPOUR_SPECIFIC_HEAT * t);
    setClear(air, t, W, pressure, relations, `enthalpy ${say(given.enthalpy)} J/kg`);
  } else if (given.specificVolume !== undefined) {
    const dry = specificVolume(t, 0, pressure);
    const W = (given.specificVolume / dry - 1) / (specificVolume(t, 1, pressure) / dry - 1);
    setClear(air, t, W, pressure, relations, `specific volume ${say(given.specificVolume)} m³/kg`);
  } else fromTotalWater(given.totalWater!, given, pressure, relations, air);
}

/** Fog, or clear air when it can hold all the water. */
function fromTotalWater(water: number, given: GivenAir, p: number, relations: AirRelations, air: ResolvedAir): void {
  if (given.dryBulb !== undefined) air.dryBulb = given.dryBulb;
  else if (given.enthalpy !== undefined) {
    const clear = dryBulbFromEnthalpy(given.enthalpy, water);
    const holds = clear >= COLDEST_AIR && clear <= HOTTEST_AIR && water <= saturationHumidityRatio(clear, p, relations);
    const temperature = holds ? clear : wetBulbFromEnthalpy(given.enthalpy, water, p, relations);
    checkDryBulb(temperature, "that makes the dry bulb");
    // Air a trace too moist for ice at 0 °C is not so for water: between the two it stays clear.
    air.dryBulb = water <= saturationHumidityRatio(temperature, p, relations) ? clear : temperature;
    if (air.dryBulb === clear) {
      air.humidityRatio = water;
      return;
    }
  } else throw impossible("total water is taken with dry bulb or enthalpy only");
  air.humidityRatio = Math.min(water, saturationHumidityRatio(air.dryBulb, p, relations));
  air.freeWater = water - air.humidityRatio;
}

function fromWetBulb(bulb: number, given: GivenAir, p: number, relations: AirRelations, air: ResolvedAir): void {
  const saturated = saturationHumidityRatio(bulb, p, relations);
  if (saturated === Number.POSITIVE_INFINITY) throw impossible(boils(bulb, p));
  const water = wickEnthalpy(bulb, relations);
  const atBulb = enthalpyFromHumidityRatio(bulb, saturated);
  if (given.relativeHumidity !== undefined || given.specificVolume !== undefined) {
    searchAlongWetBulb(bulb, given, p, relations, air);
    return;
  }
  let W: number;
  let by: string;
  if (given.dewPoint !== undefined) {
    by = "the dew point";
    if (above(given.dewPoint, bulb))
      throw impossible(`dew point ${say(given.dewPoint)} °C is above the wet bulb ${say(bulb)} °C`);
    W = saturationHumidityRatio(Math.min(given.dewPoint, bulb), p, relations);
  } else if (given.humidityRatio !== undefined) {
    by = "the humidity ratio";
    W = given.humidityRatio;
    if (above(W, saturated)) {
      throw impossible(
        `humidity ratio ${say(W)} kg/kg is above saturation at the wet bulb ${say(bulb)} °C, ${say(saturated)} kg/kg`,
      );
    }
  } else {
    by = "the enthalpy";
    if (Math.abs(water) < 2000) throw impossible(dependent(`near a wet bulb of 0 °C wet bulb`, "enthalpy"));
    W = saturated - (atBulb - given.enthalpy!) / water;
    if (above(W, saturated)) {
      throw impossible(
        `enthalpy ${say(given.enthalpy!)} J/kg does not go with a wet bulb of ${say(bulb)} °C, whose air has ` +
          `${say(Math.min(atBulb, atBulb - saturated * water))} to ${say(Math.max(atBulb, atBulb - saturated * water))} J/kg`,
      );
    }
  }
  const t = dryBulbFromEnthalpy(atBulb - (saturated - W) * water, W);
  checkDryBulb(t, "that makes the dry bulb");
  setClear(air, t, W, p, relations, by);
}

function searchAlongWetBulb(bulb: number, given: GivenAir, p: number, relations: AirRelations, air: ResolvedAir): void {
  const { relativeHumidity, specificVolume: volume } = given;
  const W = (t: number) => humidityRatioFromWetBulb(t, bulb, p, relations);
  const miss =
    relativeHumidity !== undefined
      ? (t: number) => relativeHumidityFromHumidityRatio(t, W(t), p, relations) - relativeHumidity
      : (t: number) => specificVolume(t, W(t), p) - volume!;
  const words = relativeHumidity !== undefined ? "relative humidity" : "specific volume";
  const t = searched(miss, bulb, HOTTEST_AIR, `wet bulb ${say(bulb)} °C`, words);
  setClear(air, t, W(t), p, relations, `the ${words}`);
}

/** Dry bulb at which a monotone miss vanishes. */
function searched(miss: (t: number) => number, low: number, high: number, first: string, second: string): number {
  const atLow = miss(low);
  const atHigh = miss(high);
  if (Math.abs(atLow) < 1e-9) return low;
  if (!(atLow < 0 !== atHigh < 0)) {
    throw impossible(`no air of ${say(low)}…${say(high)} °C has ${first} and that ${second}`);
  }
  return findRoot(miss, low, high, 1e-12);
}

function fromDewPoint(dew: number, given: GivenAir, p: number, relations: AirRelations, air: ResolvedAir): void {
  const W = saturationHumidityRatio(dew, p, relations);
  if (W === Number.POSITIVE_INFINITY) throw impossible(boils(dew, p));
  if (given.humidityRatio !== undefined) throw impossible(dependent("dew point", "humidity ratio"));
  const t = dryBulbOfVapour(W, given, p, relations);
  if (below(t, dew)) throw impossible(`that makes the dry bulb ${say(t)} °C, below the dew point ${say(dew)} °C`);
  checkDryBulb(t, "that makes the dry bulb");
  setClear(air, Math.max(t, dew), W, p, relations, "the dew point");
}

function fromHumidityRatio(W: number, given: GivenAir, p: number, relations: AirRelations, air: ResolvedAir): void {
  const t = dryBulbOfVapour(W, given, p, relations);
  checkDryBulb(t, "that makes the dry bulb");
  setClear(air, t, W, p, relations, "the humidity ratio");
}

/** Dry bulb of air whose vapour is known, from its relative humidity, enthalpy or specific volume. */
function dryBulbOfVapour(W: number, given: GivenAir, p: number, relations: AirRelations): number {
  if (given.enthalpy !== undefined) return dryBulbFromEnthalpy(given.enthalpy, W);
  if (given.specificVolume !== undefined) return dryBulbFromSpecificVolume(given.specificVolume, W, p);
  const relativeHumidity = given.relativeHumidity!;
  if (!(relativeHumidity > 0 && W > 0)) {
    throw impossible(
      "dry air has relative humidity 0 at any temperature: give its dry bulb, enthalpy or specific volume",
    );
  }
  const saturated = vapourPressureFromHumidityRatio(W, p) / relativeHumidity;
  return dewPointFromVapourPressure(saturated, p, relations);
}

function fromRelativeHumidity(rh: number, given: GivenAir, p: number, relations: AirRelations, air: ResolvedAir): void {
  if (given.humidityRatio !== undefined) {
    fromHumidityRatio(given.humidityRatio, given, p, relations, air);
    return;
  }
  const { enthalpy, specificVolume: volume } = given;
  const W = (t: number) => humidityRatioFromRelativeHumidity(t, rh, p, relations);
  const miss =
    enthalpy !== undefined
      ? (t: number) => enthalpyFromHumidityRatio(t, W(t)) - enthalpy
      : (t: number) => specificVolume(t, W(t), p) - volume!;
  const words = enthalpy !== undefined ? "enthalpy" : "specific volume";
  const t = searched(miss, COLDEST_AIR, HOTTEST_AIR, `relative humidity ${say(rh)}`, words);
  setClear(air, t, W(t), p, relations, `the ${words}`);
}

function fromEnthalpyAndVolume(h: number, v: number, p: number, relations: AirRelations, air: ResolvedAir): void {
  const W = (t: number) => {
    const dry = specificVolume(t, 0, p);
    return (v / dry - 1) / (specificVolume(t, 1, p) / dry - 1);
  };
  const hottest = Math.min(dryBulbFromSpecificVolume(v, 0, p), HOTTEST_AIR);
  if (!(hottest >= COLDEST_AIR))
    throw impossible(`specific volume ${say(v)} m³/kg is that of air below ${COLDEST_AIR} °C`);
  const miss = (t: number) => enthalpyFromHumidityRatio(t, W(t)) - h;
  const t = searched(miss, hottest, COLDEST_AIR, `specific volume ${say(v)} m³/kg`, "enthalpy");
  setClear(air, t, W(t), p, relations, "the enthalpy");
}
