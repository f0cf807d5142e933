import { flowFromFlowCoefficient } from "#component/fan-performance";
import { interpolate, monotoneTable } from "#numerics/interpolate";
import { printNumber } from "#quantity/print";
import type { DisplayItem } from "#section/display";
import { atDensity, curvePoints, type Drawn, freeFlowAt, pressureAt, speedKey, speedText } from "./fan-drawn.ts";
import { type FanPanel, flowPoint, valuePoint } from "./fan-panel.ts";
import type { FanSystemCurve } from "./fan-system.ts";
import { line, words } from "./items.ts";
import type { LabelRoom, Place } from "./label-room.ts";
import { textWidth } from "./text-size.ts";

/** Share of the peak static pressure that owners ask a fan not to pass. */
const askedPeakShare = 0.9;

/** Left of the parabola of the smallest steady flow, up to the curve of the highest speed shown. */
export function unsteadyRegion(drawn: Drawn, room: LabelRoom): readonly DisplayItem[] {
  const { design, panels } = drawn;
  const { curve } = design.wheel;
  const panel = panels.pressure;
  const perSpeed = flowFromFlowCoefficient(curve.stableFlow, design.diameter, 1);
  const slope = pressureAt(drawn, 1, perSpeed) / perSpeed ** 2;
  const end = Math.sqrt(panel.most / slope);
  const limit = curvePoints(panel, end, (flow) => Math.min(panel.most, slope * flow * flow));
  const [left, top] = [panel.axis.left, panel.top];
  const text = "may surge";
  const place: [number, number] = [left + 8, top + 14];
  const name = words("unsteady-name", "fail", place, text, { size: "small" });
  room.takeText(name);
  const label = "left of the smallest steady flow: the fan may surge";
  return [
    line("unsteady", "hairline", [...limit, flowPoint(panel.axis, Math.min(end, panel.axis.most)), top, left, top], {
      closed: true,
      fill: "fail",
      label,
    }),
    line("unsteady-limit", "fail", limit, { dash: "short", label }),
    name,
  ];
}

/** Where pressure has fallen to a share of the peak: owners ask to stay right of it. */
export function peakShareLine(drawn: Drawn, room: LabelRoom): readonly DisplayItem[] {
  const { design, panels } = drawn;
  const { curve } = design.wheel;
  const panel = panels.pressure;
  let [low, high] = [curve.peakPressureFlow, curve.freeFlow];
  for (let count = 0; count < 50; count++) {
    const middle = (low + high) / 2;
    if (interpolate(curve.pressure, middle) > askedPeakShare * curve.peakPressure) low = middle;
    else high = middle;
  }
  const perSpeed = flowFromFlowCoefficient(low, design.diameter, 1);
  const slope = pressureAt(drawn, 1, perSpeed) / perSpeed ** 2;
  const end = Math.sqrt((0.985 * panel.most) / slope);
  const points = curvePoints(panel, end, (flow) => slope * flow * flow);
  const text = `${100 * askedPeakShare} % of peak`;
  const [x, y] = [points.at(-2)!, points.at(-1)!];
  const place = room.place(x, y, text, "small", [
    { dx: 5, dy: 8, anchor: "start" },
    { dx: -5, dy: 8, anchor: "end" },
  ]);
  return [
    line("peak-share", "quiet", points, { dash: "short", label: `static pressure ${text} at the same speed` }),
    words("peak-share-name", "quiet", [x + place.dx, y + place.dy], text, { size: "small", anchor: place.anchor }),
  ];
}

/** Lines of one speed with their names; the point in hand has a strong one of its own. */
export function pressureLines(drawn: Drawn, room: LabelRoom): readonly DisplayItem[] {
  const { speeds, speed, limit, panels, section } = drawn;
  const panel = panels.pressure;
  const lineAt = (each: number, key: string, ink: "fine" | "strong" | "fail", dash?: "long") =>
    line(
      key,
      ink,
      curvePoints(panel, freeFlowAt(drawn, each), (flow) => pressureAt(drawn, each, flow)),
      {
        label: speedText(drawn, each),
        reference: { section },
        ...(dash === undefined ? {} : { dash }),
      },
    );
  const shown = limit <= topOf(panel, drawn) ? [limit] : [];
  const named = [
    speed,
    ...shown,
    ...speeds.filter((each) => shown.every((other) => Math.abs(each / other - 1) > 0.03)),
  ];
  return [
    ...named.slice(1 + shown.length).map((each) => lineAt(each, `speed-${speedKey(drawn, each)}`, "fine")),
    ...shown.map((each) => lineAt(each, "speed-limit", "fail", "long")),
    lineAt(speed, "speed-picked", "strong"),
    ...named.flatMap((each, index) => speedName(drawn, each, index === 0, shown.includes(each), room)),
  ];
}

