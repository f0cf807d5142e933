import { cubicMetresPerSecondPerCfm } from "#quantity/inch-pound";
import type { FilterBankDesign } from "#section/filter-bank/design";
import { type FanPowerAllowance, fanPowerAllowances } from "#standard/fan-power-allowance";
import type { UnitRating } from "#unit/rating";
import type { Unit, UnitSection } from "#unit/unit";

/** The fans of a unit against allowances of electric power by component. */
export interface FanAllowanceVerdict {
  /** What is allowed for, W each. */
  readonly taken: readonly { readonly name: string; readonly power: number }[];
  /** W allowed at least, and drawn from the mains at the point in hand. */
  readonly allowed: number;
  readonly drawn: number;
  /** Rows that were not read may allow more: what is over cannot be told then. */
  readonly outcome: "held" | "cannot tell";
  readonly notRead: string;
  readonly source: string;
  readonly certainty: string;
}

/** W that a row allows a flow (m³/s of standard air). */
export function allowedByComponent(row: FanPowerAllowance, flow: number, variable: boolean): number {
  const cfm = flow / cubicMetresPerSecondPerCfm;
  const step = fanPowerAllowances.steps.findIndex((most) => cfm <= most);
  const figures = variable ? row.variable : row.other;
  return cfm * figures[step === -1 ? 2 : (step as 0 | 1)];
}

/** Holds the electric power of a solved unit's fans against what its components allow. */
export function fanAllowanceVerdict(unit: Unit, rating: UnitRating, variable: boolean): FanAllowanceVerdict {
  const flow = rating.supplyStandardAirflow;
  const firstCoil = unit.sections.findIndex(({ kind }) => kind.endsWith("coil"));
  const rows = [
    fanPowerAllowances.rows.base,
    ...unit.sections.flatMap((section, index) => rowOf(section, firstCoil !== -1 && index > firstCoil) ?? []),
  ];
  const taken = rows.map((row) => ({ name: row.name, power: allowedByComponent(row, flow, variable) }));
  const allowed = taken.reduce((sum, { power }) => sum + power, 0);
  const drawn = rating.fanElectricPower;
  const { notRead, source, certainty } = fanPowerAllowances;
  return { taken, allowed, drawn, outcome: drawn <= allowed ? "held" : "cannot tell", notRead, source, certainty };
}

function rowOf(section: UnitSection, isBehindCoils: boolean): FanPowerAllowance | undefined {
  const { heating, cooling, filterBefore, filterBehind, filterFinest } = fanPowerAllowances.rows;
  if (section.kind === "hot-water coil") return heating;
  if (section.kind === "chilled-water coil") return cooling;
  if (section.kind !== "filter bank") return undefined;
  const { efficiencyClass } = (section.design as FilterBankDesign).medium;
  if (efficiencyClass < 13) return undefined;
  if (efficiencyClass > 16) return filterFinest;
  return isBehindCoils ? filterBehind : filterBefore;
}
