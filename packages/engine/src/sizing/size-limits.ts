import { metresPerInch, metresPerSecondPerFpm, pascalsPerInchOfWater } from "#quantity/inch-pound";
import type { Profile } from "#rule/profile";
import { rules } from "#rule/rules";

/** Limits to which a unit is sized: those of the owner's rules, and customs of sizing that no rule holds. */
export interface SizeLimits {
  /** m/s up through the hood's opening; and on a winter day where snow is heavy or drifts. */
  readonly hoodVelocity: number;
  readonly hoodVelocityInSnow: number;
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

const fpm = metresPerSecondPerFpm;

/** Customs of sizing where no rule sets a limit; common practice, no source. */
const customs = {
  coolingAirPressure: 1 * pascalsPerInchOfWater,
  coolingWaterPressure: 60_000,
  coolingFins: 12 / metresPerInch,
  coolingRows: 10,
  dischargeVelocity: 1800 * fpm,
  leakageClass: 3,
  accessLength: 30 * metresPerInch,
  walkInBeforeCoil: false,
  faceAndBypass: true,
} as const;

/** The limits of an owner's profile. */
export function sizeLimitsOf(profile: Profile): SizeLimits {
  return {
    ...customs,
    hoodVelocity: ruleLimit(profile, "intake hood velocity"),
    hoodVelocityInSnow: ruleLimit(profile, "hood velocity in snow", 300 * fpm),
    louverOnsetShare: ruleLimit(profile, "louver margin to its onset"),
    damperVelocity: ruleLimit(profile, "outside damper velocity"),
    filterVelocity: ruleLimit(profile, "filter panel velocity"),
    heatingVelocity: ruleLimit(profile, "heating face velocity"),
    coolingVelocity: ruleLimit(profile, "cooling face velocity"),
    panPitch: ruleLimit(profile, "coil height over a pan"),
    fanPressureToPeak: ruleLimit(profile, "fan pressure below its peak"),
  };
}

/**
 * The owner's own limit of a rule, or the rule's; `worked` where the rule works its limit out for each unit. Sizing keeps the
 * rule's limit also where the owner does not ask it: a size needs some limit.
 *
 * @throws RangeError when there is no such rule, or it has no limit
 */
function ruleLimit(profile: Profile, id: string, worked?: number): number {
  const own = profile.limits.get(id)?.limit;
  const limit = rules.find((rule) => rule.id === id)?.limit;
  const found = own ?? (typeof limit === "number" ? limit : limit && worked);
  if (found === undefined) throw new RangeError(`sizing asks for a limit of "${id}", which no rule has`);
  return found;
}
