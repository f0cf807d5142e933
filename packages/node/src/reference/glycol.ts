import {
  type Liquid,
  liquidConductivity,
  liquidDensity,
  liquidFreezePoint,
  liquidSpecificHeat,
  liquidViscosity,
} from "@oncethrough/engine/fluid/liquid";
import { type CaseData, listAt, numberAt, shortened, someHave } from "./case-data.ts";
import { caseName, caseRows, type Figure, type Format, listRows, metaOf } from "./format.ts";
import { notRunRow, type Row } from "./row.ts";

/** Ethylene and propylene glycol in water by concentration and temperature, and their freezing points. */
export const glycol: Format = {
  name: "glycol",
  recognises: (data) =>
    ["points", "freeze_points", "independent_checks"].some((key) =>
      someHave(listAt(data, key), "x_mass_pct", "x_pct_as_given"),
    ),
  rows: (data) => [
    ...listRows(listAt(data, "points"), "point", (point, name) => pointRows(point, metaOf(data), name, "")),
    ...listRows(listAt(data, "freeze_points"), "freeze point", (point, name) =>
      pointRows(point, metaOf(data), name, "freeze point "),
    ),
    ...listRows(listAt(data, "independent_checks"), "independent check", (point, name) =>
      pointRows(point, metaOf(data), name, otherSource),
    ),
  ],
};

const otherSource = "other source ";

const SUBSTANCES: Readonly<Record<string, Liquid["substance"]>> = {
  EG: "ethylene glycol",
  "ethylene glycol": "ethylene glycol",
  PG: "propylene glycol",
  "propylene glycol": "propylene glycol",
  water: "water",
};

function pointRows(point: CaseData, meta: CaseData, fallback: string, group: string): Row[] {
  const share = numberAt(point, "x_mass_pct") === null && "x_pct_as_given" in point ? "x_pct_as_given" : "x_mass_pct";
  const temperature = numberAt(point, "T_C") === null && "T_C_approx" in point ? "T_C_approx" : "T_C";
  const name = `${group}${caseName(point, ["fluid", share, temperature], fallback)}`;
  const substance = SUBSTANCES[String(point.fluid)];
  if (substance === undefined) {
    return [notRunRow(name, `fluid ${shortened(JSON.stringify(point.fluid) ?? "not given")} is neither EG nor PG`)];
  }
  const frozenOnly = numberAt(point, temperature) === null && numberAt(point, "Tfreeze_C") !== null;
  const inputs = frozenOnly ? [share] : [share, temperature];
  const rows = caseRows(name, point, meta, inputs, () => {
    const liquid: Liquid = { substance, massFraction: (point[share] as number) / 100 };
    const freezing: Figure = { key: "Tfreeze_C", unit: "°C", got: () => liquidFreezePoint(liquid) };
    if (frozenOnly) return [freezing];
    const t = point[temperature] as number;
    return [
      freezing,
      { key: "rho", unit: "kg/m³", got: () => liquidDensity(liquid, t) },
      { key: "cp", unit: "J/kg K", got: () => liquidSpecificHeat(liquid, t) },
      { key: "k", unit: "W/mK", got: () => liquidConductivity(liquid, t) },
      { key: "mu_mPas", unit: "mPa·s", got: () => liquidViscosity(liquid, t) * 1000 },
    ];
  });
  // Figures of other sources keep statistics of their own: they show how far sources differ.
  return group === otherSource ? rows.map((row) => ({ ...row, quantity: `${row.quantity} of ${group.trim()}` })) : rows;
}
