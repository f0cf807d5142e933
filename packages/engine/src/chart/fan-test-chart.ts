import { fanPressureFromFlow, fanShaftPowerFromFlow } from "#component/fan-performance";
import type { FanTest } from "#design/fan-test";
import type { FanTestPoint } from "#design/fan-test-row";
import type { UnitSystem } from "#quantity/kind";
import { displayUnit, printQuantity } from "#quantity/print";
import type { DisplayItem, DisplayList } from "#section/display";
import { type FanPanel, fanPanel, fanPanelScale, flowAxis, flowPoint, panelHead, valuePoint } from "./fan-panel.ts";
import { circle, line, words } from "./items.ts";

/** What a picture of a test shows. */
export interface FanTestChartOptions {
  readonly test: FanTest;
  readonly name: string;
  readonly system: UnitSystem;
  /** pt. */
  readonly width: number;
  readonly height: number;
}

/** Below the last panel: scale, its name, the key of the speeds; and between panels. */
const foot = 54;
const gap = 10;

/** Tested points of every speed, brought to one speed and density, and the curve laid through them. */
export function fanTestChart({ test, name, system, width, height }: FanTestChartOptions): DisplayList {
  const { curve, diameter, speed, density } = test;
  const scale = scaleOf(test);
  const axis = flowAxis(
    1.02 * Math.max(curve.freeFlow, ...test.tested.map((point) => point.flow)) * scale.flow,
    width,
    system,
  );
  const field = (height - foot - 2 * panelHead - gap) / 2;
  const most = (of: (point: FanTestPoint) => number) => 1.08 * Math.max(...test.tested.map(of));
  const pressure = fanPanel({
    key: "pressure",
    name: "Static pressure",
    kind: "pressureDifference",
    axis,
    top: 0,
    height: field,
    most: most((point) => point.pressure) * scale.pressure,
  });
  const power = fanPanel({
    key: "power",
    name: "Shaft power",
    kind: "shaftPower",
    axis,
    top: pressure.bottom + gap,
    height: field,
    most: most((point) => point.power) * scale.power,
  });
  const through = (panel: FanPanel, value: (flow: number) => number) =>
    Array.from({ length: 101 }, (_, index) => (curve.freeFlow * scale.flow * index) / 100).flatMap((flow) => [
      flowPoint(axis, flow),
      valuePoint(panel, Math.max(0, value(flow))),
    ]);
  return {
    title: `${name}: test at ${printQuantity(speed, "rotationalSpeed", system)} and ${printQuantity(density, "density", system)}`,
    unit: "pt",
    up: false,
    box: { x: 0, y: 0, width, height },
    items: [
      ...fanPanelScale(pressure, false),
      ...fanPanelScale(power, true),
      words("flow-name", "quiet", [(axis.left + axis.right) / 2, power.bottom + 30], flowWords(system), {
        size: "small",
        anchor: "middle",
      }),
      line(
        "pressure-curve",
        "strong",
        through(pressure, (flow) => fanPressureFromFlow(curve, diameter, speed, density, flow)),
        {
          label: "curve of the record",
        },
      ),
      line(
        "power-curve",
        "strong",
        through(power, (flow) => fanShaftPowerFromFlow(curve, diameter, speed, density, flow)),
        {
          label: "curve of the record",
        },
      ),
      ...testedItems(pressure, test, (point) => point.pressure * scale.pressure),
      ...testedItems(power, test, (point) => point.power * scale.power),
      ...speedKey(test, system, axis.left, power.bottom + 48),
    ],
  };
}

/** From coefficients to m³/s, Pa and W at the test's speed and density. */
export function scaleOf({ diameter, speed, density }: Pick<FanTest, "diameter" | "speed" | "density">): {
  readonly flow: number;
  readonly pressure: number;
  readonly power: number;
} {
  const tip = Math.PI * diameter * speed;
  const disc = 0.25 * Math.PI * diameter ** 2;
  return { flow: disc * tip, pressure: 0.5 * density * tip ** 2, power: 0.5 * density * disc * tip ** 3 };
}

function flowWords(system: UnitSystem): string {
  return `airflow, ${displayUnit("actualAirflow", system)}; all points brought to one speed and density by the fan laws`;
}

const inks = ["water", "choice", "steam", "air", "outline"] as const;

/** Speeds of the test, fastest first. */
function speedsOf({ tested }: FanTest): readonly number[] {
  return [...new Set(tested.map((point) => point.speed))].sort((one, other) => other - one);
}

function testedItems(panel: FanPanel, test: FanTest, value: (point: FanTestPoint) => number): readonly DisplayItem[] {
  const speeds = speedsOf(test);
  const flow = scaleOf(test).flow;
  return test.tested.flatMap((point) => {
    const ink = point.outlier === "" ? inks[speeds.indexOf(point.speed) % inks.length]! : "fail";
    const [x, y] = [flowPoint(panel.axis, point.flow * flow), valuePoint(panel, value(point))];
    const label = `line ${point.line}${point.outlier === "" ? "" : `: ${point.outlier}`}`;
    const dot = circle(`${panel.key}-line-${point.line}`, ink, [x, y], 3.4, { fill: "paper", label });
    if (point.outlier === "" || !point.outlier.includes(panel.key)) return [dot];
    const name = words(`${panel.key}-outlier-${point.line}`, "fail", [x + 8, y - 5], `line ${point.line}?`, {
      size: "small",
    });
    return [dot, circle(`${panel.key}-ring-${point.line}`, "fail", [x, y], 7), name];
  });
}

function speedKey(test: FanTest, system: UnitSystem, left: number, y: number): readonly DisplayItem[] {
  return speedsOf(test).flatMap((speed, index) => {
    const x = left + 4 + 96 * index;
    const ink = inks[index % inks.length]!;
    const text = `at ${printQuantity(speed, "rotationalSpeed", system)}`;
    return [
      circle(`speed-${index}`, ink, [x, y - 4], 3.4, { fill: "paper" }),
      words(`speed-${index}-name`, "quiet", [x + 9, y], text, { size: "small" }),
    ];
  });
}
