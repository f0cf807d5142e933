import { metresPerSecondPerFpm } from "#quantity/inch-pound";

/** m/s of feet a minute: limits stand in the sources so. */
export function fpm(value: number): number {
  return value * metresPerSecondPerFpm;
}

/** °C of °F. */
export function fahrenheit(value: number): number {
  return (value - 32) / 1.8;
}
