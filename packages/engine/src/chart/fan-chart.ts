import { fanPeakPower, flowFromFlowCoefficient } from "#component/fan-performance";
import type { UnitSystem } from "#quantity/kind";
import { displayUnit, fromDisplay, printQuantity, toDisplay } from "#quantity/print";
import type { DisplayItem, DisplayList, TextItem } from "#section/display";
import type { FanDesign } from "#section/fan/design";
import { highestSpeed } from "#section/fan/speed-range";
import {
  atDensity,
  curvePoints,
  type Drawn,
  type FanPanels,
  freeFlowAt,
  powerAt,
  pressureAt,
  speedKey,
  speedText,
} from "./fan-drawn.ts";
import { type FlowAxis, fanPanel, fanPanelScale, flowAxis, flowPoint, panelHead, valuePoint } from "./fan-panel.ts";
import { peakShareLine, pressureLines, systemLines, unsteadyRegion } from "./fan-pressure-lines.ts";
import type { FanChartPoint, FanSystemCurve } from "./fan-system.ts";
import { circle, line, words } from "./items.ts";
import { LabelRoom, placesAround } from "./label-room.ts";
import { multiples, niceStep } from "./ticks.ts";

/** What a fan chart shows. */
export interface FanChartOptions {
  readonly design: FanDesign;
  /** Name of the fan section. */
  readonly section: string;
  readonly points: readonly FanChartPoint[];
  readonly systems: readonly FanSystemCurve[];
  /** Key of the point in hand: the chart is drawn at its density. */
  readonly picked: string | undefined;
  readonly system: UnitSystem;
  /** pt. */
  readonly width: number;
  readonly height: number;
}

/** The chart, with its panels. */
export interface FanChartList extends DisplayList {
  readonly panels: FanPanels;
  /** kg/m³ at which all of it is drawn. */
  readonly density: number;
}

/**
 * Pressure, power and efficiency of one fan against its flow, at the density of the point in hand: lines of one speed,
 * what the unit asks at three filter loadings, the points of all conditions, and where the fan may surge. Pressure and
 * power of points at other densities are brought to that density by the fan laws, so that each lies on the line of its
 * own speed.
 */
export function fanChart(options: FanChartOptions): FanChartList {
  const { design, section, points, systems, system, width, height } = options;
  const chosen = points.find((point) => point.key === options.picked) ?? points[0];
  if (chosen === undefined) throw new RangeError("the fan stands at every condition: there is no point to draw");
  const density = chosen.density;
  const limit = highestSpeed(design);
  const fastest = Math.max(...points.map((point) => point.speed));
  const top = limit < 1.35 * fastest ? Math.max(limit, fastest) : 1.15 * fastest;
  const axis = flowAxis(axisEnd(design, points, chosen), width, system);
  const panels = panelsOf(design, density, top, axis, height);
  const speeds = speedLines(top, chosen.speed, system);
  const drawn: Drawn = { design, section, density, panels, speeds, speed: chosen.speed, limit };
  const moved = (point: FanChartPoint) => atDensity(point, density);
  const room = new LabelRoom();
  const at = points.map(moved);
  const pickedPoint = moved(chosen);
  return {
    title: `${section}, one of ${design.count}, at ${printQuantity(density, "density", system)}`,
    unit: "pt",
    up: false,
    box: { x: 0, y: 0, width, height },
    density,
    panels,
    items: [
      ...unsteadyRegion(drawn, room),
      ...fanPanelScale(panels.pressure, false),
      ...fanPanelScale(panels.power, false),
      ...fanPanelScale(panels.efficiency, true),
      flowName(axis, panels.efficiency.bottom, design.count),
      ...pressureLines(drawn, room),
      ...systemLines(panels.pressure, systems, density, room),
      ...peakShareLine(drawn, room),
      ...powerLines(drawn),
      ...efficiencyLines(drawn),
      ...pointCircles(drawn, at, chosen.key),
      ...pickedWords(drawn, pickedPoint, room),
    ],
  };
}

