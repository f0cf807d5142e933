import { metresPerInch, metresPerSecondPerFpm, pascalsPerInchOfWater } from "#quantity/inch-pound";
import { mayDecide } from "#rule/contract";
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
  readonly steamRows: number;
  /** 1/m, densest fins of a steam coil. */
  readonly steamFins: number;
  /** m/s on the face of the cooling coil. */
  readonly coolingVelocity: number;
  /** Pa of the cooling coil, wet. */
  readonly coolingAirPressure: number;
  /** Pa of water through the cooling coil, and m/s in its tubes. */
  readonly coolingWaterPressure: number;
  readonly tubeVelocity: number;
  /** 1/m, densest fins of the cooling coil. */
  readonly coolingFins: number;
  readonly coolingRows: number;
  /** m of finned height above one pan. */
  readonly panPitch: number;
  /** m/s in the discharge opening. */
  readonly dischargeVelocity: number;
  /** Fan static pressure over its peak. */
  readonly fanPressureToPeak: number;
  readonly fanEnergyIndex: number;
  /** W of each motor of an array, and of what a fan's motor gives over what it has to. */
  readonly arrayMotorPower: number;
  readonly motorReserve: number;
  readonly leakageClass: number;
  /** m between supports under the rail. */
  readonly supportSpacing: number;
  /** m: clear length of a walk-in access. */
  readonly accessLength: number;
  /** A walk-in access before the cooling coil, rather than a spray gap. */
  readonly walkInBeforeCoil: boolean;
  /** Steam coils as face and bypass, steam full on. */
  readonly faceAndBypass: boolean;
  /** How far the filters give way to the unit's pressure: 0 not at all. */
  readonly easyFilters: number;
  /** Limits of which sources contradict one another, or that are only remembered, give way: what site or road takes is too little. */
  readonly relaxed: boolean;
  /** m² of clear cross-section at least; m of clear width and height at most. */
  readonly leastArea: number;
  readonly mostWidth: number;
  readonly mostHeight: number;
}

/** The limits while a unit is sized: what is judged of a finished draft tightens them. */
export type Aims = { -readonly [Name in keyof SizeLimits]: SizeLimits[Name] };

const fpm = metresPerSecondPerFpm;

/** Customs of sizing where no rule sets a limit; common practice, no source. */
const customs = {
  coolingAirPressure: 1 * pascalsPerInchOfWater,
  dischargeVelocity: 1800 * fpm,
  motorReserve: 1,
  accessLength: 30 * metresPerInch,
  walkInBeforeCoil: false,
  faceAndBypass: true,
  easyFilters: 0,
  relaxed: false,
  leastArea: 0,
  mostWidth: Number.POSITIVE_INFINITY,
  mostHeight: Number.POSITIVE_INFINITY,
} as const;

/** m of finned height over a pan, and m/s on a wet face, where no rule decides and room is short; common practice. */
const relaxedPitch = 72 * metresPerInch;
const relaxedVelocity = 550 * fpm;

/** The limits where what the owner leaves open gives way. */
export function relaxedLimitsOf(profile: Profile): SizeLimits {
  const limits = sizeLimitsOf(profile);
  return {
    ...limits,
    relaxed: true,
    panPitch: decidedLimit(profile, "coil height over a pan", relaxedPitch),
    coolingVelocity: decidedLimit(profile, "cooling face velocity", relaxedVelocity),
    louverOnsetShare: decidedLimit(profile, "louver margin to its onset", 0.98),
  };
}

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
    steamRows: decidedLimit(profile, "steam coil rows", 4),
    steamFins: decidedLimit(profile, "steam coil fins", 12 / metresPerInch),
    coolingVelocity: ruleLimit(profile, "cooling face velocity"),
    coolingWaterPressure: decidedLimit(profile, "water pressure drop", 60_000),
    tubeVelocity: decidedLimit(profile, "water velocity in the tubes", 2.1),
    coolingFins: decidedLimit(profile, "cooling coil fins", 12 / metresPerInch),
    coolingRows: decidedLimit(profile, "cooling coil rows", 10),
    panPitch: ruleLimit(profile, "coil height over a pan"),
    fanPressureToPeak: ruleLimit(profile, "fan pressure below its peak"),
    fanEnergyIndex: decidedLimit(profile, "fan energy index", 0),
    arrayMotorPower: decidedLimit(profile, "motors of an array", Number.POSITIVE_INFINITY),
    leakageClass: Math.min(3, ruleLimit(profile, "casing leakage class")),
    supportSpacing: decidedLimit(profile, "casing supports", Number.POSITIVE_INFINITY),
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
  const limit = ruleOf(id).limit;
  const found = own ?? (typeof limit === "number" ? limit : worked);
  if (found === undefined) throw new RangeError(`sizing asks for a limit of "${id}", which has none`);
  return found;
}

/** The limit of a rule where missing it would fail the unit under this profile; else what is customary. */
function decidedLimit(profile: Profile, id: string, custom: number): number {
  const rule = ruleOf(id);
  const own = profile.limits.get(id)?.limit;
  if (own !== undefined) return own;
  const isAsked = profile.also.has(id) || (rule.byDefault !== false && mayDecide(rule));
  const isLetGo = profile.without.has(id) || profile.waivers.some((each) => each.rule === id);
  return isAsked && !isLetGo ? ruleLimit(profile, id) : custom;
}

function ruleOf(id: string): (typeof rules)[number] {
  const found = rules.find((rule) => rule.id === id);
  if (found === undefined) throw new RangeError(`sizing asks for a limit of "${id}", which is no rule`);
  return found;
}
