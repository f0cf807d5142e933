import { metresPerSecondPerFpm, pascalsPerInchOfWater } from "#quantity/inch-pound";
import type { SizeLimits } from "./size-limits.ts";

const fpm = metresPerSecondPerFpm;
/** placeholder until profiles */
export const commonLimits: SizeLimits = {
  hoodVelocity: 500 * fpm,
  louverOnsetShare: 0.8,
  damperVelocity: 1500 * fpm,
  filterVelocity: 500 * fpm,
  heatingVelocity: 900 * fpm,
  coolingVelocity: 450 * fpm,
  coolingAirPressure: 1.0 * pascalsPerInchOfWater,
  coolingWaterPressure: 60000,
  coolingFins: 12 / 0.0254,
  coolingRows: 10,
  panPitch: 1.22,
  dischargeVelocity: 1800 * fpm,
  fanPressureToPeak: 0.9,
  leakageClass: 3,
  accessLength: 0.762,
  walkInBeforeCoil: false,
  faceAndBypass: true,
};
