import type { Unit, UnitSection } from "#unit/unit";

/** The horizontal axis that the elevation and the profiles share: millimetres along the airflow to points. */
export interface AirwayAxis {
  /** mm, ends of what is shown. */
  readonly from: number;
  readonly to: number;
  /** pt/mm. */
  readonly scale: number;
  /** pt, left of `from`, for scales. */
  readonly gutter: number;
}

/** mm of room before the intake and behind the discharge, for the arrows of the air. */
const intakeRoom = 220;
const dischargeRoom = 900;

/** The axis of a unit on a picture `width` points wide; `mostScale` (pt/mm) keeps a short unit from growing too tall. */
export function airwayAxis(
  unit: Unit,
  width: number,
  gutter: number,
  mostScale = Number.POSITIVE_INFINITY,
): AirwayAxis {
  const outside = Math.max(0, ...unit.sections.map((section) => section.layout.outside));
  const panel = 1000 * unit.casing.panelThickness;
  const from = -1000 * outside - panel - intakeRoom;
  const end = 1000 * unit.length + panel + dischargeRoom;
  const scale = Math.min((width - gutter) / (end - from), mostScale);
  return { from, to: from + (width - gutter) / scale, scale, gutter };
}

/** pt of a place along the airflow (mm). */
export function axisPoint(axis: AirwayAxis, position: number): number {
  return axis.gutter + (position - axis.from) * axis.scale;
}

/** mm along the airflow of a point of the picture: the way back of `axisPoint`. */
export function axisPosition(axis: AirwayAxis, point: number): number {
  return (point - axis.gutter) / axis.scale + axis.from;
}

/** mm, where a section begins and ends along the airflow; a hood lies outside the cabinet, before its start. */
export function sectionSpan(section: UnitSection): { readonly from: number; readonly to: number } {
  const start = 1000 * section.start;
  return { from: start - 1000 * section.layout.outside, to: start + 1000 * section.layout.length };
}
