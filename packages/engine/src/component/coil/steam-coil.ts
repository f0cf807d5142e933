import type { Liquid } from "#fluid/liquid";
import { setAirSide } from "./coefficients.ts";
import type { Coil } from "./coil.ts";
import { type CoilInlet, type CoilWork, createCoilWork } from "./performance.ts";
import { condensingCoefficient, leastDifference } from "./steam-side.ts";

/** What a steam coil does with its surface at one steam temperature all over. Owned by the caller. */
export interface SteamPerformance {
  /** Air rise over steam less entering air. */
  effectiveness: number;
  /** W into the air. */
  heat: number;
  leavingDryBulb: number;
  leavingFilament: number;
  airReynolds: number;
  airCoefficient: number;
  finEfficiency: number;
  surfaceEfficiency: number;
  condensingCoefficient: number;
  /** W/K of the whole coil. */
  conductance: number;
  /** °C of the coldest inside wall on the active surface. */
  coldestTubeWall: number;
}

/** Room for `solveSteamCoil`. */
export interface SteamWork {
  readonly inlet: CoilInlet;
  readonly work: CoilWork;
  /** K across the condensate film, as it was found last: the start of the next solution. */
  filmDifference: number;
  /** How what is missing of the pressure in the tubes goes with that pressure, as seen last: −1 where the loss stays. */
  lossSlope: number;
}

/** Stands where a liquid is asked that the steam side does not have. */
const noLiquid: Liquid = { substance: "water", massFraction: 0 };

/**
 * An empty record of a steam coil's performance.
 *
 * @returns record: all figures zero
 * @example createSteamPerformance().heat // 0
 * @source definition
 */
export function createSteamPerformance(): SteamPerformance {
  return {
    effectiveness: 0,
    heat: 0,
    leavingDryBulb: 0,
    leavingFilament: 0,
    airReynolds: 0,
    airCoefficient: 0,
    finEfficiency: 1,
    surfaceEfficiency: 1,
    condensingCoefficient: 0,
    conductance: 0,
    coldestTubeWall: 0,
  };
}

/**
 * Room for `solveSteamCoil`.
 *
 * @returns record: caller-owned numbers
 * @example createSteamWork().inlet.liquidFlow // 0
 * @source definition
 */
export function createSteamWork(): SteamWork {
  return {
    inlet: {
      dryAirFlow: 0,
      dryBulb: 0,
      humidityRatio: 0,
      pressure: 0,
      coldestFilament: 0,
      liquid: noLiquid,
      liquidFlow: 0,
      liquidTemperature: 0,
    },
    work: createCoilWork(),
    filmDifference: 5,
    lossSlope: -1,
  };
}

/**
 * Solves a steam coil whose whole surface is active: distributing tubes bring steam of one temperature to every tube end,
 * so that the air's approach is exponential. The film's temperature difference is found by iteration.
 *
 * @param coil record: the coil
 * @param dryAirFlow kg/s, 0…1000: of dry air over the whole face
 * @param dryBulb °C, -60…90: entering
 * @param humidityRatio kg/kg, 0…0.05: entering
 * @param filament °C, -60…90: coldest filament of the entering air
 * @param steamTemperature °C, 0…203: of saturated steam in the tubes
 * @param room record: from `createSteamWork`
 * @param out record: receives the performance
 * @outside keeps answering; without airflow no heat passes
 * @example (() => { const out = createSteamPerformance(); solveSteamCoil({}, 0, -10, 0.001, -10, 105, createSteamWork(), out);
 *   return out.heat; })() // 0
 * @source derived-here isothermal surface; film by nbsir-84-2996
 */
export function solveSteamCoil(
  coil: Coil,
  dryAirFlow: number,
  dryBulb: number,
  humidityRatio: number,
  filament: number,
  steamTemperature: number,
  room: SteamWork,
  out: SteamPerformance,
): void {
  const { inlet, work } = room;
  const { c } = work;
  out.effectiveness = 0;
  out.heat = 0;
  out.conductance = 0;
  out.leavingDryBulb = dryBulb;
  out.leavingFilament = filament;
  out.coldestTubeWall = steamTemperature;
  if (!(dryAirFlow > 0)) return;
  inlet.dryAirFlow = dryAirFlow;
  inlet.dryBulb = dryBulb;
  inlet.humidityRatio = humidityRatio;
  inlet.liquidTemperature = steamTemperature;
  setAirSide(coil, inlet, c);
  const rows = coil.rows;
  const outside = 1 / (c.airCoefficient * c.surfaceEfficiency * coil.outsideRow * rows);
  const behind = (coil.wallRow + coil.foulingRow) / rows;
  const area = coil.insideRow * rows;
  const diameter = coil.bank.tubeInsideDiameter;
  const perFilm = coil.surface.tubeHeatFactor * area;
  const atOneKelvin = condensingCoefficient(steamTemperature, diameter, 1);
  let difference = room.filmDifference;
  let film = 0;
  for (let k = 0; k < 20; k++) {
    out.condensingCoefficient = atOneKelvin / Math.sqrt(Math.sqrt(difference));
    film = 1 / (perFilm * out.condensingCoefficient);
    out.conductance = 1 / (outside + behind + film);
    out.effectiveness = 1 - Math.exp(-out.conductance / c.airCapacity);
    out.heat = out.effectiveness * c.airCapacity * (steamTemperature - dryBulb);
    // The film's difference at this heat, d = q d^¼ / (h₁ A); the heat itself hardly hangs on it.
    const atHeat = Math.abs(out.heat) / (perFilm * atOneKelvin);
    const next = Math.max(leastDifference, atHeat * Math.cbrt(atHeat));
    const change = Math.abs(next - difference);
    difference = next;
    if (change < 1e-9 * next) break;
  }
  room.filmDifference = difference;
  out.leavingDryBulb = dryBulb + out.heat / c.airCapacity;
  out.leavingFilament = filament + out.effectiveness * (steamTemperature - filament);
  out.airReynolds = c.airReynolds;
  out.airCoefficient = c.airCoefficient;
  out.finEfficiency = c.finEfficiency;
  out.surfaceEfficiency = c.surfaceEfficiency;
  // At the entering face, where the coldest filament passes: the film's share of the whole resistance.
  out.coldestTubeWall = steamTemperature - (steamTemperature - filament) * film * out.conductance;
}
