import type { QuantityKind, UnitSystem } from "#quantity/kind";
import { displayUnit, toDisplay } from "#quantity/print";
import type { DisplayItem } from "#section/display";
import type { AirwayAxis } from "./airway-axis.ts";
import { axisPoint } from "./airway-axis.ts";
import { line, words } from "./items.ts";
import { type NiceRange, niceRange, tickText } from "./ticks.ts";

/** A value along the airway: places in mm, values in SI, as many of one as of the other. */
export interface Course {
  readonly positions: readonly number[];
  readonly values: readonly number[];
}

/** One of the panels that hang below the elevation: its scale and where it stands on the page. */
export interface ProfilePanel {
  readonly key: string;
  readonly name: string;
  readonly kind: QuantityKind;
  readonly system: UnitSystem;
  readonly axis: AirwayAxis;
  /** pt, of the plotted field. */
  readonly top: number;
  readonly bottom: number;
  readonly range: NiceRange;
}

/** pt above the field for the panel's name. */
export const panelHead = 24;

/** What a panel must be told. */
export interface PanelOptions {
  readonly key: string;
  readonly name: string;
  readonly kind: QuantityKind;
  readonly system: UnitSystem;
  readonly axis: AirwayAxis;
  /** pt, where the panel's head begins, and the height of its field. */
  readonly top: number;
  readonly height: number;
  /** What the scale has to hold. */
  readonly courses: readonly Course[];
  /** The narrowest scale, in SI, so that noise does not fill the field. */
  readonly narrowest: number;
  readonly holdsZero?: boolean;
}

/** A panel whose scale holds all courses. */
export function profilePanel(options: PanelOptions): ProfilePanel {
  const { key, name, kind, system, axis, top, height, courses, narrowest, holdsZero } = options;
  const readings = courses.flatMap((course) => course.values.map((value) => toDisplay(value, kind, system)));
  const least = toDisplay(narrowest, kind, system) - toDisplay(0, kind, system);
  if (holdsZero === true) readings.push(0);
  // What never falls below zero has zero at its foot.
  if (holdsZero === true && Math.min(...readings) >= 0) readings.push(least);
  const range = niceRange(Math.min(...readings), Math.max(...readings), Math.max(2, Math.round(height / 23)), least);
  return { key, name, kind, system, axis, top: top + panelHead, bottom: top + panelHead + height, range };
}

/** pt of an SI value on the panel's scale. */
export function panelPoint(panel: ProfilePanel, value: number): number {
  const reading = toDisplay(value, panel.kind, panel.system);
  const { low, high } = panel.range;
  return panel.bottom - ((reading - low) / (high - low)) * (panel.bottom - panel.top);
}

/** The points of a course on the page. */
export function coursePoints(panel: ProfilePanel, course: Course): number[] {
  return course.positions.flatMap((position, index) => [
    axisPoint(panel.axis, position),
    panelPoint(panel, course.values[index]!),
  ]);
}

/** Name, unit, scale and grid of a panel; the foot of the field and, where it is inside, zero are stronger. */
export function panelScale(panel: ProfilePanel): readonly DisplayItem[] {
  const { key, axis, range } = panel;
  const left = axis.gutter;
  const right = axisPoint(axis, axis.to);
  const head = panel.top - 11;
  const unit = displayUnit(panel.kind, panel.system);
  const nameWidth = panel.name.length * 6.6 + 10;
  const scale = range.ticks.flatMap((tick, index) => {
    const y = panel.bottom - ((tick - range.low) / (range.high - range.low)) * (panel.bottom - panel.top);
    const text = tickText(tick, range.step);
    const isFoot = index === 0 || tick === 0;
    return [
      line(`${key}-grid-${index}`, isFoot ? "quiet" : "hairline", [left, y, right, y]),
      words(`${key}-tick-${index}`, "quiet", [left - 8, y + 4], text, { size: "small", anchor: "end" }),
    ];
  });
  return [
    ...scale,
    words(`${key}-name`, "strong", [left, head], panel.name),
    words(`${key}-unit`, "quiet", [left + nameWidth, head], unit, { size: "small" }),
  ];
}
