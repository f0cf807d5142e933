import { metresPerInch } from "#quantity/inch-pound";
import { materials, type SheetMetal } from "#standard/material";
import { type SheetGauge, type SheetGaugeName, sheetGauges } from "#standard/sheet-gauge";

function rowOf(gauge: SheetGaugeName): SheetGauge {
  const found = sheetGauges.rows.find((row) => row.gauge === Number(gauge));
  if (found === undefined) throw new RangeError(`gauge ${gauge}: not in the table; 24 to 10 are`);
  return found;
}

/** m of aluminium sheet by the American wire gauge, whose steps are a ratio by definition. */
function aluminiumThickness(gauge: SheetGaugeName): number {
  return metresPerInch * 0.005 * 92 ** ((36 - Number(gauge)) / 39);
}

/**
 * Thickness of sheet by its gauge: manufacturers' standard for steel, its own list for stainless, wire gauge for aluminium.
 *
 * @param metal choice: what the sheet is made of
 * @param gauge choice: 24, 22 … 10
 * @returns m: thickness
 * @outside throws
 * @throws RangeError for a gauge that the table does not hold
 * @example sheetThickness("galvanized steel", "18") / 0.0254 // 0.0515 ± 1e-9
 * @source manufacturers-standard-gauge; definition for aluminium
 */
export function sheetThickness(metal: SheetMetal, gauge: SheetGaugeName): number {
  if (metal === "aluminium") return aluminiumThickness(gauge);
  const row = rowOf(gauge);
  return metal === "galvanized steel" ? row.galvanizedThickness : row.stainlessThickness;
}

/**
 * Mass of a square metre of sheet by its gauge.
 *
 * @param metal choice: what the sheet is made of
 * @param gauge choice: 24, 22 … 10
 * @returns kg/m²: mass by area, one face counted
 * @outside throws
 * @throws RangeError for a gauge that the table does not hold
 * @example sheetMass("galvanized steel", "16") / 4.8824276 // 2.656 ± 1e-9
 * @source manufacturers-standard-gauge; definition for aluminium
 */
export function sheetMass(metal: SheetMetal, gauge: SheetGaugeName): number {
  if (metal === "aluminium") return aluminiumThickness(gauge) * materials.aluminium.density;
  const row = rowOf(gauge);
  return metal === "galvanized steel" ? row.galvanizedMass : row.stainlessMass;
}