function axisEnd(design: FanDesign, points: readonly FanChartPoint[], chosen: FanChartPoint): number {
  const free = flowFromFlowCoefficient(design.wheel.curve.freeFlow, design.diameter, chosen.speed);
  return Math.max(free, 1.15 * Math.max(...points.map((point) => point.flow)));
}

/** pt under the last panel, and between panels. */
const foot = 36;
const gap = 10;

function panelsOf(design: FanDesign, density: number, top: number, axis: FlowAxis, height: number) {
  const { curve } = design.wheel;
  const field = height - foot - 3 * panelHead - 2 * gap;
  const heights = { pressure: 0.54 * field, power: 0.23 * field, efficiency: 0.23 * field };
  const tip = Math.PI * design.diameter * top;
  const pressure = fanPanel({
    key: "pressure",
    name: "Static pressure",
    kind: "pressureDifference",
    axis,
    top: 0,
    height: heights.pressure,
    most: 1.06 * 0.5 * density * tip * tip * curve.peakPressure,
  });
  const power = fanPanel({
    key: "power",
    name: "Shaft power",
    kind: "shaftPower",
    axis,
    top: pressure.bottom + gap,
    height: heights.power,
    most: 1.05 * Math.max(fanPeakPower(curve, design.diameter, top, density), design.motorPower),
  });
  const efficiency = fanPanel({
    key: "efficiency",
    name: "Efficiency",
    kind: "share",
    axis,
    top: power.bottom + gap,
    height: heights.efficiency,
    most: 1,
  });
  return { pressure, power, efficiency };
}

/** Round speeds up to the highest, but for those that would lie on the strong one. */
function speedLines(top: number, speed: number, system: UnitSystem): readonly number[] {
  const reading = toDisplay(top, "rotationalSpeed", system);
  const step = niceStep(reading, 5);
  return multiples(step, reading, step)
    .map((each) => fromDisplay(each, "rotationalSpeed", system))
    .filter((each) => Math.abs(each / speed - 1) > 0.03);
}

function powerLines(drawn: Drawn): readonly DisplayItem[] {
  const { design, panels, speeds, speed } = drawn;
  const panel = panels.power;
  const lineAt = (each: number, key: string, ink: "fine" | "strong") =>
    line(
      key,
      ink,
      curvePoints(panel, freeFlowAt(drawn, each), (flow) => powerAt(drawn, each, flow)),
      {
        label: speedText(drawn, each),
      },
    );
  const y = valuePoint(panel, design.motorPower);
  const text = `motor ${printQuantity(design.motorPower, "shaftPower", panel.axis.system)}`;
  return [
    ...speeds.map((each) => lineAt(each, `power-${speedKey(drawn, each)}`, "fine")),
    lineAt(speed, "power-picked", "strong"),
    line("motor", "fail", [panel.axis.left, y, panel.axis.right, y], { dash: "long", label: text }),
    words("motor-name", "fail", [panel.axis.left + 6, y > panel.top + 16 ? y - 4 : y + 13], text, { size: "small" }),
  ];
}

