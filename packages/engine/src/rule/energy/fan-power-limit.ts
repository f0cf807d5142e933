import { cubicMetresPerSecondPerCfm, pascalsPerInchOfWater, wattsPerHorsepower } from "#quantity/inch-pound";
import type { FanDesign } from "#section/fan/design";
import type { FanSectionRating } from "#section/fan/rate";
import type { FilterBankDesign } from "#section/filter-bank/design";
import { type FilterBankRating, filterLossAt } from "#section/filter-bank/rate";
import { type FanPowerCredit, fanPowerLimit } from "#standard/fan-power-limit";
import type { UnitRating } from "#unit/rating";
import type { Unit } from "#unit/unit";
import { sectionWithRole } from "#unit/walk";

/** A credit that a unit takes, or a deduction that it suffers. */
export interface TakenCredit {
  readonly name: string;
  /** Pa, and the shaft power (W) that it allows. */
  readonly pressure: number;
  readonly power: number;
}

/** The fans of a unit against the fan power limit of the energy standard. */
export interface FanPowerVerdict {
  /** The airflow varies in operation. */
  readonly variable: boolean;
  /** m³/s. */
  readonly flow: number;
  readonly credits: readonly TakenCredit[];
  /** W of shaft power, credits included, and of nameplate power without credits. */
  readonly shaftLimit: number;
  readonly nameplateLimit: number;
  /** W of this unit's own fans: shaft power at the point in hand, nameplate. */
  readonly shaftPower: number;
  readonly nameplate: number;
  readonly source: string;
  readonly certainty: string;
}

/** W of shaft power that a pressure credit (Pa) allows at a flow (m³/s) through its device. */
export function creditPower(pressure: number, flow: number): number {
  const hp = ((pressure / pascalsPerInchOfWater) * (flow / cubicMetresPerSecondPerCfm)) / fanPowerLimit.divisor;
  return hp * wattsPerHorsepower;
}

/** W of shaft power and of nameplate power that the standard allows a flow (m³/s) before any credit. */
export function allowedFanPower(
  flow: number,
  variable: boolean,
): { readonly shaft: number; readonly nameplate: number } {
  const { shaft, nameplate } = variable ? fanPowerLimit.variable : fanPowerLimit.constant;
  const cfm = flow / cubicMetresPerSecondPerCfm;
  return { shaft: shaft * cfm * wattsPerHorsepower, nameplate: nameplate * cfm * wattsPerHorsepower };
}

/**
 * Holds the fans of a solved unit against the limit. It counts all fans of the system that run at design together, exhaust
 * fans as well: what this unit's leave is theirs. The credit for ducted laboratory exhaust is taken.
 */
export function fanPowerVerdict(unit: Unit, rating: UnitRating, variable: boolean): FanPowerVerdict {
  const flow = rating.supplyStandardAirflow;
  const index = sectionWithRole(unit, "fan");
  const design = unit.sections[index]!.design as FanDesign;
  const record = rating.sections[index] as FanSectionRating;
  const credits = [inches(fanPowerLimit.credits.laboratoryExhaust, flow), ...creditsOf(unit, rating, flow)];
  const allowed = allowedFanPower(flow, variable);
  return {
    variable,
    flow,
    credits,
    shaftLimit: allowed.shaft + credits.reduce((sum, each) => sum + each.power, 0),
    nameplateLimit: allowed.nameplate,
    shaftPower: record.fansRunning * record.shaftPower,
    nameplate: design.count * design.motorPower,
    source: fanPowerLimit.source,
    certainty: fanPowerLimit.certainty,
  };
}

function creditsOf(unit: Unit, rating: UnitRating, flow: number): readonly TakenCredit[] {
  const { runAround, attenuator, noCooling, noHeating } = fanPowerLimit.credits;
  const bySection = unit.sections.flatMap((section, index): readonly TakenCredit[] => {
    if (section.kind === "recovery coil") return [inches(runAround, flow)];
    if (section.kind === "attenuator") return [inches(attenuator, flow)];
    if (section.kind !== "filter bank") return [];
    const design = section.design as FilterBankDesign;
    return filterCredit(design, rating.sections[index] as FilterBankRating, flow);
  });
  const lacks = (role: "cooling" | "heating") => sectionWithRole(unit, role) === -1;
  return [
    ...bySection,
    ...(lacks("cooling") ? [inches(noCooling, flow)] : []),
    ...(lacks("heating") ? [inches(noHeating, flow)] : []),
  ];
}

function filterCredit(design: FilterBankDesign, record: FilterBankRating, flow: number): readonly TakenCredit[] {
  const { merv9, merv13, merv16 } = fanPowerLimit.credits;
  const { efficiencyClass } = design.medium;
  if (efficiencyClass < 9) return [];
  if (efficiencyClass < 13) return [inches(merv9, flow)];
  if (efficiencyClass < 16) return [inches(merv13, flow)];
  const clean = filterLossAt(design, record.panelVelocity, 0, record.density, record.dryBulb);
  return [{ name: merv16.name, pressure: 2 * clean, power: creditPower(2 * clean, flow) }];
}

function inches(credit: FanPowerCredit, flow: number): TakenCredit {
  const pressure = (credit.inches ?? 0) * pascalsPerInchOfWater;
  return { name: credit.name, pressure, power: creditPower(pressure, flow) };
}
