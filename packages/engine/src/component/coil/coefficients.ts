import { dryColburn, wetHeatFactorOf } from "#component/finned-surface/family";
import { finEfficiency, surfaceEfficiency } from "#component/finned-surface/fin-efficiency";
import { airPrandtl, airViscosity } from "#fluid/air-transport";
import { type Liquid, liquidConductivity, liquidSpecificHeat, liquidViscosity } from "#fluid/liquid";
import { moistAirSpecificHeat } from "#fluid/moist-air";
import type { Coil } from "./coil.ts";
import type { Coefficients, CoilInlet } from "./performance.ts";
import { tubeNusselt, turbulatedNusselt } from "./tube-side.ts";

/**
 * Sets what holds on the air side over one solution: capacity, Reynolds number, dry coefficient, wet factor, efficiencies.
 *
 * @param coil record: the coil
 * @param inlet record: air and liquid that enter
 * @param c record: receives the coefficients
 * @example (() => { const c = {}; setAirSide({ surface: { tested: [{ reynolds: 100, colburn: 0.01 }, { reynolds: 9e4, colburn: 0.01 }],
 *   heatFactor: 1, wetHeatFactor: 1 }, bank: { freeFlowArea: 1, collarDiameter: 0.016, finLength: 0.016, finArea: 0.9, outsideArea: 1 },
 *   finConductivity: 220, finThickness: 0.00016 }, { dryAirFlow: 5, dryBulb: 20, humidityRatio: 0, liquidTemperature: 10 }, c);
 *   return c.airCoefficient; })() // 63.2 ± 0.5
 * @source definition j = St Pr^(2/3)
 */
export function setAirSide(coil: Coil, inlet: CoilInlet, c: Coefficients): void {
  const { bank, surface } = coil;
  c.lanes = 1;
  const middle = (inlet.dryBulb + inlet.liquidTemperature) / 2;
  c.dryAirFlow = inlet.dryAirFlow;
  c.specificHeat = moistAirSpecificHeat(inlet.humidityRatio);
  c.airCapacity = inlet.dryAirFlow * c.specificHeat;
  const massFlux = (inlet.dryAirFlow * (1 + inlet.humidityRatio)) / bank.freeFlowArea;
  c.airReynolds = (massFlux * bank.collarDiameter) / airViscosity(middle);
  const prandtl = airPrandtl(middle);
  const { given } = coil;
  const stanton = given !== undefined ? 0 : dryColburn(surface, bank, c.airReynolds) / Math.cbrt(prandtl * prandtl);
  c.airCoefficient = given?.air ?? (stanton * c.airCapacity) / bank.freeFlowArea;
  c.wetFactor = inlet.liquidTemperature < inlet.dryBulb ? wetHeatFactorOf(surface, bank, c.airReynolds) : 1;
  c.finEfficiency = finEfficiency(c.airCoefficient, coil.finConductivity, coil.finThickness, bank.finLength);
  c.surfaceEfficiency = surfaceEfficiency(bank.finArea / bank.outsideArea, c.finEfficiency);
}

/**
 * Sets what changes with the moisture of the air before a row: its capacity, and how near it comes to the row's wet surface.
 *
 * @param coil record: the coil
 * @param humidityRatio kg/kg, 0…0.3: of the air before the row
 * @param c record: receives capacity, transfer units and reach
 * @outside keeps answering
 * @example (() => { const c = { dryAirFlow: 1, airCoefficient: 50, wetFactor: 1.2 }; setRowAir({ outsideRow: 10 }, 0.01, c);
 *   return c.wetTransfers; })() // 0.585594 ± 1e-6
 * @source definition
 */
export function setRowAir(coil: Coil, humidityRatio: number, c: Coefficients): void {
  c.airCapacity = c.dryAirFlow * moistAirSpecificHeat(humidityRatio);
  c.wetTransfers = (c.airCoefficient * c.wetFactor * coil.outsideRow) / c.airCapacity;
  c.wetSensibleReach = 1 - Math.exp(-c.wetTransfers);
}

/**
 * Sets what holds on the liquid side: capacity at the mean temperature, the inside coefficient as a straight line between
 * inlet and outlet.
 *
 * @param coil record: the coil
 * @param inlet record: air and liquid that enter
 * @param leaving °C, -40…150: liquid leaving
 * @param c record: receives the coefficients
 * @outside keeps answering
 * @example (() => { const c = {}; setLiquidSide({ circuits: 1, bore: 0.000167529, finnedLength: 1e9, turbulators: false,
 *   surface: { tubeHeatFactor: 1 }, bank: { tubeInsideDiameter: 0.014605 } }, { liquid: { substance: "water", massFraction: 0 },
 *   liquidFlow: 0.167481, liquidTemperature: 10 }, 10, c); return c.tubeCoefficient; })() // 3911 ± 20
 * @source gnielinski-2013
 */
export function setLiquidSide(coil: Coil, inlet: CoilInlet, leaving: number, c: Coefficients): void {
  const cold = inlet.liquidTemperature;
  const warm = leaving;
  c.liquidCapacity = inlet.liquidFlow * liquidSpecificHeat(inlet.liquid, (cold + warm) / 2);
  c.tubeCoefficient = tubeCoefficient(coil, inlet.liquid, inlet.liquidFlow, cold);
  const difference = warm - cold;
  c.tubeCoefficientSlope =
    Math.abs(difference) > 0.05
      ? (tubeCoefficient(coil, inlet.liquid, inlet.liquidFlow, warm) - c.tubeCoefficient) / difference
      : 0;
}

/**
 * Heat transfer coefficient inside a coil's tubes.
 *
 * @param coil record: the coil
 * @param liquid record: what flows
 * @param massFlow kg/s, 0.0001…1000: of all circuits
 * @param temperature °C, -40…150: of the liquid
 * @returns W/m²K: on the area of the bore
 * @outside keeps answering
 * @example tubeCoefficient({ circuits: 1, bore: 0.000167529, finnedLength: 1e9, turbulators: false, surface: { tubeHeatFactor: 1 },
 *   bank: { tubeInsideDiameter: 0.014605 } }, { substance: "water", massFraction: 0 }, 0.167481, 10) // 3911 ± 20
 * @source gnielinski-2013
 */
export function tubeCoefficient(coil: Coil, liquid: Liquid, massFlow: number, temperature: number): number {
  if (coil.given !== undefined) return coil.given.tube;
  const diameter = coil.bank.tubeInsideDiameter;
  const viscosity = liquidViscosity(liquid, temperature);
  const conductivity = liquidConductivity(liquid, temperature);
  const reynolds = (massFlow * diameter) / (coil.circuits * coil.bore * viscosity);
  const prandtl = (liquidSpecificHeat(liquid, temperature) * viscosity) / conductivity;
  const bare = tubeNusselt(reynolds, prandtl, diameter / coil.finnedLength);
  const nusselt = coil.turbulators ? turbulatedNusselt(bare, reynolds, prandtl) : bare;
  return (coil.surface.tubeHeatFactor * nusselt * conductivity) / diameter;
}

/**
 * Empties the sums of a march.
 *
 * @param c record: the sums
 * @example (() => { const c = { heat: 5 }; clearSums(c); return c.heat; })() // 0
 * @source definition
 */
export function clearSums(c: Coefficients): void {
  c.heat = 0;
  c.sensibleHeat = 0;
  c.condensate = 0;
  c.condensateEnthalpy = 0;
  c.wetRows = 0;
  c.wetEfficiency = 0;
}
