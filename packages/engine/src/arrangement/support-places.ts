import type { Unit } from "#unit/unit";

/** mm along the airflow of the supports under the rail: even spans, none longer than the casing's most. */
export function supportPlaces(unit: Unit): readonly number[] {
  const { panelThickness, supportSpacing } = unit.casing;
  const length = unit.length + 2 * panelThickness;
  const bays = Math.max(1, Math.ceil(length / supportSpacing - 1e-9));
  return Array.from({ length: bays + 1 }, (_, index) => 1000 * (-panelThickness + (length * index) / bays));
}
