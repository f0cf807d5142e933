import { metresPerInch, metresPerSecondPerFpm, pascalsPerInchOfWater } from "#quantity/inch-pound";

/** m/s of feet a minute: limits stand in the sources so. */
export function fpm(value: number): number {
  return value * metresPerSecondPerFpm;
}

/** m of inches. */
export function inches(value: number): number {
  return value * metresPerInch;
}

/** Pa of inches of water. */
export function inchesOfWater(value: number): number {
  return value * pascalsPerInchOfWater;
}

/** °C of °F. */
export function fahrenheit(value: number): number {
  return (value - 32) / 1.8;
}
