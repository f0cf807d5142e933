import { cubicMetresPerSecondPerCfm, pascalsPerInchOfWater, wattsPerHorsepower } from "#quantity/inch-pound";
import { standardAirDensity } from "#quantity/standard-air";
import { fanEnergyIndex as reference } from "#standard/fan-energy-index";

/**
 * Shaft power of the reference fan of the fan energy index.
 *
 * @param flow m³/s, 0.05…200: actual flow of one fan
 * @param pressure Pa, 0…8000: fan total pressure, or static pressure for a fan without outlet duct
 * @param density kg/m³, 0.5…1.5: at the inlet
 * @param onStatic flag, yes or no: pressure is static and so is the reference
 * @returns W: reference shaft power
 * @outside the formula goes on
 * @example referenceFanShaftPower(10000 * 0.3048 ** 3 / 60, 4 * 249.08891, 0.075 * 0.45359237 / 0.3048 ** 3, false) / 745.69987 // 10.773 ± 1e-3
 * @source amca-208; form read in doe-measur
 */
export function referenceFanShaftPower(flow: number, pressure: number, density: number, onStatic: boolean): number {
  const { flowConstant, pressureConstant, airPowerDivisor, totalEfficiency, staticEfficiency } = reference;
  const cfm = flow / cubicMetresPerSecondPerCfm;
  const inches = pressure / pascalsPerInchOfWater;
  const loading = inches + pressureConstant * (density / standardAirDensity);
  const efficiency = onStatic ? staticEfficiency : totalEfficiency;
  return (((cfm + flowConstant) * loading) / (airPowerDivisor * efficiency)) * wattsPerHorsepower;
}

/**
 * Electric power of the reference fan with its reference belt drive and motor.
 *
 * @param shaftPower W, 50…500000: of the reference fan
 * @returns W: reference electric power
 * @outside the formula goes on; above 185 kW the motor's efficiency is held
 * @example referenceFanElectricPower(10.773 * 745.69987) // 9160 ± 2
 * @source amca-208; form read in doe-measur
 */
export function referenceFanElectricPower(shaftPower: number): number {
  const { transmission, motor } = reference;
  const horsepower = shaftPower / wattsPerHorsepower;
  const passed = transmission.factor * (horsepower / (horsepower + transmission.offset)) ** transmission.exponent;
  const kilowatts = shaftPower / passed / 1000;
  const logarithm = Math.log10(kilowatts);
  const efficiency =
    kilowatts > motor.limit ? motor.above : motor.coefficients.reduce((sum, each) => sum * logarithm + each, 0);
  return shaftPower / passed / efficiency;
}

/**
 * Fan energy index: reference electric power over that of the fan at the same flow and pressure. Energy codes ask 1.00.
 *
 * @param flow m³/s, 0.05…200: actual flow of one fan
 * @param pressure Pa, 0…8000: fan total pressure, or static pressure for a fan without outlet duct
 * @param density kg/m³, 0.5…1.5: at the inlet
 * @param onStatic flag, yes or no: pressure is static and so is the reference
 * @param electricPower W, above 0: what the fan takes from the mains
 * @returns 1: fan energy index
 * @outside the formula goes on
 * @example fanEnergyIndex(129691 * 0.3048 ** 3 / 60, 17 * 249.08891, 0.07024 * 0.45359237 / 0.3048 ** 3, false, 450000) // 0.96787 ± 1e-5
 * @source amca-208; form read in doe-measur
 */
export function fanEnergyIndex(
  flow: number,
  pressure: number,
  density: number,
  onStatic: boolean,
  electricPower: number,
): number {
  return referenceFanElectricPower(referenceFanShaftPower(flow, pressure, density, onStatic)) / electricPower;
}
