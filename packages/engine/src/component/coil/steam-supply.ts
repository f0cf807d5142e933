import { steamLatentHeat, steamSaturationTemperature } from "#fluid/steam";
import type { Coil } from "./coil.ts";
import { type SteamPerformance, type SteamWork, solveSteamCoil } from "./steam-coil.ts";
import { type SteamDistribution, type SteamDistributor, steamDistribution } from "./steam-distribution.ts";

/** The air that enters a coil on steam. */
export interface SteamCoilAir {
  readonly dryBulb: number;
  readonly humidityRatio: number;
  readonly coldestFilament: number;
}

/**
 * Solves a coil with its valve open on steam of a pressure at its connection. What inner tubes and orifices take off it
 * follows from the condensate, which follows from the temperature in the tubes; the loss found last is where it starts.
 *
 * @param coil record: the coil
 * @param distributor record: its inner tubes
 * @param dryAirFlow kg/s, 0…1000: of dry air over the whole face
 * @param air record: that enters
 * @param pressure Pa, 20000…1700000: absolute, of the steam at the connection
 * @param room record: from `createSteamWork`
 * @param distribution record: receives how the steam gets into the tubes
 * @param out record: receives the performance
 * @returns °C: of the steam in the tubes
 * @outside a loss of more than four fifths of the pressure counts as that; without airflow nothing is lost
 * @example solveSteamSupply({}, {}, 0, { dryBulb: -10, humidityRatio: 0, coldestFilament: -10 }, 101325, { inlet: {}, work: { c: {} } },
 *   { loss: 0 }, {}) // 99.97 ± 0.02
 * @source derived-here fixed point of pressure and condensate
 */
export function solveSteamSupply(
  coil: Coil,
  distributor: SteamDistributor,
  dryAirFlow: number,
  air: SteamCoilAir,
  pressure: number,
  room: SteamWork,
  distribution: SteamDistribution,
  out: SteamPerformance,
): number {
  const { dryBulb, humidityRatio, coldestFilament } = air;
  let inTubes = Math.max(0.5 * pressure, pressure - distribution.loss);
  let temperature = steamSaturationTemperature(inTubes);
  let before = Number.NaN;
  let missBefore = Number.NaN;
  for (let k = 0; k < 40; k++) {
    solveSteamCoil(coil, dryAirFlow, dryBulb, humidityRatio, coldestFilament, temperature, room, out);
    steamDistribution(distributor, Math.max(0, out.heat) / steamLatentHeat(inTubes), inTubes, distribution);
    const next = Math.max(0.2 * pressure, pressure - distribution.loss);
    const miss = next - inTubes;
    if (Math.abs(miss) < 1e-4) break;
    const seen = (miss - missBefore) / (inTubes - before);
    if (seen < -0.7 && seen > -1.3) room.lossSlope = seen;
    before = inTubes;
    missBefore = miss;
    // Half a step at a time where the drop is large: it falls as the pressure does.
    inTubes += distribution.loss > 0.1 * pressure ? miss / 2 : -miss / room.lossSlope;
    temperature = steamSaturationTemperature(inTubes);
  }
  return temperature;
}
