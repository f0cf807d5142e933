import type { QuantityKind, UnitSystem } from "#quantity/kind";
import { displayUnit, toDisplay } from "#quantity/print";
import type { DisplayItem } from "#section/display";
import { line, words } from "./items.ts";
import { textWidth } from "./text-size.ts";
import { type NiceRange, niceRange, tickText } from "./ticks.ts";

/** The flow that all panels of a fan chart share, to the right. */
export interface FlowAxis {
  readonly system: UnitSystem;
  /** In the unit of the system, from 0. */
  readonly range: NiceRange;
  /** m³/s at the right end. */
  readonly most: number;
  /** pt. */
  readonly left: number;
  readonly right: number;
}

/** A panel of a fan chart: its scale upwards from 0, and where it stands on the page. */
export interface FanPanel {
  readonly key: string;
  readonly name: string;
  readonly kind: QuantityKind;
  readonly axis: FlowAxis;
  readonly top: number;
  readonly bottom: number;
  readonly range: NiceRange;
  /** SI at the upper end. */
  readonly most: number;
}

/** pt over a panel's field for its name, and left of it for figures. */
export const panelHead = 24;
const gutter = 52;

/** An axis from no flow to about `most` m³/s, `width` pt wide with its scale. */
export function flowAxis(most: number, width: number, system: UnitSystem): FlowAxis {
  const reading = toDisplay(most, "actualAirflow", system);
  const range = niceRange(0, reading, Math.max(3, Math.round(width / 105)), reading);
  return { system, range, most: (most * range.high) / reading, left: gutter, right: width - 20 };
}

/** What a panel must be told. */
interface FanPanelOptions {
  readonly key: string;
  readonly name: string;
  readonly kind: QuantityKind;
  readonly axis: FlowAxis;
  /** pt, where the panel's head begins, and the height of its field. */
  readonly top: number;
  readonly height: number;
  /** SI that the scale has to hold. */
  readonly most: number;
}

/** A panel from 0 to about `most`. */
export function fanPanel({ key, name, kind, axis, top, height, most }: FanPanelOptions): FanPanel {
  const reading = toDisplay(most, kind, axis.system);
  const range = niceRange(0, reading, Math.max(2, Math.round(height / 30)), reading);
  const field = { top: top + panelHead, bottom: top + panelHead + height };
  return { key, name, kind, axis, ...field, range, most: (most * range.high) / reading };
}

/** pt of a flow in m³/s. */
export function flowPoint(axis: FlowAxis, flow: number): number {
  return axis.left + (flow / axis.most) * (axis.right - axis.left);
}

/** pt of an SI value on a panel's scale. */
export function valuePoint(panel: FanPanel, value: number): number {
  return panel.bottom - (value / panel.most) * (panel.bottom - panel.top);
}

/** Name, unit, scale and grid of a panel; figures of the flow only where `isFoot`. */
export function fanPanelScale(panel: FanPanel, isFoot: boolean): readonly DisplayItem[] {
  const { key, axis, range, top, bottom } = panel;
  const head = top - 10;
  const levels = range.ticks.flatMap((tick, index) => {
    const y = bottom - (tick / range.high) * (bottom - top);
    return [
      line(`${key}-level-${index}`, index === 0 ? "quiet" : "hairline", [axis.left, y, axis.right, y]),
      words(`${key}-tick-${index}`, "quiet", [axis.left - 8, y + 4], separated(tick, range.step), {
        size: "small",
        anchor: "end",
      }),
    ];
  });
  const flows = axis.range.ticks.flatMap((tick, index) => {
    const x = axis.left + (tick / axis.range.high) * (axis.right - axis.left);
    const upright = line(`${key}-flow-${index}`, index === 0 ? "quiet" : "hairline", [x, top, x, bottom]);
    if (!isFoot) return [upright];
    const text = separated(tick, axis.range.step);
    return [upright, words(`flow-tick-${index}`, "quiet", [x, bottom + 15], text, { size: "small", anchor: "middle" })];
  });
  const unitPlace = axis.left + 1.08 * textWidth(panel.name, "normal") + 12;
  return [
    ...levels,
    ...flows,
    words(`${key}-name`, "strong", [axis.left, head], panel.name),
    words(`${key}-unit`, "quiet", [unitPlace, head], displayUnit(panel.kind, axis.system), { size: "small" }),
  ];
}

/** A tick with commas between thousands. */
function separated(tick: number, step: number): string {
  return tickText(tick, step).replace(/\B(?=(\d{3})+(?!\d))(?<!\.\d*)/g, ",");
}