/** rev/s whose peak pressure reaches the panel's upper edge. */
function topOf(panel: FanPanel, drawn: Drawn): number {
  return (
    Math.sqrt(panel.most / (0.5 * drawn.density * drawn.design.wheel.curve.peakPressure)) /
    (Math.PI * drawn.design.diameter)
  );
}

/** Right of a falling line, and left of the panel's edge. */
const besideLine: readonly Place[] = [
  { dx: 5, dy: 0, anchor: "start" },
  { dx: 18, dy: 22, anchor: "start" },
  { dx: -5, dy: 8, anchor: "end" },
];
const beforeEdge: readonly Place[] = [
  { dx: -4, dy: -6, anchor: "end" },
  { dx: -4, dy: -20, anchor: "end" },
];

/** The speed on its line, where pressure has fallen to a third: there the lines are far apart. */
function speedName(
  drawn: Drawn,
  speed: number,
  strong: boolean,
  isLimit: boolean,
  room: LabelRoom,
): readonly DisplayItem[] {
  const panel = drawn.panels.pressure;
  const wanted =
    0.3 * drawn.design.wheel.curve.peakPressure * 0.5 * drawn.density * (Math.PI * drawn.design.diameter * speed) ** 2;
  const free = freeFlowAt(drawn, speed);
  let [low, high] = [0.5 * free, free];
  for (let count = 0; count < 30; count++) {
    const middle = (low + high) / 2;
    if (pressureAt(drawn, speed, middle) > wanted) low = middle;
    else high = middle;
  }
  const say = printNumber(speed, "rotationalSpeed", panel.axis.system);
  const text = strong ? speedText(drawn, speed) : isLimit ? `${speedText(drawn, speed)}, limit` : say;
  const inside = low < 0.93 * panel.axis.most;
  const [x, y] = inside
    ? [flowPoint(panel.axis, low), valuePoint(panel, wanted)]
    : [panel.axis.right, valuePoint(panel, pressureAt(drawn, speed, panel.axis.most))];
  const fits = x + 5 + textWidth(text, "small") < panel.axis.right + 16;
  const places = !inside || (isLimit && !fits) ? beforeEdge : besideLine;
  const place = room.place(x, y, text, strong ? "normal" : "small", places);
  const ink = strong ? "strong" : isLimit ? "fail" : "quiet";
  const key = strong ? "picked" : isLimit ? "limit" : speedKey(drawn, speed);
  return [words(`speed-${key}-name`, ink, [x + place.dx, y + place.dy], text, { size: "small", anchor: place.anchor })];
}

/** What the unit asks of the fan, at three filter loadings. */
export function systemLines(
  panel: FanPanel,
  systems: readonly FanSystemCurve[],
  density: number,
  room: LabelRoom,
): readonly DisplayItem[] {
  // Each curve ends a line of words below the one before, so that the names stand apart where the curves are close.
  const perPoint = panel.most / (panel.bottom - panel.top);
  let ceiling = panel.most - 12 * perPoint;
  const items: DisplayItem[] = [];
  for (const [index, { words: text, points }] of [...systems.entries()].reverse()) {
    if (points.length < 2) continue;
    const at = points.map((point) => atDensity(point, density));
    const table = monotoneTable(
      at.map((point) => point.flow),
      at.map((point) => point.staticPressure),
    );
    const first = table.x[0]!;
    const end = endInside(table, first, Math.min(table.x[table.x.length - 1]!, panel.axis.most), ceiling);
    ceiling = interpolate(table, end) - 15 * perPoint;
    const flows = Array.from({ length: 41 }, (_, step) => first + ((end - first) * step) / 40);
    const path = flows.flatMap((flow) => [flowPoint(panel.axis, flow), valuePoint(panel, interpolate(table, flow))]);
    const place = room.place(path.at(-2)!, path.at(-1)!, text, "small", systemPlaces);
    items.push(
      line(`system-${index}`, "water", path, { label: `what the unit asks, ${text}`, ...systemDashes[index] }),
      words(`system-${index}-name`, "water", [path.at(-2)! + place.dx, path.at(-1)! + place.dy], text, {
        size: "small",
      }),
    );
  }
  return items;
}

/** Clean, half loaded, at change-out. */
const systemDashes = [{ dash: "short" }, { dash: "long" }, {}] as const;
const systemPlaces: readonly Place[] = [
  { dx: 5, dy: 3, anchor: "start" },
  { dx: 5, dy: 16, anchor: "start" },
];

/** The largest flow from `low` to `high` at which a rising table stays below `most`. */
function endInside(table: Parameters<typeof interpolate>[0], low: number, high: number, most: number): number {
  if (interpolate(table, high) <= most) return high;
  let [below, above] = [low, high];
  for (let count = 0; count < 40; count++) {
    const middle = (below + above) / 2;
    if (interpolate(table, middle) <= most) below = middle;
    else above = middle;
  }
  return below;
}
