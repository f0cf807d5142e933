import {
  steamLatentHeat,
  steamLiquidConductivity,
  steamLiquidSpecificVolume,
  steamLiquidViscosity,
  steamSaturationPressure,
  steamSaturationTemperature,
} from "#fluid/steam";
import { chebyshevFit, evaluateFit, type Fit } from "#numerics/chebyshev";

/** m/s², and Pa per metre of standing condensate near 90 °C. */
const gravity = 9.80665;
const condensateWeight = 965 * gravity;

/** K across a film of condensate below which none is counted. */
export const leastDifference = 0.1;

const COLDEST = 10;
const HOTTEST = 203;

/** What the film takes from the condensate along saturation, [k³ρ²g h_fg/μ]^¼: made when the module is read; its error is bounded in the tests. */
const FILM: Fit = chebyshevFit(filmGroup, COLDEST, HOTTEST, 16);

function filmGroup(temperature: number): number {
  const pressure = steamSaturationPressure(temperature);
  const conductivity = steamLiquidConductivity(pressure);
  const density = 1 / steamLiquidSpecificVolume(pressure);
  const group =
    (conductivity ** 3 * density ** 2 * gravity * steamLatentHeat(pressure)) / steamLiquidViscosity(pressure);
  return Math.sqrt(Math.sqrt(group));
}

/**
 * Coefficient of steam that condenses inside a tube and drains along its bottom, by Nusselt's film in the form that the
 * research routine uses.
 *
 * @param temperature °C, 1…203: of saturated steam
 * @param diameter m, 0.005…0.05: bore that the film lies on
 * @param difference K, 0.1…50: steam less wall
 * @returns W/m²K: on the bore
 * @outside differences below 0.1 K count as 0.1 K; temperatures are held within 10…203 °C
 * @example condensingCoefficient(100, 0.0236, 5) // 13000 ± 800
 * @source nbsir-84-2996 steam coil routine, 0.612 [k³ρ²g h_fg/(μ D ΔT)]^¼
 */
export function condensingCoefficient(temperature: number, diameter: number, difference: number): number {
  const film = evaluateFit(FILM, Math.min(HOTTEST, Math.max(COLDEST, temperature)));
  return (0.612 * film) / Math.sqrt(Math.sqrt(diameter * Math.max(leastDifference, difference)));
}

/**
 * Temperature that steam must have for a coil to reach its set point: what a modulating valve throttles to.
 *
 * @param entering °C, -60…60: air
 * @param leaving °C, -60…90: air wanted
 * @param effectiveness share, 0.01…1: air rise over steam less entering air with the whole surface active
 * @returns °C: steam temperature needed
 * @outside linear, keeps answering
 * @example steamTemperatureNeeded(21.1111, 26.6667, 80 / 266) * 1.8 + 32 // 103 ± 0.5
 * @source steam-stall-example constant effectiveness at constant airflow; published 0…80 °F example at 25 psig
 */
export function steamTemperatureNeeded(entering: number, leaving: number, effectiveness: number): number {
  return entering + (leaving - entering) / effectiveness;
}

/**
 * Entering-air temperature above which a throttled coil stalls: the steam it needs is then no warmer than the condensate
 * main can be overcome with, and condensate stands in the tubes.
 *
 * @param leaving °C, -20…90: air wanted
 * @param effectiveness share, 0.01…0.99: air rise over steam less entering air with the whole surface active
 * @param drainTemperature °C, 60…180: saturation temperature of the pressure that pushes condensate out
 * @returns °C: entering air at which stall begins
 * @outside keeps answering
 * @example stallAirTemperature(80, 80 / 266.8, 212) // 23.6 ± 0.4
 * @source steam-stall-example 0…80 °F coil at 25 psig stalls above 23.6 °F
 */
export function stallAirTemperature(leaving: number, effectiveness: number, drainTemperature: number): number {
  return (leaving - effectiveness * drainTemperature) / (1 - effectiveness);
}

/**
 * Steam temperature at which condensate just leaves a coil: saturation at the return's pressure less what the standing
 * leg between coil and trap adds.
 *
 * @param returnPressure Pa, 20000…1700000: absolute pressure of the return at the trap, lift included
 * @param dropLeg m, 0…3: height of condensate between coil outlet and trap
 * @returns °C: saturation temperature
 * @outside pressures below 1 kPa are held there
 * @example drainTemperature(101325, 0) // 99.97 ± 0.01
 * @example drainTemperature(101325, 0.3556) // 99.1 ± 0.1
 * @source definition weight of the leg
 */
export function drainTemperature(returnPressure: number, dropLeg: number): number {
  return steamSaturationTemperature(Math.min(1.7e6, Math.max(1000, returnPressure - condensateWeight * dropLeg)));
}

/**
 * Pressure that a standing leg of condensate adds.
 *
 * @param height m, 0…10: of the leg
 * @returns Pa: pressure difference
 * @outside linear
 * @example dropLegPressure(14 * 0.0254) / 6894.757 // 0.49 ± 0.02
 * @source steam-coil-guide a 14-in. leg gives about half a psi
 */
export function dropLegPressure(height: number): number {
  return condensateWeight * height;
}
