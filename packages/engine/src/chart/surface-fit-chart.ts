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
const top = 26;
const foot = 40;

/** Heat given by the fitted surface against heat measured: wet points with a dot; lines at ±5 %. */
export function surfaceFitChart({ points, name, system, size }: SurfaceFitChartOptions): DisplayList {
  const inUnit = (watts: number) => toDisplay(Math.abs(watts), "power", system);
  const most = Math.max(...points.map((each) => Math.max(inUnit(each.measured), inUnit(each.fitted))));
  const range = niceRange(0, most, 5, most);
  const field = Math.min(size - left - 14, size - top - foot);
  const x = (value: number) => left + (field * (value - range.low)) / (range.high - range.low);
  const y = (value: number) => top + field - (field * (value - range.low)) / (range.high - range.low);
  const unit = displayUnit("power", system);
  const scale = range.ticks.flatMap((tick): DisplayItem[] => [
    line(`x-${tick}`, "hairline", [x(tick), y(range.low), x(tick), y(range.high)]),
    line(`y-${tick}`, "hairline", [x(range.low), y(tick), x(range.high), y(tick)]),
    words(`x-name-${tick}`, "quiet", [x(tick), top + field + 13], tickText(tick, range.step), {
      size: "small",
      anchor: "middle",
    }),
    words(`y-name-${tick}`, "quiet", [left - 5, y(tick) + 3], tickText(tick, range.step), {
      size: "small",
      anchor: "end",
    }),
  ]);
  const ray = (slope: number) => {
    const end = slope > 1 ? range.high / slope : range.high;
    return [x(0), y(0), x(end), y(slope * end)];
  };
  return {
    title: `${name}: heat by the fitted surface against heat measured`,
    unit: "pt",
    up: false,
    box: { x: 0, y: 0, width: left + field + 14, height: top + field + foot },
    items: [
      ...scale,
      line("equal", "outline", ray(1)),
      line("above", "fine", ray(1.05), { dash: "short" }),
      line("below", "fine", ray(0.95), { dash: "short" }),
      words("up", "quiet", [left, top - 9], `fitted, ${unit}; lines at ±5 %; wet points with a dot`, {
        size: "small",
        anchor: "start",
      }),
      words("across", "quiet", [left + field / 2, top + field + 28], `measured, ${unit}`, {
        size: "small",
        anchor: "middle",
      }),
      ...points.flatMap((each, index) => {
        const at = [x(inUnit(each.measured)), y(inUnit(each.fitted))] as const;
        const say = (watts: number) => printNumber(Math.abs(watts), "power", system);
        const label = `measured ${say(each.measured)}, fitted ${say(each.fitted)} ${unit}`;
        const dot = each.wetShare > 0 ? [circle(`wet-${index}`, "choice", at, 0.8, { fill: "choice" })] : [];
        return [circle(`point-${index}`, "choice", at, 3.4, { fill: "paper", label }), ...dot];
      }),
    ],
  };
}
