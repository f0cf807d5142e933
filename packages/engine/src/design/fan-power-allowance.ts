import type { Condition } from "#duty/condition";
import { cubicMetresPerSecondPerCfm } from "#quantity/inch-pound";
import type { FilterBankDesign } from "#section/filter-bank/design";
import {
  type AllowanceRow,
  allowanceSteps,
  type FanPowerAllowance,
  type FanPowerTable,
  fanPowerTables,
} from "#standard/fan-power-allowance";
import { createUnitRating, rateUnit } from "#unit/rate-unit";
import type { UnitRating } from "#unit/rating";
import type { Unit, UnitSection } from "#unit/unit";

/** A row that a unit takes, or takes only on a condition that the job does not tell. */
export interface TakenAllowance {
  readonly name: string;
  /** W. */
  readonly power: number;
  readonly onlyIf?: string;
}

/** The fans of a unit against one edition's allowances of electric power by component. */
export interface FanAllowanceVerdict {
  readonly edition: string;
  readonly taken: readonly TakenAllowance[];
  /** W allowed for sure, and with every row that may count. */
  readonly allowed: number;
  readonly allowedAtMost: number;
  /** W from the mains with filters clean and at change-out. */
  readonly drawnClean: number;
  readonly drawnDirty: number;
  readonly outcome: "held" | "exceeded" | "cannot tell";
  /** What has to be known before it can be told; empty where it can. */
  readonly missing: string;
  readonly source: string;
  readonly certainty: string;
}

/** W that a row allows a flow (m³/s of standard air). */
export function allowedByComponent(row: FanPowerAllowance, flow: number, variable: boolean): number {
  const cfm = flow / cubicMetresPerSecondPerCfm;
  const step = allowanceSteps.findIndex((most) => cfm <= most);
  const figures = variable ? row.variable : row.other;
  return cfm * figures[step === -1 ? 2 : (step as 0 | 1)];
}

/** What the fans of a unit draw, and what of it the rows depend on. */
export interface FanDraw {
  /** m³/s of standard air. */
  readonly flow: number;
  readonly outsideAirShare: number;
  readonly drawnClean: number;
  readonly drawnDirty: number;
}

/** Solves a unit with filters clean and at change-out; undefined where it finds no balance. */
export function fanDraw(unit: Unit, condition: Condition): FanDraw | undefined {
  const rating = createUnitRating(unit, condition);
  const drawnAt = (filterLoading: number): number | undefined =>
    rateUnit(unit, { ...condition, filterLoading }, rating).solved ? rating.fanElectricPower : undefined;
  const [drawnClean, drawnDirty] = [drawnAt(0), drawnAt(1)];
  if (drawnClean === undefined || drawnDirty === undefined) return undefined;
  return { ...flowOf(rating), drawnClean, drawnDirty };
}

function flowOf({ supplyStandardAirflow: flow, outsideAirShare }: UnitRating) {
  return { flow, outsideAirShare };
}

/**
 * Holds what the fans draw against every edition's table. Flow counts as standard air, by which altitude already lowers what
 * is allowed. At which filter loading an edition counts was not read: held is what holds with filters at change-out, exceeded
 * what exceeds with filters clean.
 */
export function fanAllowanceVerdicts(unit: Unit, draw: FanDraw, variable: boolean): readonly FanAllowanceVerdict[] {
  return fanPowerTables.map((table) => verdictOf(table, unit, draw, variable));
}

function verdictOf(table: FanPowerTable, unit: Unit, draw: FanDraw, variable: boolean): FanAllowanceVerdict {
  const { flow, drawnClean, drawnDirty, outsideAirShare } = draw;
  const { edition, rows, notRead, source, certainty } = table;
  const taken = rowsOf(unit, outsideAirShare).flatMap(({ row, onlyIf }): readonly TakenAllowance[] => {
    const found = rows[row];
    if (found === undefined) return [];
    const power = allowedByComponent(found, flow, variable);
    return [{ name: found.name, power, ...(onlyIf === undefined ? {} : { onlyIf }) }];
  });
  const sum = (list: readonly TakenAllowance[]) => list.reduce((total, { power }) => total + power, 0);
  const allowed = sum(taken.filter(({ onlyIf }) => onlyIf === undefined));
  const allowedAtMost = sum(taken);
  const isOver = drawnClean > allowedAtMost;
  const outcome = drawnDirty <= allowed ? "held" : isOver && notRead === "" ? "exceeded" : "cannot tell";
  const missing = outcome === "cannot tell" ? missingOf(taken, draw, { allowed, allowedAtMost, notRead }) : "";
  return { edition, taken, allowed, allowedAtMost, drawnClean, drawnDirty, outcome, missing, source, certainty };
}

function missingOf(
  taken: readonly TakenAllowance[],
  { drawnClean, drawnDirty }: FanDraw,
  { allowed, allowedAtMost, notRead }: { allowed: number; allowedAtMost: number; notRead: string },
): string {
  const ifs = taken.flatMap(({ onlyIf }) => onlyIf ?? []);
  const words = [
    ...(drawnClean <= allowedAtMost && drawnDirty > allowed ? ["the filter loading at which it counts"] : []),
    ...(ifs.length > 0 && drawnClean <= allowedAtMost && drawnDirty > allowed ? [`whether ${ifs.join(", ")}`] : []),
    ...(notRead === "" ? [] : [`its rows of ${notRead}`]),
  ];
  return words.join("; ");
}

interface UnitRow {
  readonly row: AllowanceRow;
  readonly onlyIf?: string;
}

function rowsOf(unit: Unit, outsideAirShare: number): readonly UnitRow[] {
  const firstCoil = unit.sections.findIndex(({ kind }) => kind.includes("coil"));
  const isBehind = (index: number) => firstCoil !== -1 && index > firstCoil;
  return [
    { row: "base" },
    ...(outsideAirShare > 0.999 ? [{ row: "allOutdoor" } as const] : []),
    ...unit.sections.flatMap((section, index) => rowsOfSection(section, isBehind(index))),
  ];
}

function rowsOfSection(section: UnitSection, isBehindCoils: boolean): readonly UnitRow[] {
  switch (section.kind) {
    case "hot-water coil":
      return [{ row: "heating" }];
    case "steam coil":
    case "steam coil with face and bypass":
      return [{ row: "heating", onlyIf: "a steam coil counts as a hydronic one" }];
    case "chilled-water coil":
      return [{ row: "cooling" }];
    case "recovery coil":
      return [{ row: "runAround" }];
    case "attenuator":
      return [{ row: "attenuator", onlyIf: "the rooms' noise goal is below NC 35" }];
    case "mixing box":
      return [{ row: "returnDamper", onlyIf: "the return damper is an economizer's" }];
    case "filter bank":
      return filterRows(section.design as FilterBankDesign, isBehindCoils);
    default:
      return [];
  }
}

/** A prefilter is a filter of its own. */
function filterRows({ medium, prefilter }: FilterBankDesign, isBehindCoils: boolean): readonly UnitRow[] {
  const media = prefilter === undefined ? [medium] : [prefilter, medium];
  return media.map(({ efficiencyClass }): UnitRow => {
    if (efficiencyClass < 13) return { row: "filterLow" };
    if (efficiencyClass > 16) return { row: "filterFinest" };
    return { row: isBehindCoils ? "filterBehind" : "filterBefore" };
  });
}