function efficiencyLines(drawn: Drawn): readonly DisplayItem[] {
  const { design, density, panels, speed, speeds } = drawn;
  const panel = panels.efficiency;
  const staticAt = (each: number) => (flow: number) =>
    (flow * pressureAt(drawn, each, flow)) / powerAt(drawn, each, flow);
  const totalAt = (flow: number) => {
    const velocityPressure = 0.5 * density * (flow / design.outletArea) ** 2;
    return (flow * (pressureAt(drawn, speed, flow) + velocityPressure)) / powerAt(drawn, speed, flow);
  };
  const free = freeFlowAt(drawn, speed);
  const nameAt = (share: number, value: (flow: number) => number): [number, number] => {
    const flow = share * Math.min(free, panel.axis.most);
    return [flowPoint(panel.axis, flow), valuePoint(panel, value(flow))];
  };
  const [staticX, staticY] = nameAt(0.82, staticAt(speed));
  const items: DisplayItem[] = [
    ...speeds.map((each) =>
      line(
        `efficiency-${speedKey(drawn, each)}`,
        "hairline",
        curvePoints(panel, freeFlowAt(drawn, each), staticAt(each)),
      ),
    ),
    line("efficiency-static", "strong", curvePoints(panel, free, staticAt(speed)), { label: "static efficiency" }),
    words("efficiency-static-name", "strong", [staticX - 6, staticY + 12], "static", { size: "small", anchor: "end" }),
  ];
  if (design.outletArea === 0) return items;
  const [totalX, totalY] = nameAt(0.82, totalAt);
  return [
    ...items,
    line("efficiency-total", "outline", curvePoints(panel, free, totalAt), { dash: "long", label: "total efficiency" }),
    words("efficiency-total-name", "outline", [totalX + 6, totalY - 4], "total", { size: "small" }),
  ];
}

function pointCircles(drawn: Drawn, points: readonly FanChartPoint[], picked: string): readonly DisplayItem[] {
  const { panels, section } = drawn;
  const { system } = panels.pressure.axis;
  const ordered = [
    ...points.filter((point) => point.key !== picked),
    ...points.filter((point) => point.key === picked),
  ];
  return ordered.flatMap((point) => {
    const chosen = point.key === picked;
    const label = `${point.name}: ${printQuantity(point.flow, "actualAirflow", system)}, ${printQuantity(point.staticPressure, "pressureDifference", system)}, ${printQuantity(point.shaftPower, "shaftPower", system)}, ${printQuantity(point.speed, "rotationalSpeed", system)}`;
    const efficiency = (point.flow * point.staticPressure) / point.shaftPower;
    const x = flowPoint(panels.pressure.axis, point.flow);
    const places = [
      ["pressure", valuePoint(panels.pressure, point.staticPressure)],
      ["power", valuePoint(panels.power, point.shaftPower)],
      ["efficiency", valuePoint(panels.efficiency, efficiency)],
    ] as const;
    return places.map(([panel, y]) =>
      circle(`${panel}-at-${point.key}`, chosen ? "choice" : "outline", [x, y], chosen ? 4.5 : 2.6, {
        fill: "paper",
        label,
        reference: { section },
      }),
    );
  });
}

/** What the point in hand is, beside it. */
function pickedWords({ panels }: Drawn, point: FanChartPoint, room: LabelRoom): readonly TextItem[] {
  const { axis } = panels.pressure;
  const say = [
    [
      "pressure",
      valuePoint(panels.pressure, point.staticPressure),
      printQuantity(point.staticPressure, "pressureDifference", axis.system),
    ],
    ["power", valuePoint(panels.power, point.shaftPower), printQuantity(point.shaftPower, "shaftPower", axis.system)],
    [
      "efficiency",
      valuePoint(panels.efficiency, (point.flow * point.staticPressure) / point.shaftPower),
      printQuantity((point.flow * point.staticPressure) / point.shaftPower, "share", axis.system),
    ],
  ] as const;
  const x = flowPoint(axis, point.flow);
  return say.map(([panel, y, text]) => {
    const place = room.place(x, y, text, "normal", placesAround);
    return words(`${panel}-picked-name`, "choice", [x + place.dx, y + place.dy], text, { anchor: place.anchor });
  });
}

function flowName(axis: FlowAxis, bottom: number, count: number): TextItem {
  const whose = count === 1 ? "airflow" : `airflow of each of ${count} fans`;
  const text = `${whose}, ${displayUnit("actualAirflow", axis.system)}`;
  return words("flow-name", "quiet", [(axis.left + axis.right) / 2, bottom + 31], text, {
    size: "small",
    anchor: "middle",
  });
}
