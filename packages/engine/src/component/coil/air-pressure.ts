import { dryFriction, wetFrictionFactorOf } from "#component/finned-surface/family";
import { airViscosity } from "#fluid/air-transport";
import { density } from "#fluid/moist-air";
import type { Coil } from "./coil.ts";

/**
 * Total-pressure loss of air through a coil's dry core: friction on the narrowest passage at mean density, and what the
 * change of density through the core takes.
 *
 * @param coil record: the coil
 * @param dryAirFlow kg/s, 0…1000: of dry air over the whole face
 * @param humidityRatio kg/kg, 0…0.05: of the entering air
 * @param entering °C, -50…90: dry bulb
 * @param leaving °C, -50…150: dry bulb
 * @param pressure Pa, 50000…110000: absolute pressure
 * @returns Pa: dry loss
 * @outside keeps answering
 * @example dryAirPressureDrop({ surface: { tested: [{ reynolds: 100, friction: 0.0295148 }, { reynolds: 9e4, friction: 0.0295148 }],
 *   frictionFactor: 1 }, bank: { freeFlowArea: 1, outsideArea: 401.61, collarDiameter: 0.016, freeFlowShare: 0.5386 } },
 *   5.4225, 0.01, 26.2, 26.2, 101325) // 151 ± 3
 * @source kays-london-1984 core loss with entrance and exit losses in the friction factor
 */
export function dryAirPressureDrop(
  coil: Coil,
  dryAirFlow: number,
  humidityRatio: number,
  entering: number,
  leaving: number,
  pressure: number,
): number {
  if (!(dryAirFlow > 0)) return 0;
  const { bank } = coil;
  const massFlux = (dryAirFlow * (1 + humidityRatio)) / bank.freeFlowArea;
  const friction = dryFriction(coil.surface, bank, airReynolds(coil, massFlux, (entering + leaving) / 2));
  const before = density(entering, humidityRatio, pressure);
  const after = density(leaving, humidityRatio, pressure);
  const core = ((bank.outsideArea / bank.freeFlowArea) * friction) / (before + after);
  const speedUp = ((1 + bank.freeFlowShare ** 2) * (1 / after - 1 / before)) / 2;
  return massFlux * massFlux * (core + speedUp);
}

/**
 * Ratio of air-side loss wet to dry of a coil at a flow.
 *
 * @param coil record: the coil
 * @param dryAirFlow kg/s, 0…1000: of dry air over the whole face
 * @param temperature °C, -50…90: mean of the air
 * @returns factor: wet over dry, 1 or more
 * @outside see `wetFrictionRatio`
 * @example wetToDry({ surface: { wetFrictionFactor: 1.5 }, bank: { freeFlowArea: 1, collarDiameter: 0.016 } }, 5, 20) // 1.5
 * @source common-practice
 */
export function wetToDry(coil: Coil, dryAirFlow: number, temperature: number): number {
  const massFlux = dryAirFlow / coil.bank.freeFlowArea;
  return wetFrictionFactorOf(coil.surface, coil.bank, airReynolds(coil, massFlux, temperature));
}

function airReynolds(coil: Coil, massFlux: number, temperature: number): number {
  return (massFlux * coil.bank.collarDiameter) / airViscosity(temperature);
}
