import type { FittedPoint } from "#design/surface-fit";
import type { UnitSystem } from "#quantity/kind";
import { displayUnit, printNumber, toDisplay } from "#quantity/print";
import type { DisplayItem, DisplayList } from "#section/display";
import { circle, line, words } from "./items.ts";
import { niceRange, tickText } from "./ticks.ts";

/** What a picture of a fit shows. */
export interface SurfaceFitChartOptions {
  readonly points: readonly FittedPoint[];
  readonly name: string;
  readonly system: UnitSystem;
  /** pt, of the square. */
  readonly size: number;
}

const left = 52;
const right = 14;
const top = 26;
const foot = 40;

/** One square: fitted against measured, in one quantity. */
interface Panel {
  readonly key: string;
  readonly of: string;
  readonly quantity: "power" | "pressureDifference";
  readonly dots: readonly { readonly measured: number; readonly fitted: number; readonly wet: boolean }[];
}

/**
 * Heat given by the fitted surface against heat measured, and air pressure loss beside it where points tell it: wet points
 * with a dot; lines at ±5 %.
 */
export function surfaceFitChart({ points, name, system, size }: SurfaceFitChartOptions): DisplayList {
  const heat = points.map(({ measured, fitted, wetShare }) => {
    return { measured: Math.abs(measured), fitted: Math.abs(fitted), wet: wetShare > 0 };
  });
  const losses = points.flatMap(({ loss, wetShare }) => {
    return loss === undefined ? [] : [{ measured: loss.measured, fitted: loss.fitted, wet: wetShare > 0 }];
  });
  const field = Math.min(size - left - right, size - top - foot);
  const panels: Panel[] = [{ key: "", of: "heat", quantity: "power", dots: heat }];
  if (losses.length > 0) {
    panels.push({ key: "loss-", of: "air pressure loss", quantity: "pressureDifference", dots: losses });
  }
  const of = losses.length > 0 ? "heat and air pressure loss" : "heat";
  return {
    title: `${name}: ${of} by the fitted surface against ${of} measured`,
    unit: "pt",
    up: false,
    box: { x: 0, y: 0, width: panels.length * (left + field + right), height: top + field + foot },
    items: panels.flatMap((panel, index) => panelItems(panel, index * (left + field + right) + left, field, system)),
  };
}

function panelItems(
  { key, of, quantity, dots }: Panel,
  from: number,
  field: number,
  system: UnitSystem,
): DisplayItem[] {
  const inUnit = (value: number) => toDisplay(value, quantity, system);
  const most = Math.max(...dots.map((each) => Math.max(inUnit(each.measured), inUnit(each.fitted))));
  const range = niceRange(0, most, 5, most);
  const x = (value: number) => from + (field * (value - range.low)) / (range.high - range.low);
  const y = (value: number) => top + field - (field * (value - range.low)) / (range.high - range.low);
  const unit = displayUnit(quantity, system);
  const small = { size: "small" } as const;
  const scale = range.ticks.flatMap((tick): DisplayItem[] => [
    line(`${key}x-${tick}`, "hairline", [x(tick), y(range.low), x(tick), y(range.high)]),
    line(`${key}y-${tick}`, "hairline", [x(range.low), y(tick), x(range.high), y(tick)]),
    words(`${key}x-name-${tick}`, "quiet", [x(tick), top + field + 13], tickText(tick, range.step), {
      ...small,
      anchor: "middle",
    }),
    words(`${key}y-name-${tick}`, "quiet", [from - 5, y(tick) + 3], tickText(tick, range.step), {
      ...small,
      anchor: "end",
    }),
  ]);
  const ray = (slope: number) => {
    const end = slope > 1 ? range.high / slope : range.high;
    return [x(0), y(0), x(end), y(slope * end)];
  };
  return [
    ...scale,
    line(`${key}equal`, "outline", ray(1)),
    line(`${key}above`, "fine", ray(1.05), { dash: "short" }),
    line(`${key}below`, "fine", ray(0.95), { dash: "short" }),
    words(`${key}up`, "quiet", [from, top - 9], `${of} fitted, ${unit}; lines at ±5 %; wet points with a dot`, {
      ...small,
      anchor: "start",
    }),
    words(`${key}across`, "quiet", [from + field / 2, top + field + 28], `${of} measured, ${unit}`, {
      ...small,
      anchor: "middle",
    }),
    ...dots.flatMap((each, index) => {
      const at = [x(inUnit(each.measured)), y(inUnit(each.fitted))] as const;
      const say = (value: number) => printNumber(value, quantity, system);
      const label = `measured ${say(each.measured)}, fitted ${say(each.fitted)} ${unit}`;
      const dot = each.wet ? [circle(`${key}wet-${index}`, "choice", at, 0.8, { fill: "choice" })] : [];
      return [circle(`${key}point-${index}`, "choice", at, 3.4, { fill: "paper", label }), ...dot];
    }),
  ];
}
