/** Limits to which a unit is sized; an owner's profile may tighten each. */
export interface SizeLimits {
  /** m/s up through the hood's opening. */
  readonly hoodVelocity: number;
  /** Free-area velocity of the louver over the one at which water begins to come through. */
  readonly louverOnsetShare: number;
  /** m/s on the gross face of a damper. */
  readonly damperVelocity: number;
  /** m/s on the faces of filters. */
  readonly filterVelocity: number;
  /** m/s on the face of a heating coil. */
  readonly heatingVelocity: number;
  /** m/s on the face of the cooling coil. */
  readonly coolingVelocity: number;
  /** Pa of the cooling coil, wet. */
  readonly coolingAirPressure: number;
  /** Pa of water through the cooling coil. */
  readonly coolingWaterPressure: number;
  /** 1/m, densest fins of the cooling coil. */
  readonly coolingFins: number;
  readonly coolingRows: number;
  /** m of finned height above one pan. */
  readonly panPitch: number;
  /** m/s in the discharge opening. */
  readonly dischargeVelocity: number;
  /** Fan static pressure over its peak. */
  readonly fanPressureToPeak: number;
  readonly leakageClass: number;
  /** m: clear length of a walk-in access. */
  readonly accessLength: number;
  /** A walk-in access before the cooling coil, rather than a spray gap. */
  readonly walkInBeforeCoil: boolean;
  /** Steam coils as face and bypass, steam full on. */
  readonly faceAndBypass: boolean;
}
